package org.hearthrule.rules;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.hearthrule.law.Profile;
import org.hearthrule.records.Book;
import org.hearthrule.records.Person;
import org.hearthrule.records.Placement;
import org.hearthrule.records.Student;
import org.hearthrule.records.YearRecords;
import org.hearthrule.records.YearRecords.Evaluation;
import org.hearthrule.records.YearRecords.Filing;
import org.hearthrule.records.YearRecords.HealthPaper;
import org.hearthrule.records.YearRecords.LogEntry;
import org.hearthrule.records.YearRecords.Reading;
import org.hearthrule.records.YearRecords.Sample;
import org.hearthrule.records.YearRecords.Score;
import org.hearthrule.records.YearRecords.TestTaken;

/** An invented family's full year: three children, four entries a day for 180 days each. */
final class BenchBook {

    static final LocalDate AS_OF = LocalDate.of(2026, 6, 1);
    static final int DAYS = 180;
    static final int ENTRIES_A_DAY = 4;
    static final String YEAR = "2025-26";
    static final Map<String, String> GRADES = Map.of("ada", "3", "ben", "6", "cleo", "9");

    private static final List<String> SUBJECTS = List.of("reading", "writing", "spelling", "arithmetic", "life-science",
            "geography", "us-history", "state-history", "civics", "health", "music", "drawing", "physical-education",
            "safety", "literature", "algebra");

    private BenchBook() {
    }

    static Book of(Profile profile) {
        List<Student> students = List.of(
                new Student("ada", "Ada", LocalDate.of(2016, 10, 4), List.of()),
                new Student("ben", "Ben", LocalDate.of(2013, 10, 4), List.of()),
                new Student("cleo", "Cleo", LocalDate.of(2010, 10, 4), List.of()));
        Person mother = new Person("mo", "Mo", List.of("parent", "teacher"),
                List.of(new Person.Credential("high-school-diploma", null, null)));
        List<Placement> placements = students.stream().map(student -> new Placement(student.id(),
                profile.slug(), profile.usualPathway().slug(), LocalDate.of(2025, 8, 25), null,
                null, LocalDate.of(2023, 8, 28), null, null, null, List.of(), null)).toList();
        return new Book(null, "Bench", students, List.of(mother), placements, List.of(), List.of(), List.of(),
                new TreeMap<>(Map.of(YEAR, year())));
    }

    private static YearRecords year() {
        List<LogEntry> log = new ArrayList<>();
        List<Reading> readings = new ArrayList<>();
        List<Sample> samples = new ArrayList<>();
        List<TestTaken> tests = new ArrayList<>();
        List<Evaluation> evaluations = new ArrayList<>();
        List<HealthPaper> health = new ArrayList<>();
        for (String child : List.of("ada", "ben", "cleo")) {
            LocalDate day = LocalDate.of(2025, 8, 25);
            for (int taught = 0; taught < DAYS; day = day.plusDays(1)) {
                if (day.getDayOfWeek() != DayOfWeek.SATURDAY && day.getDayOfWeek() != DayOfWeek.SUNDAY) {
                    for (int part = 0; part < ENTRIES_A_DAY; part++) {
                        int number = taught * ENTRIES_A_DAY + part;
                        String subject = SUBJECTS.get((number * 7 + child.length()) % SUBJECTS.size());
                        log.add(new LogEntry("log-" + child + number, day, 50 + number % 35, List.of(child), List.of(subject),
                                "Worked on " + subject + ", part " + number, List.of(), "home", null, "mo", day.atTime(19, 30)));
                    }
                    taught++;
                }
            }
            for (int i = 0; i < 20; i++) {
                LocalDate read = LocalDate.of(2025, 9, 1).plusDays(i * 12L);
                readings.add(new Reading("reading-" + child + i, List.of(child), "Book " + i, "Somebody", read, read.plusDays(9),
                        List.of("literature"), null));
                samples.add(new Sample("sample-" + child + i, child, read, List.of(SUBJECTS.get(i % SUBJECTS.size())),
                        "Piece " + i, "page", null, List.of(), false));
            }
            tests.add(new TestTaken("test-" + child, child, LocalDate.of(2026, 4, 14), "standardized-test", "Some Test", null,
                    "certified-teacher", null, null, List.of(new Score("reading", "percentile", BigDecimal.valueOf(61)),
                    new Score("mathematics", "percentile", BigDecimal.valueOf(55))), null));
            evaluations.add(new Evaluation("evaluation-" + child, child, LocalDate.of(2026, 5, 20), "listed-evaluator",
                    "certified-teacher", null, List.of("interview", "portfolio"), null, null, null));
            health.add(new HealthPaper("health-" + child, child, "immunization-record", LocalDate.of(2025, 7, 1), null));
        }
        List<Filing> filings = List.of(new Filing("filing-1", List.of(), "affidavit", LocalDate.of(2025, 7, 20), null, null,
                YEAR, null, List.of(), List.of(), null, List.of()));
        return new YearRecords(YEAR, GRADES, YearRecords.Calendar.EMPTY, List.of(), log, readings, samples, tests, evaluations,
                filings, List.of(), health, List.of(), List.of());
    }
}
