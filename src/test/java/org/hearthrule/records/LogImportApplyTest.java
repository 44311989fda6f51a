package org.hearthrule.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import org.hearthrule.input.BadInputException;
import org.hearthrule.input.Problems;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LogImportApplyTest {

    private static final Clock CLOCK = Clock.systemUTC();
    private static final String TWO_YEARS =
            "date,minutes,child,notes\n2026-09-01,30,ada,Kite\n2027-09-01,30,ada,Kite\n";

    @TempDir
    private Path folder;
    private BookWriter writer;

    @BeforeEach
    void bookOfTwoChildren() throws IOException {
        Files.writeString(folder.resolve("family.json"), Fixtures.family(""));
        writer = new BookWriter(folder, CLOCK);
    }

    @Test
    void entriesOfFourHundredRowsAreAddedAndReadAgain() throws Exception {
        // given
        ImportPreview preview = preview(rows(400));

        // when
        Snapshot after = LogImport.apply(preview.accept(), writer);

        // then
        assertThat(preview.count()).isEqualTo(400);
        assertThat(after).isEqualTo(read());
        assertThat(read().book().years().values().stream().mapToInt(year -> year.log().size()).sum()).isEqualTo(400);
    }

    @Test
    void sameTableTwiceAddsNothing() throws Exception {
        // given
        LogImport.apply(preview(rows(400)).accept(), writer);
        Hash hash = Hash.of(folder.resolve("2026-27.json"));

        // when
        ImportPreview again = preview(rows(400));
        LogImport.apply(again.accept(), writer);

        // then
        assertThat(again.count()).isZero();
        assertThat(again.skipped()).hasSize(400).allMatch(skipped -> skipped.because().contains("already in the book"));
        assertThat(Hash.of(folder.resolve("2026-27.json"))).isEqualTo(hash);
    }

    @Test
    void sameRowTwiceComesInOnce() throws Exception {
        // when
        ImportPreview preview = preview("date,minutes,child,notes\n2026-09-01,30,Ada & Ben,Kite\n"
                + "2026-09-01,0:30,ben;ada,\"Kite  \"\n2026-09-01,31,ada;ben,Kite\n2026-09-01,30,ada,Kite\n");

        // then
        assertThat(preview.count()).isEqualTo(3);
        assertThat(preview.skipped()).extracting(ImportPreview.Skipped::because).containsExactly("the same as line 2");
        assertThat(preview.skipped().get(0).place()).hasToString("log.csv:3:1");
    }

    @Test
    void newIdsDoNotMeetOldOnes() throws Exception {
        // given
        Snapshot before = read();
        Book book = Books.withEntry(before.book(), "log-2", LocalDate.of(2026, 9, 10));
        writer.write(before, book);

        // when
        LogImport.apply(preview(TWO_YEARS).accept(), writer);

        // then
        assertThat(read().book().years().get("2026-27").log()).extracting(YearRecords.LogEntry::id)
                .containsExactly("log-3", "log-2");
    }

    @Test
    void logInAnOrderOfItsOwnKeepsIt() throws Exception {
        // given
        Snapshot before = read();
        Book book = Books.withEntry(Books.withEntry(before.book(), "later", LocalDate.of(2026, 9, 10)), "earlier",
                LocalDate.of(2026, 9, 5));
        writer.write(before, book);

        // when
        LogImport.apply(preview(TWO_YEARS).accept(), writer);

        // then
        assertThat(read().book().years().get("2026-27").log()).extracting(YearRecords.LogEntry::id)
                .containsExactly("later", "earlier", "log-3");
    }

    @Test
    void failureInTheSecondYearLeavesTheFirstAsItWas() throws Exception {
        // given
        ImportPreview preview = preview(TWO_YEARS).accept();
        BookWriter failing = new BookWriter(folder, CLOCK, Duration.ofSeconds(1), name -> {
            if (name.equals("2027-28.json")) {
                throw new IOException("the disk is full");
            }
        });

        // when
        assertThatThrownBy(() -> LogImport.apply(preview, failing)).hasMessage("the disk is full");

        // then
        assertThat(folder.resolve("2026-27.json")).doesNotExist();
        assertThat(read().book().years()).isEmpty();
    }

    @Test
    void bookThatChangedSinceThePreviewIsLeftAlone() throws Exception {
        // given
        ImportPreview preview = preview(TWO_YEARS).accept();
        Files.writeString(folder.resolve("2027-28.json"), Fixtures.year("2027-28", ""));

        // then
        assertThatThrownBy(() -> LogImport.apply(preview, writer)).isInstanceOf(ChangedMeanwhileException.class);
        assertThat(read().book().years()).containsOnlyKeys("2027-28");
    }

    @Test
    void guessNobodyAgreedToIsNotApplied() throws Exception {
        ImportPreview preview = preview(TWO_YEARS);

        assertThatThrownBy(() -> LogImport.apply(preview, writer)).isInstanceOf(IllegalArgumentException.class);
        assertThat(read().book().years()).isEmpty();
    }

    @Test
    void tableWithAnErrorIsNotApplied() throws Exception {
        ImportPreview preview = preview(TWO_YEARS + "2026-09-31,30,ada,Kite\n").accept();

        assertThatThrownBy(() -> LogImport.apply(preview, writer)).isInstanceOf(BadInputException.class)
                .hasMessageContaining("log.csv:4:1");
        assertThat(read().book().years()).isEmpty();
    }

    private ImportPreview preview(String table) {
        return LogImport.preview("log.csv", table.getBytes(StandardCharsets.UTF_8), read(), ImportOptions.NONE);
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
