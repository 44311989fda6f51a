package org.hearthrule.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class CompareCommandTest {

    private static final String[] MOVE = {"virginia", "ohio", "--born", "2016-03-02", "--grade", "5", "--moves", "2027-03-15"};

    private static Run compare(String... more) {
        List<String> args = new ArrayList<>(List.of("compare"));
        args.addAll(List.of(more));
        return Run.of(args.toArray(String[]::new));
    }

    private static String oneLine(String text) {
        return String.join(" ", text.split("\\s+"));
    }

    /** What stands between two headings. */
    private static String part(Run run, String heading, String next) {
        String text = run.out();
        return oneLine(text.substring(text.indexOf(heading), text.indexOf(next)));
    }

    @Test
    void laysTwoLawsSideBySide() {
        Run run = compare("va", "oh");

        assertThat(run.exit()).isZero();
        assertThat(run.out().lines()).anyMatch(line -> line.startsWith("Virginia, home instruction") && line.endsWith("Ohio, home education"))
                .anyMatch(line -> line.startsWith("- Notice of intent.") && line.contains("  - First notice."));
        assertThat(run.out().lines()).as("fits a terminal").allMatch(line -> line.length() <= 80);
        assertThat(oneLine(run.out())).contains("It is not legal advice", "Every duty of each law is named");
    }

    /** Virginia gives evidence from 6 on September 30 (Va. Code 22.1-254.1(C)); a child of 5 does not. */
    @Test
    void namesOnlyTheDutiesOfTheChild() {
        Run ten = compare("va", "oh", "--born", "2016-03-02", "--grade", "5", "--as-of", "2026-11-25");
        Run five = compare("va", "oh", "--born", "2020-12-02", "--grade", "K", "--as-of", "2026-11-25");

        assertThat(part(ten, "PAPERS TO SEND", "NOT ASKED")).contains("Evidence of progress. August 1, 2027.");
        assertThat(part(five, "PAPERS TO SEND", "NOT ASKED")).doesNotContain("Evidence of progress");
    }

    /**
     * A notice within five days of a move into an Ohio district (ORC 3321.042(C)); Virginia's evidence by August 1 would
     * have come later (Va. Code 22.1-254.1(C)).
     */
    @Test
    void saysWhatAMoveBrings() {
        Run run = compare(MOVE);

        assertThat(part(run, "WHAT OHIO ASKS", "WORTH KEEPING")).contains("Notice after a move. March 20, 2027.");
        assertThat(part(run, "WHAT ENDS IN VIRGINIA", "WHAT OHIO ASKS")).contains("Evidence of progress. August 1, 2027.");
        assertThat(part(run, "STILL OWED IN VIRGINIA", "WHAT ENDS IN VIRGINIA")).contains("Notice of intent. August 15, 2026.");
    }

    @Test
    void saysTheSameToPrograms() throws Exception {
        List<String> args = new ArrayList<>(List.of(MOVE));
        args.addAll(List.of("--format", "json"));
        JsonNode all = new ObjectMapper().readTree(compare(args.toArray(String[]::new)).out());

        assertThat(all.get("here").get("jurisdiction").asText()).isEqualTo("us-va");
        assertThat(all.get("caution").asText()).contains("not legal advice");
        assertThat(all.get("move").get("day").asText()).isEqualTo("2027-03-15");
        assertThat(all.get("move").get("toFileThere")).extracting(line -> line.get("title").asText() + " " + line.get("due").asText())
                .contains("Notice after a move 2027-03-20");
    }

    @Test
    void saysAllThatIsWrongAtOnce() {
        Run run = compare("virginai", "ohio", "--grade", "13", "--moves", "2027-02-30");

        assertThat(run.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(run.err()).contains("Perhaps you meant Virginia", "WRONG-GRADE", "2027-02-30", "--grade without --born");
    }

    @Test
    void moveBeforeTheStartIsRefused() {
        Run run = compare("va", "oh", "--born", "2016-03-02", "--grade", "5", "--starts", "2027-04-01", "--moves", "2027-03-15");

        assertThat(run.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(run.err()).contains("BEFORE-START");
    }

    /** The list of grades 1 to 6 (Cal. Educ. Code 51210) is not that of a child in kindergarten. */
    @Test
    void kindergartnerIsInKindergarten() {
        String[] child = {"ca", "oh", "--born", "2020-08-01", "--as-of", "2026-11-25", "--grade"};

        assertThat(compare(with(child, "K")).out()).doesNotContain("Subjects of grades 1 to 6");
        assertThat(compare(with(child, "1")).out()).contains("Subjects of grades 1 to 6");
    }

    /** A tutor's year of 140 days (Ala. Code 16-28-5) is a calendar year: that of 2026 still runs in November. */
    @Test
    void lawThatCountsByCalendarYearsIsNotOver() {
        Run run = compare("al", "oh", "--pathway-here", "private-tutor", "--born", "2016-03-02", "--grade", "5", "--as-of",
                "2026-11-25");

        assertThat(part(run, "TIME", "SUBJECTS")).contains("140 days of three hours", "December 31, 2026");
    }

    /** South Dakota asked for a test in grades 4, 8 and 11 until 2021 (SDCL 13-27-3 before SB 177). */
    @Test
    void whatTheNewPlaceNoLongerAsksIsNoReasonToKeepAnything() {
        Run run = compare("ny", "sd", "--born", "2011-09-15", "--grade", "10", "--moves", "2026-09-20");

        assertThat(part(run, "WORTH KEEPING", "More on each")).contains("Annual assessment.").doesNotContain("2021", "Adequate result");
    }

    @Test
    void whatIsToBeSentIsInTheOrderOfItsDays() throws Exception {
        JsonNode sent = new ObjectMapper().readTree(compare("oh", "vt", "--born", "2016-03-02", "--grade", "5", "--moves",
                "2027-03-15", "--format", "json").out()).get("move").get("toFileThere");
        List<String> days = new ArrayList<>();
        sent.forEach(line -> days.add(line.get("due").isNull() ? "9" : line.get("due").asText()));

        assertThat(days).hasSizeGreaterThan(3).isSorted();
    }

    @Test
    void nothingInAColumnIsSaidOfTheChildWhoWasNamed() {
        assertThat(part(compare("oh", "vt"), "TIME", "SUBJECTS")).contains("nothing that was read");
        assertThat(part(compare(MOVE), "WHO TEACHES", "NOT ASKED")).contains("nothing found for this child")
                .doesNotContain("nothing that was read");
        assertThat(oneLine(compare("oh", "vt", "--born", "2016-03-02", "--grade", "5", "--moves", "2027-03-15").out()))
                .doesNotContain("These above all");
    }

    @Test
    void longNamesOfWaysStayInTheirColumns() {
        assertThat(compare("sc", "ia").out().lines()).allMatch(line -> line.length() <= 80);
    }

    @Test
    void aDayBesideThatOfTheMoveIsRefused() {
        assertThat(compare(with(MOVE, "--as-of", "2026-11-25")).err()).contains("TWO-DAYS");
    }

    private static String[] with(String[] args, String... more) {
        List<String> all = new ArrayList<>(List.of(args));
        all.addAll(List.of(more));
        return all.toArray(String[]::new);
    }
}
