package org.hearthrule.page.log;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hearthrule.records.Book;
import org.hearthrule.records.YearRecords;
import org.hearthrule.records.YearRecords.LogEntry;

/** The log of a whole book in the order of its days, so that no call of the page sorts it. Safe for several threads. */
final class LogIndex {

    private static final Comparator<Place> LATEST_FIRST = Comparator.comparing((Place place) -> place.entry().date()).reversed();

    private final List<Place> latestFirst;
    private final List<List<Place>> days;
    private List<String> texts;

    /**
     * An entry and where it lies.
     *
     * @param label of the school year whose file holds it
     */
    record Place(String label, LogEntry entry) {

        String address() {
            return "/log/" + label + '/' + entry.id();
        }
    }

    private LogIndex(List<Place> latestFirst) {
        this.latestFirst = latestFirst;
        this.days = days(latestFirst);
    }

    static LogIndex of(Book book) {
        List<Place> all = new ArrayList<>();
        List<YearRecords> years = new ArrayList<>(book.years().values());
        Collections.reverse(years);
        for (YearRecords year : years) {
            year.log().forEach(entry -> all.add(new Place(year.label(), entry)));
        }
        all.sort(LATEST_FIRST); // stable: entries of a day stay in the order of the file
        return new LogIndex(Collections.unmodifiableList(all));
    }

    /** Keeps the index of the book that was asked for last. Safe for several threads. */
    static final class Kept {

        private Book book;
        private LogIndex index;

        synchronized LogIndex of(Book asked) {
            if (book != asked) {
                index = LogIndex.of(asked);
                book = asked;
            }
            return index;
        }
    }

    /** @return every entry, the latest day first; those of a day in the order of the file */
    List<Place> latestFirst() {
        return latestFirst;
    }

    /** @return the same, each day by itself */
    List<List<Place>> days() {
        return days;
    }

    /** @param places in the order of this index, so that entries of a day stand beside each other */
    static List<List<Place>> days(List<Place> places) {
        List<List<Place>> days = new ArrayList<>();
        int first = 0;
        for (int i = 1; i <= places.size(); i++) {
            if (i == places.size() || !places.get(i).entry().date().equals(places.get(first).entry().date())) {
                days.add(places.subList(first, i));
                first = i;
            }
        }
        return days;
    }

    /** @return what can be searched for words in each of these entries, in small letters; made when first asked for */
    synchronized List<String> texts() {
        if (texts == null) {
            texts = latestFirst.stream().map(place -> text(place.entry()).toLowerCase(Locale.ROOT)).toList();
        }
        return texts;
    }

    private static String text(LogEntry entry) {
        return entry.materials().isEmpty() ? entry.did() : entry.did() + '\n' + String.join("\n", entry.materials());
    }

    /** @return the entries of a day, in the order of the file */
    List<Place> on(LocalDate day) {
        return latestFirst.subList(firstUpTo(day), firstUpTo(day.minusDays(1)));
    }

    /** @return the latest day up to this one on which something was logged */
    Optional<LocalDate> lastDay(LocalDate upTo) {
        int first = firstUpTo(upTo);
        return first == latestFirst.size() ? Optional.empty() : Optional.of(latestFirst.get(first).entry().date());
    }

    /** @return the entry noted last of the latest day up to this one */
    Optional<LogEntry> last(LocalDate upTo) {
        return lastDay(upTo).map(this::on).map(day -> day.get(day.size() - 1).entry());
    }

    /** @return minutes of a child on a day */
    int minutes(String child, LocalDate day) {
        return on(day).stream().map(Place::entry).filter(entry -> entry.students().contains(child)).mapToInt(LogEntry::minutes).sum();
    }

    /** Where the entries up to a day begin. */
    private int firstUpTo(LocalDate day) {
        int low = 0;
        int high = latestFirst.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (latestFirst.get(middle).entry().date().isAfter(day)) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
