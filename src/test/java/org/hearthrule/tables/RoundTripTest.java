package org.hearthrule.tables;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import org.hearthrule.input.Problems;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookReader;
import org.hearthrule.records.YearRecord;
import org.hearthrule.records.YearRecords.LogEntry;
import org.hearthrule.records.YearRecords.Reading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A list taken out and taken over again, into a book with the same people and nothing else, is the same list. */
class RoundTripTest {

    private final Book demo = BookReader.read(Path.of("test-fixtures", "books", "tennick-landing"), new Problems())
            .orElseThrow();

    /** The demo book holds one entry twice, as log-407 and log-408; that is found. */
    @ParameterizedTest
    @EnumSource(value = ExportFormat.class, names = {"CSV", "XLSX"})
    void logIsTheSameLog(ExportFormat format) throws Exception {
        ImportPreview<LogEntry> preview = again(demo, format, ListKind.LOG, "log", "Log");

        assertThat(preview.problems()).isEmpty();
        assertThat(preview.skipped()).extracting(row -> row.cells().get(11)).containsExactly("log-408");
        assertThat(preview.unused()).containsExactly("School year", "Id");
        assertThat(withoutIds(ListKind.LOG, TableImport.apply(preview.accept()))).hasSizeGreaterThan(700)
                .containsExactlyElementsOf(withoutIds(ListKind.LOG, demo).stream().distinct()
                        .sorted(Comparator.comparing(LogEntry::date)).toList());
    }

    @ParameterizedTest
    @EnumSource(value = ExportFormat.class, names = {"CSV", "XLSX"})
    void readingsAreTheSameReadings(ExportFormat format) throws Exception {
        ImportPreview<Reading> preview = again(demo, format, ListKind.READINGS, "readings", "Readings");

        assertThat(preview.problems()).isEmpty();
        assertThat(withoutIds(ListKind.READINGS, TableImport.apply(preview.accept())))
                .containsExactlyInAnyOrderElementsOf(withoutIds(ListKind.READINGS, demo)).hasSizeGreaterThan(70);
    }

    @ParameterizedTest
    @EnumSource(value = ExportFormat.class, names = {"CSV", "XLSX"})
    void dangerousAndOddTextsComeBackAsTheyWere(ExportFormat format) throws Exception {
        Book book = ExportTest.dangerous();

        ImportPreview<LogEntry> preview = again(book, format, ListKind.LOG, "log", "Log");

        assertThat(preview.problems()).isEmpty();
        assertThat(withoutIds(ListKind.LOG, TableImport.apply(preview.accept()))).hasSize(9)
                .isEqualTo(withoutIds(ListKind.LOG, book));
    }

    /** Two children of one name, and a name with a sign that parts names: by name they could not be told again. */
    @Test
    void childrenWhoseNamesDoNotLeadBackAreWrittenById() {
        Book book = TableBooks.of("{\"hearthrule\": 1, \"students\": [{\"id\": \"one\", \"name\": \"Sam Rowe\"}, {\"id\": \"two\","
                + " \"name\": \"Sam Rowe\"}, {\"id\": \"three\", \"name\": \"Rowe, Ida\"}, {\"id\": \"four\", \"name\": \"one\"},"
                + " {\"id\": \"five\", \"name\": \"Ben Rowe\"}]}");
        WrittenNames names = new WrittenNames(book);

        assertThat(names.students(List.of("one", "two", "three", "four", "five"))).isEqualTo("one; two; three; four; Ben Rowe");
    }

    @Test
    void everySubjectIsWrittenByANameThatLeadsBack() {
        WrittenNames names = new WrittenNames(demo);

        assertThat(org.hearthrule.terms.Subjects.ids()).allSatisfy(id ->
                assertThat(org.hearthrule.terms.SubjectNames.find(names.subjects(List.of(id)))).contains(id));
    }

    private static <T extends YearRecord> ImportPreview<T> again(Book book, ExportFormat format, ListKind<T> kind,
                                                                  String file, String sheet) throws Exception {
        byte[] table = format == ExportFormat.XLSX ? ExportTest.bytes(book, ExportChoice.ALL, format)
                : ExportTest.csv(book).get(file + ".csv").getBytes(StandardCharsets.UTF_8);
        TableFile read = TableFile.read("again", table, format == ExportFormat.XLSX ? TableFile.Choice.ofSheet(sheet)
                : TableFile.Choice.NONE);
        Book empty = new Book(null, null, book.students(), book.persons(), List.of(), List.of(), List.of(), List.of(),
                new TreeMap<>());
        return TableImport.preview(read, kind, empty, ImportOptions.NONE);
    }

    private static <T extends YearRecord> List<T> withoutIds(ListKind<T> kind, Book book) {
        return book.years().values().stream().flatMap(year -> kind.in(year).stream())
                .map(record -> kind.withId(record, "")).toList();
    }
}
