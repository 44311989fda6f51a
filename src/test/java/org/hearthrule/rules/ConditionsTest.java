package org.hearthrule.rules;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** When a duty applies: yes, no with the reason, or unclear with the question. Ages were worked out by hand. */
class ConditionsTest {

    private static Kit when(String condition) {
        return Kit.law("paper: {kind: file, title: Paper, when: " + condition
                + ", due: {by: \"06-30\"}, next: Send it., cite: \"code (C)\"}");
    }

    private static Status status(Kit kit) {
        return kit.line("paper", "2026-11-25").status();
    }

    /** Born on March 2, 2016: 10 until March 1, 2027, and 11 on the due day, June 30, 2027. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "{age: {at-least: 10, on: \"09-30\"}}            | OPEN",
        "{age: {at-least: 11, on: \"09-30\"}}            | NOT_DUE",
        "{age: {at-least: 11, on: \"03-02\"}}            | OPEN",
        "{age: {at-least: 11, before: \"03-02\"}}        | NOT_DUE",
        "{age: {below: 11, on: year-start}}              | OPEN",
        "{age: {below: 11, on: year-end}}                | NOT_DUE",
        "{age: {at-least: 11}}                           | OPEN",
        "{age: {below: 11}}                              | NOT_DUE",
    })
    void ageIsTakenOnTheDayTheLawNames(String condition, Status expected) {
        assertThat(status(when(condition))).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "{grade: \"3, 5, 8\"}      | 5  | OPEN",
        "{grade: \"3, 5, 8\"}      | 6  | NOT_DUE",
        "{grade: \"K-6\"}          | K  | OPEN",
        "{grade: \"K-6\"}          | 7  | NOT_DUE",
        "{grade: secondary}        | 12 | OPEN",
    })
    void gradeIsThatOfTheSchoolYear(String condition, String grade, Status expected) {
        assertThat(status(when(condition).year("2026-27", "\"grades\": {\"ada\": \"" + grade + "\"}"))).isEqualTo(expected);
    }

    @Test
    void gradeOfAnotherYearTellsThisYears() {
        assertThat(status(when("{grade: \"5\"}").year("2025-26", "\"grades\": {\"ada\": \"4\"}"))).isEqualTo(Status.OPEN);
    }

    @Test
    void unknownGradeIsAskedFor() {
        Finding line = when("{grade: \"5\"}").line("paper", "2026-11-25");

        assertThat(line.status()).isEqualTo(Status.UNCLEAR);
        assertThat(line.next()).contains("Which grade");
    }

    /** The program started in August 2024, so that 2026-27 is its third year. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "{year-of-program: first}                           | NOT_DUE",
        "{year-of-program: later}                           | OPEN",
        "{year-of-program: {at-least: 3, at-most: 3}}       | OPEN",
        "{year-of-program: {at-least: 2, every: 2}}         | NOT_DUE",
        "{year-of-program: {at-least: 1, every: 2}}         | OPEN",
    })
    void yearOfTheProgram(String condition, Status expected) {
        assertThat(status(when(condition))).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "{event: {is: moved-in}}                                          | OPEN",
        "{event: {is: stopped}}                                           | NOT_DUE",
        "{event: {is: moved-in, after: \"09-15\"}}                        | OPEN",
        "{event: {is: moved-in, before: \"09-15\"}}                       | NOT_DUE",
        "{event: {is: moved-in, on-or-after: \"10-01\"}}                  | OPEN",
        "{not: {event: {is: moved-in}}}                                   | NOT_DUE",
        "{event: {is: moved-in, after: school-first-day}}                 | UNCLEAR",
    })
    void eventAndItsOrder(String condition, Status expected) {
        assertThat(status(when(condition).family("\"events\": [{\"kind\": \"moved-in\", \"date\": \"2026-10-01\"}]")))
                .isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "[{\"kind\": \"public-school\", \"state\": \"us-xx\", \"to\": \"2024-06-12\"}]  | OPEN",
        "[{\"kind\": \"public-school\", \"state\": \"us-yy\", \"to\": \"2024-06-12\"}]  | NOT_DUE",
        "[{\"kind\": \"public-school\", \"state\": \"us-xx\", \"to\": \"2022-06-12\"}]  | NOT_DUE",
        "[{\"kind\": \"home-program\", \"state\": \"us-xx\", \"to\": \"2024-06-12\"}]   | NOT_DUE",
        "[]                                                                         | NOT_DUE",
    })
    void whereTheChildCameFrom(String schools, Status expected) {
        Kit kit = when("{came-from: {kinds: [public-school], in-state: yes, within: {months: 12, rounding: down}}}")
                .child("\"born\": \"2016-03-02\", \"schools\": " + schools);

        assertThat(status(kit)).isEqualTo(expected);
    }

    @Test
    void formerSchoolsNeverEnteredAreAskedFor() {
        assertThat(status(when("{came-from: {kinds: [public-school]}}"))).isEqualTo(Status.UNCLEAR);
    }

    @Test
    void choiceNotMadeIsUnclearAndAChoiceDecides() {
        Kit kit = when("{choice: {of: count, is: [hours]}}");

        assertThat(status(kit)).isEqualTo(Status.UNCLEAR);
        assertThat(status(kit.year("2026-27", "\"choices\": [{\"choice\": \"count\", \"value\": \"days\"}]"))).isEqualTo(Status.NOT_DUE);
    }

    @Test
    void factIsAskedUnlessItIsPresumed() {
        assertThat(status(when("{attribute: {fact: diploma, is: yes}}"))).isEqualTo(Status.UNCLEAR);
        assertThat(status(when("{attribute: {fact: tuition, is: yes}}"))).isEqualTo(Status.NOT_DUE);
        assertThat(status(when("{attribute: {fact: diploma, is: yes}}")
                .family("\"facts\": [{\"fact\": \"diploma\", \"is\": true}]"))).isEqualTo(Status.OPEN);
    }

    @Test
    void placeIsComparedWithDistrictCityAndCounty() {
        assertThat(status(when("{place: [Example City]}"))).isEqualTo(Status.UNCLEAR);
        assertThat(status(when("{place: [Example City]}").placed("\"from\": \"2024-08-26\", \"city\": \"example city\"")))
                .isEqualTo(Status.OPEN);
        assertThat(status(when("{place: [Example City]}").placed("\"from\": \"2024-08-26\", \"city\": \"Elsewhere\"")))
                .isEqualTo(Status.NOT_DUE);
    }

    /** A no decides "all", a yes decides "any", whatever is unknown beside them. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "{all: [{year-of-program: first}, {attribute: {fact: diploma, is: yes}}]} | NOT_DUE",
        "{all: [{year-of-program: later}, {attribute: {fact: diploma, is: yes}}]} | UNCLEAR",
        "{any: [{year-of-program: later}, {attribute: {fact: diploma, is: yes}}]} | OPEN",
        "{any: [{year-of-program: first}, {attribute: {fact: diploma, is: yes}}]} | UNCLEAR",
        "{not: {attribute: {fact: diploma, is: yes}}}                             | UNCLEAR",
    })
    void unknownDecidesNothing(String condition, Status expected) {
        assertThat(status(when(condition))).isEqualTo(expected);
    }

    @Test
    void lastYearsMethodNeedsLastYearsFile() {
        assertThat(status(afterNarrative())).isEqualTo(Status.UNCLEAR);
        assertThat(status(afterNarrative().year("2025-26", "\"evaluations\": [{\"student\": \"ada\", \"date\": \"2026-06-01\", "
                + "\"method\": \"narrative\"}]"))).isEqualTo(Status.OPEN);
        assertThat(status(afterNarrative().year("2025-26", "\"grades\": {\"ada\": \"4\"}"))).isEqualTo(Status.NOT_DUE);
    }

    private static Kit afterNarrative() {
        return Kit.law("""
                yearly: {kind: assess, title: Yearly, shows: {any-of: [{name: narrative, evaluation: {}}, {name: standardized-test, test: {}}]},
                  next: Do it., cite: "code (H)"}
                paper: {kind: file, title: Paper, when: {history: {of: yearly, was: narrative, years-ago: 1}}, due: {by: "06-30"},
                  next: Send it., cite: "code (C)"}
                """);
    }

    @Test
    void announcedRuleIsNeverDueBeforeItsDay() {
        Kit kit = Kit.law("paper: {kind: standard, title: Paper, announced: yes, from: \"2027-07-01\", words: Less is asked., "
                + "next: Watch for it., cite: \"code (C)\"}");

        assertThat(kit.line("paper", "2026-11-25").status()).isEqualTo(Status.NOT_DUE);
    }

    @ParameterizedTest
    @CsvSource({"2026-06-30, MET, 2025-26", "2026-07-01, NOT_DUE, 2026-27"})
    void ruleHoldsUntilItsLastDay(String asOf, Status expected, String year) {
        Kit kit = Kit.law("paper: {kind: file, title: Paper, until: \"2026-06-30\", due: {by: \"06-30\"}, next: Send it., "
                + "cite: \"code (C)\"}").year("2025-26", "\"filings\": [{\"students\": [\"ada\"], \"paper\": \"paper\", "
                + "\"sent\": \"2026-05-01\"}]");

        assertThat(kit.judged(asOf).findings()).filteredOn(finding -> finding.requirement().endsWith("/paper")
                && finding.year().equals(year)).extracting(Finding::status).containsExactly(expected);
    }

    /** The outcome word of last year's evaluation decides; without the word the line asks for it. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "\"method\": \"review\", \"outcome\": \"inadequate\" | OPEN",
        "\"method\": \"review\", \"outcome\": \"adequate\"   | NOT_DUE",
        "\"method\": \"review\"                              | UNCLEAR",
        "\"method\": \"visit\", \"outcome\": \"inadequate\"  | NOT_DUE",
    })
    void whatAnEvaluationFound(String evaluation, Status expected) {
        Kit kit = Kit.law("yearly: {kind: assess, title: Review, shows: {evaluation: {method: review}}, next: Ask., cite: \"code (D)\"}\n"
                + "paper: {kind: file, title: Paper, when: {result: {of: yearly, says: [inadequate], years-ago: 1}}, "
                + "due: {by: \"06-30\"}, next: Send it., cite: \"code (C)\"}")
                .year("2025-26", "\"evaluations\": [{\"student\": \"ada\", \"date\": \"2026-05-20\", \"by\": \"teacher\", "
                        + evaluation + "}]");
        assertThat(status(kit)).isEqualTo(expected);
    }

    /** A request counts for whom it came from; one that names nobody counts for all. */
    @ParameterizedTest
    @CsvSource({"superintendent, OPEN", "district, NOT_DUE", ", OPEN"})
    void requestCountsForWhomItCameFrom(String by, Status expected) {
        String from = by == null ? "" : "\"by\": \"" + by + "\", ";
        assertThat(status(when("{asked: superintendent}").year("2026-27",
                "\"requests\": [{" + from + "\"students\": [\"ada\"], \"written\": true, \"date\": \"2026-10-08\"}]"))).isEqualTo(expected);
    }

    /** Last year's approval is one that was granted, not one that was asked for. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"approved | OPEN", "refused | NOT_DUE", "received | NOT_DUE"})
    void approvalOfLastYearIsOneThatWasGranted(String answer, Status expected) {
        Kit kit = Kit.law("leave: {kind: approval, title: Leave, paper: leave-request, next: Ask., cite: \"code (D)\"}\n"
                + "paper: {kind: file, title: Paper, when: {history: {of: leave, was: met, years-ago: 1}}, "
                + "due: {by: \"06-30\"}, next: Send it., cite: \"code (C)\"}")
                .year("2025-26", "\"filings\": [{\"students\": [\"ada\"], \"paper\": \"leave-request\", \"sent\": \"2025-08-01\", "
                        + "\"answers\": [{\"kind\": \"" + answer + "\", \"date\": \"2025-08-20\"}]}]");
        assertThat(status(kit)).isEqualTo(expected);
    }

    /** A child who left in June and is taught at home from the end of August: the letter is still to be told of. */
    @ParameterizedTest
    @CsvSource({"2026-06-12, OPEN", "2025-10-09, NOT_DUE"})
    void schoolLeftInTheSummerBeforeIsToldWithTheStart(String left, Status expected) {
        Kit kit = Kit.law("letter: {kind: file, title: Letter, recurs: {each: [left-school]}, due: {at: left-school}, next: Send it., cite: \"code (D)\"}")
                .child("\"born\": \"2016-03-02\", \"schools\": [{\"kind\": \"public-school\", \"to\": \"" + left + "\"}]")
                .placed("\"from\": \"2026-08-26\"");
        assertThat(kit.line("letter", "2026-11-25").status()).isEqualTo(expected);
    }

    /** A paper that is dated ahead has not been sent yet, and puts nothing off. */
    @ParameterizedTest
    @CsvSource({"2026-08-20, NOT_DUE", "2027-02-01, OPEN"})
    void paperOfATimeToComeWasNotSent(String sent, Status expected) {
        Kit kit = Kit.law("put-off: {kind: file, title: Put-off, ages: any, next: Send it., cite: \"code (D)\"}\n"
                + "paper: {kind: file, title: Paper, when: {not: {history: {of: put-off, was: met, years-ago: 0}}}, "
                + "due: {by: \"06-30\"}, next: Send it., cite: \"code (C)\"}")
                .year("2026-27", "\"filings\": [{\"paper\": \"put-off\", \"sent\": \"" + sent + "\"}]");

        assertThat(kit.line("paper", "2026-11-25").status()).isEqualTo(expected);
    }
}
