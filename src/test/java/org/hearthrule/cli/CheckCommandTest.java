package org.hearthrule.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckCommandTest {

    private static final String LAWS = "test-fixtures/profiles";
    private static final Path ANNOTATED = Path.of("test-fixtures/books/annotated");

    @TempDir
    private Path folder;
    private Path book;

    @BeforeEach
    void copyTheBook() throws IOException {
        book = Files.createDirectory(folder.resolve("our-book"));
        try (Stream<Path> files = Files.list(ANNOTATED)) {
            for (Path file : files.filter(path -> path.toString().endsWith(".json")).toList()) {
                Files.copy(file, book.resolve(file.getFileName()));
            }
        }
    }

    private Run check(String... more) {
        String[] args = new String[more.length + 4];
        args[0] = "check";
        args[1] = book.toString();
        args[2] = "--jurisdictions";
        args[3] = LAWS;
        System.arraycopy(more, 0, args, 4, more.length);
        return Run.of(args);
    }

    @Test
    void printsTheChecklistOfToday() {
        Run run = check();

        assertThat(run.exit()).isZero();
        assertThat(run.out()).startsWith("Checklist for March 1, 2027\nExample family\n  Ada Example: Example, home instruction\n")
                .contains("not legal advice", "yearly-notice/ada/2026-27")
                .doesNotContain("\u001b");
        assertThat(run.err()).isEmpty();
    }

    @Test
    void looksAtAnotherDay() {
        assertThat(check("--as-of", "2027-06-01").out()).startsWith("Checklist for June 1, 2027");
    }

    @Test
    void listsWhatTheLawDoesNotAskOnRequest() {
        assertThat(check().out()).doesNotContain("Approval before you start.");
        assertThat(check("--all").out()).contains("WHAT THE LAW DOES NOT ASK", "Approval before you start.");
    }

    @Test
    void writesJsonThatIsUtf8WhateverTheTerminal() throws IOException {
        Run run = Run.with("", Map.of(), false, StandardCharsets.US_ASCII, "check", book.toString(), "--jurisdictions",
                LAWS, "--format", "json");

        JsonNode json = new ObjectMapper().readTree(run.out());
        assertThat(json.get("jurisdiction").asText()).isEqualTo("us-xx");
        assertThat(json.get("lines").findValuesAsText("citation")).anyMatch(citation -> citation.contains("§ 22-5"));
    }

    @Test
    void writesAFileWholeAndLeavesNothingElse() throws IOException {
        Path out = folder.resolve("dates.ics");

        Run run = check("--format", "ics", "--out", out.toString());

        assertThat(run.exit()).isZero();
        assertThat(run.out()).isEmpty();
        assertThat(out).content().startsWith("BEGIN:VCALENDAR\r\n").endsWith("END:VCALENDAR\r\n");
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).containsExactlyInAnyOrder(out, book);
        }
    }

    @Test
    void doesNotWriteOverACalendarOfAnotherProgram() throws IOException {
        Path out = Files.writeString(folder.resolve("diary.ics"), "BEGIN:VCALENDAR\r\nPRODID:-//Other//EN\r\nEND:VCALENDAR\r\n");

        Run run = check("--format", "ics", "--out", out.toString());

        assertThat(run.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(run.err()).contains("[NOT-OUR-CALENDAR]", "Perhaps choose another name");
        assertThat(out).content().contains("-//Other//EN");
    }

    @Test
    void suggestsAFolderForAnOutThatHasNone() throws IOException {
        Files.createDirectory(folder.resolve("papers"));

        Run run = check("--out", folder.resolve("paper/list.txt").toString());

        assertThat(run.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(run.err()).contains("[NO-FOLDER]", "Perhaps you meant " + folder.resolve("papers"));
    }

    @Test
    void endsWithOneWhenStrictAndSomethingIsUnclear() {
        assertThat(check("--strict").exit()).isEqualTo(Exit.NEEDS_CARE);
        assertThat(check().exit()).isEqualTo(Exit.OK);
    }

    @Test
    void findsAChildByFirstNameWhateverTheCapitals() {
        assertThat(check("--student", "ADA").exit()).isZero();
    }

    @Test
    void namesTheNearestChild() {
        Run run = check("--student", "Adda");

        assertThat(run.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(run.err()).contains("[UNKNOWN-STUDENT] found \"Adda\", expected a child of this book: Ada Example. "
                + "Perhaps you meant Ada Example.");
    }

    @Test
    void reportsAllThatIsWrongInOneRunAtItsPlace() {
        Run run = Run.of("check", book.toString(), "--as-of", "2026-02-30", "--format", "pdf", "--jurisdictions", LAWS);

        assertThat(run.exit()).isEqualTo(Exit.BAD_INPUT);
        String line = "hearthrule check " + book + " --as-of 2026-02-30";
        assertThat(run.err()).contains("command line:1:" + (line.length() - 9)
                + ": error: [WRONG-DATE] found \"2026-02-30\", expected a date such as \"2026-09-01\". "
                + "Perhaps the last day of that month, 2026-02-28.", "[UNKNOWN-VALUE] found \"pdf\"", "2 things to put right");
        assertThat(run.out()).isEmpty();
    }

    @Test
    void pointsIntoTheBookForAWrongRecord() throws IOException {
        Path year = book.resolve("2026-27.json");
        Files.writeString(year, Files.readString(year).replace("\"2027-04-20\"", "\"2027-04-31\""));

        Run run = check();

        assertThat(run.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(run.err()).contains("2026-27.json:", "[WRONG-DATE] found \"2027-04-31\"", "One thing to put right");
    }

    @Test
    void namesTheStatesAndPathwaysThereAre() throws IOException {
        Path family = book.resolve("family.json");
        String good = Files.readString(family);
        Files.writeString(family, good.replace("\"pathway\": \"home-instruction\"", "\"pathway\": \"home-instrution\""));
        Run pathway = check();
        Files.writeString(family, good.replace("\"jurisdiction\": \"us-xx\"", "\"jurisdiction\": \"us-zz\""));
        Run state = check();

        assertThat(pathway.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(pathway.err()).contains("family.json:", "[UNKNOWN-PATHWAY]", "Perhaps you meant `home-instruction`");
        assertThat(state.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(state.err()).contains("family.json:", "[UNKNOWN-JURISDICTION] found \"us-zz\"", "us-xx");
    }

    @Test
    void printsAChecklistWithUnclearLinesForAChildWithoutABirthDate() throws IOException {
        Path family = book.resolve("family.json");
        Files.writeString(family, Files.readString(family).replace("\"born\": \"2015-04-09\",", ""));

        Run run = check();

        assertThat(run.exit()).isZero();
        assertThat(run.out()).contains("THIN OR UNCLEAR", "The book does not say when Ada Example was born.");
    }

    @Test
    void usesWeightOnATerminalOnly() {
        String[] args = {"check", book.toString(), "--jurisdictions", LAWS};

        assertThat(Run.with("", Map.of(), true, StandardCharsets.UTF_8, args).out()).contains("\u001b[1m");
        assertThat(Run.with("", Map.of("NO_COLOR", "1"), true, StandardCharsets.UTF_8, args).out()).doesNotContain("\u001b");
        assertThat(Run.with("", Map.of("NO_COLOR", ""), true, StandardCharsets.UTF_8, args).out()).contains("\u001b[1m");
    }

    @Test
    void printsAsciiWhereTheTerminalShowsNothingElse() {
        Run run = Run.with("", Map.of(), false, StandardCharsets.US_ASCII, "check", book.toString(), "--jurisdictions", LAWS);

        assertThat(run.out()).contains("Sec. 22-5 (B)", "Notice of intent - Ada Example");
        assertThat(run.out().chars().filter(c -> c > 0x7E)).isEmpty();
    }
}
