package org.hearthrule.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hearthrule.rules.Kit.taught;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What becomes of a duty as days pass, and which rules say so. */
class StatusTest {

    private static final String NOTICE = "notice: {kind: file, title: Notice, due: {by: \"10-01\"}, next: Send it., cite: \"code (B)\"}";

    private static String sent(String paper, String day) {
        return "\"filings\": [{\"students\": [\"ada\"], \"paper\": \"" + paper + "\", \"sent\": \"" + day + "\"}]";
    }

    @ParameterizedTest
    @CsvSource({"2026-09-30, OPEN, time remains", "2026-10-01, OPEN, time remains", "2026-10-02, LATE, its day has passed"})
    void dayItselfIsStillInTime(String asOf, Status expected, String rule) {
        Finding line = Kit.law(NOTICE).line("notice", asOf);

        assertThat(line.status()).isEqualTo(expected);
        assertThat(line.rules()).containsExactly("us-xx/home/notice", rule);
    }

    @Test
    void paperSentLateIsDoneAndTheLineSaysHowLate() {
        Finding line = Kit.law(NOTICE).year("2026-27", sent("notice", "2026-10-04")).line("notice", "2026-11-25");

        assertThat(line.status()).isEqualTo(Status.MET);
        assertThat(line.why().get(0)).contains("October 4, 2026", "3 days after");
        assertThat(line.rules()).containsExactly("us-xx/home/notice", "the records show it");
        assertThat(line.records()).extracting(RecordRef::id).containsExactly("filing-1");
    }

    @Test
    void paperSentAfterTheDayLookedAtDoesNotCountYet() {
        assertThat(Kit.law(NOTICE).year("2026-27", sent("notice", "2026-10-04")).line("notice", "2026-10-03").status())
                .isEqualTo(Status.LATE);
    }

    @Test
    void agencysDayIsNeverLate() {
        Finding line = Kit.law(NOTICE.replace("code (B)", "habit 2")).line("notice", "2026-10-02");

        assertThat(line.status()).isEqualTo(Status.THIN);
        assertThat(line.rules()).contains("a customary day has passed");
    }

    /** A list of subjects has no day in the law; the year's end is only where one looks. */
    @Test
    void subjectThatIsMissingWhenTheYearEndsIsNotCalledLate() {
        Kit kit = Kit.law("list: {kind: subjects, title: List, list: [{name: geography, shown-by: [geography]}], next: Log it., "
                + "cite: \"code (F)\"}").year("2026-27", taught("2026-09-01", 1, 60, ", \"subjects\": [\"music\"]"));

        assertThat(kit.judged("2027-07-05").findings()).filteredOn(finding -> finding.id().equals("us-xx/home/list/ada/2026-27"))
                .singleElement().extracting(Finding::status).isEqualTo(Status.THIN);
    }

    @Test
    void offerNotTakenIsNotMissed() {
        Finding line = Kit.law(NOTICE.replace("next:", "binding: voluntary, next:")).line("notice", "2026-10-02");

        assertThat(line.status()).isEqualTo(Status.NOT_DUE);
    }

    @Test
    void otherSidesDayIsShownAndNeverLaidToTheFamily() {
        Finding line = Kit.law(NOTICE + "\nanswer: {kind: theirs, title: Answer, by: authority, due: {after: notice-sent, days: 14}, "
                + "next: Ask., cite: \"code (B)\"}").year("2026-27", sent("notice", "2026-09-01")).line("answer", "2026-11-25");

        assertThat(line.due()).isEqualTo("2026-09-15");
        assertThat(line.theirs()).isTrue();
        assertThat(line.status()).isEqualTo(Status.OPEN);
    }

    @Test
    void alternativeThatIsMetClosesTheOther() {
        String law = """
                one: {kind: record, title: One, group: proof, shows: {document: report}, next: Keep it., cite: "code (G)"}
                two: {kind: record, title: Two, group: proof, shows: {document: review}, next: Keep it., cite: "code (G)"}
                """;

        assertThat(Kit.law(law).line("two", "2026-11-25").status()).isEqualTo(Status.OPEN);
        Kit shown = Kit.law(law).year("2026-27", "\"documents\": [{\"students\": [\"ada\"], \"kind\": \"report\", \"date\": \"2026-10-01\"}]");
        assertThat(shown.line("one", "2026-11-25").status()).isEqualTo(Status.MET);
        assertThat(shown.line("two", "2026-11-25").status()).isEqualTo(Status.NOT_DUE);
        assertThat(shown.line("two", "2026-11-25").rules()).contains("an alternative is met");
    }

    @Test
    void stepThatComesAfterAnotherSaysSo() {
        Finding line = Kit.law(NOTICE + "\nplan: {kind: file, title: Plan, needs: [notice], due: {by: \"11-30\"}, next: Send it., "
                + "cite: \"code (C)\"}").line("plan", "2026-11-25");

        assertThat(line.rules()).contains("another step comes first");
        assertThat(String.join(" ", line.why())).contains("Notice");
    }

    /** 171 weekdays from July 1, 2026 end on February 24, 2027; nine more at five a week are there on March 9. */
    @Test
    void paceIsWhatTheRecordsShow() {
        Finding line = Kit.law("days: {kind: time, title: Days, shows: {time: {days: 180}}, next: Go on., cite: \"code (E)\"}")
                .year("2026-27", taught("2026-07-01", 171, 60, "")).line("days", "2027-02-24");

        assertThat(line.rules()).contains("the pace needed to reach a minimum");
        assertThat(String.join(" ", line.why())).contains("171 of 180 days", "9 more days by June 30, 2027", "March 9, 2027");
    }

    /**
     * 93 weekdays from August 31, 2026 end on January 6, 2027; 87 more are 17 weeks and two days, to May 7. The weeks of
     * the law's year before the first work do not count against a family.
     */
    @Test
    void paceBeginsWithTheFirstWorkOfTheYear() {
        Finding line = Kit.law("days: {kind: time, title: Days, shows: {time: {days: 180}}, next: Go on., cite: \"code (E)\"}")
                .year("2026-27", taught("2026-08-31", 93, 60, "")).line("days", "2027-01-06");

        assertThat(String.join(" ", line.why())).contains("87 more days by June 30, 2027", "May 7, 2027");
    }

    @Test
    void standardInWordsIsNeverComputed() {
        Finding line = Kit.law("soft: {kind: standard, title: Soft, words: Teach in good faith., next: Nothing to count., "
                + "cite: \"code (N)\"}").line("soft", "2026-11-25");

        assertThat(line.status()).isEqualTo(Status.NOT_DUE);
        assertThat(line.why().get(0)).isEqualTo("Teach in good faith.");
    }

    @Test
    void openQuestionMakesTheLineUnclearAndNamesWhomToAsk() {
        Finding line = Kit.law("soft: {kind: standard, title: Soft, words: Teach in good faith., question: What is that?, "
                .replace("What is that?", "\"What is that?\"") + "ask: the superintendent, next: Ask., cite: \"code (N)\"}")
                .line("soft", "2026-11-25");

        assertThat(line.status()).isEqualTo(Status.UNCLEAR);
        assertThat(String.join(" ", line.why())).contains("What is that?", "the superintendent");
    }

    @Test
    void familysDutyIsOneLine() {
        assertThat(Kit.law(NOTICE.replace("kind: file,", "kind: file, for: family,")).judged("2026-09-01").findings())
                .filteredOn(finding -> finding.requirement().endsWith("/notice") && "2026-27".equals(finding.year()))
                .singleElement().satisfies(finding -> {
                    assertThat(finding.student()).isNull();
                    assertThat(finding.id()).isEqualTo("us-xx/home/notice/family/2026-27");
                });
    }

    @Test
    void childWhoLeftOwesNothingThatFallsDueAfterwards() {
        Kit kit = Kit.law("report: {kind: file, title: Report, due: {by: \"06-30\"}, next: Send it., cite: \"code (C)\"}")
                .placed("\"from\": \"2024-08-26\", \"to\": \"2027-01-15\", \"ended\": \"entered-school\"");

        assertThat(kit.line("report", "2027-01-10").status()).isEqualTo(Status.NOT_DUE);
        assertThat(kit.line("report", "2027-02-10").why().get(0)).contains("January 15, 2027");
    }

    @Test
    void twoRunsSayTheSameInTheSameOrder() {
        Kit kit = Kit.law(NOTICE + "\ndays: {kind: time, title: Days, shows: {time: {days: 180}}, next: Go on., cite: \"code (E)\"}")
                .year("2026-27", taught("2026-07-01", 30, 60, ""));

        assertThat(kit.judged("2026-11-25").findings()).isEqualTo(kit.judged("2026-11-25").findings());
    }

    @Test
    void idsStayWhenTheDayMoves() {
        List<String> one = Kit.law(NOTICE).judged("2026-11-25").findings().stream().map(Finding::id).toList();
        List<String> other = Kit.law(NOTICE.replace("10-01", "10-15")).judged("2026-11-25").findings().stream().map(Finding::id).toList();

        assertThat(one).contains("us-xx/home/notice/ada/2026-27").isEqualTo(other).doesNotHaveDuplicates();
    }

    @Test
    void nextYearsPaperIsToldSixMonthsAhead() {
        assertThat(notices("2027-03-31")).doesNotContain(LocalDate.of(2027, 10, 1));
        assertThat(notices("2027-04-01")).contains(LocalDate.of(2027, 10, 1));
    }

    private static List<LocalDate> notices(String asOf) {
        return Kit.law(NOTICE).judged(asOf).findings().stream().filter(finding -> finding.requirement().endsWith("/notice"))
                .map(Finding::due).toList();
    }

    @Test
    void whatTheLawDoesNotAskIsSaid() {
        assertThat(Kit.law(NOTICE).judged("2026-11-25").findings()).anySatisfy(finding -> {
            assertThat(finding.title()).isEqualTo("Approval.");
            assertThat(finding.status()).isEqualTo(Status.NOT_DUE);
        });
    }

    /** In 2026 August 15 is a Saturday, and September 7 is Labor Day (common calendars); the day itself is not moved. */
    @org.junit.jupiter.params.ParameterizedTest
    @org.junit.jupiter.params.provider.CsvSource({
        "08-15, 2026-08-15, OPEN", "08-15, 2026-08-16, OPEN", "08-15, 2026-08-17, OPEN", "08-15, 2026-08-18, LATE",
        "09-07, 2026-09-08, OPEN", "09-07, 2026-09-09, LATE", "08-14, 2026-08-15, LATE"})
    void nobodyIsLateForAWeekendOrHoliday(String due, String asOf, Status expected) {
        Kit kit = Kit.law("paper: {kind: file, title: Paper, due: {by: \"" + due + "\"}, next: Send it., cite: \"code (C)\"}");

        assertThat(kit.line("paper", asOf).status()).isEqualTo(expected);
        assertThat(kit.line("paper", asOf).due()).hasToString("2026-" + due);
    }

    /** A paper that may go in from June is kept in the file of the year that ends; it counts for the year it is meant for. */
    @Test
    void paperSentBeforeItsSchoolYearCountsForIt() {
        Kit kit = Kit.law("paper: {kind: file, title: Paper, due: {by: \"08-15\", opens: {by: \"06-01\", of: previous-year}}, next: Send it., cite: \"code (C)\"}")
                .year("2025-26", "\"filings\": [{\"students\": [\"ada\"], \"paper\": \"paper\", \"sent\": \"2026-06-10\"}]").year("2026-27", "\"grades\": {}");

        assertThat(kit.line("paper", "2026-11-25").status()).isEqualTo(Status.MET);
    }

    /** What is asked once and has its day ahead is open, whatever the book holds of the year in which it all began. */
    @Test
    void onceWithItsDayAheadIsOpen() {
        Kit kit = Kit.law("paper: {kind: file, title: Paper, recurs: once, due: {after: birthday, age: 11, days: 0}, next: Send it., cite: \"code (C)\"}");

        assertThat(kit.line("paper", "2026-11-25").status()).isEqualTo(Status.OPEN);
    }
}
