package org.hearthrule.page.year;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.hearthrule.checklist.year.YearView;
import org.hearthrule.page.frame.Choices;
import org.hearthrule.page.frame.Option;
import org.hearthrule.records.Book;
import org.hearthrule.records.YearLabel;

/**
 * The page of one year.
 *
 * @param words    such as {@code 2025–26}
 * @param path     of this page, without a child
 * @param previous label of the year before, or null when nothing is known of it
 * @param next     label of the year after, or null
 * @param children to choose from; fewer than two: nothing to choose
 * @param child    id of the one looked at, or empty for all
 * @param seen     the day it is seen from in words, or null when that is today
 * @param entries  what was logged in the year, or null when nothing was
 */
public record YearPage(String words, String path, String previous, String next, List<Option> children, String child,
                       String seen, String entries, Drawings drawings) {

    static YearPage of(YearView view, Book book, LocalDate today) {
        YearLabel label = view.label();
        YearLabel first = firstOf(book, today);
        YearLabel last = lastOf(book, today);
        return new YearPage(words(label), "/year/" + label, label.start() > first.start() ? new YearLabel(label.start() - 1).toString() : null,
                label.start() < last.start() ? new YearLabel(label.start() + 1).toString() : null,
                Choices.children(book),
                view.student() == null ? "" : view.student(), view.asOf().equals(today) ? null : YearWords.date(view.asOf()),
                view.entries() == 0 ? null : YearWords.say("year.logged", YearWords.count("year.entries", view.entries()),
                        YearWords.count("year.days", view.daysLogged()), YearWords.time(view.minutes())), Drawings.of(view, book));
    }

    /** @return for example {@code 2025–26} */
    static String words(YearLabel label) {
        return label.toString().replace('-', '–');
    }

    private static YearLabel firstOf(Book book, LocalDate today) {
        return known(book, today).min(YearLabel::compareTo).orElseThrow();
    }

    /** The year that comes can always be looked at: papers for it fall due before it begins. */
    private static YearLabel lastOf(Book book, LocalDate today) {
        return Stream.concat(known(book, today), Stream.of(new YearLabel(YearLabel.of(today).start() + 1)))
                .max(YearLabel::compareTo).orElseThrow();
    }

    private static Stream<YearLabel> known(Book book, LocalDate today) {
        Stream<YearLabel> files = book.years().keySet().stream().flatMap(label -> YearLabel.parse(label).stream());
        Stream<YearLabel> placements = book.placements().stream().map(placement -> YearLabel.of(placement.from()));
        return Stream.concat(Stream.concat(files, placements), Stream.of(YearLabel.of(today)));
    }

    /** @return where another year stands, with the child that is looked at */
    public String to(String label) {
        return "/year/" + label + query();
    }

    /** @return the checklist of whom is looked at */
    public String checklist() {
        return "/checklist" + query();
    }

    private String query() {
        return child.isEmpty() ? "" : "?child=" + child;
    }
}
