package org.hearthrule.page.year;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hearthrule.page.frame.Form;
import org.hearthrule.records.YearLabel;
import org.hearthrule.records.YearRecords.Calendar;
import org.hearthrule.records.YearRecords.Stretch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The form of a year's days. */
class YearDaysTest {

    private static final YearLabel YEAR = YearLabel.parse("2026-27").orElseThrow();

    private static LocalDate day(String day) {
        return LocalDate.parse(day);
    }

    /** @param pairs name and value in turn */
    private static Form typed(String... pairs) {
        Map<String, List<String>> values = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            values.put(pairs[i], List.of(pairs[i + 1]));
        }
        return Form.of(values);
    }

    /** What is shown and sent back unchanged must not change the book. */
    @Test
    void whatTheBookHoldsComesBackUnchanged() {
        Calendar calendar = new Calendar(day("2026-08-24"), day("2027-05-28"), day("2026-08-26"), day("2027-06-09"),
                List.of(new Stretch(day("2026-08-24"), day("2026-10-30")), new Stretch(day("2026-11-02"), day("2027-01-22"))),
                List.of(new Stretch(day("2026-08-24"), day("2026-12-18")), new Stretch(day("2027-01-04"), day("2027-05-28"))),
                List.of(day("2026-11-27"), day("2026-12-21"), day("2026-12-22"), day("2026-12-23"), day("2027-04-02")));
        Form filled = YearDays.filled(calendar);

        assertThat(filled.raw("closed")).isEqualTo("""
                November 27, 2026
                December 21, 2026 to December 23, 2026
                April 2, 2027""");
        assertThat(YearDays.read(filled, YEAR)).contains(calendar);
    }

    @Test
    void anEmptyFormIsAnEmptyCalendar() {
        assertThat(YearDays.read(Form.empty(), YEAR)).contains(Calendar.EMPTY);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"November 27, 2026 | 1", "2026-12-21 to 2027-01-01 | 12",
        "December 21, 2026 – January 1, 2027 | 12", "12/24/2026 through 12/25/2026 | 2", "2026-12-24 to 2026-12-24 | 1"})
    void closedDaysAreReadAsPeopleWriteThem(String line, int days) {
        assertThat(YearDays.read(typed("closed", line), YEAR).orElseThrow().schoolClosed()).hasSize(days);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "first | 2026-09-01 | last | 2026-08-01 | last | comes before September 1, 2026",
        "first | 2025-09-01 | last | 2027-05-28 | first | lies outside the year 2026–27",
        "first | 2027-02-30 | last | 2027-05-28 | first | is no day of the calendar",
        "quarter-1-from | 2026-08-24 | x | y | quarter-1-to | Type both ends",
        "quarter-2-from | 2026-08-24 | quarter-2-to | 2026-10-30 | quarter-2-from | the ones before this first",
        "closed | winter | x | y | closed | “winter” is no day",
        "closed | 2027-01-01 to 2026-12-21 | x | y | closed | no stretch of days",
        "closed | 2025-12-21 to 2026-12-31 | x | y | closed | lies outside the year"})
    void whatMustBePutRightIsToldBesideItsField(String one, String value, String other, String otherValue, String field,
                                                String words) {
        Form form = typed(one, value, other, otherValue);

        assertThat(YearDays.read(form, YEAR)).isEmpty();
        assertThat(form.wrong()).containsExactly(field);
        assertThat(form.complaint(field)).contains(words);
    }

    @Test
    void aTermThatBeginsBeforeTheOneBeforeItEndsIsRefused() {
        Form form = typed("term-1-from", "2026-08-24", "term-1-to", "2026-12-18", "term-2-from", "2026-12-18",
                "term-2-to", "2027-05-28");

        assertThat(YearDays.read(form, YEAR)).isEmpty();
        assertThat(form.complaint("term-2-from")).contains("before December 18, 2026");
    }

    @Test
    void allComplaintsComeAtOnce() {
        Form form = typed("first", "soon", "school-last", "later", "closed", "never");

        YearDays.read(form, YEAR);

        assertThat(form.wrong()).containsExactly("first", "school-last", "closed");
    }
}
