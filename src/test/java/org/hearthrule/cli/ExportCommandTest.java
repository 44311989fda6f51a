package org.hearthrule.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ExportCommandTest {

    private static final String BOOK = "test-fixtures/books/tennick-landing";

    @TempDir
    private Path folder;

    private Run export(String format, Path out, String... more) {
        List<String> args = new ArrayList<>(List.of("export", BOOK, "--format", format, "--out", out.toString()));
        args.addAll(Arrays.asList(more));
        return Run.of(args.toArray(String[]::new));
    }

    @Test
    void writesASpreadsheetOfEverything() throws IOException {
        Path out = folder.resolve("book.xlsx");

        Run run = export("xlsx", out);

        assertThat(run.exit()).isZero();
        assertThat(run.out()).startsWith(out + " holds what the book says").contains("One sheet for each list");
        try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(out))) {
            // 60 entries of the first year, 668 of the second, and the headers
            assertThat(workbook.getSheet("Log").getPhysicalNumberOfRows()).isEqualTo(729);
        }
    }

    @Test
    void writesATableOfTextForEachList() throws IOException {
        Path out = folder.resolve("book.zip");

        Run run = export("csv", out);

        assertThat(run.out()).contains("One file of text for each list");
        try (ZipFile zip = new ZipFile(out.toFile())) {
            assertThat(zip.stream().map(ZipEntry::getName)).contains("log.csv", "readings.csv", "filings.csv", "children.csv");
        }
    }

    @Test
    void writesThePartOfOneChildAndAFewDays() throws IOException {
        Path out = folder.resolve("wren.json");

        Run run = export("json", out, "--student", "Wren", "--from", "2026-01-01", "--to", "2026-01-31");

        assertThat(run.out()).contains("holds the part of the book you asked for");
        JsonNode log = new ObjectMapper().readTree(out.toFile()).at("/years/0/log");
        Set<String> students = new TreeSet<>();
        Set<String> months = new TreeSet<>();
        log.forEach(entry -> {
            entry.get("students").forEach(id -> students.add(id.asText()));
            months.add(entry.get("date").asText().substring(0, 7));
        });
        assertThat(students).containsExactly("wren");
        assertThat(months).containsExactly("2026-01");
    }

    @Test
    void takesSeveralChildren() throws IOException {
        Path out = folder.resolve("two.json");

        export("json", out, "--student", "Wren", "--student", "Marit");

        assertThat(new ObjectMapper().readTree(out.toFile()).at("/family/students").findValuesAsText("id"))
                .containsExactly("wren", "marit");
    }

    @Test
    void changesNothingInTheBook() throws IOException {
        byte[] before = Files.readAllBytes(Path.of(BOOK, "2025-26.json"));

        export("xlsx", folder.resolve("book.xlsx"));

        assertThat(Path.of(BOOK, "2025-26.json")).hasBinaryContent(before);
    }

    @Test
    void saysEverythingThatIsWrongAtOnceAndWritesNothing() throws IOException {
        Run run = export("csv", folder.resolve("log.csv"), "--student", "Wrenn", "--from", "2026-02-01", "--to", "2026-01-01");

        assertThat(run.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(run.err()).contains("[WRONG-ENDING]", "since there is one file for each list", "log.zip",
                "[UNKNOWN-STUDENT]", "Perhaps you meant Wren Kestler", "[BACKWARDS]");
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).isEmpty();
        }
    }

    /** Written into its folder, a document named family.json would take the place of the book itself. */
    @Test
    void writesNoFileIntoTheBook() throws IOException {
        byte[] before = Files.readAllBytes(Path.of(BOOK, "family.json"));

        Run run = export("json", Path.of(BOOK, "family.json"));

        assertThat(run.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(run.err()).contains("[INSIDE-BOOK]");
        assertThat(Path.of(BOOK, "family.json")).hasBinaryContent(before);
    }

    @Test
    void asksForAFormatItKnows() {
        assertThat(export("xls", folder.resolve("book.xls")).err()).contains("Perhaps you meant", "xlsx");
        assertThat(Run.of("export", BOOK, "--out", "x.xlsx").exit()).isEqualTo(Exit.NOT_UNDERSTOOD);
    }
}
