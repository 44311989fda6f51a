package org.hearthrule.page.log;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hearthrule.page.frame.Form;
import org.hearthrule.records.Book;
import org.hearthrule.records.YearRecords;
import org.hearthrule.records.YearRecords.LogEntry;
import org.hearthrule.terms.Subjects;
import org.hearthrule.terms.Wording;

/**
 * What is looked for in the log. A book of many years is gone through from its latest day and only as far as a page
 * needs.
 *
 * @param form  what was asked, to be set again
 * @param words small letters; empty for any
 */
public record LogSearch(Form form, String words, String child, String subject, LocalDate from, LocalDate to, boolean bare) {

    private static final int DAYS = 30;

    /** A day and its entries. */
    public record Day(String words, String iso, List<Row> rows) { }

    /** An entry as a list sets it. */
    public record Row(String address, String did, String who, String minutes, String subjects) { }

    /**
     * @param older day before which there is more, or null
     * @param found how many entries fit in all, or -1 when nothing was looked for
     */
    public record Page(List<Day> days, String older, int found) { }

    static LogSearch of(Form query, Book book) {
        String child = query.raw("child");
        LocalDate day = query.day("day");
        return new LogSearch(query, query.raw("words").toLowerCase(Locale.ROOT), book.student(child).isPresent() ? child : "",
                query.raw("subject"), day != null ? day : query.day("from"), day != null ? day : query.day("to"), query.is("bare"));
    }

    public boolean isAsked() {
        return !words.isEmpty() || !child.isEmpty() || !subject.isEmpty() || from != null || to != null || bare;
    }

    /** @return the query without the page, to go on */
    public String query() {
        StringBuilder query = new StringBuilder();
        for (String name : List.of("words", "child", "subject", "day", "from", "to", "bare")) {
            if (form.is(name)) {
                query.append(name).append('=').append(java.net.URLEncoder.encode(form.raw(name), java.nio.charset.StandardCharsets.UTF_8)).append('&');
            }
        }
        return query.toString();
    }

    private boolean fits(LogEntry entry) {
        return (child.isEmpty() || entry.students().contains(child))
                && (subject.isEmpty() || entry.subjects().stream().anyMatch(one -> Subjects.shows(one, subject)))
                && (from == null || !entry.date().isBefore(from)) && (to == null || !entry.date().isAfter(to))
                && (!bare || entry.subjects().isEmpty())
                && (words.isEmpty() || entry.did().toLowerCase(Locale.ROOT).contains(words)
                || entry.materials().stream().anyMatch(one -> one.toLowerCase(Locale.ROOT).contains(words)));
    }

    Page page(Book book, String before) {
        LocalDate end = before.matches("\\d{4}-\\d\\d-\\d\\d") ? LocalDate.parse(before) : null;
        Map<LocalDate, List<Row>> days = new LinkedHashMap<>();
        int found = 0;
        LocalDate older = null;
        List<String> labels = new ArrayList<>(book.years().keySet());
        labels.sort(Comparator.reverseOrder());
        for (String label : labels) {
            List<LogEntry> log = new ArrayList<>(book.years().get(label).log());
            log.sort(Comparator.comparing(LogEntry::date).reversed());
            for (LogEntry entry : log) {
                if (!fits(entry)) {
                    continue;
                }
                found++;
                boolean shown = (end == null || entry.date().isBefore(end)) && (days.size() < DAYS || days.containsKey(entry.date()));
                if (shown) {
                    days.computeIfAbsent(entry.date(), day -> new ArrayList<>()).add(row(label, entry, book));
                } else if (older == null && days.size() >= DAYS) {
                    older = days.keySet().stream().min(Comparator.naturalOrder()).orElseThrow();
                }
            }
            if (!isAsked() && older != null) {
                break; // nothing is counted, so no earlier year matters
            }
        }
        List<Day> shown = days.entrySet().stream().map(day -> new Day(Wording.english().date(day.getKey()), day.getKey().toString(),
                day.getValue())).toList();
        return new Page(shown, older == null ? null : older.toString(), isAsked() ? found : -1);
    }

    private static Row row(String label, LogEntry entry, Book book) {
        boolean all = entry.students().size() == book.students().size() && book.students().size() > 1;
        String who = all ? "all children" : Wording.english().and(entry.students().stream()
                .map(id -> book.student(id).map(one -> one.name().split(" ", 2)[0]).orElse(id)).toList());
        String subjects = entry.subjects().isEmpty() ? "no subject yet" : Wording.english().and(entry.subjects().stream().map(Subjects::name).toList());
        return new Row("/log/" + label + '/' + entry.id(), entry.did().isEmpty() ? "(no words)" : entry.did(), who,
                entry.minutes() == 0 ? "" : Minutes.words(entry.minutes()), subjects);
    }

    /** @return the entry written last of the latest day up to a day, or null */
    static LogEntry last(Book book, LocalDate upTo) {
        LogEntry last = null;
        for (YearRecords year : book.years().values()) {
            for (LogEntry entry : year.log()) {
                if (!entry.date().isAfter(upTo) && (last == null || !entry.date().isBefore(last.date()))) {
                    last = entry;
                }
            }
        }
        return last;
    }

    /** @return the latest day before this one on which something was logged */
    static Optional<LocalDate> lastDay(Book book, LocalDate before) {
        return Optional.ofNullable(last(book, before.minusDays(1))).map(LogEntry::date);
    }

    static List<LogEntry> on(Book book, LocalDate day) {
        List<LogEntry> found = new ArrayList<>();
        book.years().values().forEach(year -> year.log().stream().filter(entry -> entry.date().equals(day)).forEach(found::add));
        return found;
    }

    /** @return a sentence when a child's day has more hours than a day has; else nothing */
    static String tooFull(Book book, LogEntry added, Book names) {
        for (String child : added.students()) {
            int minutes = on(book, added.date()).stream().filter(entry -> entry.students().contains(child)).mapToInt(LogEntry::minutes).sum();
            if (minutes > Minutes.LONGEST_DAY) {
                return names.student(child).orElseThrow().name() + " has " + Minutes.words(minutes) + " on that day: look whether one is twice there.";
            }
        }
        return "";
    }
}
