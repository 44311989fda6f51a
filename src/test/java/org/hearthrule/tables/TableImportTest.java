package org.hearthrule.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.hearthrule.input.Problem;
import org.hearthrule.records.Book;
import org.hearthrule.records.YearRecords;
import org.hearthrule.records.YearRecords.LogEntry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TableImportTest {

    private static final Path TABLES = Path.of("test-fixtures", "csv");
    private static final Map<ImportColumn, ColumnPick> COLUMNS = Map.of(ImportColumn.DATE, header("Day"),
            ImportColumn.MINUTES, header("Time"), ImportColumn.STUDENTS, header("Child"), ImportColumn.SUBJECTS,
            header("Subjects"), ImportColumn.DID, header("notes"));

    private final Book book = TableBooks.ofTwo();

    @Test
    void rowsBecomeEntriesOfTheirSchoolYears() {
        // when
        ImportPreview<LogEntry> preview = preview("kitchen-table.csv", ImportOptions.NONE.withColumns(COLUMNS).withDateForm(DateForm.ISO));

        // then
        assertThat(preview.problems()).isEmpty();
        assertThat(preview.toAdd()).containsOnlyKeys("2026-27", "2027-28");
        assertThat(preview.toAdd().get("2026-27")).containsExactly(
                entryOf("log-1", 1, 45, List.of("ada"), List.of("reading"), "Took turns reading, then drew the map"),
                entryOf("log-2", 1, 90, List.of("ada", "ben"), List.of("life-science", "drawing"),
                        "=pond + net: what lives in a cup of water?"),
                entryOf("log-3", 2, 90, List.of("ben", "ada"), List.of("arithmetic"),
                        "She said \"twelve dozen\" is a gross\nand counted the eggs."));
        assertThat(preview.toAdd().get("2027-28")).extracting(YearRecords.LogEntry::did)
                .containsExactly("@ the county fair");
        assertThat(preview.unused()).containsExactly("Weather");
        assertThat(preview.isGuess()).isFalse();
    }

    @Test
    void whenItWasWrittenIsNotGuessed() {
        ImportPreview<LogEntry> preview = preview("kitchen-table.csv", ImportOptions.NONE);

        assertThat(preview.count()).isEqualTo(4);
        assertThat(preview.toAdd().values()).allSatisfy(entries -> assertThat(entries)
                .extracting(YearRecords.LogEntry::written).containsOnlyNulls());
    }

    @Test
    void guessIsOfferedAndNotAgreedTo() {
        // when
        ImportPreview<LogEntry> preview = preview("kitchen-table.csv", ImportOptions.NONE);

        // then
        assertThat(preview.columnNames()).containsOnly(entry(ImportColumn.DATE, "Day"),
                entry(ImportColumn.MINUTES, "Time"), entry(ImportColumn.STUDENTS, "Child"),
                entry(ImportColumn.SUBJECTS, "Subjects"), entry(ImportColumn.DID, "Notes"));
        assertThat(preview.columnsGuessed()).isTrue();
        assertThat(preview.dateForm()).isEqualTo(DateForm.ISO);
        assertThat(preview.dateFormGuessed()).isTrue();
        assertThat(preview.isGuess()).isTrue();
        assertThat(preview.accept().isGuess()).isFalse();
    }

    @Test
    void semicolonsByteOrderMarkAndLineEndsAreFoundAndSaid() {
        // given
        Book zoe = TableBooks.of("{\"hearthrule\": 1, \"students\": [{\"name\": \"Zoë Park\"}, {\"name\": \"Ben Park\"}]}");

        // when
        ImportPreview<LogEntry> preview = TableBooks.preview("t.csv", bytes("semicolons-bom-crlf.csv"), zoe, ImportOptions.NONE);

        // then
        assertThat(preview.problems()).isEmpty();
        assertThat(preview.layout().words())
                .isEqualTo("a table with cells parted by semicolons, lines ended by CR LF, a byte-order mark first");
        assertThat(preview.dateForm()).isEqualTo(DateForm.EUROPEAN_POINTS);
        assertThat(preview.toAdd().get("2026-27")).extracting(YearRecords.LogEntry::did)
                .containsExactly("Beans; counted twice", "-3 degrees outside");
    }

    @Test
    void tableWithoutChildrenIsAboutTheOnlyChild() {
        // given
        Book one = TableBooks.of("{\"hearthrule\": 1, \"students\": [{\"name\": \"Ada Rowe\"}]}");

        // when
        ImportPreview<LogEntry> preview = TableBooks.preview("t.csv", bytes("tabs.csv"), one, ImportOptions.NONE);

        // then
        assertThat(preview.layout().words()).isEqualTo("a table with cells parted by tabs");
        assertThat(preview.toAdd().get("2026-27")).extracting(YearRecords.LogEntry::students)
                .containsExactly(List.of("ada"));
    }

    @Test
    void tableWithoutChildrenIsNotGuessedAtForSeveral() {
        assertThat(words(preview("tabs.csv", ImportOptions.NONE))).containsExactly("tabs.csv:1:1: error:"
                + " [MISSING-COLUMN] found no column that surely holds the children, expected to be told which it is:"
                + " date, minutes or did. Perhaps say students= and the header.");
    }

    @Test
    void twoFormsOfDatesAreRefusedCellByCell() {
        // when
        ImportPreview<LogEntry> preview = preview("two-date-forms.csv", ImportOptions.NONE);

        // then
        assertThat(words(preview)).containsExactly(
                "two-date-forms.csv:4:1: error: [MIXED-DATES] found \"14/09/2026\", expected a date like"
                        + " \"09/30/2026\". Perhaps write \"09/14/2026\".",
                "two-date-forms.csv:5:1: error: [MIXED-DATES] found \"2026-09-15\", expected a date like"
                        + " \"09/30/2026\". Perhaps write \"09/15/2026\".",
                "two-date-forms.csv:6:1: error: [MISSING-CELL] found no date, expected the day it is about.",
                "two-date-forms.csv:7:1: error: [WRONG-DATE] found \"15 September\", expected a date like"
                        + " \"09/30/2026\".");
        assertThat(preview.dateForm()).isNull();
        assertThat(preview.toAdd()).isEmpty();
    }

    @Test
    void datesMustFitTheFormThatWasSaid() {
        // when
        ImportPreview<LogEntry> preview = preview("kitchen-table.csv", ImportOptions.NONE.withColumns(COLUMNS).withDateForm(DateForm.US));

        // then
        assertThat(preview.problems()).hasSize(4).extracting(Problem::code).containsOnly("MIXED-DATES");
        assertThat(preview.dateFormsThatFit()).containsExactly(DateForm.ISO);
    }

    @Test
    void formThatIsNotClearMustBeSaid() {
        // when
        ImportPreview<LogEntry> preview = preview("ambiguous-dates.csv", ImportOptions.NONE);

        // then
        assertThat(words(preview)).containsExactly("ambiguous-dates.csv:3:1: error: [AMBIGUOUS-DATES] found"
                + " \"09/01/2026\", which is 2026-09-01 in the form MM/dd/uuuu and 2026-01-09 in the form dd/MM/uuuu,"
                + " expected to be told the form of the dates. Perhaps say MM/dd/uuuu or dd/MM/uuuu.");
        assertThat(preview.dateFormsThatFit())
                .containsExactly(DateForm.US_TWO_DIGITS, DateForm.EUROPEAN_SLASHES, DateForm.US);
    }

    @Test
    void formThatWasSaidSettlesIt() {
        ImportPreview<LogEntry> preview = preview("ambiguous-dates.csv",
                ImportOptions.NONE.withDateForm(DateForm.EUROPEAN_SLASHES));

        assertThat(preview.toAdd().get("2025-26")).extracting(YearRecords.LogEntry::date)
                .containsExactly(LocalDate.of(2026, 5, 5), LocalDate.of(2026, 1, 9));
    }

    @Test
    void everyWrongCellIsSaidAtOnce() {
        assertThat(words(preview("everything-wrong.csv", ImportOptions.NONE))).containsExactly(
                at("2:12", "[WRONG-MINUTES] found \"1.5\", expected minutes such as 90, or hours such as 1:30 or"
                        + " 1.5 h. Perhaps write \"1.5 h\"."),
                at("2:20", "[UNKNOWN-SUBJECT] found \"maths\", expected subjects of the common vocabulary, by id or"
                        + " name, parted by semicolons. Perhaps you meant \"mathematics\"."),
                at("3:1", "[WRONG-DATE] found \"2026-02-30\", expected a date like"
                        + " \"2026-09-30\"."),
                at("3:12", "[WRONG-MINUTES] found \"90 min\", expected minutes such as 90, or hours such as 1:30 or"
                        + " 1.5 h. Perhaps write \"90\"."),
                at("3:19", "[UNKNOWN-STUDENT] found \"Aida\", expected a student of family.json by name or id: ada or"
                        + " ben. Perhaps you meant \"ada\"."),
                at("3:24", "[UNKNOWN-SUBJECT] found \"Reading, Writing\", expected subjects of the common vocabulary,"
                        + " by id or name, parted by semicolons. Perhaps write \"Reading; Writing\"."),
                at("4:12", "[OUT-OF-RANGE] found \"1500\", expected at most 24 hours, which are 1440 minutes."),
                at("4:17", "[UNKNOWN-STUDENT] found \"ada and ben\", expected a student of family.json by name or id:"
                        + " ada or ben. Perhaps write \"ada & ben\"."),
                at("4:29", "[UNKNOWN-SUBJECT] found \"core\", expected subjects of the common vocabulary, by id or"
                        + " name, parted by semicolons."),
                at("5:12", "[WRONG-MINUTES] found \"1:75\", expected minutes such as 90, or hours such as 1:30 or"
                        + " 1.5 h."),
                at("5:17", "[MISSING-CELL] found no child, expected the child or children it is about."),
                at("6:12", "[WRONG-MINUTES] found \"0.33 h\", expected minutes such as 90, or hours such as 1:30 or"
                        + " 1.5 h. Perhaps write the minutes."),
                at("6:37", "[ROW-TOO-LONG] found a cell without a header, expected 5 cells, as the first row has."
                        + " Perhaps text with a comma in it needs double quotes round it."));
    }

    @Test
    void otherEncodingIsNamed() {
        assertThat(words(preview("windows-1252.csv", ImportOptions.NONE))).containsExactly("windows-1252.csv:3:21:"
                + " error: [NOT-UTF-8] found the byte EA, which is not UTF-8, expected a table as text (CSV) in UTF-8."
                + " Perhaps it is Windows-1252, where this byte is `ê`: in the spreadsheet program, save it as"
                + " \"CSV UTF-8\".");
    }

    @ParameterizedTest
    @CsvSource({"255044462D312E37, a PDF", "FFFE64006100, text in UTF-16", "D0CF11E0A1B11AE1, an old spreadsheet (.xls)",
        "'504B030414', 'a damaged spreadsheet, or an archive that is none'",
        "3C68746D6C3E3C7461626C653E, 'a web page, whatever its name says'"})
    void fileOfAnotherKindIsNamed(String hex, String found) {
        ImportPreview<LogEntry> preview = TableBooks.preview("t.csv", HexFormat.of().parseHex(hex), book,
                ImportOptions.NONE);

        assertThat(preview.problems()).extracting(Problem::found).containsExactly(found);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "''                                    | EMPTY-TABLE",
        "date,child\\n                         | EMPTY-TABLE",
        "date\\n2026-09-01\\n                  | UNKNOWN-SEPARATOR",
        "date,child;notes\\n2026-09-01,ada;x\\n | UNKNOWN-SEPARATOR",
        "date,child\\n2026-09-01,\"ada\\n      | WRONG-CSV",
        "date,child\\n2026-09-01,\"a\"da\\n    | WRONG-CSV",
        "date,day,child\\n1,2,ada\\n           | AMBIGUOUS-COLUMN",
        "date,child,child\\n2026-09-01,ada,ben\\n | AMBIGUOUS-COLUMN",
        "date,child,notes\\n2026-09-01,ada,a\u202Eb\\n | HIDDEN-CHARACTER"
    })
    void tableThatCannotBeUnderstoodIsRefused(String text, String code) {
        ImportPreview<LogEntry> preview = previewOf(text.replace("\\n", "\n"), ImportOptions.NONE);

        assertThat(preview.problems()).extracting(Problem::code).containsExactly(code);
        assertThat(preview.toAdd()).isEmpty();
    }

    @Test
    void headerThatIsNotThereIsRefusedWithTheNearest() {
        ImportPreview<LogEntry> preview = previewOf("date,child,notes\n2026-09-01,ada,Kite\n",
                ImportOptions.NONE.withDateForm(DateForm.ISO).withColumns(Map.of(ImportColumn.DATE, header("date"),
                        ImportColumn.STUDENTS, header("child"), ImportColumn.DID, header("note"))));

        assertThat(preview.problems()).extracting(Problem::code, Problem::perhaps)
                .containsExactly(tuple("UNKNOWN-COLUMN", "you meant \"notes\""));
    }

    @Test
    void whatWasSaidAboutColumnsIsAllThatIsTaken() {
        ImportPreview<LogEntry> preview = previewOf("date,child,notes\n2026-09-01,ada,Kite\n",
                ImportOptions.NONE.withDateForm(DateForm.ISO).withColumns(Map.of(ImportColumn.DATE, header("Date"),
                        ImportColumn.STUDENTS, header("Child"))));

        assertThat(preview.unused()).containsExactly("notes");
        assertThat(preview.toAdd().get("2026-27")).extracting(YearRecords.LogEntry::did).containsExactly("");
    }

    @ParameterizedTest
    @ValueSource(strings = {"ada;ben", "Ada & Ben", "\"Ada Rowe, Ben Rowe\"", "ADA;ada;ben"})
    void severalChildrenMayStandInOneCell(String cell) {
        ImportPreview<LogEntry> preview = previewOf("date,child\n2026-09-01," + cell + "\n", ImportOptions.NONE);

        assertThat(preview.toAdd().get("2026-27")).extracting(YearRecords.LogEntry::students)
                .containsExactly(List.of("ada", "ben"));
    }

    @Test
    void firstNameOfTwoChildrenIsNotGuessedAt() {
        // given
        Book two = TableBooks.of("{\"hearthrule\": 1, \"students\": [{\"id\": \"one\", \"name\": \"Sam Rowe\"},"
                + " {\"id\": \"two\", \"name\": \"Sam Park\"}]}");

        // when
        ImportPreview<LogEntry> preview = TableBooks.preview("t.csv",
                "date,child\n2026-09-01,Sam\n", two, ImportOptions.NONE);

        // then
        assertThat(preview.problems()).extracting(Problem::code).containsExactly("UNKNOWN-STUDENT");
    }

    @Test
    void excerptShowsTheRow() {
        assertThat(previewOf("date,child\n2026-09-01,\"adda\"\n", ImportOptions.NONE).problems().get(0).toText())
                .endsWith("\n2026-09-01,\"adda\"\n           ^");
    }

    @Test
    void rowsThatNameNoChildAreAboutThoseWhoWereChosen() {
        ImportPreview<LogEntry> preview = previewOf("date,child\n2026-09-01,\n2026-09-02,Ben\n",
                ImportOptions.NONE.withStudents(List.of("ada", "ben")));

        assertThat(preview.toAdd().get("2026-27")).extracting(LogEntry::students)
                .containsExactly(List.of("ada", "ben"), List.of("ben"));
    }

    @Test
    void columnOfChildrenIsNotNeededWhereTheyWereChosen() {
        ImportPreview<LogEntry> preview = previewOf("date,notes\n2026-09-01,Kite\n",
                ImportOptions.NONE.withStudents(List.of("ben")));

        assertThat(preview.toAdd().get("2026-27")).extracting(LogEntry::students).containsExactly(List.of("ben"));
    }

    @Test
    void namesOfSubjectsMayBeExplainedForTheWholeTable() {
        ImportPreview<LogEntry> preview = previewOf("date,child,subject\n2026-09-01,ada,Math; Recess\n2026-09-02,ada,MATH\n",
                ImportOptions.NONE.withSubjects(Map.of("math", List.of("arithmetic"), " Recess ", List.of())));

        assertThat(preview.problems()).isEmpty();
        assertThat(preview.toAdd().get("2026-27")).extracting(LogEntry::subjects)
                .containsExactly(List.of("arithmetic"), List.of("arithmetic"));
    }

    @Test
    void namesOfChildrenMayBeExplainedToo() {
        ImportPreview<LogEntry> preview = previewOf("date,child\n2026-09-01,both\n",
                ImportOptions.NONE.withChildren(Map.of("Both", List.of("ada", "ben"))));

        assertThat(preview.toAdd().get("2026-27")).extracting(LogEntry::students).containsExactly(List.of("ada", "ben"));
    }

    /** What a form with a choice for each name needs. */
    @Test
    void everyNameIsListedWithWhatItStandsForOrPerhapsDoes() {
        ImportPreview<LogEntry> preview = previewOf("date,child,subject\n2026-09-01,Ada,maths\n2026-09-02,Aida,Maths\n"
                + "2026-09-03,ada and ben,xylophone repair; Reading\n", ImportOptions.NONE);

        assertThat(preview.students()).containsExactly(new NameUse("Ada", 1, true, List.of("ada"), List.of()),
                new NameUse("Aida", 1, false, List.of(), List.of("ada")),
                new NameUse("ada and ben", 1, false, List.of(), List.of("ada", "ben")));
        assertThat(preview.subjects()).containsExactly(new NameUse("maths", 2, false, List.of(), List.of("mathematics")),
                new NameUse("xylophone repair", 1, false, List.of(), List.of()),
                new NameUse("Reading", 1, true, List.of("reading"), List.of()));
    }

    @Test
    void nameThatIsNotKnownIsToldOnce() {
        ImportPreview<LogEntry> preview = previewOf("date,child,subject\n2026-09-01,ada,maths\n2026-09-02,ada,maths\n"
                + "2026-09-03,ada,maths\n", ImportOptions.NONE);

        assertThat(preview.problems()).extracting(Problem::found, problem -> problem.place().line())
                .containsExactly(tuple("\"maths\", here and in 2 more places", 2));
        assertThat(preview.wrong()).hasSize(3);
    }

    @Test
    void oneWrongDateStopsAllAndTheOthersAreStillUnderstood() {
        // when
        ImportPreview<LogEntry> preview = previewOf("date,child\n9/1/2026,ada\n9/13/2026,ada\n2/30/2026,ada\n",
                ImportOptions.NONE);

        // then
        assertThat(preview.dateForm()).isEqualTo(DateForm.US);
        assertThat(preview.dateFormGuessed()).isTrue();
        assertThat(preview.dateFormsThatFit()).isEmpty();
        assertThat(preview.hasErrors()).isTrue();
        assertThat(preview.toAdd()).isEmpty();
        assertThat(preview.count()).isEqualTo(2);
        assertThat(preview.rows()).extracting(row -> row.record().date()).containsExactly(LocalDate.of(2026, 9, 1),
                LocalDate.of(2026, 9, 13), null);
        assertThat(preview.wrong()).extracting(row -> row.problems().get(0).code()).containsExactly("WRONG-DATE");
    }

    @Test
    void wrongRowsAreLeftOutWhereSomebodySaidSo() {
        // when
        ImportPreview<LogEntry> preview = previewOf("date,child\n9/1/2026,ada\n9/13/2026,ada\n2/30/2026,ada\n",
                ImportOptions.NONE.withLeaveOut(true));

        // then
        assertThat(preview.hasErrors()).isFalse();
        assertThat(preview.problems()).extracting(Problem::code).containsExactly("WRONG-DATE");
        assertThat(preview.toAdd().get("2026-27")).hasSize(2);
    }

    /** With the form of the dates not clear, "wrong rows" would be all rows, or the wrong half of them. */
    @ParameterizedTest
    @ValueSource(strings = {"two-date-forms.csv", "ambiguous-dates.csv"})
    void unclearDatesStopAllEvenThen(String name) {
        ImportPreview<LogEntry> preview = preview(name, ImportOptions.NONE.withLeaveOut(true));

        assertThat(preview.hasErrors()).isTrue();
        assertThat(preview.toAdd()).isEmpty();
    }

    @Test
    void columnMayBePickedByItsPosition() {
        ImportPreview<LogEntry> preview = previewOf("date,child,child\n2026-09-01,ada,ben\n", ImportOptions.NONE.withColumns(
                Map.of(ImportColumn.DATE, new ColumnPick.Position(0), ImportColumn.STUDENTS, new ColumnPick.Position(2))));

        assertThat(preview.toAdd().get("2026-27")).extracting(LogEntry::students).containsExactly(List.of("ben"));
        assertThat(preview.columns()).containsOnly(entry(ImportColumn.DATE, 0), entry(ImportColumn.STUDENTS, 2));
    }

    @Test
    void positionThatIsNotThereIsRefused() {
        ImportPreview<LogEntry> preview = previewOf("date,child\n2026-09-01,ada\n", ImportOptions.NONE.withColumns(
                Map.of(ImportColumn.DATE, new ColumnPick.Position(0), ImportColumn.STUDENTS, new ColumnPick.Position(7))));

        assertThat(preview.problems()).extracting(Problem::code).containsExactly("UNKNOWN-COLUMN");
    }

    @Test
    void rowsAreShownAsReadAndAsUnderstood() {
        ImportPreview.Row<LogEntry> row = previewOf("date,child,notes,weather\n2026-09-01,Ada,,sunny\n", ImportOptions.NONE)
                .rows().get(0);

        assertThat(row.cells()).containsExactly("2026-09-01", "Ada", "", "sunny");
        assertThat(row.record().students()).containsExactly("ada");
        assertThat(row.place()).hasToString("t.csv:2:1");
        assertThat(row.isNew()).isTrue();
    }

    @Test
    void whoKeptTheLogAndWhenItWasWrittenAreTakenWhereAColumnSaysSo() {
        // given
        Book book = TableBooks.of(TableBooks.FAMILY.replace("]}", "], \"persons\": [{\"id\": \"eva\", \"name\": \"Eva Rowe\","
                + " \"roles\": [\"parent\"]}]}"));

        // when
        ImportPreview<LogEntry> preview = TableBooks.preview("t.csv", "date,child,core,kept by,written\n"
                + "2026-09-01,ada,yes,Eva Rowe,2026-09-01 20:15\n2026-09-02,ada,,eva,\n2026-09-03,ada,perhaps,Evy Rowe,at night\n",
                book, ImportOptions.NONE.withLeaveOut(true));

        // then
        assertThat(preview.toAdd().get("2026-27")).extracting(LogEntry::core, LogEntry::by, LogEntry::written)
                .containsExactly(tuple(true, "eva", LocalDateTime.of(2026, 9, 1, 20, 15)), tuple(null, "eva", null));
        assertThat(preview.problems()).extracting(Problem::code)
                .containsExactly("NOT-YES-OR-NO", "UNKNOWN-PERSON", "WRONG-TIME");
    }

    /** A text that was guarded against being run as a formula is itself again. */
    @ParameterizedTest
    @CsvSource(quoteCharacter = '|', value = {"'=1+1, =1+1", "'@home, @home", "'quoted', 'quoted'", "''-5, '-5"})
    void guardOfAFormulaIsTakenAway(String written, String text) {
        ImportPreview<LogEntry> preview = previewOf("date,child,notes\n2026-09-01,ada," + written + "\n", ImportOptions.NONE);

        assertThat(preview.toAdd().get("2026-27")).extracting(LogEntry::did).containsExactly(text);
    }

    @Test
    void noBreakSpacesAroundNamesDoNotCount() {
        ImportPreview<LogEntry> preview = previewOf("date,child\n2026-09-01,\u00A0Ada\u00A0\n", ImportOptions.NONE);

        assertThat(preview.toAdd().get("2026-27")).extracting(LogEntry::students).containsExactly(List.of("ada"));
    }

    private static ColumnPick header(String text) {
        return new ColumnPick.Header(text);
    }

    private ImportPreview<LogEntry> preview(String name, ImportOptions options) {
        return TableBooks.preview(name, bytes(name), book, options);
    }

    private ImportPreview<LogEntry> previewOf(String text, ImportOptions options) {
        return TableBooks.preview("t.csv", text, book, options);
    }

    private static byte[] bytes(String name) {
        try {
            return Files.readAllBytes(TABLES.resolve(name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static YearRecords.LogEntry entryOf(String id, int day, int minutes, List<String> students,
                                                List<String> subjects, String did) {
        return new YearRecords.LogEntry(id, LocalDate.of(2026, 9, day), minutes, students, subjects, did, List.of(),
                null, null, null, null);
    }

    private static List<String> words(ImportPreview<LogEntry> preview) {
        return preview.problems().stream().map(problem -> problem.toText().lines().findFirst().orElseThrow())
                .collect(Collectors.toList());
    }

    private static String at(String place, String rest) {
        return "everything-wrong.csv:" + place + ": error: " + rest;
    }
}
