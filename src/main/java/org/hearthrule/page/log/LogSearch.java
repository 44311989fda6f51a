package org.hearthrule.page.log;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.sheet.Addresses;
import org.hearthrule.records.Book;
import org.hearthrule.records.YearRecords.LogEntry;
import org.hearthrule.terms.Subjects;

/**
 * What is looked for in the log, and one page of what was found.
 *
 * @param form  what was asked, to be set again, with complaints
 * @param words small letters; empty for any
 * @param bare  only entries without a subject
 */
public record LogSearch(Form form, String words, String child, String subject, LocalDate from, LocalDate to, boolean bare) {

    /** The most days of a page. */
    static final int DAYS = 50;
    /** The most entries of a page; a day that has more stands alone. */
    static final int ROWS = 300;

    private static final List<String> NAMES = List.of("words", "child", "subject", "day", "from", "to", "bare");

    /**
     * A day and its entries.
     *
     * @param weekday for example {@code Tuesday}
     */
    public record Day(String words, String weekday, String iso, List<Row> rows) { }

    /** An entry as a list sets it. */
    public record Row(String address, String did, String who, String minutes, String subjects, boolean bare) { }

    /**
     * A page of days.
     *
     * @param older address of the page before it in time, or null
     * @param later address of the page after it in time, or null
     * @param found what fits, counted in words; null when nothing was looked for
     */
    public record Page(List<Day> days, String older, String later, String found) { }

    static LogSearch of(Form query, Book book) {
        String child = query.raw("child");
        String subject = query.raw("subject");
        LocalDate day = query.day("day");
        LocalDate from = day != null ? day : query.day("from");
        LocalDate to = day != null ? day : query.day("to");
        if (from != null && to != null && to.isBefore(from)) {
            query.complain("to", LogWords.say("log.order"));
        }
        return new LogSearch(query, query.raw("words").toLowerCase(Locale.ROOT), book.student(child).isPresent() ? child : "",
                Subjects.known(subject) ? subject : "", from, to, query.is("bare"));
    }

    public boolean isAsked() {
        return !words.isEmpty() || !child.isEmpty() || !subject.isEmpty() || from != null || to != null || bare;
    }

    private String address(String turn, LocalDate day) {
        StringBuilder query = new StringBuilder("/log?");
        for (String name : NAMES) {
            if (form.is(name)) {
                query.append(name).append('=').append(Addresses.encoded(form.raw(name))).append('&');
            }
        }
        return query.append(turn).append('=').append(day).append("#logged").toString();
    }

    private boolean fits(LogEntry entry, Set<String> showing) {
        return (child.isEmpty() || entry.students().contains(child))
                && (subject.isEmpty() || !Collections.disjoint(entry.subjects(), showing))
                && (from == null || !entry.date().isBefore(from)) && (to == null || !entry.date().isAfter(to))
                && (!bare || entry.subjects().isEmpty());
    }

    private List<LogIndex.Place> found(LogIndex index) {
        if (!isAsked()) {
            return index.latestFirst();
        }
        Set<String> showing = Subjects.ids().stream().filter(one -> Subjects.shows(one, subject))
                .collect(Collectors.toSet());
        List<String> texts = words.isEmpty() ? List.of() : index.texts();
        List<LogIndex.Place> found = new ArrayList<>();
        for (int i = 0; i < index.latestFirst().size(); i++) {
            LogIndex.Place place = index.latestFirst().get(i);
            if (fits(place.entry(), showing) && (words.isEmpty() || texts.get(i).contains(words))) {
                found.add(place);
            }
        }
        return found;
    }

    /** @return the latest days; with {@code before} or {@code after} in the query those next to that day */
    Page page(LogIndex index, Book book) {
        List<LogIndex.Place> found = found(index);
        List<List<LogIndex.Place>> days = isAsked() ? LogIndex.days(found) : index.days();
        int start = start(days);
        int end = start;
        for (int rows = 0; end < days.size() && fitsPage(end - start, rows, days.get(end)); end++) {
            rows += days.get(end).size();
        }
        Map<String, String> children = LogWords.firstNames(book);
        List<Day> shown = new ArrayList<>();
        for (List<LogIndex.Place> places : days.subList(start, end)) {
            LocalDate day = day(places);
            shown.add(new Day(LogWords.date(day), LogWords.weekday(day), day.toString(),
                    places.stream().map(place -> LogWords.row(place, children)).toList()));
        }
        return new Page(shown, end < days.size() ? address("before", day(days.get(end - 1))) : null,
                start > 0 ? address("after", day(days.get(start))) : null,
                isAsked() ? LogWords.found(found.size(), days.size()) : null);
    }

    private static LocalDate day(List<LogIndex.Place> places) {
        return places.get(0).entry().date();
    }

    private static boolean fitsPage(int days, int rows, List<LogIndex.Place> day) {
        return days == 0 || days < DAYS && rows + day.size() <= ROWS;
    }

    /** Where the page begins among the days, the latest of which is the first. */
    private int start(List<List<LogIndex.Place>> days) {
        LocalDate before = form.day("before");
        LocalDate after = form.day("after");
        int start = 0;
        if (before != null) {
            start = (int) days.stream().takeWhile(day -> !day(day).isBefore(before)).count();
        } else if (after != null) {
            int end = (int) days.stream().takeWhile(day -> day(day).isAfter(after)).count();
            start = end;
            for (int rows = 0; start > 0 && fitsPage(end - start, rows, days.get(start - 1)); start--) {
                rows += days.get(start - 1).size();
            }
        }
        return Math.min(start, days.size());
    }
}
