package org.hearthrule.tables;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DateFormTest {

    @ParameterizedTest
    @CsvSource({
        "uuuu-MM-dd, 2026-09-01, 2026-09-01",
        "MM/dd/uuuu, 09/01/2026, 2026-09-01",
        "dd/MM/uuuu, 09/01/2026, 2026-01-09",
        "dd.MM.uuuu, 29.02.2028, 2028-02-29",
        "M/d/uuuu, 9/1/2026, 2026-09-01",
        "M/d/uuuu, 12/31/2026, 2026-12-31",
        "M/d/uu, 9/1/26, 2026-09-01"
    })
    void dateInItsFormIsRead(String pattern, String text, LocalDate date) {
        DateForm form = DateForm.of(pattern).orElseThrow();

        assertThat(form.parse(text)).isEqualTo(date);
        assertThat(form.format(date)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({
        "uuuu-MM-dd, 2026-9-1",
        "uuuu-MM-dd, 2026-02-29",
        "uuuu-MM-dd, 2026-09-011",
        "uuuu-MM-dd, 2026-09-01T10:00",
        "uuuu-MM-dd, ٢٠٢٦-09-01",
        "MM/dd/uuuu, 9/1/2026",
        "MM/dd/uuuu, 13/01/2026",
        "MM/dd/uuuu, 09/01/26",
        "MM/dd/uuuu, 09-01-2026",
        "dd/MM/uuuu, 31/09/2026",
        "dd.MM.uuuu, 1.9.2026",
        "M/d/uuuu, 9/1/26",
        "M/d/uuuu, 009/1/2026",
        "M/d/uu, 9/1/2026",
        "M/d/uu, 9/1/",
        "M/d/uu, ''"
    })
    void everythingElseIsRefused(String pattern, String text) {
        assertThat(DateForm.of(pattern).orElseThrow().parse(text)).isNull();
    }

    @Test
    void patternWithYearLettersOfOtherProgramsIsUnderstood() {
        assertThat(DateForm.of("MM/dd/yyyy")).contains(DateForm.US_TWO_DIGITS);
        assertThat(DateForm.of("mm/dd/yyyy")).isEmpty();
    }
}
