package org.hearthrule.rules;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** From when to when the law binds a child. The forms are those of rule-forms; the days were worked out by hand. */
class CompulsoryAgeTest {

    private static final String PAPER =
            "paper: {kind: file, title: Paper, due: {by: \"06-30\"}, next: Send it., cite: \"code (C)\"}";

    private static Status status(String ages, String born, String asOf) {
        return Kit.law(PAPER).ages(ages).child("\"born\": \"" + born + "\"").placed("\"from\": \"2010-08-26\"")
                .line("paper", asOf).status();
    }

    /** The school year is 2026-27; the paper is due at its end. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        // reached on the date counts, the day after does not
        "{age: 6, by: \"09-30\"}                                  | 2020-09-30 | OPEN",
        "{age: 6, by: \"09-30\"}                                  | 2020-10-01 | NOT_DUE",
        // reached before the date: the date itself does not count
        "{age: 6, before: \"09-01\"}                              | 2020-08-31 | OPEN",
        "{age: 6, before: \"09-01\"}                              | 2020-09-01 | NOT_DUE",
        // looking ahead: December binds from the year's start
        "{age: 6, by: \"12-01\"}                                  | 2020-12-01 | OPEN",
        "{age: 6, by: \"12-01\"}                                  | 2020-12-02 | NOT_DUE",
        // a birthday after the date, with the three readings
        "{age: 6, by: \"09-01\", mid-year: unclear}               | 2021-03-02 | UNCLEAR",
        "{age: 6, by: \"09-01\", mid-year: owed}                  | 2021-03-02 | OPEN",
        "{age: 6, by: \"09-01\", mid-year: next-year}             | 2021-03-02 | NOT_DUE",
        "{age: 6, on: birthday, mid-year: unclear}                | 2021-03-02 | UNCLEAR",
        "{age: 6, on: birthday, mid-year: owed}                   | 2021-07-01 | NOT_DUE",
        "{age: 6, on: birthday, mid-year: owed}                   | 2021-06-30 | OPEN",
        // September of the calendar year of the birthday
        "{age: 6, in: calendar-year, binds-from: \"09-01\"}       | 2020-12-31 | OPEN",
        "{age: 6, in: calendar-year, binds-from: \"09-01\"}       | 2021-01-01 | NOT_DUE",
        "{earlier-of: [{age: 7, by: \"09-01\"}, {age: 6, by: \"09-01\"}]} | 2020-05-05 | OPEN",
        "{later-of: [{age: 7, by: \"09-01\"}, {age: 6, by: \"09-01\"}]}   | 2020-05-05 | NOT_DUE",
    })
    void begins(String starts, String born, Status expected) {
        assertThat(status("starts: " + starts + ", ends: {age: 18, on: birthday}", born, "2026-11-25")).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "{age: 16, on: birthday}                                  | 2010-07-01 | 2026-07-01 | NOT_DUE",
        "{age: 16, on: birthday}                                  | 2011-06-30 | 2026-11-25 | NOT_DUE",
        "{age: 16, on: birthday}                                  | 2011-07-01 | 2026-11-25 | OPEN",
        "{age: 16, on: year-end}                                  | 2010-07-01 | 2026-11-25 | OPEN",
        "{age: 16, on: year-end}                                  | 2010-06-30 | 2026-11-25 | NOT_DUE",
        // 18 by the first of January frees the whole school year
        "{age: 18, by: \"01-01\"}                                 | 2009-01-01 | 2026-11-25 | NOT_DUE",
        "{age: 18, by: \"01-01\"}                                 | 2009-01-02 | 2026-11-25 | OPEN",
        "{earlier-of: [{age: 18, on: birthday}, {event: diploma}]}| 2010-07-01 | 2026-11-25 | OPEN",
        "{later-of: [{age: 16, on: birthday}, {event: diploma}]}  | 2010-06-01 | 2026-11-25 | OPEN",
    })
    void ends(String ends, String born, String asOf, Status expected) {
        assertThat(status("starts: {age: 6, on: birthday, mid-year: owed}, ends: " + ends, born, asOf)).isEqualTo(expected);
    }

    @Test
    void eventEndsItWhenItHasHappened() {
        Kit kit = Kit.law(PAPER).ages("starts: {age: 6, on: birthday, mid-year: owed}, ends: {earlier-of: [{age: 18, on: birthday}, "
                + "{event: diploma}]}").child("\"born\": \"2009-10-01\"")
                .family("\"events\": [{\"kind\": \"diploma\", \"date\": \"2026-06-10\"}]");

        assertThat(kit.line("paper", "2026-11-25").status()).isEqualTo(Status.NOT_DUE);
    }

    /** Whole years have passed on March 1 of a common year, not on February 28. */
    @ParameterizedTest
    @CsvSource({"2026-02-28, NOT_DUE", "2026-03-01, OPEN"})
    void childBornOnALeapDayComesOfAgeOnTheFirstOfMarch(String asOf, Status expected) {
        Kit kit = Kit.law("paper: {kind: time, title: Days, when: {age: {at-least: 6}}, shows: {time: {days: 1}}, next: Teach., "
                + "cite: \"code (C)\"}").child("\"born\": \"2020-02-29\"");

        assertThat(kit.line("paper", asOf).status()).isEqualTo(expected);
    }

    @Test
    void withoutABirthDateTheLineAsksForIt() {
        Finding line = Kit.law(PAPER).child("").line("paper", "2026-11-25");

        assertThat(line.status()).isEqualTo(Status.UNCLEAR);
        assertThat(line.next()).contains("born");
    }

    @Test
    void dutyForEveryAgeDoesNotAskForTheBirthDate() {
        Finding line = Kit.law("paper: {kind: file, title: Paper, ages: any, due: {by: \"06-30\"}, next: Send it., cite: \"code (C)\"}")
                .child("").line("paper", "2026-11-25");

        assertThat(line.status()).isEqualTo(Status.OPEN);
    }

    @Test
    void youngerChildIsBoundEarlyByEnteringSchool() {
        Kit kit = Kit.law(PAPER).ages("starts: {age: 6, by: \"09-01\"}, ends: {age: 18, on: birthday}, "
                + "early: {event: {is: entered-school}}").child("\"born\": \"2021-02-02\"");

        assertThat(kit.line("paper", "2026-11-25").status()).isEqualTo(Status.NOT_DUE);
        assertThat(kit.family("\"events\": [{\"kind\": \"entered-school\", \"date\": \"2026-08-31\"}]")
                .line("paper", "2026-11-25").status()).isEqualTo(Status.OPEN);
    }

    /** A board that sets the leaving age, as a city's may: the entry with the condition stands before the other. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "\"city\": \"Port Alder\"  | OPEN",
        "\"city\": \"Millbrook\"   | NOT_DUE",
        "\"district\": null        | UNCLEAR",
    })
    void firstEntryThatHoldsIsTaken(String place, Status expected) {
        String ages = "when: {place: [Port Alder]}, starts: {age: 6, on: birthday, mid-year: owed}, ends: {age: 18, on: birthday}, "
                + "cite: \"code (A)\"}\n  - {starts: {age: 6, on: birthday, mid-year: owed}, ends: {age: 16, on: birthday}";
        // 16 on May 5, 2026: free in the school year 2026-27 except where 18 is the end
        String where = place.contains("null") ? "" : ", " + place;
        assertThat(Kit.law(PAPER).ages(ages).child("\"born\": \"2010-05-05\"").placed("\"from\": \"2020-08-26\"" + where)
                .line("paper", "2026-11-25").status()).isEqualTo(expected);
    }

    /** Where both entries say the same of a child, it does not matter which of them it is. */
    @Test
    void whatBothEntriesSayIsNotUnclear() {
        String ages = "when: {place: [Port Alder]}, starts: {age: 6, on: birthday, mid-year: owed}, ends: {age: 18, on: birthday}, "
                + "cite: \"code (A)\"}\n  - {starts: {age: 6, on: birthday, mid-year: owed}, ends: {age: 16, on: birthday}";
        assertThat(Kit.law(PAPER).ages(ages).child("\"born\": \"2016-05-05\"").placed("\"from\": \"2020-08-26\"")
                .line("paper", "2026-11-25").status()).isEqualTo(Status.OPEN);
    }

    /** One entry alone, of which nobody can say whether it holds: it must not pass for certain. */
    @ParameterizedTest
    @CsvSource({"2016-05-05, UNCLEAR", "2022-05-05, NOT_DUE"})
    void entryThatMayNotHoldBindsNobodyForCertain(String born, Status expected) {
        String ages = "when: {place: [Port Alder]}, starts: {age: 6, on: birthday, mid-year: owed}, ends: {age: 18, on: birthday}";
        Kit kit = Kit.law(PAPER).ages(ages).child("\"born\": \"" + born + "\"").placed("\"from\": \"2020-08-26\"");

        assertThat(kit.line("paper", "2026-11-25").status()).isEqualTo(expected);
    }

    /** 6 on March 2, 2027, which may bind at once; 7 by September 1 would bind from July 1, 2028 only. */
    @Test
    void doubtAboutOneOfTwoStartsIsNotLost() {
        String ages = "starts: {earlier-of: [{age: 7, by: \"03-01\"}, {age: 6, on: birthday, mid-year: unclear}]}, ends: {age: 18, on: birthday}";
        Kit kit = Kit.law(PAPER).ages(ages).child("\"born\": \"2021-03-02\"");
        assertThat(kit.line("paper", "2026-11-25").status()).isEqualTo(Status.UNCLEAR);

        // the later of two starts may be March 2, 2027 when the other has come by then
        String later = "starts: {later-of: [{age: 5, on: birthday, mid-year: owed}, {age: 6, on: birthday, mid-year: unclear}]}, ends: {age: 18, on: birthday}";
        assertThat(Kit.law(PAPER).ages(later).child("\"born\": \"2021-03-02\"").line("paper", "2026-11-25").status())
                .isEqualTo(Status.UNCLEAR);
        // both may begin within the year, and the one that is certain first hid the doubt about the other
        String both = "starts: {earlier-of: [{age: 6, by: \"09-01\"}, {age: 6, by: \"01-01\", mid-year: unclear}]}, ends: {age: 18, on: birthday}";
        assertThat(Kit.law(PAPER).ages(both).child("\"born\": \"2021-03-02\"").line("paper", "2026-11-25").status())
                .isEqualTo(Status.UNCLEAR);
    }

    /** Kindergarten put off by a paper: 6 instead of 5, while the paper is sent. */
    @ParameterizedTest
    @CsvSource({"true, NOT_DUE", "false, OPEN"})
    void paperMayPutOffTheAge(boolean sent, Status expected) {
        String own = "put-off: {kind: file, title: Put-off, ages: any, next: Send it., cite: \"code (D)\"}\n"
                + "paper: {kind: file, title: Paper, when: {not: {history: {of: put-off, was: met, years-ago: 0}}}, "
                + "due: {by: \"06-30\"}, next: Send it., cite: \"code (C)\"}";
        Kit kit = Kit.law(own).ages("starts: {age: 5, by: \"09-01\"}, ends: {age: 18, on: birthday}")
                .child("\"born\": \"2021-05-05\"").placed("\"from\": \"2026-07-26\"");
        if (sent) {
            kit.year("2026-27", "\"filings\": [{\"students\": [\"ada\"], \"paper\": \"put-off\", \"sent\": \"2026-08-01\"}]");
        }
        assertThat(kit.line("paper", "2026-11-25").status()).isEqualTo(expected);
    }

    /** Seven by the district's first day, August 26, and seven before it. */
    @ParameterizedTest
    @CsvSource({"by, 2019-08-26, OPEN", "by, 2019-08-27, NOT_DUE", "before, 2019-08-25, OPEN", "before, 2019-08-26, NOT_DUE"})
    void firstDayOfSchoolDecides(String form, String born, Status expected) {
        assertThat(Kit.law(PAPER).ages("starts: {age: 7, " + form + ": school-first-day}, ends: {age: 16, on: birthday}")
                .child("\"born\": \"" + born + "\"").placed("\"from\": \"2010-08-26\"")
                .year("2026-27", "\"calendar\": {\"schoolFirstDay\": \"2026-08-26\"}").line("paper", "2026-11-25").status()).isEqualTo(expected);
    }
}
