package org.hearthrule.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;
import static org.hearthrule.tables.Sheets.row;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFRichTextString;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.hearthrule.input.Problem;
import org.hearthrule.input.Severity;
import org.hearthrule.tables.Sheets.Formatted;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class XlsxReadingTest {

    private static final Object[] HEADERS = row("Date", "Minutes", "What we did");

    @Test
    void cellsHaveTheirValuesAndPlaces() {
        // when
        Table table = table(Sheets.sheet("Our log", HEADERS,
                row(LocalDate.of(2026, 9, 1), 45, " Took turns reading, then\nslept "),
                row(LocalDateTime.of(2026, 9, 2, 20, 15), 1.5, true)));

        // then
        assertThat(table.headers()).extracting(Cell::text).containsExactly("Date", "Minutes", "What we did");
        assertThat(values(table, 0)).containsExactly(new CellValue.Moment(LocalDateTime.of(2026, 9, 1, 0, 0)),
                new CellValue.Figure(new BigDecimal("45")), new CellValue.Text("Took turns reading, then\nslept"));
        assertThat(values(table, 1)).containsExactly(new CellValue.Moment(LocalDateTime.of(2026, 9, 2, 20, 15)),
                new CellValue.Figure(new BigDecimal("1.5")), new CellValue.Text("yes"));
        assertThat(table.rows().get(1).cell(2).place()).hasToString("log.xlsx:'Our log'!C3");
        assertThat(table.rows().get(1).place(4)).hasToString("log.xlsx:'Our log'!E3");
        assertThat(table.layout()).isEqualTo(new Layout.Sheet("Our log", 0));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "0.0625      | h:mm          | 90",
        "0.03125     | [h]:mm        | 45",
        "1.0625      | [hh]:mm:ss    | 1530",
        "0.041666666666666664 | [mm] | 60",
        "0.0625      | h\"h \"mm\"m\" | 90"
    })
    void spansOfTimeAreMinutes(double value, String format, int minutes) {
        Table table = table(Sheets.sheet("Log", HEADERS, row("2026-09-01", new Formatted(value, format), "Kite")));

        CellValue.Span span = (CellValue.Span) table.rows().get(0).cell(1).value();

        assertThat(span.minutes().doubleValue()).isCloseTo(minutes, within(0.001));
        assertThat(span.isOfDay()).isFalse();
    }

    @Test
    void timeOfDayIsToldFromASpan() {
        Table table = table(Sheets.sheet("Log", HEADERS, row("2026-09-01", new Formatted(0.0625, "h:mm AM/PM"), "Kite")));

        assertThat(((CellValue.Span) table.rows().get(0).cell(1).value()).isOfDay()).isTrue();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"yyyy-mm-dd", "d-mmm-yy", "[$-409]mmmm d, yyyy;@", "dddd", "mmm", "dd.mm.yyyy hh:mm"})
    void formatsOfDaysMakeDays(String format) {
        Table table = table(Sheets.sheet("Log", HEADERS, row(new Formatted(46266, format), 30, "Kite")));

        // 46266 is 2026-09-01: 2024-01-01 is 45292 in ECMA-376 part 1, 18.17.4.1, counted on by hand
        assertThat(table.rows().get(0).cell(0).text()).isEqualTo("2026-09-01");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"General", "0.00", "#,##0", "\"days\" 0", "0.0%", "[Red]0", "0\\d"})
    void otherFormatsMakeNumbers(String format) {
        Table table = table(Sheets.sheet("Log", HEADERS, row(new Formatted(46266, format), 30, "Kite")));

        assertThat(table.rows().get(0).cell(0).value()).isEqualTo(new CellValue.Figure(new BigDecimal("46266")));
    }

    @Test
    void daysCountedFrom1904AreTheSameDays() {
        // given
        byte[] bytes = Sheets.workbook(book -> {
            book.getCTWorkbook().addNewWorkbookPr().setDate1904(true);
            Sheets.fill(book.createSheet("Log"), HEADERS, row(new Formatted(44804, "yyyy-mm-dd"), 30, "Kite"));
        });

        // then: 1,462 days less than with days counted from 1900
        assertThat(table(bytes).rows().get(0).cell(0).text()).isEqualTo("2026-09-01");
    }

    @Test
    void formulasAreWhatTheyCameTo() {
        // given
        byte[] bytes = Sheets.workbook(book -> {
            XSSFSheet sheet = book.createSheet("Log");
            Sheets.fill(sheet, HEADERS, row("=DATE(2026,9,1)", "=20+25", "=\"Kite\"&\" again\""));
            sheet.getRow(1).getCell(0).setCellStyle(book.createCellStyle());
            sheet.getRow(1).getCell(0).getCellStyle().setDataFormat((short) 14);
            FormulaEvaluator evaluator = book.getCreationHelper().createFormulaEvaluator();
            sheet.getRow(1).forEach(evaluator::evaluateFormulaCell);
        });

        // then
        assertThat(values(table(bytes), 0)).containsExactly(new CellValue.Moment(LocalDateTime.of(2026, 9, 1, 0, 0)),
                new CellValue.Figure(new BigDecimal("45")), new CellValue.Text("Kite again"));
    }

    @Test
    void formulaWithoutAResultAndFormulaInErrorAreFaults() {
        // given
        byte[] bytes = Sheets.workbook(book -> {
            XSSFSheet sheet = book.createSheet("Log");
            Sheets.fill(sheet, HEADERS, row("2026-09-01", "=1/0", "=A2"));
            book.getCreationHelper().createFormulaEvaluator().evaluateFormulaCell(sheet.getRow(1).getCell(1));
        });

        // then
        assertThat(values(table(bytes), 0)).extracting(CellValue::shown)
                .containsExactly("2026-09-01", "#DIV/0!", "a formula that was never computed");
        assertThat(values(table(bytes), 0)).last().isInstanceOf(CellValue.Fault.class);
    }

    @Test
    void blankRowsAreLeftOutAndTitlesPassedOver() {
        // when
        Table table = table(Sheets.sheet("Log", row("Our year at the landing"), row(), row("", "Date", "Minutes"),
                row(" ", "\u00A0"), row(null, "2026-09-01", 30), row(), row(null, "2026-09-02", 20, "no header")));

        // then
        assertThat(table.names()).containsExactly("column A", "Date", "Minutes", "column D");
        assertThat(table.rows()).extracting(row -> row.place().line()).containsExactly(5, 7);
    }

    @Test
    void formattedTextIsText() {
        byte[] bytes = Sheets.workbook(book -> {
            XSSFSheet sheet = book.createSheet("Log");
            Sheets.fill(sheet, HEADERS, row("2026-09-01", 30, ""));
            XSSFRichTextString text = new XSSFRichTextString("Kite and string");
            text.applyFont(0, 4, book.createFont());
            sheet.getRow(1).createCell(2).setCellValue(text);
        });

        assertThat(table(bytes).rows().get(0).cell(2).text()).isEqualTo("Kite and string");
    }

    @Test
    void hiddenRowsAreReadAndTold() {
        // given
        byte[] bytes = Sheets.workbook(book -> {
            XSSFSheet sheet = book.createSheet("Log");
            Sheets.fill(sheet, HEADERS, row("2026-09-01", 30, "Kite"), row("2026-09-02", 30, "String"));
            sheet.getRow(2).setZeroHeight(true);
        });

        // when
        TableFile file = read(bytes, null);

        // then
        assertThat(file.table().orElseThrow().rows()).hasSize(2);
        assertThat(file.table().orElseThrow().layout()).isEqualTo(new Layout.Sheet("Log", 1));
        assertThat(file.problems()).extracting(Problem::severity, problem -> problem.place().toString(), Problem::found)
                .containsExactly(tuple(Severity.WARNING, "log.xlsx:Log!A3", "a hidden row, 3"));
    }

    @Test
    void firstVisibleSheetWithHeadersIsTaken() {
        // given
        byte[] bytes = threeSheets();

        // when
        TableFile file = read(bytes, null);

        // then
        assertThat(file.sheets()).containsExactly(new TableSheet("Old", true), new TableSheet("Notes", false),
                new TableSheet("September", false), new TableSheet("October", false));
        assertThat(file.table().orElseThrow().layout()).isEqualTo(new Layout.Sheet("September", 0));
        assertThat(file.problems()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"October, October", "october, October", "Old, Old"})
    void anySheetCanBeAskedFor(String asked, String taken) {
        TableFile file = read(threeSheets(), asked);

        assertThat(file.table().orElseThrow().layout()).isEqualTo(new Layout.Sheet(taken, 0));
    }

    @Test
    void sheetThatIsNotThereIsRefusedWithTheNearest() {
        assertThat(words(read(threeSheets(), "Ocotber"))).containsExactly("log.xlsx:1:1: error: [UNKNOWN-SHEET] found"
                + " no sheet \"Ocotber\", expected Old, Notes, September or October. Perhaps you meant \"October\".");
    }

    @Test
    void tableAsTextHasNoSheets() {
        TableFile file = TableFile.read("log.csv", "date,notes\n2026-09-01,Kite\n".getBytes(), TableFile.Choice.ofSheet("Log"));

        assertThat(file.problems()).extracting(Problem::code).containsExactly("UNKNOWN-SHEET");
    }

    @Test
    void emptySheetIsRefused() {
        assertThat(read(Sheets.sheet("Log"), null).problems()).extracting(Problem::code, problem -> problem.place().toString())
                .containsExactly(tuple("EMPTY-TABLE", "log.xlsx:Log!A1"));
    }

    private static byte[] threeSheets() {
        return Sheets.workbook(book -> {
            Sheets.fill(book.createSheet("Old"), HEADERS, row("2025-09-01", 30, "Kite"));
            Sheets.fill(book.createSheet("Notes"), row("Bought string"), row("Lost string"));
            Sheets.fill(book.createSheet("September"), HEADERS, row("2026-09-01", 30, "Kite"));
            Sheets.fill(book.createSheet("October"), HEADERS, row("2026-10-01", 30, "Kite"));
            book.setSheetHidden(0, true);
        });
    }

    private static TableFile read(byte[] bytes, String sheet) {
        return TableFile.read("log.xlsx", bytes, TableFile.Choice.ofSheet(sheet));
    }

    private static Table table(byte[] bytes) {
        TableFile file = read(bytes, null);
        assertThat(file.problems()).isEmpty();
        return file.table().orElseThrow();
    }

    private static List<CellValue> values(Table table, int row) {
        List<CellValue> values = new ArrayList<>();
        for (int i = 0; i < table.headers().size(); i++) {
            Cell cell = table.rows().get(row).cell(i);
            values.add(cell == null ? null : cell.value());
        }
        return values;
    }

    private static List<String> words(TableFile file) {
        return file.problems().stream().map(Problem::toText).toList();
    }
}
