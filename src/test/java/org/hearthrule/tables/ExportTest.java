package org.hearthrule.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.hearthrule.input.Problems;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookReader;
import org.hearthrule.records.Snapshot;
import org.hearthrule.records.YearRecords.LogEntry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is taken out, read by other programs than the one that writes it. */
class ExportTest {

    private static final Path BOOKS = Path.of("test-fixtures", "books");

    /** The book that has something in every list and every field, each explained once. */
    private final Book book = read("annotated");

    @Test
    void everyListOfABookIsASheet() throws IOException {
        try (XSSFWorkbook workbook = workbook(book)) {
            List<String> names = new ArrayList<>();
            workbook.sheetIterator().forEachRemaining(sheet -> names.add(sheet.getSheetName()));

            assertThat(names).containsExactly("Log", "Readings", "Work samples", "Tests", "Test scores", "Evaluations",
                    "Filings", "Answers to filings", "Requests", "Health papers", "Documents", "Visits", "Children",
                    "Grades", "Earlier schools", "People", "Credentials", "Placements", "Events", "Choices", "Facts",
                    "Doubts answered", "Calendar");
        }
    }

    /** Every value that the annotated book holds must turn up somewhere: a column forgotten is data lost unseen. */
    @Test
    void everyTextOfTheBookStandsInSomeCell() throws IOException {
        // given
        String cells = String.join("\n", csv(book).values());
        List<String> texts = new ArrayList<>();
        JsonNode json = new ObjectMapper().readTree(json(book, ExportChoice.ALL));
        collectTexts(json, texts);

        // then
        assertThat(texts).hasSizeGreaterThan(100);
        assertThat(texts).filteredOn(text -> !cells.contains(text.replace("\"", "\"\""))
                && !cells.contains(text.replace('-', ' ')) && !cells.contains(text.replace('T', ' '))).isEmpty();
    }

    /** Ids stand as names in the tables, and the family's own name has no list. */
    private void collectTexts(JsonNode node, List<String> texts) {
        List<String> ids = new ArrayList<>(List.of("school", "parent"));
        book.students().forEach(student -> ids.add(student.id()));
        book.persons().forEach(person -> ids.add(person.id()));
        ids.addAll(org.hearthrule.terms.Subjects.ids());
        ids.add(book.familyName());
        collect(node, ids, texts);
    }

    private static void collect(JsonNode node, List<String> except, List<String> texts) {
        if (node.isTextual() && !except.contains(node.asText())) {
            texts.add(node.asText());
        } else if (node.isNumber() && !node.isInt()) {
            texts.add(node.asText());
        }
        node.forEach(child -> collect(child, except, texts));
    }

    @Test
    void daysAreDaysAndNumbersAreNumbersToAnotherReader() throws IOException {
        // given
        Book one = read("tennick-landing");
        LogEntry entry = one.years().get("2025-26").log().get(1);

        // when
        try (XSSFWorkbook workbook = workbook(one)) {
            Row row = workbook.getSheet("Log").getRow(one.years().get("2024-25").log().size() + 2);

            // then
            assertThat(row.getCell(0).getLocalDateTimeCellValue().toLocalDate()).isEqualTo(entry.date());
            assertThat(DateUtil.isCellDateFormatted(row.getCell(0))).isTrue();
            assertThat(row.getCell(1).getNumericCellValue()).isEqualTo(entry.minutes());
            assertThat(row.getCell(2).getStringCellValue()).isEqualTo("Marit Kestler");
            assertThat(row.getCell(4).getStringCellValue()).isEqualTo(entry.did());
            assertThat(row.getCell(9).getLocalDateTimeCellValue()).isEqualTo(entry.written());
        }
    }

    @Test
    void headersStayInSightAndColumnsAreWideEnoughForThem() throws IOException {
        try (XSSFWorkbook workbook = workbook(book)) {
            workbook.sheetIterator().forEachRemaining(one -> {
                XSSFSheet sheet = (XSSFSheet) one;
                assertThat(sheet.getPaneInformation().getHorizontalSplitPosition()).isEqualTo((short) 1);
                sheet.getRow(0).forEach(cell -> assertThat(sheet.getColumnWidth(cell.getColumnIndex()) / 256)
                        .isBetween(cell.getStringCellValue().length(), 60));
            });
        }
    }

    /** RFC 4180, section 2: lines end with CR LF, and every line has the same number of fields. */
    @Test
    void tablesOfTextAreWhatAnotherReaderTakesForCsv() throws IOException {
        for (Map.Entry<String, String> file : csv(book).entrySet()) {
            assertThat(file.getValue()).startsWith("\uFEFF").endsWith("\r\n");
            List<CSVRecord> rows = parse(file.getValue());
            assertThat(rows).as(file.getKey()).hasSizeGreaterThan(1).allMatch(row -> row.size() == rows.get(0).size());
        }
    }

    @Test
    void bothFormsOfTablesSayTheSame() throws IOException {
        Map<String, String> files = csv(book);
        try (XSSFWorkbook workbook = workbook(book)) {
            assertThat(files).hasSize(workbook.getNumberOfSheets());
            int number = 0;
            for (ListTable list : BookLists.of(book)) {
                List<CSVRecord> rows = parse(files.get(list.name() + ".csv"));
                XSSFSheet sheet = workbook.getSheetAt(number++);
                assertThat(rows).hasSize(sheet.getLastRowNum() + 1);
                for (int i = 0; i < rows.size(); i++) {
                    assertThat(texts(sheet.getRow(i), rows.get(i).size())).isEqualTo(rows.get(i).toList());
                }
            }
        }
    }

    private static List<String> texts(Row row, int columns) {
        List<String> texts = new ArrayList<>();
        for (int i = 0; i < columns; i++) {
            org.apache.poi.ss.usermodel.Cell cell = row.getCell(i);
            boolean number = cell != null && cell.getCellType() == CellType.NUMERIC;
            if (number && DateUtil.isCellDateFormatted(cell)) {
                LocalDateTime time = cell.getLocalDateTimeCellValue();
                boolean day = cell.getCellStyle().getDataFormatString().equals("yyyy-mm-dd");
                texts.add(day ? time.toLocalDate().toString() : time.toString().replace('T', ' '));
            } else {
                texts.add(cell == null ? "" : number ? new BigDecimal(String.valueOf(cell.getNumericCellValue()))
                        .stripTrailingZeros().toPlainString() : cell.getStringCellValue());
            }
        }
        return texts;
    }

    @ParameterizedTest
    @EnumSource(ExportFormat.class)
    void sameBookGivesTheSameBytes(ExportFormat format) throws Exception {
        byte[] once = bytes(book, ExportChoice.ALL, format);
        Thread.sleep(1_100);

        assertThat(bytes(read("annotated"), ExportChoice.ALL, format)).isEqualTo(once);
    }

    @ParameterizedTest
    @ValueSource(strings = {"annotated", "tennick-landing"})
    void documentFitsItsSchemaAndIsTheBookAgain(String name) throws IOException {
        // given
        Book whole = read(name);
        String json = json(whole, ExportChoice.ALL);

        // then
        assertThat(schema().validate(json, InputFormat.JSON)).isEmpty();
        assertThat(BookReader.read(files(json), new Problems()).orElseThrow()).isEqualTo(
                new Book(null, whole.familyName(), whole.students(), whole.persons(), whole.placements(), whole.events(),
                        whole.facts(), whole.answers(), whole.years()));
    }

    @Test
    void schemaOfTheDocumentRefusesWhatIsNoBook() {
        assertThat(schema().validate("{\"hearthrule\": 1, \"family\": {\"hearthrule\": 1}, \"years\": [{}]}", InputFormat.JSON))
                .extracting(error -> error.getInstanceLocation().toString()).contains("/family", "/years/0");
    }

    /** The schema of the document points to the two others by the names of their files. */
    private static Schema schema() {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_7, builder -> builder.schemas(address -> {
            try {
                return Files.readString(Path.of("shared", "schema", address.substring(address.lastIndexOf('/') + 1)));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        })).getSchema(SchemaLocation.of("https://schemas.invalid/book.schema.json"));
    }

    @Test
    void partOfOneChildNamesNoOther() throws IOException {
        // when
        Book part = BookReader.read(files(json(read("tennick-landing"), new ExportChoice(List.of("wren"), null, null))),
                new Problems()).orElseThrow();

        // then
        assertThat(part.students()).extracting(one -> one.id()).containsExactly("wren");
        assertThat(part.years().get("2025-26").log()).isNotEmpty()
                .allSatisfy(entry -> assertThat(entry.students()).containsExactly("wren"));
        assertThat(part.years().get("2025-26").samples()).isNotEmpty().allMatch(sample -> sample.student().equals("wren"));
        assertThat(part.placements()).hasSize(1);
        assertThat(part.facts()).filteredOn(fact -> fact.about() != null).hasSize(1);
    }

    @Test
    void partOfSomeDaysHasOnlyThose() throws IOException {
        // given
        LocalDate from = LocalDate.of(2026, 1, 1);
        LocalDate to = LocalDate.of(2026, 1, 31);

        // when
        Book part = BookReader.read(files(json(read("tennick-landing"), new ExportChoice(List.of(), from, to))),
                new Problems()).orElseThrow();

        // then
        assertThat(part.years()).containsOnlyKeys("2025-26");
        assertThat(part.years().get("2025-26").log()).isNotEmpty()
                .allMatch(entry -> !entry.date().isBefore(from) && !entry.date().isAfter(to));
        assertThat(part.years().get("2025-26").readings()).isNotEmpty().allMatch(reading ->
                (reading.started() == null || !reading.started().isAfter(to))
                        && (reading.finished() == null || !reading.finished().isBefore(from)));
        assertThat(part.events()).isEmpty();
        assertThat(part.placements()).hasSize(3);
        assertThat(part.students()).hasSize(3);
    }

    @Test
    void emptyBookIsStillASpreadsheet() throws IOException {
        Book nothing = Snapshot.nothing().book();

        try (XSSFWorkbook workbook = workbook(nothing)) {
            assertThat(workbook.getNumberOfSheets()).isEqualTo(1);
        }
        assertThat(csv(nothing)).isEmpty();
    }

    /** Signs and their guard from OWASP's page on CSV injection, and a few that must stay as they are. */
    @Test
    void whatASpreadsheetProgramWouldRunIsGuardedAndComesBack() throws IOException {
        // given
        List<String> texts = List.of("=1+2\";=1+2", "=1+2'\" ;,=1+2", "+1", "-5 degrees", "@SUM(A1)", " =1", "'=1", "''@x",
                "'quoted'", "'", "plain");

        // when
        List<String> written = texts.stream().map(CsvGuard::given).toList();

        // then
        assertThat(written).containsExactly("'=1+2\";=1+2", "'=1+2'\" ;,=1+2", "'+1", "'-5 degrees", "'@SUM(A1)", "' =1",
                "''=1", "'''@x", "'quoted'", "'", "plain");
        assertThat(written.stream().map(CsvGuard::taken)).containsExactlyElementsOf(texts);
    }

    @Test
    void noCellOfTextBeginsWithASignThatRuns() throws IOException {
        // given
        Book dangerous = dangerous();

        // then
        for (CSVRecord row : parse(csv(dangerous).get("log.csv"))) {
            assertThat(row.toList()).noneMatch(cell -> !cell.isEmpty() && "=+-@\t\r\n".indexOf(cell.charAt(0)) >= 0);
        }
        try (XSSFWorkbook workbook = workbook(dangerous)) {
            workbook.getSheet("Log").forEach(row -> row.forEach(cell ->
                    assertThat(cell.getCellType()).isNotEqualTo(CellType.FORMULA)));
            assertThat(workbook.getSheet("Log").getRow(1).getCell(4).getStringCellValue()).isEqualTo("=1+1");
        }
    }

    static Book dangerous() {
        StringBuilder log = new StringBuilder();
        List<String> texts = List.of("=1+1", "+1", "-5 degrees outside", "@home", "'=1", "_x0041_ and _x000D_", "a \\\"quoted\\\" word",
                "one\\ntwo", "comma, semicolon; and tab");
        for (String text : texts) {
            log.append(log.length() == 0 ? "" : ", ").append("{\"date\": \"2026-09-01\", \"students\": [\"ada\"], \"did\": \"")
                    .append(text).append("\", \"materials\": [\"=x; y\", \"-\", \"\\\"a;b\\\"\"], \"place\": \"@home\"}");
        }
        return BookReader.read(Map.of("family.json", TableBooks.FAMILY, "2026-27.json",
                "{\"hearthrule\": 1, \"year\": \"2026-27\", \"log\": [" + log + "]}"), new Problems()).orElseThrow();
    }

    static byte[] bytes(Book book, ExportChoice choice, ExportFormat format) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        Export.write(book, choice, format, bytes);
        return bytes.toByteArray();
    }

    private static XSSFWorkbook workbook(Book book) throws IOException {
        return new XSSFWorkbook(new ByteArrayInputStream(bytes(book, ExportChoice.ALL, ExportFormat.XLSX)));
    }

    static Map<String, String> csv(Book book) throws IOException {
        Map<String, String> files = new TreeMap<>();
        Sheets.parts(bytes(book, ExportChoice.ALL, ExportFormat.CSV))
                .forEach((name, content) -> files.put(name, new String(content, StandardCharsets.UTF_8)));
        return files;
    }

    private static List<CSVRecord> parse(String text) throws IOException {
        try (CSVParser parser = CSVFormat.RFC4180.parse(new StringReader(text.substring(1)))) {
            return parser.getRecords();
        }
    }

    private static String json(Book book, ExportChoice choice) throws IOException {
        return new String(bytes(book, choice, ExportFormat.JSON), StandardCharsets.UTF_8);
    }

    /** Takes the document apart into the files of a book. */
    private static Map<String, String> files(String json) throws IOException {
        JsonNode root = new ObjectMapper().readTree(json);
        Map<String, String> files = new TreeMap<>(Map.ofEntries(entry("family.json", root.get("family").toString())));
        root.get("years").forEach(year -> files.put(year.get("year").asText() + ".json", year.toString()));
        return files;
    }

    private static Book read(String name) {
        return BookReader.read(BOOKS.resolve(name), new Problems()).orElseThrow();
    }
}
