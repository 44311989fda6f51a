package org.hearthrule.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import org.hearthrule.input.Problem;
import org.hearthrule.records.Book;
import org.hearthrule.records.YearRecords.Reading;
import org.junit.jupiter.api.Test;

class ReadingImportTest {

    private final Book book = TableBooks.ofTwo();

    @Test
    void rowsBecomeReadingsOfTheYearTheyWereFinishedIn() {
        // when
        ImportPreview<Reading> preview = preview("Book,Author,Started,Finished,Child,Subject,Idea\n"
                + "The Brass Weathercock,H. Vane,2026-06-20,2026-07-02,Ada & Ben,Literature,truth\n"
                + "Knots,,2026-06-01,,Ben,,\n", book, ImportOptions.NONE);

        // then
        assertThat(preview.problems()).isEmpty();
        assertThat(preview.toAdd()).containsOnly(
                entry("2025-26", List.of(new Reading("reading-1", List.of("ben"), "Knots", null, LocalDate.of(2026, 6, 1),
                        null, List.of(), null))),
                entry("2026-27", List.of(new Reading("reading-1", List.of("ada", "ben"), "The Brass Weathercock", "H. Vane",
                        LocalDate.of(2026, 6, 20), LocalDate.of(2026, 7, 2), List.of("literature"), "truth"))));
    }

    @Test
    void readingWithoutADayNeedsASchoolYear() {
        String table = "title,child\nKnots,Ben\n";

        assertThat(preview(table, book, ImportOptions.NONE).problems()).extracting(Problem::code)
                .containsExactly("MISSING-DAY");
        assertThat(preview(table, book, ImportOptions.NONE.withYear("2026-27")).toAdd()).containsOnlyKeys("2026-27");
    }

    @Test
    void whatIsWrongIsToldWithItsPlace() {
        ImportPreview<Reading> preview = preview("title,child,started,finished\n,Ben,2026-06-01,\n"
                + "Knots,Ben,2026-06-03,2026-06-01\n", book, ImportOptions.NONE);

        assertThat(preview.problems()).extracting(problem -> problem.place().toString(), Problem::code)
                .containsExactly(tuple("t.csv:2:1", "MISSING-CELL"), tuple("t.csv:3:22", "BACKWARDS"));
    }

    @Test
    void tableWithoutTitlesIsNotGuessedAt() {
        assertThat(preview("date,child\n2026-09-01,Ben\n", book, ImportOptions.NONE).problems())
                .extracting(Problem::code, Problem::perhaps)
                .containsExactly(tuple("MISSING-COLUMN", "say title= and the header"));
    }

    @Test
    void sameReadingComesInOnce() throws Exception {
        // given
        String table = "title,author,child,finished\nKnots,A. Tar,Ben,2026-09-01\nknots ,a. tar,ben,2026-09-01\n"
                + "Knots,A. Tar,Ada,2026-09-01\n";
        ImportPreview<Reading> first = preview(table, book, ImportOptions.NONE);

        // when
        Book once = TableImport.apply(first.accept());
        ImportPreview<Reading> again = preview(table, once, ImportOptions.NONE);

        // then
        assertThat(first.skipped()).extracting(row -> row.skipped().words()).containsExactly("the same as line 2");
        assertThat(once.years().get("2026-27").readings()).hasSize(2);
        assertThat(again.count()).isZero();
        assertThat(again.skipped()).extracting(row -> row.skipped().words()).contains("already in the book as reading-2");
    }

    @Test
    void readingsWithoutADayComeLast() throws Exception {
        Book first = TableImport.apply(preview("title,child\nKnots,Ben\n", book, ImportOptions.NONE.withYear("2026-27")).accept());

        Book second = TableImport.apply(preview("title,child,finished\nSails,Ben,2026-09-01\n", first, ImportOptions.NONE).accept());

        assertThat(second.years().get("2026-27").readings()).extracting(Reading::title).containsExactly("Knots", "Sails");
    }

    private static ImportPreview<Reading> preview(String table, Book book, ImportOptions options) {
        return TableImport.preview(TableFile.read("t.csv", table.getBytes(StandardCharsets.UTF_8), TableFile.Choice.NONE),
                ListKind.READINGS, book, options);
    }
}
