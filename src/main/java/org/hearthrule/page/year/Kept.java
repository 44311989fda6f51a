package org.hearthrule.page.year;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import org.hearthrule.input.BadInputException;
import org.hearthrule.records.Book;
import org.hearthrule.records.YearLabel;

/**
 * Years that were worked out, kept until the book or the day changes: whoever looks turns from child to child and from
 * year to year, and back. Safe for several threads.
 */
final class Kept {

    private static final int MOST = 6;

    private final Map<Key, YearPage> pages = new LinkedHashMap<>(MOST, .75f, true);
    private Book book;
    private LocalDate day;

    private record Key(YearLabel label, String child) { }

    /** Works a year out. */
    interface Maker {
        YearPage make() throws BadInputException;
    }

    /**
     * @param child id of the one looked at, or null for all
     * @return what is kept, or what is made now; whoever asks for another year meanwhile need not wait
     */
    YearPage page(Book now, LocalDate today, YearLabel label, String child, Maker maker) throws BadInputException {
        Key key = new Key(label, child);
        YearPage page = find(now, today, key);
        if (page == null) {
            page = maker.make();
            keep(now, today, key, page);
        }
        return page;
    }

    private synchronized YearPage find(Book now, LocalDate today, Key key) {
        if (book != now || !today.equals(day)) {
            pages.clear();
            book = now;
            day = today;
        }
        return pages.get(key);
    }

    private synchronized void keep(Book then, LocalDate today, Key key, YearPage page) {
        if (book == then && today.equals(day)) {
            pages.put(key, page);
            if (pages.size() > MOST) {
                pages.remove(pages.keySet().iterator().next());
            }
        }
    }
}
