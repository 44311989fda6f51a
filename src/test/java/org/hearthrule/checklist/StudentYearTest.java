package org.hearthrule.checklist;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.hearthrule.law.SchoolYear;
import org.hearthrule.law.SubjectItem;
import org.hearthrule.records.Book;
import org.hearthrule.records.YearRecords;
import org.hearthrule.records.YearRecords.LogEntry;
import org.hearthrule.records.YearRecords.Reading;
import org.hearthrule.records.YearRecords.Sample;
import org.junit.jupiter.api.Test;

/** Counted by hand from the five entries, four samples and two books below. */
class StudentYearTest {

    private static final SchoolYear JULY_TO_JUNE =
            new SchoolYear(MonthDay.of(7, 1), MonthDay.of(6, 30), SchoolYear.Given.BY_LAW);
    private static final SubjectItem READING = new SubjectItem("reading", List.of("reading"), false, false);
    private static final LocalDate MARCH = LocalDate.of(2027, 3, 1);

    private static LogEntry entry(String id, String date, int minutes, String student, String subject) {
        return new LogEntry(id, LocalDate.parse(date), minutes, List.of(student), List.of(subject, "music"), "Did it.",
                List.of(), null, null, null, null);
    }

    private static Sample sample(String id, String date, String subject) {
        return new Sample(id, "ada", date == null ? null : LocalDate.parse(date), List.of(subject), "A piece", "page", null,
                List.of(), false);
    }

    private static Reading book(String id, String finished, String subject) {
        return new Reading(id, List.of("ada"), "A Book", null, null, LocalDate.parse(finished), List.of(subject), null);
    }

    private static StudentYear year(LocalDate firstDay, LocalDate lastDay, LocalDate asOf) {
        YearRecords records = new YearRecords("2026-27", Map.of("ada", "5"),
                new YearRecords.Calendar(firstDay, lastDay, null, null, List.of(), List.of(), List.of()), List.of(),
                List.of(entry("log-1", "2026-09-01", 30, "ada", "reading"), entry("log-2", "2026-09-01", 45, "ada", "reading"),
                        entry("log-3", "2026-12-02", 20, "ada", "reading"), entry("log-4", "2026-12-03", 60, "bo", "reading"),
                        entry("log-5", "2027-04-01", 60, "ada", "reading")),
                List.of(book("reading-1", "2026-10-01", "reading"), book("reading-2", "2026-10-01", "science")),
                List.of(sample("sample-1", "2026-07-02", "reading"), sample("sample-2", "2026-12-02", "reading"),
                        sample("sample-3", null, "reading"), sample("sample-4", "2026-12-02", "science")),
                List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of());
        Book book = new Book(null, "Family", List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
                new TreeMap<>(Map.of("2026-27", records)));
        return new StudentYear(book, "ada", JULY_TO_JUNE, asOf);
    }

    @Test
    void countsDaysMinutesSamplesByThirdAndBooksUpToTheDay() {
        Readiness.SubjectRow row = year(null, null, MARCH).row(READING, null);

        assertThat(row.name()).isEqualTo("reading");
        assertThat(List.of(row.days(), row.minutes(), row.undated().size(), row.books().size())).containsExactly(2, 95, 1, 1);
        assertThat(row.counts()).containsExactly(1, 1, 0);
    }

    @Test
    void cutsTheSchoolYearInThreeEqualParts() {
        // 365 days: 121, 122 and 122
        assertThat(year(null, null, MARCH).thirds()).containsExactly(
                new Readiness.Third(LocalDate.of(2026, 7, 1), LocalDate.of(2026, 10, 29)),
                new Readiness.Third(LocalDate.of(2026, 10, 30), LocalDate.of(2027, 2, 28)),
                new Readiness.Third(LocalDate.of(2027, 3, 1), LocalDate.of(2027, 6, 30)));
    }

    @Test
    void cutsTheDaysTaughtWhereTheyAreKnownAndLeavesNoDayOut() {
        // 2026-09-01 to 2027-05-28 are 270 days, 90 each; summer belongs to the nearest third
        assertThat(year(LocalDate.of(2026, 9, 1), LocalDate.of(2027, 5, 28), MARCH).thirds()).containsExactly(
                new Readiness.Third(LocalDate.of(2026, 7, 1), LocalDate.of(2026, 11, 29)),
                new Readiness.Third(LocalDate.of(2026, 11, 30), LocalDate.of(2027, 2, 27)),
                new Readiness.Third(LocalDate.of(2027, 2, 28), LocalDate.of(2027, 6, 30)));
    }

    @Test
    void findsTheSchoolYearThatHoldsTheDay() {
        assertThat(year(null, null, LocalDate.of(2027, 6, 30)).label()).isEqualTo("2026-27");
        assertThat(year(null, null, LocalDate.of(2027, 7, 1)).label()).isEqualTo("2027-28");
    }
}
