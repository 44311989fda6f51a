package org.hearthrule.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The annotated book holds one record of each sort, all of them of Ada's. */
class ExplainAndReadinessTest {

    private static Run on(String command, String... more) {
        List<String> args = new ArrayList<>(List.of(command, "test-fixtures/books/annotated"));
        args.addAll(List.of(more));
        args.addAll(List.of("--jurisdictions", "test-fixtures/profiles"));
        return Run.of(args.toArray(String[]::new));
    }

    @Test
    void explainsALineByAnyPartOfItsIdThatIsItsOwn() {
        Run run = on("explain", "home-instruction/time/ada");

        assertThat(run.exit()).isZero();
        assertThat(run.out()).contains("us-xx/home-instruction/time/ada/2026-27", "WHAT WAS COUNTED", "days: 1",
                "THE ARITHMETIC", "THE RECORD COUNTED",
                "2026-08-31  Measured the jetty and worked out the planks. (2026-27, log-1)",
                "WHAT WOULD CHANGE THE ANSWER", "THE LAW", "Example Code § 22-5 (E), read November 25, 2026.",
                "https://law.example/code/22-5", "THE RULES THAT SPOKE", "What kind of rule it is: statute.",
                "Not certain: What a start after 1 March means for the year's minimum.");
    }

    @Test
    void namesTheLinesThatShareAPart() {
        Run run = on("explain", "reports/ada");

        assertThat(run.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(run.err()).contains("[SEVERAL-LINES]", "us-xx/home-instruction/reports/ada/2026-27.1");
    }

    @Test
    void namesTheNearestLine() {
        Run run = on("explain", "yearly-notise/ada/2026-27");

        assertThat(run.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(run.err()).contains("[UNKNOWN-LINE]", "Perhaps you meant us-xx/home-instruction/yearly-notice/ada/2026-27");
    }

    @Test
    void showsWhatLiesReadyForAnEvaluation() {
        Run run = on("readiness", "--student", "Ada");

        assertThat(run.exit()).isZero();
        assertThat(run.out()).startsWith("Before an evaluation: Ada Example, on March 1, 2027\n")
                .contains("SUBJECTS THE LAW NAMES", "THE PORTFOLIO, ITEM BY ITEM", "a plan book: there.",
                        "The scan of Example Achievement Test, April 20, 2027: papers/result.pdf", "TESTS AND EVALUATIONS",
                        "Who may do it, narrative: certified teacher or review panel; not the parent or "
                                .stripTrailing());
        assertThat(run.out().lines().filter(line -> line.length() > 80)).isEmpty();
    }

    /** 2026-27.json: one entry of 95 minutes, a drawing of September 4, a book of September 20. */
    @Test
    void countsEachSubjectForPrograms() throws Exception {
        JsonNode ready = new ObjectMapper().readTree(on("readiness", "--student", "ada", "--format", "json").out());

        assertThat(ready.get("student").asText()).isEqualTo("Ada Example");
        assertThat(ready.get("before").asText()).isEqualTo("2027-06-30");
        assertThat(ready.get("thirds")).hasSize(3);
        assertThat(ready.get("thirds").get(0).get("from").asText()).isEqualTo("2026-07-01");
        assertThat(ready.get("thirds").get(2).get("to").asText()).isEqualTo("2027-06-30");
        assertThat(ready.get("subjects").findValuesAsText("name")).contains("English", "arithmetic", "history of Example");
    }

    @Test
    void namesTheNearestChild() {
        Run run = on("readiness", "--student", "Aba");

        assertThat(run.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(run.err()).contains("[UNKNOWN-STUDENT]", "Perhaps you meant Ada Example");
    }
}
