package org.hearthrule.checklist;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.hearthrule.law.Requirement;
import org.hearthrule.law.SchoolYear;
import org.hearthrule.law.SubjectItem;
import org.hearthrule.records.Book;
import org.hearthrule.records.YearRecords;
import org.hearthrule.records.YearRecords.LogEntry;
import org.hearthrule.records.YearRecords.Reading;
import org.hearthrule.records.YearRecords.Sample;
import org.hearthrule.terms.Subjects;

/** One child's records of one school year, up to a day. */
final class StudentYear {

    final LocalDate first;
    final LocalDate last;
    final List<LogEntry> log = new ArrayList<>();
    final List<Reading> readings = new ArrayList<>();
    final List<Sample> samples = new ArrayList<>();
    final List<Sample> undated = new ArrayList<>();
    private final List<YearRecords> files = new ArrayList<>();
    private final String student;
    private final LocalDate asOf;

    StudentYear(Book book, String student, SchoolYear shape, LocalDate asOf) {
        LocalDate start = shape.from().atYear(asOf.getYear());
        this.first = start.isAfter(asOf) ? shape.from().atYear(asOf.getYear() - 1) : start;
        LocalDate end = shape.to().atYear(first.getYear());
        this.last = end.isAfter(first) ? end : shape.to().atYear(first.getYear() + 1);
        this.student = student;
        this.asOf = asOf;
        book.years().values().forEach(this::add);
    }

    private void add(YearRecords year) {
        year.log().stream().filter(entry -> entry.students().contains(student) && holds(entry.date())).forEach(log::add);
        year.readings().stream().filter(r -> r.students().contains(student) && holds(day(r))).forEach(readings::add);
        year.samples().stream().filter(s -> s.student().equals(student) && holds(s.date())).forEach(samples::add);
        if (label().equals(year.label())) {
            year.samples().stream().filter(s -> s.student().equals(student) && s.date() == null).forEach(undated::add);
            files.add(year);
        }
    }

    private boolean holds(LocalDate day) {
        return day != null && !day.isBefore(first) && !day.isAfter(last) && !day.isAfter(asOf);
    }

    private static LocalDate day(Reading reading) {
        return reading.finished() != null ? reading.finished() : reading.started();
    }

    /** @return {@code 2026-27}, or {@code 2026} for a calendar year */
    String label() {
        int end = last.getYear() % 100;
        return first.getYear() == last.getYear() ? Integer.toString(first.getYear())
                : first.getYear() + (end < 10 ? "-0" : "-") + end;
    }

    /** @return what this year's file holds of a list that belongs to one child, or to all */
    <T> List<T> ofFile(Function<YearRecords, List<T>> list) {
        return files.stream().flatMap(file -> list.apply(file).stream()).toList();
    }

    String student() {
        return student;
    }

    /** @return the days taught, as far as they are known, cut in three equal parts */
    List<Readiness.Third> thirds() {
        LocalDate from = first;
        LocalDate to = last;
        for (YearRecords file : files) {
            from = file.calendar().firstDay() == null ? from : file.calendar().firstDay();
            to = file.calendar().lastDay() == null ? to : file.calendar().lastDay();
        }
        long days = from.until(to, java.time.temporal.ChronoUnit.DAYS) + 1;
        LocalDate second = from.plusDays(days / 3);
        LocalDate third = from.plusDays(2 * days / 3);
        // what lies before the first day taught or after the last one belongs to the nearest third
        return List.of(new Readiness.Third(first.isBefore(from) ? first : from, second.minusDays(1)),
                new Readiness.Third(second, third.minusDays(1)),
                new Readiness.Third(third, last.isAfter(to) ? last : to));
    }

    Readiness.SubjectRow row(SubjectItem item, Requirement asked) {
        Set<LocalDate> days = new HashSet<>();
        int minutes = 0;
        for (LogEntry entry : log) {
            if (shows(entry.subjects(), item)) {
                days.add(entry.date());
                minutes += entry.minutes();
            }
        }
        List<Sample> shown = samples.stream().filter(sample -> shows(sample.subjects(), item))
                .sorted(Comparator.comparing(Sample::date)).toList();
        List<List<Sample>> byThird = thirds().stream()
                .map(third -> shown.stream().filter(sample -> third.holds(sample.date())).toList()).toList();
        return new Readiness.SubjectRow(item.name(), item.may(), asked, days.size(), minutes, byThird,
                undated.stream().filter(sample -> shows(sample.subjects(), item)).toList(),
                readings.stream().filter(reading -> shows(reading.subjects(), item)).toList());
    }

    private static boolean shows(List<String> logged, SubjectItem item) {
        return logged.stream().anyMatch(one -> item.shownBy().stream().anyMatch(asked -> Subjects.shows(one, asked)));
    }
}
