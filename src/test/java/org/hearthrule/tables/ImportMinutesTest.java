package org.hearthrule.tables;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import org.hearthrule.input.Place;
import org.hearthrule.input.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ImportMinutesTest {

    private final Problems problems = new Problems();

    @ParameterizedTest
    @CsvSource({"90, 90", "0, 0", "1440, 1440", "1:30, 90", "0:05, 5", "24:00, 1440", "1.5 h, 90", "1.5h, 90",
        "2h, 120", "0.25 h, 15"})
    void threeWaysAreRead(String text, int minutes) {
        assertThat(read(text, "Time")).isEqualTo(minutes);
        assertThat(problems.isEmpty()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"1.5", "90 min", "1,5 h", "1:75", "1:5", "-30", "0.33 h", "1h30", "ninety", "1.5 H", "١٢",
        "9999999999"})
    void nothingElseIsRead(String text) {
        read(text, "Time");

        assertThat(TableBooks.codes(problems)).containsExactly("WRONG-MINUTES");
    }

    @ParameterizedTest
    @ValueSource(strings = {"1441", "24:01", "25 h"})
    void dayHasNoMoreThanItsHours(String text) {
        read(text, "Time");

        assertThat(TableBooks.codes(problems)).containsExactly("OUT-OF-RANGE");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Hours", "Time (hrs)", "h"})
    void bareNumberUnderAHeaderOfHoursIsNotTakenForMinutes(String header) {
        read("2", header);

        assertThat(problems.all().get(0).perhaps()).isEqualTo("write \"2 h\"");
    }

    @ParameterizedTest
    @CsvSource(nullValues = "-", value = {"1.5, write \"1.5 h\"", "90 min, write \"90\"", "'1,5 h', write \"90\"",
        "2 hours, write \"120\"", "0.33 h, write the minutes", "ninety, -"})
    void likelyMeaningIsSaidButNotTaken(String text, String perhaps) {
        assertThat(read(text, "Time")).isZero();
        assertThat(problems.all().get(0).perhaps()).isEqualTo(perhaps);
    }

    @ParameterizedTest
    @CsvSource({"2, 120", "1.5, 90", "0.25, 15", "1:30, 90", "1.5 h, 90", "24, 1440", "1.6666666666667, 100"})
    void bareNumberIsHoursWhereSomebodySaidSo(String text, int minutes) {
        assertThat(read(new CellValue.Text(text), "Hours", true)).isEqualTo(minutes);
        assertThat(problems.isEmpty()).isTrue();
    }

    @Test
    void bareNumberUnderAHeaderOfHoursIsMinutesWhereSomebodySaidSo() {
        assertThat(read(new CellValue.Text("90"), "Hours", false)).isEqualTo(90);
    }

    @ParameterizedTest
    @CsvSource({"90, OUT-OF-RANGE", "0.33, WRONG-MINUTES"})
    void hoursMustBeWholeMinutesOfADay(String text, String code) {
        read(new CellValue.Text(text), "Hours", true);

        assertThat(TableBooks.codes(problems)).containsExactly(code);
    }

    /** 45 minutes are 0.03125 of a day, 50 are 0.034722…: what a spreadsheet keeps of it misses the minute by a hair. */
    @ParameterizedTest
    @CsvSource({"45, 45", "50.0000000000000064, 50", "99.99999999999999, 100"})
    void spanOfASpreadsheetIsItsMinutes(BigDecimal span, int minutes) {
        assertThat(read(new CellValue.Span(span, false), "Hours", null)).isEqualTo(minutes);
        assertThat(problems.isEmpty()).isTrue();
    }

    @Test
    void spanWithSecondsIsRefused() {
        read(new CellValue.Span(new BigDecimal("45.5"), false), "Time", null);

        assertThat(problems.all().get(0).found()).isEqualTo("\"0:45:30\"");
    }

    @Test
    void timeOfDayIsNoSpan() {
        read(new CellValue.Span(new BigDecimal("90"), true), "Time", null);

        assertThat(problems.all().get(0).perhaps()).isEqualTo("it is a time of day: format the column as [h]:mm");
    }

    @Test
    void dayIsNoSpan() {
        read(new CellValue.Moment(LocalDateTime.of(2026, 9, 1, 0, 0)), "Time", null);

        assertThat(TableBooks.codes(problems)).containsExactly("WRONG-MINUTES");
    }

    private int read(String text, String header) {
        return read(new CellValue.Text(text), header, null);
    }

    private int read(CellValue value, String header, Boolean hours) {
        return ImportMinutes.read(new Cell(new Place("log.csv", 2, 1), value), header, hours, problems);
    }
}
