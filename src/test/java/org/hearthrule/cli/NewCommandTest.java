package org.hearthrule.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NewCommandTest {

    private static final String ONE_CHILD = "Rowan family\nIda Rowan\n2016-05-14\n5\nExample\n1\n2026-09-01\nno\nyes\n";

    @TempDir
    private Path folder;

    private Run start(String typed) {
        return Run.typing(typed, "new", folder.resolve("book").toString(), "--jurisdictions", "test-fixtures/profiles");
    }

    @Test
    void writesABookThatCanBeCheckedAtOnce() throws Exception {
        Run run = start(ONE_CHILD);

        assertThat(run.exit()).isZero();
        assertThat(run.out()).contains("  hearthrule check " + folder.resolve("book"));
        assertThat(folder.resolve("book/family.json")).content().contains("Rowan family", "\"Ida Rowan\"", "2016-05-14",
                "us-xx", "home-instruction", "2026-09-01");
        assertThat(folder.resolve("book/2026-27.json")).content().contains("\"ida\": \"5\"");
        Run check = Run.of("check", folder.resolve("book").toString(), "--jurisdictions", "test-fixtures/profiles");
        assertThat(check.exit()).isZero();
        assertThat(check.out()).contains("Ida Rowan: Example, home instruction");
    }

    @Test
    void checksEachAnswerAtOnceAndAsksAgain() {
        Run run = start("\nRowan family\nIda\n14 May\n2027-05-14\n2016-05-14\n13\n5\nExampel\nExample\n9\n1\n2010-01-01\n"
                + "2026-09-01\nperhaps\nno\nyes\n");

        assertThat(run.exit()).isZero();
        assertThat(oneLine(run)).contains("Please write a name", "That is no date I can read",
                "May 14, 2027 has not come yet", "Please write K for kindergarten", "Perhaps you meant Example?",
                "Please write a number from 1 to 2", "That is before the birth date, May 14, 2016",
                "Please write yes or no");
        assertThat(folder.resolve("book/family.json")).exists();
    }

    @Test
    void goesOneQuestionBack() {
        start("Rowan family\nIda\nback\nIda Rowan\n2016-05-14\n5\nback\n6\nExample\n1\n2026-09-01\nno\nyes\n");

        assertThat(folder.resolve("book/family.json")).content().contains("\"Ida Rowan\"").doesNotContain("\"Ida\"");
        assertThat(folder.resolve("book/2026-27.json")).content().contains("\"6\"");
    }

    @Test
    void takesASecondChildInTheSameState() {
        Run run = start("Rowan family\nIda Rowan\n2016-05-14\n5\nExample\n1\n2026-09-01\nyes\n"
                + "Ida Rowan\nIda Fern Rowan\n2018-02-02\n3\n\n2\n2026-09-01\nno\nyes\n");

        assertThat(oneLine(run)).contains("There is a Ida Rowan already", "Press Enter for Example again");
        assertThat(folder.resolve("book/family.json")).content().contains("\"id\": \"ida\"", "\"id\": \"ida-2\"",
                "private-tutor");
    }

    @Test
    void leavesNothingBehindOnQuit() {
        Run run = start("Rowan family\nIda Rowan\nquit\n");

        assertThat(run.exit()).isZero();
        assertThat(run.out()).endsWith("Nothing was written.\n");
        assertThat(folder.resolve("book")).doesNotExist();
    }

    @Test
    void leavesNothingBehindWhenTheInputEnds() {
        assertThat(start("Rowan family\n").out()).endsWith("Nothing was written.\n");
        assertThat(folder.resolve("book")).doesNotExist();
    }

    @Test
    void doesNotWriteOverABook() throws Exception {
        start(ONE_CHILD);
        String before = Files.readString(folder.resolve("book/family.json"));

        Run run = start(ONE_CHILD);

        assertThat(run.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(run.err()).contains("[BOOK-EXISTS]", "Perhaps you want: hearthrule check");
        assertThat(folder.resolve("book/family.json")).content().isEqualTo(before);
    }

    @Test
    void writesAWordWithSpacesAsItCanBeTypedAgain() {
        assertThat(NewCommand.shell("book")).isEqualTo("book");
        assertThat(NewCommand.shell("our book's")).isEqualTo("'our book'\\''s'");
    }

    private static String oneLine(Run run) {
        return String.join(" ", run.out().split("\\s+"));
    }
}
