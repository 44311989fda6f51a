package org.hearthrule.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class YearLabelTest {

    @ParameterizedTest
    @ValueSource(strings = {"1999-00", "2026-27", "2008-09", "2009-10"})
    void labelIsReadAndWrittenAlike(String text) {
        assertThat(YearLabel.parse(text).orElseThrow()).hasToString(text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"2026-28", "2026-2027", "2026_27", "26-27", "", "2026-27 ", "٢٠٢٦-27"})
    void otherTextIsNoLabel(String text) {
        assertThat(YearLabel.parse(text)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"2026-06-30, 2025-26", "2026-07-01, 2026-27", "2027-06-30, 2026-27", "2000-01-01, 1999-00"})
    void yearTurnsOnTheFirstOfJuly(LocalDate day, String label) {
        YearLabel year = YearLabel.of(day);

        assertThat(year).hasToString(label);
        assertThat(day).isBetween(year.first(), year.last());
    }
}
