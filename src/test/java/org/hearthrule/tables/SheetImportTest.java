package org.hearthrule.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.hearthrule.tables.Sheets.row;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.hearthrule.input.Problem;
import org.hearthrule.records.YearRecords.LogEntry;
import org.hearthrule.tables.Sheets.Formatted;
import org.junit.jupiter.api.Test;

/** A log from a spreadsheet: what it knows of days, times and numbers is used. */
class SheetImportTest {

    private static final Object[] HEADERS = row("Date", "Time", "Child", "Notes");
    private static final LocalDate DAY = LocalDate.of(2026, 9, 1);

    @Test
    void daysAndSpansAreTakenAsWhatTheyAre() {
        // when
        ImportPreview<LogEntry> preview = preview(row(DAY, 45, "Ada", "Kite"),
                row(DAY.plusDays(1), new Formatted(0.0625, "h:mm"), "Ben", 1984), row(DAY.plusDays(2), "1.5 h", "Ada & Ben", DAY));

        // then
        assertThat(preview.problems()).isEmpty();
        assertThat(preview.toAdd().get("2026-27")).extracting(LogEntry::date, LogEntry::minutes, LogEntry::did).containsExactly(
                tuple(DAY, 45, "Kite"), tuple(DAY.plusDays(1), 90, "1984"), tuple(DAY.plusDays(2), 90, "2026-09-01"));
    }

    @Test
    void formOfDatesIsNoQuestionWhereAllAreDays() {
        ImportPreview<LogEntry> preview = preview(row(DAY, 45, "Ada", "Kite"));

        assertThat(preview.dateForm()).isNull();
        assertThat(preview.dateFormGuessed()).isFalse();
        assertThat(preview.hasErrors()).isFalse();
    }

    @Test
    void daysAndDatesAsTextMayStandInOneColumn() {
        ImportPreview<LogEntry> preview = preview(row(DAY, 45, "Ada", "Kite"), row("9/13/2026", 45, "Ada", "Kite"));

        assertThat(preview.dateForm()).isEqualTo(DateForm.US);
        assertThat(preview.toAdd().get("2026-27")).extracting(LogEntry::date).containsExactly(DAY, LocalDate.of(2026, 9, 13));
    }

    @Test
    void everyProblemHasItsCell() {
        // when
        ImportPreview<LogEntry> preview = preview(row(46_266, 45, "Ada", "Kite"), row(DAY, new Formatted(0.0625, "h:mm AM/PM"),
                "Aida", "=A9"), row(null, 1.5, null, "Kite"));

        // then
        assertThat(preview.problems()).extracting(problem -> problem.place().toString(), Problem::code, Problem::perhaps)
                .containsExactly(
                        tuple("log.xlsx:Log!A2", "WRONG-DATE", "format the column as dates in the spreadsheet program"),
                        tuple("log.xlsx:Log!B3", "WRONG-MINUTES", "it is a time of day: format the column as [h]:mm"),
                        tuple("log.xlsx:Log!C3", "UNKNOWN-STUDENT", "you meant \"ada\""),
                        tuple("log.xlsx:Log!D3", "CELL-ERROR", "open the table in the spreadsheet program and save it again"),
                        tuple("log.xlsx:Log!A4", "MISSING-CELL", null),
                        tuple("log.xlsx:Log!B4", "WRONG-MINUTES", "write \"1.5 h\""),
                        tuple("log.xlsx:Log!C4", "MISSING-CELL", null));
    }

    @Test
    void faultInAColumnThatIsNotTakenOverIsNoMatter() {
        byte[] bytes = Sheets.sheet("Log", row("Date", "Child", "Weather"), row(DAY, "Ada", "=A9"));

        assertThat(preview(bytes).hasErrors()).isFalse();
    }

    @Test
    void repeatedRowIsToldByItsNumber() {
        ImportPreview<LogEntry> preview = preview(row(DAY, 45, "Ada", "Kite"), row(), row(DAY, "0:45", "ada", "Kite"));

        assertThat(preview.skipped()).extracting(row -> row.place().toString(), row -> row.skipped().words())
                .containsExactly(tuple("log.xlsx:Log!A4", "the same as row 2"));
    }

    @Test
    void cellsWithoutAHeaderAreAColumnOfTheirOwn() {
        ImportPreview<LogEntry> preview = preview(row(DAY, 45, "Ada", "Kite", null, "by the river"));

        assertThat(preview.headers()).containsExactly("Date", "Time", "Child", "Notes", "column E", "column F");
        assertThat(preview.unused()).containsExactly("column E", "column F");
        assertThat(preview.hasErrors()).isFalse();
    }

    private static ImportPreview<LogEntry> preview(Object[]... rows) {
        List<Object[]> all = new ArrayList<>(List.of(rows));
        all.add(0, HEADERS);
        return preview(Sheets.sheet("Log", all.toArray(Object[][]::new)));
    }

    private static ImportPreview<LogEntry> preview(byte[] bytes) {
        return TableBooks.preview("log.xlsx", bytes, TableBooks.ofTwo(), ImportOptions.NONE);
    }
}
