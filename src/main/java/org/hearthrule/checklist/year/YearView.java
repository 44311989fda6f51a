package org.hearthrule.checklist.year;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hearthrule.checklist.Checklist;
import org.hearthrule.checklist.Line;
import org.hearthrule.records.Book;
import org.hearthrule.records.Student;
import org.hearthrule.records.YearLabel;
import org.hearthrule.rules.Judgement;
import org.hearthrule.rules.ProgramYear;
import org.hearthrule.rules.Progress;

/**
 * One school year of one child or of all.
 *
 * @param label    the year, July to June
 * @param student  id of the child, or null for all
 * @param asOf     the day it is seen from; lies in the year only while it runs
 * @param months   twelve
 * @param minimums every amount of time that the law asks in the year, and how it came together
 * @param subjects what the records hold of each subject
 */
public record YearView(YearLabel label, String student, LocalDate asOf, List<CalendarMonth> months,
                       List<Minimum> minimums, List<SubjectRow> subjects) {

    /** A quarter of a year: so long after its end all duties of a year are still told. */
    private static final int QUARTER = 92;

    /**
     * @param judgement of the book, on the day that {@link #seenFrom} names
     * @param student   id of the child, or null for all
     */
    public static YearView of(Book book, Judgement judgement, String student, YearLabel label) {
        return of(book, judgement, List.of(), student, label);
    }

    /**
     * @param judgement of the book, on the day that {@link #seenFrom} names
     * @param later     lines of a later day: where one of them speaks of the same duty, it has the last word, so that a
     *                  paper that went out long after the year is not told as missing
     * @param student   id of the child, or null for all
     */
    public static YearView of(Book book, Judgement judgement, List<Line> later, String student, YearLabel label) {
        Set<String> children = new LinkedHashSet<>();
        book.students().stream().map(Student::id).filter(id -> student == null || id.equals(student)).forEach(children::add);
        Map<String, Line> lines = new LinkedHashMap<>();
        Checklist checklist = Checklist.of(judgement, book);
        (student == null ? checklist : checklist.forStudent(student)).lines().forEach(line -> lines.put(line.id(), line));
        later.forEach(line -> lines.computeIfPresent(line.id(), (id, earlier) -> line));
        return new YearView(label, student, judgement.asOf(),
                new YearCalendar(book, children, label).months(lines.values(), judgement.profiles()),
                minimums(book, judgement, lines, label), new SubjectsByMonth(children, label).rows(book, lines.values()));
    }

    /**
     * @return the day from which a year is looked at: today; for a year long past, a quarter of a year after its end,
     *     when all that belonged to it had been done
     */
    public static LocalDate seenFrom(YearLabel label, LocalDate today) {
        LocalDate after = label.last().plusDays(QUARTER);
        return today.isAfter(after) ? after : today;
    }

    private static List<Minimum> minimums(Book book, Judgement judgement, Map<String, Line> lines, YearLabel label) {
        List<Minimum> minimums = new ArrayList<>();
        for (Progress progress : Progress.of(book, judgement)) {
            Line line = lines.get(progress.finding().id());
            if (line != null && isMostlyIn(label, progress.year())) {
                minimums.addAll(Minimum.of(line, progress));
            }
        }
        return List.copyOf(minimums);
    }

    /**
     * Whether a year in law is told in a year of the book. A year from August or September on has a month or two in the
     * one before, where it is not told; one from January on is told in both that it lies in.
     */
    private static boolean isMostlyIn(YearLabel label, ProgramYear year) {
        LocalDate from = year.start().isAfter(label.first()) ? year.start() : label.first();
        LocalDate to = year.end().isBefore(label.last()) ? year.end() : label.last();
        return ChronoUnit.DAYS.between(from, to) > QUARTER;
    }

    /** @return log entries of the whole year */
    public int entries() {
        return months.stream().mapToInt(CalendarMonth::entries).sum();
    }

    /** @return their minutes */
    public int minutes() {
        return months.stream().mapToInt(CalendarMonth::minutes).sum();
    }

    /** @return days with an entry */
    public int daysLogged() {
        return months.stream().mapToInt(CalendarMonth::daysLogged).sum();
    }
}
