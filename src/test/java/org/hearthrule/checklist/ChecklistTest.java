package org.hearthrule.checklist;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.hearthrule.law.RequirementKind;
import org.hearthrule.rules.Finding;
import org.hearthrule.rules.Judgement;
import org.hearthrule.rules.Status;
import org.junit.jupiter.api.Test;

class ChecklistTest {

    private static final LocalDate TODAY = SampleJudgement.AS_OF;

    @Test
    void putsWhatFallsDueInThirtyDaysUnderSoonAndTheNextDayUnderLater() {
        assertThat(section(Status.OPEN, TODAY)).isEqualTo(Section.SOON);
        assertThat(section(Status.OPEN, TODAY.plusDays(30))).isEqualTo(Section.SOON);
        assertThat(section(Status.OPEN, TODAY.plusDays(31))).isEqualTo(Section.LATER);
        assertThat(section(Status.OPEN, null)).isEqualTo(Section.LATER);
    }

    @Test
    void putsAnOpenLineWhoseDayHasPassedUnderSoon() {
        assertThat(section(Status.OPEN, TODAY.minusDays(3))).isEqualTo(Section.SOON);
    }

    @Test
    void ordersBySectionDayChildAndTitle() {
        Checklist checklist = Checklist.of(SampleJudgement.judgement(), SampleJudgement.book());

        assertThat(checklist.lines()).extracting(line -> line.id().substring("us-xx/home-instruction/".length()))
                .containsExactly("yearly-notice/bo/2026-27", "their-answer/ada/2026-27", "time/ada/2026-27",
                        "results/ada/2026-27", "withdrawal/bo/2026-27", "yearly-notice/ada/2026-27",
                        "city-rule/ada/2026-27", "portfolio/ada/2026-27", "assessment/bo/2026-27", "does-not-ask-1");
    }

    @Test
    void keepsOneChildsLinesAndThoseOfTheFamily() {
        Checklist checklist = Checklist.of(SampleJudgement.judgement(), SampleJudgement.book()).forStudent("bo");

        assertThat(checklist.lines()).extracting(line -> line.finding().student()).containsExactly("bo", "bo", "bo", null);
        assertThat(checklist.follows()).extracting(Checklist.Follows::name).containsExactly("Bo Example");
    }

    @Test
    void needsCareWhenALineIsLateThinOrUnclear() {
        assertThat(needsCare(Status.LATE, false)).isTrue();
        assertThat(needsCare(Status.THIN, false)).isTrue();
        assertThat(needsCare(Status.UNCLEAR, false)).isTrue();
        assertThat(needsCare(Status.OPEN, false)).isFalse();
        assertThat(needsCare(Status.MET, false)).isFalse();
    }

    @Test
    void neverNeedsCareForWhatTheOtherSideOwes() {
        assertThat(needsCare(Status.UNCLEAR, true)).isFalse();
    }

    private static Section section(Status status, LocalDate due) {
        return checklist(SampleJudgement.finding("time", "ada", RequirementKind.TIME, "Days", "2026-27").status(status)
                .due(due).make()).lines().get(0).section();
    }

    private static boolean needsCare(Status status, boolean theirs) {
        SampleJudgement.Draft draft = SampleJudgement.finding("time", "ada", RequirementKind.TIME, "Days", "2026-27")
                .status(status);
        return checklist(theirs ? draft.theirs().make() : draft.make()).needsCare();
    }

    private static Checklist checklist(Finding finding) {
        return Checklist.of(new Judgement(TODAY, List.of(SampleJudgement.profile()), List.of(finding)),
                SampleJudgement.book());
    }
}
