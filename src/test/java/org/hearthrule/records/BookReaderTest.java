package org.hearthrule.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthrule.input.Place;
import org.hearthrule.input.Problem;
import org.hearthrule.input.Problems;
import org.hearthrule.terms.EventKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BookReaderTest {

    private final Problems problems = new Problems();

    @Test
    void annotatedFamilyIsReadWhole() {
        // when
        Book book = BookReader.read(Fixtures.ANNOTATED, problems).orElseThrow();

        // then
        assertThat(problems.all()).isEmpty();
        assertThat(book.folder()).isEqualTo(Fixtures.ANNOTATED);
        assertThat(book.familyName()).isEqualTo("Example family");
        assertThat(book.students()).containsExactly(new Student("ada", "Ada Example", day(2015, 4, 9), List.of(
                new Student.FormerSchool("public-school", "us-xx", day(2021, 8, 30), day(2024, 6, 12)))));
        assertThat(book.persons()).containsExactly(new Person("mo", "Mo Example", List.of("parent", "teacher"),
                List.of(new Person.Credential("high-school-diploma", "us-xx", day(2004, 6, 11)))));
        assertThat(book.placements()).containsExactly(new Placement("ada", "us-xx", "home-instruction",
                day(2024, 8, 26), null, null, null, "Example Valley", "Example City", "Example County", List.of(),
                null));
        assertThat(book.placements().get(0).where().placement())
                .isEqualTo(new Place(Fixtures.ANNOTATED.resolve("family.json").toString(), 13, 5));
        assertThat(book.events()).containsExactly(new BookEvent(EventKind.LEFT_SCHOOL, day(2024, 6, 12),
                List.of("ada"), "last day of grade 3"));
        assertThat(book.facts()).containsExactly(
                new AnsweredFact("parent-has-diploma", "mo", true, day(2024, 8, 20)));
        assertThat(book.answers()).containsExactly(new AnsweredDoubt("us-xx/doubts/start-in-spring",
                "Does not concern us.", "the superintendent", day(2024, 9, 2)));
        assertThat(book.years()).containsOnlyKeys("2026-27");
    }

    @Test
    void annotatedYearIsReadWhole() {
        // when
        YearRecords year = BookReader.read(Fixtures.ANNOTATED, problems).orElseThrow().years().get("2026-27");

        // then
        List<String> ada = List.of("ada");
        assertThat(year.label()).isEqualTo("2026-27");
        assertThat(year.grades()).containsExactly(entry("ada", "6"));
        assertThat(year.calendar()).isEqualTo(new YearRecords.Calendar(day(2026, 8, 31), day(2027, 6, 11),
                day(2026, 8, 27), day(2027, 6, 9),
                List.of(new YearRecords.Stretch(day(2026, 8, 31), day(2026, 10, 30))), List.of(),
                List.of(day(2026, 11, 26))));
        assertThat(year.choices()).containsExactly(
                new YearRecords.ChoiceMade("ada", "time-count", "days", List.of(), day(2026, 8, 1)),
                new YearRecords.ChoiceMade("ada", "report-dates", null, List.of(day(2026, 11, 15), day(2027, 1, 31),
                        day(2027, 4, 15), day(2027, 6, 15)), null));
        assertThat(year.log()).containsExactly(new YearRecords.LogEntry("log-1", day(2026, 8, 31), 95, ada,
                List.of("measurement", "practical-arts"), "Measured the jetty and worked out the planks.",
                List.of("tape measure"), "home", true, "mo", LocalDateTime.of(2026, 8, 31, 20, 15)));
        assertThat(year.readings()).containsExactly(new YearRecords.Reading("reading-1", ada, "The Example Book",
                "A. Writer", day(2026, 9, 1), day(2026, 9, 20), List.of("literature"), "why tides come twice",
                "9781234567897"));
        assertThat(year.samples()).containsExactly(new YearRecords.Sample("sample-1", "ada", day(2026, 9, 4),
                List.of("drawing"), "Plan of the jetty", "drawing", "scale", List.of("photos/jetty.jpg"), true));
        assertThat(year.tests()).containsExactly(new YearRecords.TestTaken("test-1", "ada", day(2027, 4, 20),
                "standardized-test", "Example Achievement Test", "3", "certified-teacher", "library",
                "the superintendent", List.of(new YearRecords.Score("composite", "percentile", new BigDecimal(54))),
                "papers/result.pdf"));
        assertThat(year.evaluations()).containsExactly(new YearRecords.Evaluation("evaluation-1", "ada",
                day(2027, 6, 1), "narrative", "certified-teacher", "the superintendent",
                List.of("interview", "portfolio"), "adequate", null, "papers/report.pdf"));
        assertThat(year.filings()).containsExactly(new YearRecords.Filing("filing-1", ada, "notice-of-intent",
                day(2026, 7, 20), "registered mail", "the superintendent", "2026-27", 1,
                List.of("name and age of the child"), List.of("copy of the diploma"), "papers/notice.pdf",
                List.of(new YearRecords.Answer("received", day(2026, 7, 23), null))));
        assertThat(year.requests()).containsExactly(new YearRecords.Request("request-1", ada, "superintendent", true,
                day(2027, 2, 1), null));
        assertThat(year.health()).containsExactly(new YearRecords.HealthPaper("health-1", "ada",
                "immunization-record", day(2026, 7, 1), "papers/immunizations.jpg"));
        assertThat(year.documents()).containsExactly(new YearRecords.KeptDocument("document-1", ada, "plan-book",
                day(2026, 8, 31), "papers/plan.pdf"));
        assertThat(year.visits()).containsExactly(new YearRecords.Visit("visit-1", ada, day(2026, 10, 1), 60,
                "teacher", true));
    }

    @Test
    void whatIsLeftOutIsEmptyOrNull() {
        // when
        Book book = read(Map.of("family.json", "{\"hearthrule\": 1, \"students\": [{\"name\": \"Ada Rowe\"}]}",
                "2026-27.json", Fixtures.year("2026-27",
                        "\"log\": [{\"date\": \"2026-09-01\", \"students\": [\"ada\"]}]")));

        // then
        assertThat(book.familyName()).isNull();
        assertThat(book.students()).containsExactly(new Student("ada", "Ada Rowe", null, null));
        assertThat(book.placements()).isEmpty();
        YearRecords year = book.years().get("2026-27");
        assertThat(year.calendar()).isEqualTo(YearRecords.Calendar.EMPTY);
        assertThat(year.log()).containsExactly(new YearRecords.LogEntry("log-1", day(2026, 9, 1), 0, List.of("ada"),
                List.of(), "", List.of(), null, null, null, null));
    }

    @Test
    void neverInASchoolDiffersFromNotSaid() {
        Book book = read(Map.of("family.json",
                "{\"hearthrule\": 1, \"students\": [{\"name\": \"Ada\", \"schools\": []}, {\"name\": \"Ben\"}]}"));

        assertThat(book.students()).extracting(Student::schools).containsExactly(List.of(), null);
    }

    @Test
    void idsOfPeopleAreMadeFromTheirNames() {
        Book book = read(Fixtures.texts(Fixtures.BOOKS.resolve("good/names-from-everywhere")));

        assertThat(book.students()).extracting(Student::id)
                .containsExactly("zoe", "zoe-park", "child-3", "child-4");
    }

    @Test
    void madeIdNeverTakesOneThatWasGiven() {
        Book book = read(Map.of("family.json", "{\"hearthrule\": 1, \"students\": [{\"name\": \"Sam Rowe\"}],"
                + " \"persons\": [{\"id\": \"sam\", \"name\": \"Samuel\"}]}",
                "2026-27.json", Fixtures.year("2026-27", "\"log\": [{\"date\": \"2026-09-01\", \"students\":"
                        + " [\"sam-rowe\"]}, {\"id\": \"log-1\", \"date\": \"2026-09-02\", \"students\":"
                        + " [\"sam-rowe\"]}]")));

        assertThat(book.students().get(0).id()).isEqualTo("sam-rowe");
        assertThat(book.years().get("2026-27").log()).extracting(YearRecords.LogEntry::id)
                .containsExactly("log-1-2", "log-1");
    }

    @Test
    void scoreKeepsItsDigits() {
        Book book = read(Fixtures.texts(Fixtures.BOOKS.resolve("good/papers-outside-the-year")));

        assertThat(book.years().get("2026-27").tests().get(0).scores().get(0).value())
                .isEqualTo(new BigDecimal("6.50"));
    }

    @Test
    void warningsLeaveABook() {
        // when
        Optional<Book> book = BookReader.read(
                Fixtures.texts(Fixtures.BOOKS.resolve("bad/entry-outside-the-year")), problems);

        // then
        assertThat(Fixtures.codes(problems)).containsExactly("OUTSIDE-YEAR", "OUTSIDE-YEAR");
        assertThat(book.orElseThrow().years().get("2026-27").log()).hasSize(4);
    }

    @Test
    void errorsOfOtherFilesDoNotSpoilTheBook() {
        // given
        problems.error(new Place("us-xx.yaml", 1, 1), "UNKNOWN-KEY", "x", "y", null);

        // then
        assertThat(BookReader.read(Fixtures.ANNOTATED, problems)).isPresent();
    }

    @Test
    void nobodyIsCalledUnknownWhenTheFamilyFileIsBroken() {
        BookReader.read(Map.of("family.json", "{\"hearthrule\": 1,", "2026-27.json",
                Fixtures.year("2026-27", "\"grades\": {\"ada\": \"6\"}")), problems);

        assertThat(Fixtures.codes(problems)).containsExactly("CUT-SHORT");
    }

    @Test
    void newerFamilyFileIsTheOnlyProblem() {
        BookReader.read(Map.of("family.json", "{\"hearthrule\": 9, \"children\": 3}", "2026-27.json", "{"), problems);

        assertThat(Fixtures.codes(problems)).containsExactly("NEWER-VERSION");
    }

    @Test
    void shownNamesBeginWithTheFolderAsTyped(@TempDir Path temp) throws IOException {
        // given
        Path folder = Files.createDirectories(temp.resolve("book"));
        Files.writeString(folder.resolve("family.json"), "{}");
        Path typed = folder.resolve("..").resolve("book");

        // when
        BookReader.read(typed, problems);

        // then
        assertThat(problems.all()).extracting(problem -> problem.place().file())
                .containsOnly(typed.resolve("family.json").toString());
    }

    @Test
    void wayToTheFileInsteadOfTheFolderIsUnderstood(@TempDir Path temp) throws IOException {
        // given
        Path file = Files.writeString(temp.resolve("family.json"), Fixtures.family(""));

        // when
        Optional<Book> book = BookReader.read(file, problems);

        // then
        assertThat(book).isEmpty();
        assertThat(only().toText()).isEqualTo(file + ":1:1: error: [NOT-A-FOLDER] found a file, expected the folder of"
                + " a record book. Perhaps you meant the folder it lies in, " + temp + ".");
    }

    @Test
    void missingFolderIsSaidPlainly(@TempDir Path temp) {
        // given
        Path folder = temp.resolve("nowhere");

        // when
        BookReader.read(folder, problems);

        // then
        assertThat(only().toText()).isEqualTo(folder + ":1:1: error: [NOT-A-FOLDER] found nothing of that name,"
                + " expected the folder of a record book. Perhaps the name is mistyped, or the folder was moved.");
    }

    @Test
    void folderWithoutABookPointsToTheBookBelow(@TempDir Path temp) throws IOException {
        // given
        Path below = Files.createDirectories(temp.resolve("rowe"));
        Files.writeString(below.resolve("family.json"), Fixtures.family(""));

        // when
        BookReader.read(temp, problems);

        // then
        assertThat(only().perhaps()).isEqualTo("you meant the folder " + below);
    }

    @Test
    void otherEncodingIsRefused(@TempDir Path temp) throws IOException {
        // given
        Files.write(temp.resolve("family.json"), "{\"hearthrule\": 1, \"students\": [{\"name\": \"Zoë\"}]}"
                .getBytes(StandardCharsets.ISO_8859_1));

        // when
        BookReader.read(temp, problems);

        // then
        assertThat(Fixtures.codes(problems)).containsExactly("NOT-UTF-8");
    }

    private Book read(Map<String, String> files) {
        Optional<Book> book = BookReader.read(files, problems);
        assertThat(Fixtures.words(problems)).isEmpty();
        return book.orElseThrow();
    }

    private Problem only() {
        assertThat(problems.all()).hasSize(1);
        return problems.all().get(0);
    }

    private static LocalDate day(int year, int month, int day) {
        return LocalDate.of(year, month, day);
    }
}
