package org.hearthrule.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Expected days come from the annotated profile, which says in plain words what its invented law asks. */
class DeadlinesCommandTest {

    private static Run deadlines(String... more) {
        List<String> args = new ArrayList<>(List.of("deadlines", "us-xx", "--born", "2015-04-09", "--grade", "6",
                "--starts", "2026-08-31", "--jurisdictions", "test-fixtures/profiles"));
        args.addAll(List.of(more));
        return Run.of(args.toArray(String[]::new));
    }

    private static JsonNode line(Run run, String part) throws Exception {
        for (JsonNode line : new ObjectMapper().readTree(run.out()).get("lines")) {
            if (line.get("id").asText().contains(part)) {
                return line;
            }
        }
        throw new AssertionError("no line " + part);
    }

    @Test
    void listsThePathwaysAndShowsTheUsualOne() {
        Run run = deadlines();

        assertThat(run.exit()).isZero();
        assertThat(run.out()).startsWith("WAYS TO TEACH AT HOME IN EXAMPLE")
                .contains("home-instruction (the usual one): A parent teaches at home after a yearly\n  notice.",
                        "private-tutor: A certified tutor teaches.", "Checklist for March 1, 2027",
                        "your child: Example, home instruction");
    }

    /** Without records nobody can say that something was not done. */
    @Test
    void callsADayThatHasPassedNotLate() {
        assertThat(deadlines().out()).contains("DAYS THAT HAVE PASSED", "Passed.").doesNotContain("LATE ", "Late.");
    }

    @Test
    void showsOnlyThePathwayThatWasAskedFor() {
        Run run = deadlines("--pathway", "private-tutor");

        assertThat(run.out()).doesNotContain("WAYS TO TEACH").contains("Tutor's certificate")
                .doesNotContain("Notice of intent");
    }

    /** The profile: in the first year the notice goes in before the program starts, the day itself being too late. */
    @Test
    void countsFromTheStart() throws Exception {
        JsonNode notice = line(deadlines("--format", "json", "--as-of", "2026-08-01"), "/yearly-notice/");

        assertThat(notice.get("due").asText()).isEqualTo("2026-08-30");
        assertThat(notice.get("student").asText()).isEqualTo("your child");
    }

    /** The profile: a plan is due 4 weeks after the forms came, or on August 15, whichever is later. */
    @Test
    void hangsADateOnAnEvent() throws Exception {
        Run with = deadlines("--format", "json", "--event", "materials-received=2026-09-10");

        assertThat(line(with, "/plan/").get("due").asText()).isEqualTo("2026-10-08");
    }

    @Test
    void namesTheEventThatIsMissing() throws Exception {
        JsonNode plan = line(deadlines("--format", "json"), "/plan/");

        assertThat(plan.get("status").asText()).isEqualTo("unclear");
        assertThat(plan.get("due").isNull()).isTrue();
        assertThat(plan.get("dueNote").asText() + plan.get("why").asText() + plan.get("next").asText())
                .contains("the day you received their forms");
    }

    @Test
    void takesSeveralEventsAfterOneOption() {
        assertThat(deadlines("--event", "left-school=2026-06-12", "materials-received=2026-09-10").exit()).isZero();
    }

    @Test
    void writesACalendar() {
        assertThat(deadlines("--format", "ics").out()).startsWith("BEGIN:VCALENDAR\r\n").contains("DTSTART;VALUE=DATE:");
    }

    @Test
    void reportsEveryWrongValueWithASuggestion() {
        Run run = Run.of("deadlines", "exampel", "--born", "2030-01-01", "--grade", "13", "--starts", "2026-02-30",
                "--event", "lef-school=2026-01-01", "--event", "moved-in", "--jurisdictions", "test-fixtures/profiles");

        assertThat(run.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(run.err()).contains("[UNKNOWN-JURISDICTION] found \"exampel\"", "Perhaps you meant Example (US-XX)",
                "[WRONG-GRADE] found \"13\"", "[WRONG-DATE] found \"2026-02-30\"",
                "[UNKNOWN-EVENT] found the event \"lef-school\"", "Perhaps you meant left-school",
                "[NOT-AN-EVENT] found \"moved-in\"", "5 things to put right");
    }

    @Test
    void namesTheNearestPathway() {
        Run run = deadlines("--pathway", "privat-tutor");

        assertThat(run.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(run.err()).contains("[UNKNOWN-PATHWAY]", "one of home-instruction, private-tutor, learning-group",
                "Perhaps you meant private-tutor");
    }

    @Test
    void refusesAStartBeforeTheBirth() {
        assertThat(Run.of("deadlines", "us-xx", "--born", "2026-08-31", "--grade", "K", "--starts", "2026-08-31",
                "--jurisdictions", "test-fixtures/profiles").err()).contains("[BEFORE-BIRTH]");
    }
}
