package org.hearthrule.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ImportCommandTest {

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

    @Test
    void takesOneSheetOfASpreadsheetWithTheChildrenAndSubjectsThatWereSaid() throws IOException {
        // given
        table = folder.resolve("autumn.xlsx");
        try (OutputStream out = Files.newOutputStream(table); Workbook workbook = new Workbook(out, "Test", null)) {
            Worksheet notes = workbook.newWorksheet("September");
            notes.value(0, 0, "Day");
            notes.value(0, 1, "Notes");
            notes.value(1, 0, "soon");
            Worksheet sheet = workbook.newWorksheet("October");
            List<String> headers = List.of("Day", "Hours", "Subject", "Notes");
            for (int i = 0; i < headers.size(); i++) {
                sheet.value(0, i, headers.get(i));
            }
            sheet.value(1, 0, LocalDate.of(2026, 10, 5));
            sheet.style(1, 0).format("m/d/yyyy").set();
            sheet.value(1, 1, 1.5);
            sheet.value(1, 2, "Math");
            sheet.value(1, 3, "Fractions of a loaf");
        }

        // when
        Run run = take("", "--sheet", "October", "--time", "hours", "--children", "Ida", "--subjects", "Math=arithmetic",
                "--yes");

        // then
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).contains("It is the sheet \"October\".", "The sheets of this spreadsheet: September, October.",
                "2026-10-05  90 min, ida, arithmetic: Fractions of a loaf");
        assertThat(year()).contains("Fractions of a loaf");
    }

    /** "History of Example" is what the invented state's law calls the history of the state. */
    @Test
    void understandsTheNamesOfTheFamilysLaw() throws IOException {
        Files.writeString(table, Files.readString(table).replace("science", "History of Example"));

        Run run = take("yes\n", "--jurisdictions", "test-fixtures/profiles");

        assertThat(run.err()).isEmpty();
        assertThat(run.out()).contains("60 min, ida, state history: Looked at pond water");
    }

    @Test
    void leavesOutWrongRowsWhenTold() throws IOException {
        Files.writeString(table, Files.readString(table).replace("9/13/2026", "2/30/2026"));

        Run refused = take("yes\n");
        Run run = take("yes\n", "--leave-out");

        assertThat(refused.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(refused.out()).contains("Most dates have the form M/d/uuuu.");
        assertThat(run.exit()).isZero();
        assertThat(run.out()).contains("One new entry.", "One row could not be read and is left out");
        assertThat(run.err()).contains("autumn.csv:3:1: error: [WRONG-DATE]");
        assertThat(year()).contains("Looked at pond water").doesNotContain("Fractions of a loaf");
    }

    @Test
    void suggestsForAMistypedSubjectUnitOrChild() {
        Run run = take("", "--subjects", "Math=mathematiks,Recess", "--time", "hour", "--children", "Idda");

        assertThat(run.err()).contains("[UNKNOWN-SUBJECT] found the subject \"mathematiks\"", "Perhaps you meant mathematics",
                "[NO-SUBJECT] found \"Recess\"", "Perhaps you meant hours", "[UNKNOWN-STUDENT]", "Perhaps you meant Ida Rowan");
    }

    @Test
    void takesReadingsOver() throws IOException {
        // given
        table = Files.writeString(folder.resolve("books.csv"), "Book,Author,Who\nThe Brass Weathercock,H. Vane,Ida\n");

        // when
        Run without = Run.typing("yes\n", "import", "readings", table.toString(), book.toString());
        Run run = Run.typing("yes\n", "import", "readings", table.toString(), book.toString(), "--year", "2026-27");

        // then
        assertThat(without.err()).contains("[MISSING-DAY]");
        assertThat(run.out()).contains("The Brass Weathercock (ida; no subject)", "One entry was added");
        assertThat(year()).contains("The Brass Weathercock");
    }

    @Test
    void saysWhatAFileIsThatIsNoTable() throws IOException {
        table = Files.write(folder.resolve("old.xls"), new byte[] {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, 0, 0});

        assertThat(take("").err()).contains("[NOT-A-TABLE] found an old spreadsheet (.xls)", "save it as XLSX");
    }
}
