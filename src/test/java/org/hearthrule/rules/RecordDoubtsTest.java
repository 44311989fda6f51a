package org.hearthrule.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Doubts about the records themselves. What custom expects stands in rules/ and is no law. */
class RecordDoubtsTest {

    private static final String LAW = """
            portfolio: {kind: record, title: Portfolio, shows: {all-of: [{log: {entries: 1, per: year}}, {samples: {least: 1, per-subject: no}}]},
              next: Go on., cite: "code (G)"}
            subjects: {kind: subjects, title: Subjects, list: [{name: geography, shown-by: [geography]}], next: Go on., cite: "code (F)"}
            """;

    private static List<Finding> doubts(String year, String asOf) {
        return Kit.law(LAW).year("2026-27", year).judged(asOf).findings().stream()
                .filter(finding -> finding.requirement().startsWith("records/")).toList();
    }

    private static List<String> rules(String year, String asOf) {
        return doubts(year, asOf).stream().map(finding -> finding.rules().get(0)).toList();
    }

    private static String entry(String date, int minutes, String did, String more) {
        return "{\"date\": \"" + date + "\", \"minutes\": " + minutes + ", \"students\": [\"ada\"], \"did\": \"" + did
                + "\", \"subjects\": [\"geography\"]" + more + "}";
    }

    private static String log(String... entries) {
        return "\"log\": [" + String.join(", ", entries) + "]";
    }

    private static final String PIECE = ", \"samples\": [{\"student\": \"ada\", \"date\": \"2026-10-01\", \"title\": \"Map\", "
            + "\"subjects\": [\"geography\"]}]";

    /** A day has 1,440 minutes. */
    @ParameterizedTest
    @CsvSource({"1440, false", "1441, true"})
    void dayLongerThanADayIsAskedAbout(int minutes, boolean doubted) {
        List<String> rules = rules(log(entry("2026-11-20", minutes - 60, "One", ""), entry("2026-11-20", 60, "Two", "")) + PIECE, "2026-11-25");

        assertThat(rules.contains("more hours than a day has")).isEqualTo(doubted);
    }

    @ParameterizedTest
    @CsvSource({"2026-11-25, false", "2026-11-26, true"})
    void entryThatHasNotComeYetIsAskedAbout(String day, boolean doubted) {
        assertThat(rules(log(entry(day, 60, "One", "")) + PIECE, "2026-11-25").contains("an entry from the future")).isEqualTo(doubted);
    }

    @Test
    void sameEntryTwiceIsAskedAboutAndTwoDifferentOnesAreNot() {
        assertThat(rules(log(entry("2026-11-20", 60, "Maps", ""), entry("2026-11-20", 60, "Maps", "")) + PIECE, "2026-11-25"))
                .containsExactly("the same entry twice");
        assertThat(rules(log(entry("2026-11-20", 60, "Maps", ""), entry("2026-11-20", 60, "Globe", "")) + PIECE, "2026-11-25")).isEmpty();
    }

    @Test
    void samplesWithoutDateOrSubjectAreCounted() {
        List<Finding> doubts = doubts(log(entry("2026-11-20", 60, "Maps", "")) + ", \"samples\": ["
                + "{\"student\": \"ada\", \"title\": \"A\", \"subjects\": [\"geography\"]}, "
                + "{\"student\": \"ada\", \"title\": \"B\", \"subjects\": [\"geography\"], \"date\": \"2026-10-01\"}, "
                + "{\"student\": \"ada\", \"title\": \"C\", \"subjects\": [], \"date\": \"2026-10-01\"}]", "2026-11-25");

        assertThat(doubts).extracting(finding -> finding.rules().get(0))
                .containsExactlyInAnyOrder("samples without a date", "samples without a subject");
        assertThat(doubts).allSatisfy(finding -> {
            assertThat(finding.counted()).containsEntry("records", 1);
            assertThat(finding.status()).isEqualTo(Status.THIN);
            assertThat(finding.cites()).isEmpty();
        });
    }

    /** Two weeks: common practice, no source. */
    @ParameterizedTest
    @CsvSource({"2026-11-15T20:00, false", "2026-11-16T20:00, true"})
    void entryWrittenLongAfterwardsIsThinWhereALogIsAsked(String written, boolean doubted) {
        assertThat(rules(log(entry("2026-11-01", 60, "Maps", ", \"written\": \"" + written + "\"")) + PIECE, "2026-11-25")
                .contains("entries written long afterwards")).isEqualTo(doubted);
    }

    /** Ten weeks before November 25 is September 16. Common practice, no source. */
    @ParameterizedTest
    @CsvSource({"2026-09-16, false", "2026-09-15, true"})
    void subjectSilentForTenWeeksIsThin(String last, boolean doubted) {
        assertThat(rules(log(entry(last, 60, "Maps", "")) + PIECE, "2026-11-25").contains("a subject not logged for a long while"))
                .isEqualTo(doubted);
    }

    @Test
    void subjectWithoutADatedSampleIsThinWhereSamplesAreKept() {
        assertThat(rules(log(entry("2026-11-20", 60, "Maps", "")), "2026-11-25")).containsExactly("subjects without a dated sample");
    }

    @Test
    void testInAYearThatAsksForNoneIsPointedOut() {
        assertThat(rules(log(entry("2026-11-20", 60, "Maps", "")) + PIECE + ", \"tests\": [{\"student\": \"ada\", \"date\": \"2026-11-02\", "
                + "\"name\": \"Example Test\", \"scores\": []}]", "2026-11-25")).containsExactly("a test in a year that asks for none");
    }

    @Test
    void readingWithoutAnAuthorIsThin() {
        assertThat(rules(log(entry("2026-11-20", 60, "Maps", "")) + PIECE + ", \"readings\": [{\"students\": [\"ada\"], "
                + "\"title\": \"The Mill\"}]", "2026-11-25")).containsExactly("readings without an author");
    }
}
