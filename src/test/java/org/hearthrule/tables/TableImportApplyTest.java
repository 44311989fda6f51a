package org.hearthrule.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import org.hearthrule.input.BadInputException;
import org.hearthrule.input.Problems;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookReader;
import org.hearthrule.records.BookWriter;
import org.hearthrule.records.ChangedMeanwhileException;
import org.hearthrule.records.Snapshot;
import org.hearthrule.records.YearRecords;
import org.hearthrule.records.YearRecords.LogEntry;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TableImportApplyTest {

    private static final String TWO_YEARS =
            "date,minutes,child,notes\n2026-09-01,30,ada,Kite\n2027-09-01,30,ada,Kite\n";

    private final Book book = TableBooks.ofTwo();

    @TempDir
    private Path folder;
    private BookWriter writer;

    @BeforeEach
    void bookOfTwoChildren() throws IOException {
        Files.writeString(folder.resolve("family.json"), TableBooks.FAMILY);
        writer = new BookWriter(folder, Clock.systemUTC());
    }

    @Test
    void entriesOfFourHundredRowsAreAddedAndReadAgain() throws Exception {
        // given
        Snapshot before = read();
        ImportPreview<LogEntry> preview = preview(rows(400), before.book());

        // when
        Snapshot after = writer.write(before, TableImport.apply(preview.accept()));

        // then
        assertThat(preview.count()).isEqualTo(400);
        assertThat(after).isEqualTo(read());
        assertThat(read().book().years().values().stream().mapToInt(year -> year.log().size()).sum()).isEqualTo(400);
    }

    @Test
    void bookThePreviewWasMadeForStaysAsItIs() throws Exception {
        Book after = TableImport.apply(preview(TWO_YEARS, book).accept());

        assertThat(book.years()).isEmpty();
        assertThat(after.years()).containsOnlyKeys("2026-27", "2027-28");
    }

    @Test
    void sameTableTwiceAddsNothing() throws Exception {
        // given
        Book once = TableImport.apply(preview(rows(400), book).accept());

        // when
        ImportPreview<LogEntry> again = preview(rows(400), once);

        // then
        assertThat(again.count()).isZero();
        assertThat(again.skipped()).hasSize(400).allMatch(row -> row.skipped() instanceof Repeat.OfBook);
        assertThat(TableImport.apply(again.accept())).isEqualTo(once);
    }

    @Test
    void sameRowTwiceComesInOnce() {
        // when
        ImportPreview<LogEntry> preview = preview("date,minutes,child,notes\n2026-09-01,30,Ada & Ben,Kite\n"
                + "2026-09-01,0:30,ben;ada,\"Kite  \"\n2026-09-01,31,ada;ben,Kite\n2026-09-01,30,ada,Kite\n", book);

        // then
        assertThat(preview.count()).isEqualTo(3);
        assertThat(preview.skipped()).extracting(row -> row.skipped().words()).containsExactly("the same as line 2");
        assertThat(preview.skipped().get(0).place()).hasToString("log.csv:3:1");
    }

    @Test
    void newIdsDoNotMeetOldOnes() throws Exception {
        Book before = TableBooks.withEntry(book, "log-2", LocalDate.of(2026, 9, 10));

        Book after = TableImport.apply(preview(TWO_YEARS, before).accept());

        assertThat(after.years().get("2026-27").log()).extracting(YearRecords.LogEntry::id)
                .containsExactly("log-3", "log-2");
    }

    @Test
    void logInAnOrderOfItsOwnKeepsIt() throws Exception {
        Book before = TableBooks.withEntry(TableBooks.withEntry(book, "later", LocalDate.of(2026, 9, 10)), "earlier",
                LocalDate.of(2026, 9, 5));

        Book after = TableImport.apply(preview(TWO_YEARS, before).accept());

        assertThat(after.years().get("2026-27").log()).extracting(YearRecords.LogEntry::id)
                .containsExactly("later", "earlier", "log-3");
    }

    @Test
    void bookThatChangedSinceThePreviewIsLeftAlone() throws Exception {
        // given
        Snapshot before = read();
        Book after = TableImport.apply(preview(TWO_YEARS, before.book()).accept());
        Files.writeString(folder.resolve("2027-28.json"), "{\"hearthrule\": 1, \"year\": \"2027-28\"}");

        // then
        assertThatThrownBy(() -> writer.write(before, after)).isInstanceOf(ChangedMeanwhileException.class);
        assertThat(read().book().years()).containsOnlyKeys("2027-28");
    }

    @Test
    void guessNobodyAgreedToIsNotApplied() {
        ImportPreview<LogEntry> preview = preview(TWO_YEARS, book);

        assertThatThrownBy(() -> TableImport.apply(preview)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void tableWithAnErrorIsNotApplied() {
        ImportPreview<LogEntry> preview = preview(TWO_YEARS + "2026-09-31,30,ada,Kite\n", book).accept();

        assertThatThrownBy(() -> TableImport.apply(preview)).isInstanceOf(BadInputException.class)
                .hasMessageContaining("log.csv:4:1");
    }

    private static ImportPreview<LogEntry> preview(String table, Book book) {
        return TableBooks.preview("log.csv", table, book, ImportOptions.NONE);
    }

    private Snapshot read() {
        return BookReader.snapshot(folder, new Problems()).orElseThrow();
    }

    private static String rows(int count) {
        StringBuilder rows = new StringBuilder("date,minutes,child,subjects,notes\n");
        LocalDate day = LocalDate.of(2026, 6, 1);
        for (int i = 0; i < count; i++) {
            rows.append(day.plusDays(i / 2)).append(',').append(20 + i % 40).append(',')
                    .append(i % 2 == 0 ? "ada" : "Ben")
                    .append(",reading;arithmetic,\"Worked on part ").append(i).append(", then rested\"\n");
        }
        return rows.toString();
    }
}
