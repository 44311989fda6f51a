package org.hearthrule.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.api.Test;

class LawCommandTest {

    private static Run law(String... more) {
        String[] args = new String[more.length + 3];
        args[0] = "law";
        args[1] = "--jurisdictions";
        args[2] = "test-fixtures/profiles";
        System.arraycopy(more, 0, args, 3, more.length);
        return Run.of(args);
    }

    @Test
    void saysInPlainWordsWhatTheAnnotatedProfileAsks() {
        Run run = law("us-xx", "--all");

        assertThat(run.exit()).isZero();
        assertThat(oneLine(run)).contains("Example: home instruction", "HOME INSTRUCTION (the usual one)",
                "Notice after a move Due within 30 days after the day you moved in.",
                "Plan for the year Due on the later of these: within 4 weeks after the day you received their forms; or by August 15.",
                "Results of the assessment Due by August 1 of the next school year.",
                "Enrolment in the register Due from October 1 to October 15.",
                "Consent to the evaluator Due on or before the day of the test.",
                "Not asked - Approval before you start.",
                "What a start after 1 March means for the year's minimum. Ask the superintendent.",
                "July 1, 2019: The age fell from 7 to 6.", "From July 1, 2027: The yearly notice would end.",
                "Example Code § 22-9, from memory, not read: unconfirmed", "https://agency.example/guide");
    }

    @Test
    void saysEachDutyInFullOnRequest() {
        assertThat(oneLine(law("us-xx", "--all"))).contains("It says: name and age of the child; subjects to be studied.",
                "Form: in writing, by registered mail.", "Keep it for 2 years.",
                "Shown by: 180 days in the school year; or 900 hours (elementary) and 990 hours (secondary) in the school year.");
    }

    @Test
    void leavesOutWhatWasNotInForceOnTheDay() {
        assertThat(oneLine(law("us-xx", "--all", "--as-of", "2026-06-30"))).contains("Leaving age in the city ");
        assertThat(oneLine(law("us-xx", "--all", "--as-of", "2026-07-01"))).doesNotContain("Leaving age in the city ");
        assertThat(oneLine(law("us-xx", "--all", "--as-of", "2019-06-30"))).contains("The law begins to bind a child on turning 7.");
    }

    /** Two screens of a terminal, with the rules most families meet and not a word about sections. */
    @Test
    void guideFitsTwoScreensAndTellsTheUsualWay() {
        Run run = law("us-xx");

        assertThat(oneLine(run)).contains("> home-instruction: A parent teaches at home after a yearly notice.",
                "Papers to send - Notice of intent: by August 15; other days in some cases.", "Not asked Approval before you start.");
        assertThat(law("ohio").out().lines().count()).isLessThan(100);
    }

    @Test
    void guideTellsAnotherWayOnRequest() {
        assertThat(oneLine(law("us-xx", "--pathway", "private-tutor"))).contains("> private-tutor: A certified tutor teaches.",
                "PRIVATE TUTOR", "Who teaches: a certified teacher.");
        assertThat(law("us-xx", "--pathway", "private-tuter").err()).contains("private-tutor");
    }

    /** Public Act 26-37 is known from restatements only; nobody may be led to take its way. */
    @Test
    void saysThatAWayIsNotOpenYet() {
        String way = "parent-managed-learning";
        String notYet = "This way is announced, from July 1, 2027 on, and not in force.";

        assertThat(oneLine(Run.of("law", "ct", "--pathway", way))).contains(notYet);
        assertThat(Run.of("compare", "ct", "oh", "--pathway-here", way).out()).contains("This way is announced, from");
        assertThat(oneLine(Run.of("deadlines", "ct", "--pathway", way, "--born", "2016-03-02", "--grade", "5", "--starts",
                "2026-08-24"))).contains(notYet);
    }

    /** Fla. Stat. 1002.395(7)(b), as amended in 2023. */
    @Test
    void saysThatAWayWasNotOpenYet() {
        String notYet = "This way is not open on this day: its law begins on July 1, 2023.";

        assertThat(oneLine(Run.of("law", "fl", "--pathway", "personalized-education-program", "--as-of", "2023-06-30"))).contains(notYet);
        assertThat(oneLine(Run.of("law", "fl", "--pathway", "personalized-education-program", "--as-of", "2023-07-01")))
                .doesNotContain("This way is");
    }

    /** Mo. Rev. Stat. 167.042 as of August 28, 2025 was enacted, not announced; only later than the day looked at. */
    @Test
    void whatBeginsLaterIsNotCalledAnnounced() {
        String law = oneLine(Run.of("law", "mo", "--as-of", "2019-01-01"));
        String later = law.substring(law.indexOf("WHAT BEGINS AFTER THIS DAY"), law.indexOf("WHAT IS ANNOUNCED, NOT IN FORCE"));

        assertThat(later).contains("From August 28, 2025: Letter to be dropped from the rolls.");
    }

    /** Idaho Code 33-202 asks one thing of a family that teaches at home, in words: the guide has to say it. */
    @Test
    void guideNamesARuleInWordsThatHoldsForEverybodyAndIsOpen() {
        assertThat(oneLine(Run.of("law", "idaho"))).contains("subjects commonly and usually taught in Idaho's public schools");
    }

    @Test
    void understandsNamesAndSuggestsTheNearest() {
        assertThat(law("Example").exit()).isZero();
        Run run = law("Exampel");
        assertThat(run.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(run.err()).contains("Perhaps you meant Example (US-XX)");
    }

    @Test
    void listsTheLawsForPrograms() throws Exception {
        JsonNode all = new ObjectMapper().readTree(law("--list", "--format", "json").out()).get("jurisdictions");

        JsonNode example = null;
        for (JsonNode one : all) {
            example = one.get("jurisdiction").asText().equals("us-xx") ? one : example;
        }
        assertThat(example.fieldNames()).toIterable().containsExactly("jurisdiction", "name", "pathways", "requirements",
                "byBasis", "lastRead", "openDoubts");
        assertThat(example.get("pathways")).extracting(JsonNode::asText).containsExactly("home-instruction", "private-tutor",
                "learning-group");
        assertThat(example.get("lastRead").asText()).isEqualTo("2026-11-25");
        assertThat(example.get("openDoubts").asInt()).isEqualTo(3);
        int sum = 0;
        for (JsonNode count : example.get("byBasis")) {
            sum += count.asInt();
        }
        assertThat(sum).isEqualTo(example.get("requirements").asInt());
        assertThat(example.get("byBasis").get("memory").asInt()).isEqualTo(2);
    }

    @Test
    void listsTheLawsAsATable() {
        assertThat(law("--list").out().lines().filter(line -> line.startsWith("xx  Example"))).hasSize(1);
        assertThat(law().out()).isEqualTo(law("--list").out());
        assertThat(Run.of("law", "--list").out().lines().filter(line -> line.contains(" 20")).map(String::length))
                .as("long names push no column aside").containsOnly(80);
    }

    private static String oneLine(Run run) {
        return String.join(" ", run.out().split("\\s+"));
    }
}
