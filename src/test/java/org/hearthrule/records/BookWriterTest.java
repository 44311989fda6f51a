package org.hearthrule.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hearthrule.input.BadInputException;
import org.hearthrule.input.Problems;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BookWriterTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T10:15:30Z"), ZoneOffset.UTC);
    private static final LocalDate THIS_YEAR = LocalDate.of(2026, 9, 1);
    private static final LocalDate NEXT_YEAR = LocalDate.of(2027, 9, 1);

    @TempDir
    private Path folder;
    private Path family;
    private BookWriter writer;

    @BeforeEach
    void bookOfTwoChildren() throws IOException {
        family = Files.writeString(folder.resolve("family.json"), Fixtures.family(""));
        writer = new BookWriter(folder, CLOCK);
    }

    @Test
    void newBookIsWrittenIntoANewFolder() throws Exception {
        // given
        Path fresh = folder.resolve("new").resolve("book");
        Book book = Books.withEntry(snapshot().book(), "log-1", THIS_YEAR);

        // when
        Snapshot after = new BookWriter(fresh, CLOCK).write(Snapshot.nothing(), book);

        // then
        assertThat(BookReader.snapshot(fresh, new Problems())).contains(after);
        assertThat(names(fresh)).containsExactly(".lock", "2026-27.json", "family.json");
    }

    @Test
    void onlyWhatDiffersIsWritten() throws Exception {
        // given
        Snapshot before = snapshot();
        String text = Files.readString(family);

        // when
        Snapshot after = writer.write(before, Books.withEntry(before.book(), "log-1", THIS_YEAR));

        // then
        assertThat(family).hasContent(text);
        assertThat(after).isEqualTo(snapshot());
        assertThat(after.hash("2026-27.json")).isEqualTo(Hash.of(folder.resolve("2026-27.json")));
    }

    @Test
    void sameTextIsNotWrittenAgain() throws Exception {
        // given
        Hash hash = Hash.of(family);

        // when
        Hash after = writer.write("family.json", Files.readString(family), hash);

        // then
        assertThat(after).isEqualTo(hash);
        assertThat(writer.copies("family.json")).isEmpty();
    }

    @Test
    void changeFromOutsideIsNotOverwrittenAndBothVersionsAreKept() throws Exception {
        // given
        Snapshot before = snapshot();
        Book mine = Books.withStudent(before.book(), "cy");
        String theirs = Fixtures.family("\"family\": {\"name\": \"Rowe\"}");
        Files.writeString(family, theirs);

        // when
        ChangedMeanwhileException refused = catchThrowableOfType(
                ChangedMeanwhileException.class, () -> writer.write(before, mine));

        // then
        Path kept = folder.resolve("family.conflict-2026-11-25T101530.json");
        assertThat(family).hasContent(theirs);
        assertThat(kept).hasContent(BookText.family(mine));
        assertThat(refused.kept()).containsExactly(kept);
        assertThat(refused).hasMessage("family.json was changed by somebody else since it was read. Nothing was"
                + " overwritten. Your version was kept as family.conflict-2026-11-25T101530.json.");
    }

    @Test
    void secondRefusalDoesNotOverwriteTheFirst() throws Exception {
        // given
        Snapshot before = snapshot();
        Files.writeString(family, Fixtures.family("\"events\": []"));

        // when
        for (String child : List.of("cy", "di")) {
            assertThatThrownBy(() -> writer.write(before, Books.withStudent(before.book(), child)))
                    .isInstanceOf(ChangedMeanwhileException.class);
        }

        // then
        assertThat(folder.resolve("family.conflict-2026-11-25T101530.json")).content().contains("\"cy\"");
        assertThat(folder.resolve("family.conflict-2026-11-25T101530-2.json")).content().contains("\"di\"");
    }

    @Test
    void readerTellsOfTheVersionThatWaits() throws Exception {
        // given
        Snapshot before = snapshot();
        Files.writeString(family, Fixtures.family("\"events\": []"));
        assertThatThrownBy(() -> writer.write(before, Books.withStudent(before.book(), "cy")))
                .isInstanceOf(ChangedMeanwhileException.class);

        // when
        Problems problems = new Problems();
        BookReader.read(folder, problems);

        // then
        assertThat(Fixtures.codes(problems)).containsExactly("SECOND-VERSION");
    }

    @Test
    void fileThatAppearedOrVanishedCountsAsChanged() throws Exception {
        // given
        Hash hash = Hash.of(family);
        String text = Files.readString(family);

        // then
        assertThatThrownBy(() -> writer.write("family.json", text + "\n", Hash.NONE))
                .isInstanceOf(ChangedMeanwhileException.class);
        Files.delete(family);
        assertThatThrownBy(() -> writer.write("family.json", text + "\n", hash))
                .isInstanceOf(ChangedMeanwhileException.class);
    }

    @Test
    void programThatDiesBetweenWritingAndMovingLeavesTheOldFileWhole() throws Exception {
        // given
        byte[] old = Files.readAllBytes(family);

        // when
        Process died = start("die");
        assertThat(died.waitFor(60, TimeUnit.SECONDS)).isTrue();

        // then
        assertThat(died.exitValue()).isEqualTo(DyingWriter.DIED);
        assertThat(family).hasBinaryContent(old);
        assertThat(names(folder)).contains(".family.json.tmp");
    }

    @Test
    void nextWriterSweepsUpAfterOneThatDied() throws Exception {
        // given
        assertThat(start("die").waitFor(60, TimeUnit.SECONDS)).isTrue();
        Snapshot before = snapshot();

        // when
        writer.write(before, Books.withStudent(before.book(), "di"));

        // then
        assertThat(names(folder)).containsExactly(".copies", ".lock", "family.json");
        assertThat(snapshot().book().student("di")).isPresent();
    }

    @Test
    void whileAnotherProgramWritesNothingIsWritten() throws Exception {
        // given
        Process other = start("hold");
        try (BufferedReader said = other.inputReader()) {
            assertThat(said.readLine()).isEqualTo("holding");
            BookWriter hasty = new BookWriter(folder, CLOCK, Duration.ofMillis(100), name -> { });

            // then
            assertThatThrownBy(() -> hasty.write("family.json", Fixtures.family("\"facts\": []"), Hash.of(family)))
                    .isInstanceOf(BookBusyException.class);
            assertThat(family).hasContent(Fixtures.family(""));
        } finally {
            other.destroyForcibly().waitFor();
        }
    }

    @Test
    void writersInOneProgramTakeTurns() throws Exception {
        // given
        ExecutorService threads = Executors.newFixedThreadPool(4);
        List<Callable<Void>> jobs = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            String id = "child-" + i;
            jobs.add(() -> {
                Snapshot before = snapshot();
                writer.write("family.json", BookText.family(Books.withStudent(before.book(), id)),
                        before.hash("family.json"));
                return null;
            });
        }

        // when
        int refused = 0;
        for (Future<Void> job : threads.invokeAll(jobs)) {
            try {
                job.get();
            } catch (ExecutionException e) {
                assertThat(e).hasCauseInstanceOf(ChangedMeanwhileException.class);
                refused++;
            }
        }
        threads.shutdown();

        // then
        assertThat(snapshot().book().students()).hasSize(2 + jobs.size() - refused);
        assertThat(names(folder).stream().filter(name -> name.contains(".conflict-"))).hasSize(refused);
    }

    @Test
    void severalFilesAreWrittenAllOrNone() throws Exception {
        // given
        Snapshot before = writer.write(snapshot(), Books.withEntry(snapshot().book(), "log-1", THIS_YEAR));
        byte[] old = Files.readAllBytes(folder.resolve("2026-27.json"));
        Book after = Books.withEntry(Books.withEntry(before.book(), "log-2", THIS_YEAR), "log-1", NEXT_YEAR);
        BookWriter failing = new BookWriter(folder, CLOCK, Duration.ofSeconds(1), name -> {
            if (name.equals("2027-28.json")) {
                throw new IOException("the disk is full");
            }
        });

        // when
        assertThatThrownBy(() -> failing.write(before, after)).hasMessage("the disk is full");

        // then
        assertThat(folder.resolve("2026-27.json")).hasBinaryContent(old);
        assertThat(names(folder)).containsExactly(".copies", ".lock", "2026-27.json", "family.json");
    }

    @Test
    void bookThatCouldNotBeReadAgainIsNotWritten() throws Exception {
        // given
        Snapshot before = writer.write(snapshot(), Books.withEntry(snapshot().book(), "log-1", THIS_YEAR));
        Book without = new Book(null, null, List.of(before.book().student("ben").orElseThrow()), List.of(), List.of(),
                List.of(), List.of(), List.of(), before.book().years());

        // when
        BadInputException refused = catchThrowableOfType(
                BadInputException.class, () -> writer.write(before, without));

        // then
        assertThat(refused.problems()).extracting(problem -> problem.code()).containsExactly("UNKNOWN-STUDENT");
        assertThat(snapshot()).isEqualTo(before);
    }

    @Test
    void fileOfANewerVersionIsNotReplaced() throws Exception {
        // given
        Files.writeString(family, "{\"hearthrule\": 2}");

        // then
        assertThatThrownBy(() -> writer.write("family.json", Fixtures.family(""), Hash.of(family)))
                .isInstanceOf(UnknownVersionException.class)
                .hasMessage(family + " was written by a newer Hearthrule. Nothing was changed.");
        assertThat(family).hasContent("{\"hearthrule\": 2}");
    }

    @Test
    void textOfAnUnknownVersionIsNotWritten() {
        for (String text : List.of("{\"hearthrule\": 2}", "{\"hearthrule\": \"1\"}", "{}", "", "[1]")) {
            assertThatThrownBy(() -> writer.write("family.json", text, Hash.of(family)))
                    .isInstanceOf(UnknownVersionException.class);
        }
        assertThat(family).hasContent(Fixtures.family(""));
    }

    @Test
    void onlyFilesOfABookAreWritten() {
        for (String name : List.of("../family.json", "notes.json", "2026-28.json", "family.json/..")) {
            assertThatThrownBy(() -> writer.write(name, Fixtures.family(""), Hash.NONE))
                    .isInstanceOf(IllegalArgumentException.class);
        }
    }

    private Snapshot snapshot() {
        return BookReader.snapshot(folder, new Problems()).orElseThrow();
    }

    private Process start(String what) throws IOException {
        return new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-cp",
                System.getProperty("java.class.path"), DyingWriter.class.getName(), folder.toString(), what)
                .redirectError(ProcessBuilder.Redirect.INHERIT).start();
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> found = Files.list(folder)) {
            return found.map(path -> path.getFileName().toString()).sorted().collect(Collectors.toList());
        }
    }
}
