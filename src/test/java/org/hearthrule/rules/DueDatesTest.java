package org.hearthrule.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The forms a due date takes. Days were counted on a calendar by hand; nothing here comes from the program. */
class DueDatesTest {

    private static Kit filing(String due) {
        return Kit.law("paper: {kind: file, title: Paper, due: " + due + ", next: Send it., cite: \"code (C)\"}");
    }

    private static LocalDate due(String due, String asOf) {
        return filing(due).line("paper", asOf).due();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "{by: \"08-15\"}                        | 2026-08-15",
        "{by: \"06-30\"}                        | 2027-06-30",
        "{by: \"08-01\", of: next-year}         | 2027-08-01",
        "{by: \"04-15\", of: previous-year}     | 2026-04-15",
    })
    void fixedDateLiesInTheSchoolYearMeant(String due, LocalDate expected) {
        assertThat(due(due, "2026-11-25")).isEqualTo(expected);
    }

    @Test
    void severalDatesAreSeveralLines() {
        assertThat(filing("{by: [\"11-01\", \"02-01\"]}").judged("2026-11-25").findings())
                .filteredOn(finding -> finding.requirement().endsWith("/paper") && "2026-27".equals(finding.year()))
                .extracting(Finding::due).containsExactly(LocalDate.of(2026, 11, 1), LocalDate.of(2027, 2, 1));
    }

    @Test
    void windowOpensAndCloses() {
        Finding line = filing("{window: {opens: \"10-01\", closes: \"10-15\"}}").line("paper", "2026-09-01");

        assertThat(line.opens()).isEqualTo("2026-10-01");
        assertThat(line.due()).isEqualTo("2026-10-15");
    }

    /** 31 August plus a month, six months: the law must say what becomes of a day that a month lacks. */
    @ParameterizedTest
    @CsvSource({"1, down, 2026-09-30", "1, up, 2026-10-01", "6, down, 2027-02-28", "6, up, 2027-03-01", "2, up, 2026-10-31"})
    void monthsAreRoundedAsTheLawSays(int months, String rounding, LocalDate expected) {
        Finding line = filing("{after: program-start, months: " + months + ", rounding: " + rounding + "}")
                .placed("\"from\": \"2026-08-31\"").line("paper", "2026-09-01");

        assertThat(line.due()).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({"down, 2025-02-28", "up, 2025-03-01"})
    void yearAfterALeapDayIsRoundedAsTheLawSays(String rounding, LocalDate expected) {
        Finding line = filing("{after: program-start, years: 1, rounding: " + rounding + "}")
                .placed("\"from\": \"2024-02-29\"").line("paper", "2024-03-01");

        assertThat(line.due()).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "{after: program-start, days: 14}                   | 2026-09-22",
        "{after: program-start, weeks: 4}                   | 2026-10-06",
        "{before: program-start, days: 14}                  | 2026-08-25",
        "{before: program-start, days: 0}                   | 2026-09-08",
        "{before: program-start, days: 0, strict: yes}      | 2026-09-07",
        "{before: program-start, business-days: 10}         | 2026-08-24",  // Labor Day, September 7, is not counted
        "{after: birthday, age: 11, days: 5}                | 2027-03-07",
    })
    void countsFromAnEvent(String due, LocalDate expected) {
        assertThat(filing(due).placed("\"from\": \"2026-09-08\"").line("paper", "2026-08-01").due()).isEqualTo(expected);
    }

    @Test
    void missingEventIsNamed() {
        Finding line = filing("{after: materials-received, weeks: 4}").line("paper", "2026-08-01");

        assertThat(line.status()).isEqualTo(Status.UNCLEAR);
        assertThat(line.due()).isNull();
        assertThat(line.next()).contains("materials-received");
    }

    @ParameterizedTest
    @CsvSource({"2026-07-10, 2026-08-15", "2026-07-18, 2026-08-15", "2026-07-19, 2026-08-16", "2026-08-01, 2026-08-29"})
    void laterOfTwoCounts(String received, LocalDate expected) {
        Finding line = filing("{later-of: [{after: materials-received, weeks: 4}, {by: \"08-15\"}]}")
                .family("\"events\": [{\"kind\": \"materials-received\", \"date\": \"" + received + "\"}]")
                .line("paper", "2026-08-02");

        assertThat(line.due()).isEqualTo(expected);
    }

    @Test
    void laterOfWithAMissingPartSaysWhatItWillNotPrecede() {
        Finding line = filing("{later-of: [{after: materials-received, weeks: 4}, {by: \"08-15\"}]}").line("paper", "2026-08-02");

        assertThat(line.status()).isEqualTo(Status.UNCLEAR);
        assertThat(line.dueNote()).contains("August 15, 2026");
    }

    @Test
    void earlierOfCountsOnlyWhatHasHappened() {
        Kit kit = filing("{earlier-of: [{after: program-start, days: 5}, {after: left-school, days: 5}]}")
                .placed("\"from\": \"2026-09-08\"");

        assertThat(kit.line("paper", "2026-09-08").due()).isEqualTo("2026-09-13");
        assertThat(kit.child("\"born\": \"2016-03-02\", \"schools\": [{\"kind\": \"public-school\", \"to\": \"2026-09-04\"}]")
                .line("paper", "2026-09-08").due()).isEqualTo("2026-09-09");
    }

    @Test
    void atOnceHasNoDayAndIsNeverLate() {
        Finding line = filing("{at: program-start}").placed("\"from\": \"2026-09-08\"").line("paper", "2027-03-01");

        assertThat(line.due()).isNull();
        assertThat(line.status()).isEqualTo(Status.OPEN);
    }

    @Test
    void practiceStandsBesideTheLawsDayAndIsNotTheDay() {
        Finding line = filing("{by: \"10-05\", practice: {by: \"09-30\"}}").line("paper", "2026-10-02");

        assertThat(line.due()).isEqualTo("2026-10-05");
        assertThat(line.status()).isEqualTo(Status.OPEN);
        assertThat(line.dueNote()).contains("September 30, 2026");
    }

    @Test
    void chosenDatesAreTheParents() {
        Kit kit = filing("{chosen: report-dates, times: 2}");

        assertThat(kit.line("paper", "2026-10-02").status()).isEqualTo(Status.UNCLEAR);
        assertThat(kit.year("2026-27", "\"choices\": [{\"choice\": \"report-dates\", \"dates\": [\"2026-12-01\", \"2027-05-20\"]}]")
                .judged("2026-10-02").findings()).filteredOn(finding -> finding.requirement().endsWith("/paper")
                && finding.year().equals("2026-27")).extracting(Finding::due)
                .containsExactly(LocalDate.of(2026, 12, 1), LocalDate.of(2027, 5, 20));
    }

    @Test
    void dayTheDistrictSetsGoesBeforeTheFallback() {
        Kit kit = filing("{set-by: the district, value: form-day, fallback: {by: \"10-01\"}}");

        assertThat(kit.line("paper", "2026-09-01").due()).isEqualTo("2026-10-01");
        assertThat(kit.year("2026-27", "\"choices\": [{\"choice\": \"form-day\", \"dates\": [\"2026-09-20\"]}]")
                .line("paper", "2026-09-01").due()).isEqualTo("2026-09-20");
    }

    @Test
    void onRequestCountsFromTheRequest() {
        Kit kit = Kit.law("shown: {kind: show, title: Records, recurs: {each: [request-received]}, due: {on-request: {days: 15}}, "
                + "next: Show them., cite: \"code (K)\"}");

        assertThat(kit.line("shown", "2026-10-20").status()).isEqualTo(Status.NOT_DUE);
        assertThat(kit.family("\"events\": [{\"kind\": \"request-received\", \"date\": \"2026-10-19\"}]")
                .line("shown", "2026-10-20").due()).isEqualTo("2026-11-03");
    }

    @Test
    void firstCaseThatHoldsCounts() {
        Kit kit = filing("[{when: {year-of-program: first}, before: program-start, days: 0}, {by: \"08-01\"}]")
                .placed("\"from\": \"2026-09-08\"");

        assertThat(kit.line("paper", "2026-09-01").due()).isEqualTo("2026-09-08");
        assertThat(kit.line("paper", "2027-09-01").due()).isEqualTo("2027-08-01");
    }
}
