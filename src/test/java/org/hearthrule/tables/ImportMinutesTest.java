package org.hearthrule.tables;

import static org.assertj.core.api.Assertions.assertThat;

import org.hearthrule.input.Place;
import org.hearthrule.input.Problems;
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

    private int read(String text, String header) {
        return ImportMinutes.read(new CsvTable.Cell(new Place("log.csv", 2, 1), text), header, problems);
    }
}
