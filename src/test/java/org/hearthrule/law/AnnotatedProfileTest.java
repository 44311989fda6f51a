package org.hearthrule.law;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Map;
import org.hearthrule.input.Problems;
import org.hearthrule.terms.Basis;
import org.hearthrule.terms.Binding;
import org.hearthrule.terms.EventKind;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The annotated example becomes the rules its comments speak of. Expected values stand in the example itself. */
class AnnotatedProfileTest {

    private static Profile profile;

    @BeforeAll
    static void read() {
        Problems problems = new Problems();
        profile = ProfileFixtures.read(ProfileFixtures.text(ProfileFixtures.ANNOTATED), problems).orElse(null);
        assertThat(ProfileFixtures.words(problems)).isEmpty();
    }

    private static Requirement asked(String localId) {
        for (Pathway pathway : profile.pathways()) {
            for (Requirement requirement : pathway.asks()) {
                if (requirement.localId().equals(localId)) {
                    return requirement;
                }
            }
        }
        throw new AssertionError("no requirement " + localId);
    }

    @Test
    void idsAreWhole() {
        assertThat(asked("yearly-notice").id()).isEqualTo("us-xx/home-instruction/yearly-notice");
        assertThat(profile.doubts()).extracting(Profile.Doubt::id).containsExactly("us-xx/doubts/start-in-spring",
                "us-xx/doubts/which-day");
        assertThat(profile.doubts().get(0).on()).containsExactly("us-xx/home-instruction/time");
        assertThat(profile.pathway("private-tutor").orElseThrow().doesNotAsk().get(0).id())
                .isEqualTo("us-xx/private-tutor/not-asked/1");
    }

    @Test
    void placesAreLinesOfTheFile() {
        // given
        List<String> lines = ProfileFixtures.text(ProfileFixtures.ANNOTATED).lines().toList();

        // then
        assertThat(lines.get(asked("reports").place().line() - 1)).isEqualTo("      reports:");
        assertThat(lines.get(profile.sources().get("guide").place().line() - 1)).isEqualTo("  guide:");
        assertThat(lines.get(profile.usualPathway().place().line() - 1)).isEqualTo("  home-instruction:");
    }

    @Test
    void severalCitationsMakeTheRuleAsWeakAsTheWeakest() {
        // given
        Requirement notice = asked("move-notice");

        // then
        assertThat(notice.cites()).extracting(Cite::words)
                .containsExactly("Example Code § 22-5 (B)", "Agency's guide to home instruction page 3");
        assertThat(notice.basis()).isEqualTo(Basis.AGENCY);
        assertThat(notice.binding()).as("that of the first source").isEqualTo(Binding.STATUTE);
    }

    @Test
    void ruleMayBeReadLessWellAndBindDifferentlyThanItsSource() {
        assertThat(asked("window-example").basis()).isEqualTo(Basis.SECONDARY);
        assertThat(asked("window-example").binding()).isEqualTo(Binding.AGENCY);
    }

    @Test
    void whomToConfirmWithIsTheOneAtTheTopUnlessTheRuleNamesAnother() {
        assertThat(asked("plan").confirmWith()).isEqualTo("the superintendent of your school district");
        assertThat(asked("move-notice").confirmWith()).isEqualTo("the superintendent of the new district");
    }

    @Test
    void paperShowsAFilingAndAnswerShowsAnApproval() {
        assertThat(asked("move-notice").shows()).isEqualTo(new Evidence.Filing("notice-of-intent"));
        assertThat(asked("reports").shows()).as("the id when no paper is named").isEqualTo(new Evidence.Filing("reports"));
        assertThat(asked("consent").shows()).isEqualTo(new Evidence.Approval("consent-request"));
        assertThat(asked("their-answer").shows()).isEqualTo(new Evidence.Filing("their-answer"));
        assertThat(asked("special-plan").shows())
                .isEqualTo(new Evidence.Words("The program must address the child's needs."));
    }

    @Test
    void withoutADateTimeIsDueAtTheEndOfTheYearAndAPaperNever() {
        assertThat(asked("time").due()).isEqualTo(new Due.YearEnd());
        assertThat(asked("subjects").due()).isEqualTo(new Due.YearEnd());
        assertThat(asked("portfolio").due()).isEqualTo(new Due.YearEnd());
        assertThat(asked("diploma").due()).isEqualTo(new Due.None(null));
        assertThat(asked("other-way").due()).isEqualTo(new Due.None("The law gives no day."));
    }

    @Test
    void casesKeepTheirOrder() {
        // given
        Due.Cases due = (Due.Cases) asked("yearly-notice").due();

        // then
        assertThat(due.cases()).containsExactly(
                new Due.Case(new Condition.Event(EventKind.PROGRAM_START, Condition.Event.Order.AFTER,
                        MonthDay.of(9, 15), null, null, null, true),
                        new Due.After(EventKind.PROGRAM_START, null, Span.days(14), null, null, null)),
                new Due.Case(new Condition.YearOfProgram(1, 1, 1),
                        new Due.Before(EventKind.PROGRAM_START, Span.days(0), true)),
                new Due.Case(Condition.ALWAYS, new Due.By(List.of(MonthDay.of(8, 15)), Due.YearOf.THIS_YEAR)));
    }

    @Test
    void remarksStandBesideTheLawsOwnDate() {
        assertThat(asked("two-dates").due()).isEqualTo(new Due.Remarked(
                new Due.By(List.of(MonthDay.of(10, 5)), Due.YearOf.THIS_YEAR),
                new Due.By(List.of(MonthDay.of(8, 10)), Due.YearOf.THIS_YEAR), null,
                new Due.By(List.of(MonthDay.of(9, 30)), Due.YearOf.THIS_YEAR),
                "The agency's page says 30 September."));
    }

    @Test
    void birthdayIsAnEventOfItsOwn() {
        // given
        Due.EarlierOf due = (Due.EarlierOf) asked("first-notice").due();

        // then
        assertThat(due.parts().get(2)).isEqualTo(new Due.After(null, 6, Span.days(5), null, null, null));
    }

    @Test
    void monthsCarryTheirRounding() {
        assertThat(asked("retest-date").due()).isEqualTo(new Due.After(EventKind.TEST_GIVEN, null,
                new Span(2, Span.Unit.MONTHS, Span.Rounding.DOWN), null, null,
                new Due.After(EventKind.LEFT_SCHOOL, null, new Span(18, Span.Unit.MONTHS, Span.Rounding.DOWN), null, null, null)));
    }

    @Test
    void requestWithANumberOfDays() {
        assertThat(asked("show-records").due()).isEqualTo(new Due.OnRequest(Span.days(15)));
        assertThat(asked("show-records").recurs()).isEqualTo(new Requirement.Recurs(
                Requirement.Recurs.Each.EVENT, List.of(EventKind.REQUEST_RECEIVED)));
    }

    @Test
    void amountsOfTimeGoByLevelOrForAll() {
        // given
        Evidence.AnyOf time = (Evidence.AnyOf) asked("time").shows();
        Evidence.Option hours = (Evidence.Option) time.parts().get(1);

        // then
        assertThat(hours.name()).isEqualTo("hours");
        assertThat(((Evidence.Time) hours.part()).amount())
                .isEqualTo(Map.of("elementary", new BigDecimal("900"), "secondary", new BigDecimal("990")));
        Evidence.Time days = (Evidence.Time) ((Evidence.Option) time.parts().get(0)).part();
        assertThat(days.amount()).isEqualTo(Map.of("", new BigDecimal("180")));
        assertThat(asked("time").countsFrom()).isEqualTo("notice-of-intent");
    }

    @Test
    void methodOfATestIsTheNameOfItsOption() {
        // given
        Evidence.AnyOf ways = (Evidence.AnyOf) asked("assessment").shows();

        // then
        Evidence.Test test = (Evidence.Test) ((Evidence.Option) ways.parts().get(0)).part();
        assertThat(test.method()).isEqualTo("standardized-test");
        assertThat(test.thresholds()).containsExactly(new Threshold("percentile", List.of("composite"),
                Threshold.Comparison.ABOVE, new BigDecimal("33")));
        Evidence.Evaluation narrative = (Evidence.Evaluation) ((Evidence.Option) ways.parts().get(1)).part();
        assertThat(narrative.method()).isEqualTo("narrative");
    }

    @Test
    void subjectsOverALevelTakeItsGrades() {
        // given
        Evidence.Subjects subjects = (Evidence.Subjects) asked("subjects").shows();

        // then
        assertThat(subjects.interval()).isEqualTo(Evidence.Subjects.Interval.OVER_LEVEL);
        assertThat(subjects.span().words()).isEqualTo("K-6");
        assertThat(subjects.items()).containsExactly(
                new SubjectItem("English", List.of("reading", "writing", "spelling"), true, false),
                new SubjectItem("arithmetic", List.of("arithmetic"), false, false),
                new SubjectItem("trigonometry", List.of("trigonometry"), false, true));
    }

    @Test
    void agesThatChangedAreApart() {
        // given
        AttendanceAge now = profile.attendance().get(1);

        // then
        assertThat(profile.attendance().get(0).validity().until()).isEqualTo(LocalDate.of(2019, 6, 30));
        assertThat(now.early()).isEqualTo(new Condition.Event(EventKind.ENTERED_SCHOOL, null, null, null, null, null, false));
        assertThat(((AttendanceAge.Starts.EarlierOf) now.starts()).parts()).startsWith(
                new AttendanceAge.Starts.ByDate(6, MonthDay.of(9, 1), true, MonthDay.of(9, 1),
                        AttendanceAge.MidYear.UNCLEAR),
                new AttendanceAge.Starts.ByDate(7, MonthDay.of(12, 1), false, null, AttendanceAge.MidYear.NEXT_YEAR),
                new AttendanceAge.Starts.CalendarYear(7, MonthDay.of(9, 1)));
        assertThat(((AttendanceAge.Ends.EarlierOf) now.ends()).parts()).contains(
                new AttendanceAge.Ends.OnEvent(EventKind.DIPLOMA),
                new AttendanceAge.Ends.ByDate(18, MonthDay.of(1, 1)));
    }

    @Test
    void factsWithoutAPresumptionAreAsked() {
        assertThat(profile.facts().get("disability-plan").presume()).isFalse();
        assertThat(profile.facts().get("parent-has-diploma").presume()).isNull();
    }

    @Test
    void yearOfAPathwayIsTheTopOneUnlessItHasItsOwn() {
        assertThat(profile.usualPathway().year())
                .isEqualTo(new SchoolYear(MonthDay.of(7, 1), MonthDay.of(6, 30), SchoolYear.Given.BY_LAW));
        assertThat(profile.pathway("private-tutor").orElseThrow().year().given())
                .isEqualTo(SchoolYear.Given.FAMILY);
    }

    @Test
    void announcedRuleIsNeverInForce() {
        // given
        Validity validity = asked("reported-change").validity();

        // then
        assertThat(validity.announced()).isTrue();
        assertThat(validity.inForceOn(LocalDate.of(2028, 1, 1))).isFalse();
    }

    @Test
    void openQuestionNamesWhomToAsk() {
        assertThat(asked("city-rule").question()).isEqualTo("Does the city's rule reach a child taught at home?");
        assertThat(asked("city-rule").ask()).isEqualTo("the superintendent");
    }

    @Test
    void profileIsNamedByItsContent() {
        // given: the digest of a known text, from FIPS 180-2, appendix B.1
        assertThat(Sha256.hex("abc")).isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");

        // then
        assertThat(profile.contentHash())
                .isEqualTo(Sha256.hex(ProfileFixtures.text(ProfileFixtures.ANNOTATED)));
    }
}
