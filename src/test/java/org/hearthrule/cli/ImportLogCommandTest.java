package org.hearthrule.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ImportLogCommandTest {

    private static final String COLUMNS = "date=Day,students=Who,minutes=Min,subjects=Subject,did=What we did";

    @TempDir
    private Path folder;
    private Path book;
    private Path table;

    @BeforeEach
    void makeABookAndATable() throws IOException {
        book = folder.resolve("book");
        Run.typing("Rowan family\nIda Rowan\n2016-05-14\n5\nExample\n1\n2026-09-01\nno\nyes\n", "new", book.toString(),
                "--jurisdictions", "test-fixtures/profiles");
        table = Files.writeString(folder.resolve("autumn.csv"), """
                Day,Who,Min,Subject,What we did,Weather
                9/1/2026,Ida,60,science,Looked at pond water,sunny
                9/13/2026,Ida,45,arithmetic,Fractions of a loaf,rain
                """);
    }

    private Run take(String typed, String... more) {
        List<String> args = new ArrayList<>(List.of("import", "log", table.toString(), book.toString()));
        args.addAll(List.of(more));
        return Run.typing(typed, args.toArray(String[]::new));
    }

    private String year() throws IOException {
        return Files.readString(book.resolve("2026-27.json"));
    }

    @Test
    void showsFirstAndAsksBeforeItWrites() throws IOException {
        Run run = take("no\n");

        assertThat(run.exit()).isZero();
        assertThat(run.out()).contains("guessed from their headers", "the day: \"Day\"", "Not taken over: Weather.",
                "fit the form M/d/uuuu", "2 new entries.", "2026-09-01  60 min, ida, science: Looked at pond water",
                "Add these 2 entries to the book?", "Nothing was written.");
        assertThat(year()).doesNotContain("pond");
    }

    @Test
    void writesWhenThePersonAgrees() throws IOException {
        Run run = take("yes\n");

        assertThat(run.out()).contains("2 entries were added to " + book);
        assertThat(year()).contains("Looked at pond water", "Fractions of a loaf");
    }

    @Test
    void writesWithoutAskingForScripts() throws IOException {
        Run run = take("", "--columns", COLUMNS, "--dates", "M/d/uuuu", "--yes");

        assertThat(run.exit()).isZero();
        assertThat(run.out()).doesNotContain("Add these");
        assertThat(year()).contains("Looked at pond water");
    }

    @Test
    void takesNothingOverTwice() throws IOException {
        take("yes\n");
        String once = year();

        Run again = take("yes\n");

        assertThat(again.exit()).isZero();
        assertThat(again.out()).contains("0 new entries.", "2 rows hold nothing new", "already in the book as log-1");
        assertThat(year()).isEqualTo(once);
    }

    @Test
    void refusesATableWithTwoDateForms() throws IOException {
        Files.writeString(table, Files.readString(table).replace("9/13/2026", "2026-09-13"));
        String before = year();

        Run run = take("yes\n");

        assertThat(run.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(run.err()).contains("autumn.csv:2:1: error: [MIXED-DATES]", "Nothing was changed.");
        assertThat(year()).isEqualTo(before);
    }

    @Test
    void suggestsForAMistypedColumnOrForm() {
        Run run = take("", "--columns", "dat=Day,students=", "--dates", "M/d/uuu");

        assertThat(run.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(run.err()).contains("[UNKNOWN-COLUMN] found the column \"dat\"", "Perhaps you meant date",
                "[NO-HEADER] found \"students=\"", "[UNKNOWN-DATE-FORM]", "Perhaps you meant M/d/uuuu");
    }

    @Test
    void saysKindlyThatATableIsNotThere() {
        table = folder.resolve("winter.csv");

        Run run = take("");

        assertThat(run.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(run.err()).isEqualTo(table + " is not there. Nothing was changed.\n");
    }
}
