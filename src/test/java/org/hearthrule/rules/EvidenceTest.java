package org.hearthrule.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hearthrule.rules.Kit.taught;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What shows that a duty is met: counts one below, at and above the law's number, added up by hand. */
class EvidenceTest {

    private static final String IN_THE_YEAR = "2027-06-01";
    private static final String AFTER_THE_YEAR = "2027-07-10";

    private static Kit shows(String kind, String evidence) {
        return Kit.law("duty: {kind: " + kind + ", title: Duty, shows: " + evidence + ", next: Go on., cite: \"code (E)\"}");
    }

    /** Of last year, on a day after it: a shortfall is final. */
    private static Finding lastYears(Kit kit) {
        return kit.judged(AFTER_THE_YEAR).findings().stream()
                .filter(finding -> finding.requirement().endsWith("/duty") && "2026-27".equals(finding.year())).findFirst().orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({"179, OPEN", "180, MET", "181, MET"})
    void daysAreCountedOnce(int days, Status expected) {
        Kit kit = shows("time", "{time: {days: 180}}").year("2026-27", taught("2026-07-01", days, 120, ""));

        Finding line = kit.line("duty", IN_THE_YEAR);

        assertThat(line.status()).isEqualTo(expected);
        assertThat(line.counted()).containsEntry("days", BigDecimal.valueOf(days));
    }

    @Test
    void minimumMissedIsLateWhenItsYearIsOver() {
        assertThat(lastYears(shows("time", "{time: {days: 180}}").year("2026-27", taught("2026-07-01", 179, 120, ""))).status())
                .isEqualTo(Status.LATE);
    }

    /** 180 days of 299 minutes are 897 hours; of 300 minutes, 900. */
    @ParameterizedTest
    @CsvSource({"299, OPEN", "300, MET"})
    void hoursAreMinutesBySixty(int minutes, Status expected) {
        Kit kit = shows("time", "{time: {hours: 900}}").year("2026-27", taught("2026-07-01", 180, minutes, ""));

        assertThat(kit.line("duty", IN_THE_YEAR).status()).isEqualTo(expected);
    }

    /** 59 minutes are 0.98 hours: shown as 0.9, never as more than was done. */
    @Test
    void hoursAreCutNotRounded() {
        Finding line = shows("time", "{time: {hours: 10}}").year("2026-27", taught("2026-07-01", 1, 59, "")).line("duty", IN_THE_YEAR);

        assertThat(line.counted().get("hours")).isEqualTo(new BigDecimal("0.9"));
    }

    @ParameterizedTest
    @CsvSource({"239, OPEN", "240, MET"})
    void dayCountsOnlyWithItsHours(int minutes, Status expected) {
        Kit kit = shows("time", "{time: {days: 175, day-hours: 4}}").year("2026-27", taught("2026-07-01", 175, minutes, ""));

        assertThat(kit.line("duty", IN_THE_YEAR).status()).isEqualTo(expected);
    }

    /** Met at 4 hours times the days, missed below 688, unclear between: 172 days of 4 hours, and 200 days of 3 1/2. */
    @ParameterizedTest
    @CsvSource({"172, 240, MET", "172, 239, LATE", "200, 210, UNCLEAR", "200, 240, MET"})
    void averageLeavesABandOfDoubt(int days, int minutes, Status expected) {
        Kit kit = shows("time", "{time: {days: 172, mean-hours: 4}}").year("2026-27", taught("2026-07-01", days, minutes, ""));

        assertThat(lastYears(kit).status()).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({"174, UNCLEAR", "175, MET"})
    void substantialYardstickIsUnclearJustBelow(int days, Status expected) {
        Kit kit = shows("time", "{time: {days: 175, yardstick: substantial}}").year("2026-27", taught("2026-07-01", days, 60, ""));

        assertThat(lastYears(kit).status()).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({"5, 900, OPEN", "7, 900, OPEN", "7, 990, MET", "5, 990, MET"})
    void amountFollowsTheLevel(String grade, int hours, Status expected) {
        Kit kit = shows("time", "{time: {hours: {elementary: 901, secondary: 990}}}")
                .year("2026-27", "\"grades\": {\"ada\": \"" + grade + "\"}, " + taught("2026-07-01", 180, hours / 3, ""));

        assertThat(kit.line("duty", IN_THE_YEAR).status()).isEqualTo(expected);
    }

    /** Days in each quarter need the days that divide the year. */
    @Test
    void quartersAreAskedForAndThenCounted() {
        Kit kit = shows("time", "{time: {days: 3, per: quarter}}");
        String first = taught("2026-09-07", 3, 60, "");
        String log = first.substring(0, first.length() - 1) + ", " + taught("2026-11-16", 2, 60, "").replace("\"log\": [", "");
        String quarters = "\"calendar\": {\"quarters\": [{\"from\": \"2026-09-01\", \"to\": \"2026-10-31\"}, "
                + "{\"from\": \"2026-11-01\", \"to\": \"2026-12-31\"}]}, ";

        assertThat(kit.year("2026-27", log).line("duty", "2027-01-10").status()).isEqualTo(Status.UNCLEAR);
        Finding line = kit.year("2026-27", quarters + log).line("duty", "2027-01-10");
        assertThat(line.counted()).containsEntry("quarter-1", BigDecimal.valueOf(3)).containsEntry("quarter-2", BigDecimal.valueOf(2));
        assertThat(line.status()).isEqualTo(Status.OPEN);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        ", \"core\": true, \"place\": \"home\"    | MET",
        ", \"core\": true, \"place\": \"library\" | OPEN",
        ", \"core\": true                         | UNCLEAR",
        ", \"core\": false, \"place\": \"home\"   | OPEN",
        ", \"place\": \"home\"                    | UNCLEAR",
        ", \"subjects\": [\"music\"]              | UNCLEAR",
    })
    void poolAndPlaceAreTakenFromTheMarks(String marks, Status expected) {
        Kit kit = shows("time", "{time: {hours: 10, of: core, at: home}}").year("2026-27", taught("2026-07-01", 10, 60, marks));

        assertThat(kit.line("duty", IN_THE_YEAR).status()).isEqualTo(expected);
    }

    /** The day the notice went out is the first that counts: July 1 is a Wednesday, so the 8th is the sixth weekday. */
    @Test
    void timeBeforeThePaperDoesNotCountInTheFirstYear() {
        Kit kit = Kit.law("duty: {kind: time, title: Duty, counts-from: {filing: notice}, shows: {time: {days: 10}}, next: Go on., "
                + "cite: \"code (E)\"}\nnotice: {kind: file, title: Notice, due: {by: \"08-01\"}, next: Send it., cite: \"code (B)\"}")
                .placed("\"from\": \"2026-07-01\"").year("2026-27", taught("2026-07-01", 10, 60, "")
                + ", \"filings\": [{\"students\": [\"ada\"], \"paper\": \"notice\", \"sent\": \"2026-07-08\"}]");

        assertThat(kit.line("duty", IN_THE_YEAR).counted()).containsEntry("days", BigDecimal.valueOf(5));
    }

    @Test
    void permittedSubjectIsNotAskedNorCounted() {
        Finding line = subjects("[{name: English, shown-by: [reading]}, {name: Latin, shown-by: [world-language], may: yes}]",
                "", "\"reading\"").line("duty", IN_THE_YEAR);

        assertThat(line.why().get(0)).startsWith("1 of 1 subjects");
    }

    private static Kit subjects(String list, String more, String logged) {
        return Kit.law("duty: {kind: subjects, title: Duty, " + more + "list: " + list + ", next: Go on., cite: \"code (F)\"}")
                .year("2026-27", taught("2026-09-01", 1, 60, ", \"subjects\": [" + logged + "]"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "[{name: English, shown-by: [reading, writing]}]                  | \"writing\"              | MET",
        "[{name: English, shown-by: [reading, writing], needs-all: yes}]  | \"writing\"              | OPEN",
        "[{name: English, shown-by: [reading, writing], needs-all: yes}]  | \"writing\", \"reading\" | MET",
        "[{name: Latin, shown-by: [world-language], may: yes}]            | \"music\"                | MET",
        // an area is shown by any of its subjects; a bare area never shows one subject
        "[{name: mathematics, shown-by: [mathematics]}]                   | \"geometry\"             | MET",
        "[{name: geometry, shown-by: [geometry]}]                         | \"mathematics\"          | OPEN",
    })
    void subjectsAreShownByTheirWords(String list, String logged, Status expected) {
        assertThat(subjects(list, "", logged).line("duty", IN_THE_YEAR).status()).isEqualTo(expected);
    }

    /** Over grades K to 6: in grade 3 nothing is late, and earlier years that the book lacks leave it open. */
    @Test
    void subjectsOverALevelAreNotLateInTheMiddle() {
        String interval = "when: {grade: \"K-6\"}, interval: over-level, ";
        String list = "[{name: geography, shown-by: [geography]}]";

        Finding middle = subjects(list, interval, "\"music\"").year("2026-27", "\"grades\": {\"ada\": \"3\"}").line("duty", IN_THE_YEAR);

        assertThat(middle.due()).isNull();
        assertThat(middle.status()).isEqualTo(Status.UNCLEAR);
        assertThat(middle.next()).contains("geography");
    }

    @ParameterizedTest
    @CsvSource({"33, OPEN", "34, MET"})
    void scoreMustBeAboveTheLine(int percentile, Status expected) {
        Kit kit = shows("assess", "{test: {areas: [composite], scores: [{measure: percentile, areas: [composite], above: 33}]}}")
                .year("2026-27", test("\"givenBy\": \"school\"", percentile));

        assertThat(kit.line("duty", IN_THE_YEAR).status()).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({"3, OPEN", "4, MET"})
    void scoreMayBeAtTheLineWhereTheLawSaysAtLeast(int stanine, Status expected) {
        Kit kit = shows("assess", "{test: {scores: [{measure: percentile, areas: [composite], at-least: 4}]}}")
                .year("2026-27", test("\"givenBy\": \"school\"", stanine));

        assertThat(kit.line("duty", IN_THE_YEAR).status()).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "\"givenBy\": \"certified-teacher\"  | MET",
        "\"givenBy\": \"parent\"             | OPEN",
        "\"givenBy\": \"mo\"                 | OPEN",
        "\"edition\": \"3\"                  | UNCLEAR",
    })
    void testIsGivenByWhomTheLawLets(String giver, Status expected) {
        Kit kit = shows("assess", "{test: {given-by: [certified-teacher], not-by: [parent]}}")
                .family("\"persons\": [{\"id\": \"mo\", \"name\": \"Mo\", \"roles\": [\"parent\"]}]").year("2026-27", test(giver, 50));

        assertThat(kit.line("duty", IN_THE_YEAR).status()).isEqualTo(expected);
    }

    private static String test(String more, int value) {
        return "\"tests\": [{\"student\": \"ada\", \"date\": \"2027-04-20\", \"name\": \"Example Test\", " + more
                + ", \"scores\": [{\"area\": \"composite\", \"measure\": \"percentile\", \"value\": " + value + "}]}]";
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "\"includes\": [\"interview\", \"portfolio\"], \"outcome\": \"adequate\"   | MET",
        "\"includes\": [\"portfolio\"], \"outcome\": \"adequate\"                  | OPEN",
        "\"includes\": [\"interview\", \"portfolio\"], \"outcome\": \"inadequate\" | OPEN",
        "\"includes\": [\"interview\", \"portfolio\"]                              | UNCLEAR",
    })
    void evaluationRestsOnWhatTheLawNames(String more, Status expected) {
        Kit kit = shows("assess", "{evaluation: {method: narrative, includes: [interview, portfolio], says: [adequate]}}")
                .year("2026-27", "\"evaluations\": [{\"student\": \"ada\", \"date\": \"2027-05-20\", \"method\": \"narrative\", "
                + "\"by\": \"certified-teacher\", " + more + "}]");

        assertThat(kit.line("duty", IN_THE_YEAR).status()).isEqualTo(expected);
    }

    @Test
    void oneOfSeveralWaysIsEnoughAndAPartOfAnotherIsNot() {
        Kit kit = shows("record", "{any-of: [{all-of: [{document: plan-book}, {samples: {least: 2, per-subject: no}}]}, {document: diary}]}");

        assertThat(kit.year("2026-27", "\"documents\": [{\"students\": [\"ada\"], \"kind\": \"plan-book\", \"date\": \"2026-09-01\"}]")
                .line("duty", IN_THE_YEAR).status()).isEqualTo(Status.OPEN);
        assertThat(kit.year("2026-27", "\"documents\": [{\"students\": [\"ada\"], \"kind\": \"diary\", \"date\": \"2026-09-01\"}]")
                .line("duty", IN_THE_YEAR).status()).isEqualTo(Status.MET);
    }

    @Test
    void undatedSampleIsNotCounted() {
        Kit kit = shows("record", "{samples: {least: 1, per-subject: no}}")
                .year("2026-27", "\"samples\": [{\"student\": \"ada\", \"title\": \"Map\", \"subjects\": [\"geography\"]}]");

        assertThat(kit.line("duty", IN_THE_YEAR).status()).isEqualTo(Status.OPEN);
    }

    @ParameterizedTest
    @CsvSource({"high-school-diploma, MET", "driving-licence, UNCLEAR"})
    void credentialOfTheRightPerson(String kind, Status expected) {
        Kit kit = shows("qualify", "{credential: {of: parent, kinds: [high-school-diploma]}}").family("\"persons\": [{\"id\": \"mo\", "
                + "\"name\": \"Mo\", \"roles\": [\"parent\"], \"credentials\": [{\"kind\": \"" + kind + "\"}]}]");

        assertThat(kit.line("duty", IN_THE_YEAR).status()).isEqualTo(expected);
    }

    /** The district's number decides once it is noted; before that the fallback, if the law leaves one. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "{time: {days: {set-by: the district, value: school-days, fallback: 180}}} | 170 | MET",
        "{time: {days: {set-by: the district, value: school-days, fallback: 180}}} |     | UNCLEAR",
        "{time: {days: {set-by: the district, value: school-days}}}                |     | UNCLEAR",
        "{time: {days: {set-by: the district, value: school-days}}}                | 171 | LATE",
    })
    void numberThatTheDistrictSets(String shows, String noted, Status expected) {
        String choice = noted == null ? "" : ", \"choices\": [{\"student\": \"ada\", \"choice\": \"school-days\", \"value\": \""
                + noted + "\"}]";
        Kit kit = shows("time", shows).year("2026-27", taught("2026-07-01", 170, 120, "") + choice);
        assertThat(lastYears(kit).status()).isEqualTo(expected);
    }

    /** The form of a record book asks for no name of a test; its method tells what it was. */
    @Test
    void testWithoutANameIsStillATest() {
        Kit kit = shows("assess", "{test: {method: standardized-test}}").year("2026-27",
                "\"tests\": [{\"student\": \"ada\", \"date\": \"2027-04-04\", \"method\": \"standardized-test\"}]");

        assertThat(lastYears(kit).status()).isEqualTo(Status.MET);
        assertThat(lastYears(kit).why()).first().asString().contains("standardized test");
    }
}
