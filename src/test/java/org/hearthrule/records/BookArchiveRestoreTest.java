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
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.hearthrule.input.BadInputException;
import org.hearthrule.input.Problems;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BookArchiveRestoreTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T10:15:30Z"), ZoneOffset.UTC);

    @TempDir
    private Path folder;
    private Path book;
    private Path zip;
    private Map<String, String> then;
    private Map<String, String> now;

    /** A book of which a copy was made, and which has changed since in every way there is. */
    @BeforeEach
    void bookThatChangedSinceItsCopy() throws Exception {
        book = Files.createDirectory(folder.resolve("book"));
        zip = folder.resolve("copy.zip");
        Files.writeString(book.resolve("family.json"), Fixtures.family(""));
        Files.writeString(book.resolve("2025-26.json"), Fixtures.year("2025-26", ""));
        Files.createDirectories(book.resolve("work"));
        Files.writeString(book.resolve("work/same.jpg"), "the same");
        Files.writeString(book.resolve("work/changed.jpg"), "as it was");
        Files.writeString(book.resolve("work/gone.jpg"), "gone since");
        try (var out = Files.newOutputStream(zip)) {
            BookArchive.write(book, out, CLOCK);
        }
        then = BookArchiveTest.files(book);
        Files.writeString(book.resolve("family.json"), Fixtures.family("\"family\": {\"name\": \"Rowe\"}"));
        Files.writeString(book.resolve("2026-27.json"), Fixtures.year("2026-27", ""));
        Files.writeString(book.resolve("family.conflict-2026-11-25T101530.json"), Fixtures.family(""));
        Files.writeString(book.resolve("work/changed.jpg"), "as it is");
        Files.delete(book.resolve("work/gone.jpg"));
        Files.writeString(book.resolve("work/new.jpg"), "new since");
        Files.writeString(book.resolve("notes.txt"), "of her own");
        now = BookArchiveTest.files(book);
    }

    private Map<String, String> files() throws IOException {
        return BookArchiveTest.files(book);
    }

    /** What was then, and whatever came since that is no record. */
    private Map<String, String> restored() {
        Map<String, String> files = new java.util.TreeMap<>(then);
        files.put("work/new.jpg", "new since");
        files.put("notes.txt", "of her own");
        return files;
    }

    @Test
    void bookIsAsItWasAndWhatIsNoRecordStays() throws Exception {
        BookArchive.Restored done = BookArchive.restore(zip, book, CLOCK);

        assertThat(files()).isEqualTo(restored());
        // the family, a changed photo; a newer year and a version that waits are taken out
        assertThat(done.replaced()).isEqualTo(4);
        assertThat(hidden()).containsExactly(".copies", ".lock");
    }

    private List<String> hidden() throws IOException {
        try (Stream<Path> found = Files.list(book)) {
            return found.map(path -> path.getFileName().toString()).filter(name -> name.startsWith(".")).sorted().toList();
        }
    }

    @Test
    void canItselfBeUndone() throws Exception {
        BookArchive.Restored done = BookArchive.restore(zip, book, CLOCK);
        assertThat(done.earlier()).isEqualTo(book.resolve(".copies/book.2026-11-25T101530.zip"));

        BookArchive.restore(done.earlier(), book, CLOCK);

        assertThat(files()).containsAllEntriesOf(now);
        assertThat(BookArchive.earlier(book)).hasSize(2).first()
                .isEqualTo(book.resolve(".copies/book.2026-11-25T101530-2.zip"));
    }

    /** A book that can no longer be read is what a copy is for, and even that state is kept. */
    @Test
    void bookThatCannotBeReadIsReplacedAndKept() throws Exception {
        Files.writeString(book.resolve("family.json"), "{\"hearthrule\": 1, \"stu");
        Files.delete(book.resolve("2025-26.json"));
        now = files();

        BookArchive.Restored done = BookArchive.restore(zip, book, CLOCK);
        assertThat(BookReader.read(book, new Problems())).isPresent();
        BookArchive.restore(done.earlier(), book, CLOCK);

        assertThat(files()).containsAllEntriesOf(now).doesNotContainKey("2025-26.json");
    }

    @Test
    void bookThatLostItsFilesIsMadeAgain() throws Exception {
        try (Stream<Path> found = Files.list(book)) {
            for (Path file : found.filter(Files::isRegularFile).toList()) {
                Files.delete(file);
            }
        }
        Files.createDirectories(book.resolve(".copies"));

        BookArchive.restore(zip, book, CLOCK);

        assertThat(files()).containsAllEntriesOf(then);
    }

    @Test
    void newFolderIsMade() throws Exception {
        Path fresh = folder.resolve("new").resolve("book");

        BookArchive.Restored done = BookArchive.restore(zip, fresh, CLOCK);

        assertThat(BookArchiveTest.files(fresh)).isEqualTo(then);
        assertThat(done.earlier()).isNull();
        assertThat(done.replaced()).isZero();
    }

    @Test
    void sameStateIsLeftAlone() throws Exception {
        BookArchive.restore(zip, book, CLOCK);

        BookArchive.Restored again = BookArchive.restore(zip, book, CLOCK);

        assertThat(again.replaced()).isZero();
        assertThat(again.earlier()).isNull();
        assertThat(BookArchive.earlier(book)).hasSize(1);
    }

    @Test
    void folderInThePlaceOfAFileMakesRoomAndComesBack() throws Exception {
        Files.delete(book.resolve("work/changed.jpg"));
        Files.createDirectories(book.resolve("work/changed.jpg"));
        Files.writeString(book.resolve("work/changed.jpg/inside.txt"), "inside");

        BookArchive.Restored done = BookArchive.restore(zip, book, CLOCK);
        assertThat(files()).containsEntry("work/changed.jpg", "as it was");
        BookArchive.restore(done.earlier(), book, CLOCK);

        assertThat(files()).containsEntry("work/changed.jpg/inside.txt", "inside");
    }

    @Test
    void onlyTheNewestCopiesOfBeforeAreKept() throws Exception {
        for (int day = 1; day <= 5; day++) {
            Files.writeString(book.resolve("family.json"), Fixtures.family("\"family\": {\"name\": \"Day " + day + "\"}"));
            BookArchive.restore(zip, book, Clock.offset(CLOCK, Duration.ofDays(day)));
        }

        assertThat(BookArchive.earlier(book)).extracting(path -> path.getFileName().toString()).containsExactly(
                "book.2026-11-30T101530.zip", "book.2026-11-29T101530.zip", "book.2026-11-28T101530.zip");
    }

    @Test
    void bookOfANewerProgramIsNotReplaced() throws Exception {
        Files.writeString(book.resolve("family.json"), "{\"hearthrule\": 2}");

        assertThatThrownBy(() -> BookArchive.restore(zip, book, CLOCK)).isInstanceOf(UnknownVersionException.class);

        assertThat(book.resolve("family.json")).hasContent("{\"hearthrule\": 2}");
        assertThat(book.resolve(".copies")).doesNotExist();
    }

    @Test
    void whileAnotherProgramWritesNothingIsReplaced() throws Exception {
        Process other = new ProcessBuilder(java(), "-cp", System.getProperty("java.class.path"), DyingWriter.class.getName(),
                book.toString(), "hold").redirectError(ProcessBuilder.Redirect.INHERIT).start();
        try (BufferedReader said = other.inputReader()) {
            assertThat(said.readLine()).isEqualTo("holding");
            assertThatThrownBy(() -> BookArchiveRestore.run(zip, book, CLOCK, Duration.ofMillis(100), step -> { }))
                    .isInstanceOf(BookBusyException.class);
            assertThat(files()).isEqualTo(now);
        } finally {
            other.destroyForcibly().waitFor();
        }
    }

    private static String java() {
        return Path.of(System.getProperty("java.home"), "bin", "java").toString();
    }

    /** Stands for the power going off: nothing after it runs. */
    private static final class PowerCut extends Error {
        private static final long serialVersionUID = 1L;
    }

    private List<String> steps() throws Exception {
        List<String> steps = new ArrayList<>();
        Path trial = folder.resolve("trial");
        copy(book, trial);
        BookArchiveRestore.run(zip, trial, CLOCK, steps::add);
        return steps;
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> found = Files.walk(from)) {
            for (Path each : found.toList()) {
                Path target = to.resolve(from.relativize(each).toString());
                if (Files.isDirectory(each)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(each, target);
                }
            }
        }
    }

    /**
     * A book of which some files are old and some new would be read without a complaint, and nobody would know. The power
     * goes off before every single thing that changes the disk; the next reader must find all of one or all of the other.
     */
    @Test
    void powerCutAtAnyStepLeavesTheOldOrTheNew() throws Exception {
        List<String> steps = steps();
        assertThat(steps).hasSizeGreaterThan(15).contains("decide");
        int old = 0;
        for (int at = 0; at < steps.size(); at++) {
            Path victim = folder.resolve("victim-" + at);
            copy(book, victim);
            int[] left = {at};
            assertThatThrownBy(() -> BookArchiveRestore.run(zip, victim, CLOCK, step -> {
                if (left[0]-- == 0) {
                    throw new PowerCut();
                }
            })).isInstanceOf(PowerCut.class);

            Book read = BookReader.read(victim, new Problems()).orElseThrow();
            Map<String, String> files = BookArchiveTest.files(victim);

            boolean isOld = "Rowe".equals(read.familyName());
            assertThat(files).as("before %s", steps.get(at)).isEqualTo(isOld ? now : restored());
            assertThat(isOld).as("before %s", steps.get(at)).isEqualTo(at <= steps.indexOf("decide"));
            old += isOld ? 1 : 0;
            if (at > steps.indexOf("keep")) {
                assertThat(BookArchive.check(BookArchive.earlier(victim).get(0), new Problems())).isPresent();
            }
            // whatever was left lying about does not stand in the way of the next
            BookArchive.restore(zip, victim, CLOCK);
            assertThat(BookArchiveTest.files(victim)).isEqualTo(restored());
            assertThat(victim.resolve(".restoring")).doesNotExist();
        }
        assertThat(old).isBetween(5, steps.size() - 5);
    }

    /** The power goes off again while what was cut off is brought to its end. */
    @Test
    void secondPowerCutChangesNothing() throws Exception {
        List<String> steps = steps();
        for (String first : List.of("decide", steps.get(steps.indexOf("decide") + 1))) {
            for (int at = 0; at < 12; at++) {
                Path victim = folder.resolve("victim-" + first.hashCode() + "-" + at);
                copy(book, victim);
                assertThatThrownBy(() -> BookArchiveRestore.run(zip, victim, CLOCK, step -> {
                    if (step.equals(first)) {
                        throw new PowerCut();
                    }
                })).isInstanceOf(PowerCut.class);
                int[] left = {at};
                try {
                    new BookArchiveSwap(victim, step -> {
                        if (left[0]-- == 0) {
                            throw new PowerCut();
                        }
                    }).drop();
                } catch (PowerCut again) {
                    // as planned
                }

                assertThat(BookReader.read(victim, new Problems())).isPresent();
                assertThat(BookArchiveTest.files(victim)).as("%s, then %d", first, at).isEqualTo(first.equals("decide") ? now : restored());
            }
        }
    }

    /** A disk that is full, a file that another program holds: the book is as it was, and the program goes on. */
    @Test
    void failureBeforeTheDecisionTakesEverythingBack() throws Exception {
        List<String> steps = steps();
        for (int at = 0; at <= steps.indexOf("decide"); at++) {
            int[] left = {at};
            assertThatThrownBy(() -> BookArchiveRestore.run(zip, book, CLOCK, step -> {
                if (left[0]-- == 0) {
                    throw new IOException("the disk is full");
                }
            })).hasMessage("the disk is full");

            assertThat(files()).as("before %s", steps.get(at)).isEqualTo(now);
            assertThat(book.resolve(".restoring")).doesNotExist();
        }
    }

    /** A process that is really ended, as a check on the tests above. */
    @Test
    void programThatDiesIsCaughtUpWith() throws Exception {
        Process died = new ProcessBuilder(java(), "-cp", System.getProperty("java.class.path"), DyingRestore.class.getName(),
                zip.toString(), book.toString(), "move work/gone.jpg").redirectError(ProcessBuilder.Redirect.INHERIT).start();
        assertThat(died.waitFor(60, TimeUnit.SECONDS)).isTrue();
        assertThat(died.exitValue()).isEqualTo(DyingRestore.DIED);
        assertThat(files()).isNotEqualTo(restored());

        BookReader.read(book, new Problems());

        assertThat(files()).isEqualTo(restored());
    }

    /** Somebody saves a file in the very moment: it is not overwritten, and not lost. */
    @Test
    void whatComesInTheWayMeanwhileIsSetAside() throws Exception {
        BookArchiveRestore.run(zip, book, CLOCK, step -> {
            if (step.equals("move work/gone.jpg")) {
                Files.writeString(book.resolve("work/gone.jpg"), "in the way");
            }
        });

        assertThat(files()).isEqualTo(restored());
        assertThat(book.resolve(".copies/set-aside/work/gone.jpg")).hasContent("in the way");
    }

    @Test
    void writerWaitsForARestoreThatWasCutOff() throws Exception {
        assertThatThrownBy(() -> BookArchiveRestore.run(zip, book, CLOCK, step -> {
            if (step.equals("move work/gone.jpg")) {
                throw new PowerCut();
            }
        })).isInstanceOf(PowerCut.class);

        // whoever read the book before is told that it has changed
        BookWriter writer = new BookWriter(book, CLOCK);
        assertThat(catchThrowableOfType(ChangedMeanwhileException.class,
                () -> writer.write("family.json", Fixtures.family(""), new Hash("0".repeat(64))))).isNotNull();

        assertThat(BookArchiveTest.files(book)).containsAllEntriesOf(restored());
    }

    @Test
    void copyOfTheBookAsItIsCanBeTakenFromAReadOnlyFolder() throws Exception {
        assertThat(book.toFile().setWritable(false)).isTrue();
        try (var out = Files.newOutputStream(folder.resolve("second.zip"))) {
            assertThat(BookArchive.write(book, out, CLOCK).files()).isEqualTo(now.size());
        } finally {
            book.toFile().setWritable(true);
        }
    }

    @Test
    void problemsOfACopyChangeNothing() throws Exception {
        ArchiveBytes.fine().promised("kite.jpg", "x").write(zip);

        assertThat(catchThrowableOfType(BadInputException.class, () -> BookArchive.restore(zip, book, CLOCK)).problems()).hasSize(1);

        assertThat(files()).isEqualTo(now);
        assertThat(hidden()).containsExactly(".lock");
    }
}
