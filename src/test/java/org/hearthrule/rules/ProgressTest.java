package org.hearthrule.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.hearthrule.input.Problems;
import org.hearthrule.law.Evidence;
import org.hearthrule.law.Packaged;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Profiles;
import org.hearthrule.law.Requirement;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookReader;
import org.hearthrule.records.Placement;
import org.hearthrule.records.Student;
import org.hearthrule.records.YearRecords;
import org.hearthrule.records.YearRecords.ChoiceMade;
import org.hearthrule.records.YearRecords.LogEntry;
import org.hearthrule.records.YearRecords.Stretch;
import org.junit.jupiter.api.Test;

/** A curve that ends elsewhere than at the number on the line beside it would make a parent believe one of the two. */
class ProgressTest {

    private static final LocalDate MARCH = LocalDate.of(2026, 3, 20);

    /** Every pathway that asks for an amount of time, in the grades of small and of big children. */
    @Test
    void everyCourseOfEveryPathwayEndsAtTheNumberTheLineCounted() throws Exception {
        Set<String> asking = new TreeSet<>();
        Set<String> seen = new TreeSet<>();
        for (Profile profile : Packaged.all()) {
            for (Pathway pathway : profile.pathways()) {
                if (asksTime(pathway)) {
                    asking.add(pathway.id());
                    for (String grade : List.of("2", "8", "12")) {
                        Judgement judgement = new Judge(List.of(profile)).judge(book(profile, pathway, grade), MARCH);
                        if (endsMeetLines(Progress.of(book(profile, pathway, grade), judgement), judgement) > 0) {
                            seen.add(pathway.id());
                        }
                    }
                }
            }
        }
        assertThat(asking).hasSizeGreaterThan(30);
        asking.removeAll(seen);
        assertThat(asking).isEmpty();
    }

    @Test
    void everyCourseOfTheCasesFromTheLawEndsAtTheNumberTheLineCounted() throws Exception {
        Profiles profiles = Packaged.profiles();
        int courses = 0;
        for (Path file : LawCase.files()) {
            for (LawCase lawCase : LawCase.read(file)) {
                Book book = lawCase.book();
                Judgement judgement = new Judge(List.of(profiles.find(lawCase.jurisdiction()))).judge(book, lawCase.asOf());
                courses += endsMeetLines(Progress.of(book, judgement), judgement);
            }
        }
        assertThat(courses).isGreaterThan(100);
    }

    /** Wren and Marit are short of the days, so their hours are told beside them; Ansel has his days. */
    @Test
    void theDemoFamilysCoursesEndAtTheNumbersTheLinesCounted() throws Exception {
        Book book = BookReader.read(Path.of("test-fixtures", "books", "tennick-landing"), new Problems()).orElseThrow();
        Judgement judgement = new Judge(List.of(Packaged.profiles().find(book.placements().get(0).jurisdiction())))
                .judge(book, LocalDate.of(2026, 5, 20));

        assertThat(endsMeetLines(Progress.of(book, judgement), judgement)).isEqualTo(2 + 2 + 1);
    }

    /** @return how many courses there were */
    private static int endsMeetLines(List<Progress> all, Judgement judgement) {
        int courses = 0;
        for (Progress progress : all) {
            for (TimeCourse course : progress.courses()) {
                List<TimeCourse.Point> points = course.points();
                BigDecimal end = points.isEmpty() ? BigDecimal.ZERO : points.get(points.size() - 1).reached();
                assertThat((BigDecimal) progress.finding().counted().get(course.key())).as(progress.finding().id() + " " + course.key())
                        .isEqualByComparingTo(end).isEqualByComparingTo(course.reached());
                if (course.part() == 0) {
                    assertThat((BigDecimal) progress.finding().counted().get(askedKey(course.key())))
                            .isEqualByComparingTo(course.asked());
                }
                assertThat(points).isSortedAccordingTo((one, other) -> one.day().compareTo(other.day()));
                assertThat(points).allMatch(point -> !point.day().isAfter(judgement.asOf()));
                courses++;
            }
        }
        assertThat(all.stream().map(progress -> progress.finding().id()).toList())
                .containsExactlyInAnyOrderElementsOf(countedTime(judgement));
        return courses;
    }

    /** @return for example {@code hours-asked-2} of {@code hours-2}, the second amount of hours in one line */
    private static String askedKey(String key) {
        return key.matches(".*-\\d+") ? key.replaceFirst("-(\\d+)$", "-asked-$1") : key + "-asked";
    }

    /** @return ids of the lines that told an amount of time: none of them may be left without its course */
    private static List<String> countedTime(Judgement judgement) {
        return judgement.findings().stream().filter(finding -> finding.counted().keySet().stream()
                .anyMatch(key -> key.matches("(core-)?(days|hours|weeks|months)(-at-.*)?-asked(-\\d+)?|(quarter|month|week)-1")))
                .map(Finding::id).toList();
    }

    private static boolean asksTime(Pathway pathway) {
        return pathway.asks().stream().filter(asked -> asked.validity().inForceOn(MARCH)).anyMatch(asked -> !times(asked).isEmpty());
    }

    private static List<Evidence.Time> times(Requirement asked) {
        return Evidence.leaves(asked.shows(), Evidence.Time.class);
    }

    /** One child since last summer, an hour and a half at home on each weekday; quarters, and what others set, are noted. */
    private static Book book(Profile profile, Pathway pathway, String grade) {
        LocalDate first = LocalDate.of(2025, 8, 25);
        List<LogEntry> log = new ArrayList<>();
        for (LocalDate day = first; !day.isAfter(MARCH); day = day.plusDays(1)) {
            if (day.getDayOfWeek() != DayOfWeek.SATURDAY && day.getDayOfWeek() != DayOfWeek.SUNDAY) {
                log.add(new LogEntry("log-" + day, day, 95, List.of("ada"), List.of("arithmetic", "us-history", "music"),
                        "Worked.", List.of(), "home", null, null, null));
            }
        }
        YearRecords.Calendar calendar = new YearRecords.Calendar(first, null, null, null,
                List.of(new Stretch(first, first.plusDays(70)), new Stretch(first.plusDays(71), first.plusDays(140))),
                List.of(), List.of());
        List<ChoiceMade> choices = pathway.asks().stream().flatMap(asked -> times(asked).stream())
                .filter(time -> time.setBy() != null)
                .map(time -> new ChoiceMade("ada", time.setBy().value(), "175", List.of(), first)).toList();
        YearRecords year = new YearRecords("2025-26", Map.of("ada", grade), calendar, choices, log, List.of(), List.of(),
                List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of());
        Student child = new Student("ada", "Ada", LocalDate.of(2025, 9, 1).minusYears(6L + Integer.parseInt(grade)), List.of());
        Placement placement = new Placement("ada", profile.slug(), pathway.slug(), first, null, null,
                LocalDate.of(2024, 8, 26), null, null, null, List.of(), null);
        return new Book(null, "Example", List.of(child), List.of(), List.of(placement), List.of(), List.of(), List.of(),
                new TreeMap<>(Map.of("2025-26", year)));
    }
}
