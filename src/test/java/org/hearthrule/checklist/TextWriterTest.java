package org.hearthrule.checklist;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.hearthrule.law.RequirementKind;
import org.hearthrule.rules.Finding;
import org.hearthrule.rules.Judgement;
import org.hearthrule.rules.Status;
import org.hearthrule.terms.Wording;
import org.junit.jupiter.api.Test;

class TextWriterTest {

    private static final String GOLDEN = """
            Checklist for June 18, 2027
            The Example family
              Ada Example: Example, home instruction
              Bo Example: Example, home instruction

            Hearthrule lays your records beside the law as its sources were last read. It is
            not legal advice, and it can be wrong or out of date. Before you rely on a line,
            confirm it with the person the line names.

            One line is late. It stands first, with what to do. The next date is June 30,
            2027 (in 12 days): Days of instruction · Ada.

            LATE ───────────────────────────────────────────────────────────────────────────

            August 15, 2026     Notice of intent · Bo
            10 months ago       ◁ Late. Your records show no notice of intent for 2026-27.
                                It was due by August 15, 2026.
                                Next: Send the notice to the superintendent and keep a copy
                                with the day you sent it.
                                Example Code § 22-5 (B), read November 25, 2026. Confirm
                                with the superintendent of your school district.
                                yearly-notice/bo/2026-27

            THE NEXT 30 DAYS ───────────────────────────────────────────────────────────────

            June 25, 2027       The superintendent's answer · Ada
            in 7 days           ◇ Open. Their answer is due in ten days. This is theirs to
                                do, not yours.
                                Next: If nothing has come, ask kindly.
                                Example Code § 22-5 (B), read November 25, 2026. Confirm
                                with the superintendent of your school district.
                                their-answer/ada/2026-27

            June 30, 2027       Days of instruction · Ada
            in 12 days          ◇ Open. Your records show 171 of 180 days. Nine more by
                                June 30 would do it.
                                Next: Keep logging.
                                Example Code § 22-5 (E), read November 25, 2026. Confirm
                                with the superintendent of your school district.
                                time/ada/2026-27

            LATER, OR WITHOUT A DATE ───────────────────────────────────────────────────────

            August 1, 2027      Results of the assessment · Ada
            in 44 days          ◇ Open. The results are sent after the year. It can be done
                                from July 1, 2027.
                                Next: Send the results.
                                Example Code § 22-5 (D); Agency's guide to home instruction
                                page 4, read on a page of the state agency November 25,
                                2026. Confirm with the superintendent of your school
                                district.
                                results/ada/2026-27

            no date             Letter of withdrawal · Bo
                                ◇ Open. Nothing was sent yet. The law gives no number of
                                days.
                                Next: Tell the school in writing that the child will be
                                taught at home.
                                Agency's guide to home instruction page 4, read on a page of
                                the state agency November 25, 2026. Agency practice, not
                                law. Confirm with the superintendent of your school
                                district.
                                withdrawal/bo/2026-27

            DONE, AS YOUR RECORDS SHOW ─────────────────────────────────────────────────────

            August 15, 2026     Notice of intent · Ada
                                ◆ Shown. You sent it on July 20, 2026.
                                Example Code § 22-5 (B), read November 25, 2026.
                                yearly-notice/ada/2026-27

            THIN OR UNCLEAR ────────────────────────────────────────────────────────────────

                                Leaving age in the city · Ada
                                ◌ Unclear. Does the city's rule reach a child taught at
                                home?
                                Next: Ask the superintendent.
                                Example Code § 22-9 (2), from memory, not read: unconfirmed
                                (noted November 25, 2026). Confirm with the superintendent
                                of your school district.
                                city-rule/ada/2026-27

                                Portfolio · Ada
                                ◈ Thin. It holds no work in music since November.
                                Next: Put one or two dated pieces in.
                                Example Code § 22-5 (G), read November 25, 2026. Confirm
                                with the superintendent of your school district.
                                portfolio/ada/2026-27

            ────────────────────────────────────────────────────────────────────────────────
            2 more lines say what is not due or not asked, and why. Add --all to see them.
            To see what was counted for a line: hearthrule explain BOOK, and the line's last
            words.
            This is not legal advice. Confirm each line with the person it names before you
            rely on it.
            """;

    @Test
    void setsTheWholeChecklist() {
        // given a judgement with a line of every sort, in no order
        Checklist checklist = Checklist.of(SampleJudgement.judgement(), SampleJudgement.book());

        // when
        String text = TextWriter.write(checklist, false, Wording.english(), Style.PLAIN);

        // then
        assertThat(text).isEqualTo(GOLDEN);
    }

    @Test
    void showsWhatIsNotDueAndNotAskedOnRequest() {
        String text = text(SampleJudgement.judgement(), true, Style.PLAIN);

        assertThat(text).contains("NOT DUE NOW, AND WHY", "– Not due. It is asked in grades 3, 5 and 8; Bo is in grade",
                "WHAT THE LAW DOES NOT ASK", "– Not asked. The law does not ask for approval");
        assertThat(text.indexOf("NOT DUE NOW")).isLessThan(text.indexOf("WHAT THE LAW DOES NOT ASK"))
                .isGreaterThan(text.indexOf("THIN OR UNCLEAR"));
    }

    @Test
    void staysWithinEightyColumnsButForIdsThatMustStayWhole() {
        String text = text(SampleJudgement.judgement(), true, Style.PLAIN);

        assertThat(text.lines().filter(line -> Width.of(line) > 80 && !line.strip().startsWith("us-xx/"))).isEmpty();
    }

    @Test
    void usesNothingButAsciiWhereNothingElseCanBeShown() {
        String text = text(SampleJudgement.judgement(), true, Style.ASCII);

        assertThat(text.chars().filter(c -> c > 0x7E)).isEmpty();
        assertThat(text).contains("< Late.", "Example Code Sec. 22-5 (B)", "Notice of intent - Bo");
    }

    @Test
    void saysTheSameWithWeightAndColourAsWithout() {
        String plain = text(SampleJudgement.judgement(), true, Style.PLAIN);
        String weighted = text(SampleJudgement.judgement(), true, new Style(80, true, true));

        assertThat(weighted).contains("\u001b[");
        assertThat(weighted.replaceAll("\u001b\\[[0-9;]*m", "")).isEqualTo(plain);
    }

    @Test
    void putsLinesThatSayTheSameOfSeveralChildrenTogether() {
        // given the same duty, open for both children alike
        List<Finding> findings = List.of(open("ada"), open("bo"));

        // when
        String text = text(new Judgement(SampleJudgement.AS_OF, List.of(SampleJudgement.profile()), findings), false,
                Style.PLAIN);

        // then it stands once, with both ids
        assertThat(text).containsOnlyOnce("Results · Ada and Bo").containsOnlyOnce("Send them.")
                .contains("results/ada/2026-27, results/bo/2026-27");
    }

    @Test
    void countsLinesAsTheyStandOnThePage() {
        List<Finding> findings = List.of(late("ada"), late("bo"));

        String text = text(new Judgement(SampleJudgement.AS_OF, List.of(SampleJudgement.profile()), findings), false,
                Style.PLAIN);

        assertThat(text).containsOnlyOnce("Results · Ada and Bo").contains("One line is late.");
    }

    private static Finding late(String student) {
        return SampleJudgement.finding("results", student, RequirementKind.FILE, "Results", "2026-27")
                .status(Status.LATE).due(LocalDate.of(2026, 7, 1)).why("Nothing is sent.").next("Send them.").make();
    }

    private static Finding open(String student) {
        return SampleJudgement.finding("results", student, RequirementKind.FILE, "Results", "2026-27")
                .status(Status.OPEN).due(LocalDate.of(2027, 7, 1)).why("Nothing is sent yet.").next("Send them.").make();
    }

    @Test
    void showsCharactersThatWouldSteerTheTerminalAsEscapes() {
        // given a title with an escape sequence and a mark that turns the reading direction
        Finding finding = SampleJudgement.finding("results", "ada", RequirementKind.FILE, "A\u001b[2Jb\u202Ec", "2026-27")
                .status(Status.OPEN).why("Open.").make();

        String text = text(new Judgement(SampleJudgement.AS_OF, List.of(SampleJudgement.profile()), List.of(finding)),
                false, Style.PLAIN);

        assertThat(text).contains("A\\u001B[2Jb\\u202Ec").doesNotContain("\u001b", "\u202E");
    }

    private static String text(Judgement judgement, boolean all, Style style) {
        return TextWriter.write(Checklist.of(judgement, SampleJudgement.book()), all, Wording.english(), style);
    }
}
