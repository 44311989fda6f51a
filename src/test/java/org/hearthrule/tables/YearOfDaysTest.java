package org.hearthrule.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.hearthrule.input.Problem;
import org.hearthrule.input.Problems;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookReader;
import org.hearthrule.records.YearRecords.LogEntry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The large table of a family, as the page meets it: first a guess, then what the parent says about it. */
class YearOfDaysTest {

    private static final Path TABLES = Path.of("test-fixtures", "tables");

    private final Book book = BookReader.read(Path.of("test-fixtures", "books", "tennick-landing"), new Problems()).orElseThrow();

    /** The files are what the generator writes; with -Drewrite-expected=true it writes them anew. */
    @Test
    void filesAreWhatTheGeneratorWrites() throws IOException {
        if (Boolean.getBoolean("rewrite-expected")) {
            Files.createDirectories(TABLES);
            Files.write(TABLES.resolve("year-of-days.csv"), YearOfDays.csv());
            Files.write(TABLES.resolve("year-of-days.xlsx"), YearOfDays.xlsx());
        }
        assertThat(TABLES.resolve("year-of-days.csv")).hasBinaryContent(YearOfDays.csv());
        // packed bytes differ from one library of compression to another; the parts do not
        assertThat(Sheets.parts(Files.readAllBytes(TABLES.resolve("year-of-days.xlsx"))))
                .usingRecursiveComparison().isEqualTo(Sheets.parts(YearOfDays.xlsx()));
    }

    @ParameterizedTest
    @CsvSource({"year-of-days.csv, year-of-days.csv:253:1", "year-of-days.xlsx, year-of-days.xlsx:'2026-27'!A253"})
    void firstLookFindsColumnsNamesAndTheDayThatIsNone(String name, String place) throws IOException {
        // when
        ImportPreview<LogEntry> preview = preview(name, ImportOptions.NONE);

        // then
        assertThat(preview.rows()).hasSize(YearOfDays.ROWS);
        assertThat(preview.columnNames()).containsOnlyKeys(ImportColumn.DATE, ImportColumn.MINUTES, ImportColumn.STUDENTS,
                ImportColumn.SUBJECTS, ImportColumn.DID);
        assertThat(preview.unused()).containsExactly("Weather");
        assertThat(preview.dateForm()).isEqualTo(DateForm.US);
        assertThat(preview.students()).filteredOn(use -> !use.known()).extracting(NameUse::written).containsExactly("Everybody");
        assertThat(preview.subjects()).filteredOn(use -> !use.known()).extracting(NameUse::written)
                .containsExactlyInAnyOrder("Math", "PE", "Nature Study", "Social Studies", "Astronomy");
        assertThat(preview.problems()).filteredOn(problem -> problem.code().equals("WRONG-DATE"))
                .extracting(problem -> problem.place().toString(), Problem::found)
                .containsExactly(tuple(place, "\"2/30/2027\""));
        assertThat(preview.hasErrors()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"year-of-days.csv", "year-of-days.xlsx"})
    void whatTheParentSaysSettlesIt(String name) throws Exception {
        // given
        ImportOptions said = ImportOptions.NONE.withDateForm(DateForm.US).withLeaveOut(true)
                .withChildren(Map.of("Everybody", List.of("wren", "ansel", "marit")))
                .withSubjects(Map.of("Math", List.of("mathematics"), "PE", List.of("physical-education"), "Nature Study",
                        List.of("life-science"), "Social Studies", List.of(), "Astronomy", List.of("earth-science")));

        // when
        ImportPreview<LogEntry> preview = preview(name, said);
        Book after = TableImport.apply(preview.accept());

        // then
        assertThat(preview.count()).isEqualTo(YearOfDays.ROWS - YearOfDays.TWICE - 1);
        assertThat(preview.skipped()).hasSize(YearOfDays.TWICE);
        assertThat(preview.wrong()).hasSize(1);
        assertThat(after.years().get("2026-27").log()).hasSize(394);
        assertThat(preview(name, after, said).count()).isZero();
    }

    @Test
    void bothFilesSayTheSame() throws IOException {
        assertThat(preview("year-of-days.xlsx", ImportOptions.NONE).rows()).extracting(ImportPreview.Row::record)
                .isEqualTo(preview("year-of-days.csv", ImportOptions.NONE).rows().stream().map(ImportPreview.Row::record).toList());
    }

    private ImportPreview<LogEntry> preview(String name, ImportOptions options) throws IOException {
        return preview(name, book, options);
    }

    private static ImportPreview<LogEntry> preview(String name, Book book, ImportOptions options) throws IOException {
        return TableBooks.preview(name, Files.readAllBytes(TABLES.resolve(name)), book, options);
    }
}
