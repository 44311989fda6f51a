package org.hearthrule.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import org.hearthrule.input.BadInputException;
import org.hearthrule.input.Problem;
import org.hearthrule.input.Problems;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Copies that somebody made to do harm. Each is really put back, and must leave everything as it was. */
class BookArchiveAttackTest {

    private static final Clock CLOCK = Clock.systemUTC();

    @TempDir
    private Path folder;
    private Path book;
    private Path zip;
    private Map<String, String> before;

    @BeforeEach
    void bookBesideOtherThings() throws IOException {
        book = Files.createDirectory(folder.resolve("book"));
        zip = folder.resolve("copy.zip");
        Files.writeString(book.resolve("family.json"), Fixtures.family("\"family\": {\"name\": \"Rowe\"}"));
        Files.createDirectory(book.resolve("photos"));
        Files.writeString(book.resolve("photos/jetty.jpg"), "the jetty");
        Files.writeString(folder.resolve("secret.txt"), "secret");
        before = everything();
    }

    private Map<String, String> everything() throws IOException {
        Map<String, String> texts = new java.util.TreeMap<>();
        try (Stream<Path> found = Files.walk(folder)) {
            for (Path file : found.filter(Files::isRegularFile).toList()) {
                String path = folder.relativize(file).toString();
                if (!path.endsWith(".lock") && !path.endsWith("copy.zip")) {
                    texts.put(path, Files.readString(file, StandardCharsets.ISO_8859_1));
                }
            }
        }
        return texts;
    }

    /** Checks the copy and puts it back, into the book and into a new folder; returns the codes of what was found. */
    private List<String> codes() throws IOException {
        Problems checked = new Problems();
        assertThat(BookArchive.check(zip, checked)).isEmpty();
        BadInputException intoBook = catchThrowableOfType(BadInputException.class, () -> BookArchive.restore(zip, book, CLOCK));
        BadInputException intoNew = catchThrowableOfType(BadInputException.class,
                () -> BookArchive.restore(zip, folder.resolve("new"), CLOCK));

        assertThat(everything()).isEqualTo(before);
        assertThat(folder.resolve("new")).doesNotExist();
        assertThat(book.resolve(".copies")).doesNotExist();
        assertThat(intoBook.problems()).isEqualTo(checked.all());
        assertThat(intoNew.problems()).isEqualTo(checked.all());
        return checked.all().stream().map(Problem::code).toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"../evil.txt", "a/../../evil.txt", "a/..", "..", "./evil.txt", "a/./evil.txt", "/etc/evil.txt", "//evil.txt",
        "a//evil.txt", "C:/evil.txt", "C:evil.txt", "a/C:evil.txt", "..\\evil.txt", "a\\..\\..\\evil.txt", "\\\\server\\evil.txt",
        "a/x\\y.txt", "evil.txt\0.jpg", "a\0/../evil.txt", ".copies/evil.txt", ".lock", ".page/evil.txt", "a/.evil", ".restoring/in/evil.txt",
        "CON", "a/nul.txt", "com1", "a./evil.txt", "evil.txt ", "evil.txt.", "evil.txt:stream", "a\u0007.txt", "a/", "..."})
    void pathThatLeadsOutOrHidesIsRefused(String path) throws IOException {
        ArchiveBytes.fine().with(path, "evil").write(zip);
        assertThat(codes()).isNotEmpty().contains("PATH-OUTSIDE").allMatch(List.of("PATH-OUTSIDE", "MISSING-FILE")::contains);

        // promised and not packed, packed and not promised
        ArchiveBytes.fine().promised(path, "evil").write(zip);
        assertThat(codes()).isNotEmpty();
        ArchiveBytes.fine().packed("book/" + path, "evil").write(zip);
        assertThat(codes()).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"evil.txt", "../evil.txt", "/evil.txt", "manifest.json/evil.txt", "book", "book/", "books/evil.txt", "BOOK/evil.txt",
        "__MACOSX/._family.json"})
    void entryBesideTheBookIsRefused(String name) throws IOException {
        ArchiveBytes.fine().packed(name, name.endsWith("/") ? "" : "evil").write(zip);

        assertThat(codes()).contains("PATH-OUTSIDE");
    }

    @Test
    void linkIsRefused() throws IOException {
        ArchiveBytes.fine().link("book/photos", "..").promised("photos", "..").write(zip);
        assertThat(codes()).contains("PATH-OUTSIDE");

        ArchiveBytes.fine().link("book/photos", "..").promised("photos", "..").with("photos/evil.txt", "evil").write(zip);
        assertThat(codes()).contains("PATH-OUTSIDE");
    }

    @Test
    void fileThatStandsTwiceIsRefused() throws IOException {
        ArchiveBytes.fine().packed("book/family.json", ArchiveBytes.FAMILY).write(zip);
        assertThat(codes()).contains("REPEATED-FILE");

        ArchiveBytes.fine().promised("family.json", ArchiveBytes.FAMILY).write(zip);
        assertThat(codes()).contains("REPEATED-FILE");
    }

    /** Some computers take these for one file, so that the second would overwrite the first. */
    @Test
    void namesThatDifferInCapitalsOrAccentsOnlyAreRefused() throws IOException {
        ArchiveBytes.fine().with("photos/kite.jpg", "one").with("photos/KITE.jpg", "two").write(zip);
        assertThat(codes()).contains("REPEATED-FILE");

        ArchiveBytes.fine().with("caf\u00E9.jpg", "one").with("cafe\u0301.jpg", "two").write(zip);
        assertThat(codes()).contains("REPEATED-FILE");

        ArchiveBytes.fine().with("Family.json", "{}").write(zip);
        assertThat(codes()).contains("REPEATED-FILE");
    }

    @Test
    void nameThatIsAFileAndAFolderIsRefused() throws IOException {
        ArchiveBytes.fine().with("photos", "a file").with("photos/kite.jpg", "in a folder").write(zip);

        assertThat(codes()).containsExactly("REPEATED-FILE");
    }

    @Test
    void secondManifestIsRefused() throws IOException {
        ArchiveBytes.fine().packed("manifest.json", "{}").write(zip);

        assertThat(codes()).contains("REPEATED-FILE");
    }

    @Test
    void fileThatTheManifestDoesNotNameIsRefused() throws IOException {
        ArchiveBytes.fine().packed("book/2026-27.json", Fixtures.year("2026-27", "")).write(zip);

        assertThat(codes()).containsExactly("NOT-IN-MANIFEST");
    }

    @Test
    void fileThatTheManifestNamesAndThatIsNotThereIsRefused() throws IOException {
        ArchiveBytes.fine().promised("2026-27.json", Fixtures.year("2026-27", "")).write(zip);
        assertThat(codes()).containsExactly("MISSING-FILE");

        ArchiveBytes.fine().packed("book/KITE.jpg", "x").promised("kite.jpg", "x").write(zip);
        assertThat(codes()).containsExactly("MISSING-FILE");
    }

    @Test
    void otherContentThanPromisedIsRefused() throws IOException {
        ArchiveBytes.fine().packed("book/kite.jpg", "evil").promised("kite.jpg", "kite").write(zip);
        assertThat(codes()).containsExactly("WRONG-CONTENT");

        ArchiveBytes.fine().packed("book/kite.jpg", "kite").promised("kite.jpg", 3, Hash.of("kite".getBytes()).hex()).write(zip);
        assertThat(codes()).containsExactly("WRONG-CONTENT");

        ArchiveBytes.fine().packed("book/kite.jpg", "kite").promised("kite.jpg", 5, Hash.of("kite".getBytes()).hex()).write(zip);
        assertThat(codes()).containsExactly("WRONG-CONTENT");
    }

    /** A hundred megabytes of noughts are a hundred kilobytes when packed: copying stops at the length that was promised. */
    @Test
    void fileThatUnpacksToMoreThanPromisedStopsThere() throws IOException {
        ArchiveBytes.fine().packed("book/kite.jpg", "\0".repeat(100_000_000)).promised("kite.jpg", 10, Hash.of(new byte[10]).hex()).write(zip);
        assertThat(Files.size(zip)).isLessThan(200_000);

        assertThat(codes()).containsExactly("WRONG-CONTENT");
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (BookArchiveReader reader = BookArchiveReader.open(zip, BookArchiveLimits.DEFAULT, new Problems())) {
            reader.checkNames();
            assertThat(reader.copy(reader.files().get(1), out)).isFalse();
        }
        assertThat(out.size()).isLessThanOrEqualTo(10);
    }

    @Test
    void moreThanMayBeIsRefused() throws IOException {
        ArchiveBytes.fine().with("kite.jpg", "kite").with("jetty.jpg", "jetty").write(zip);
        assertThat(codes(new BookArchiveLimits(2, 1_000, 10_000))).containsExactly("TOO-MANY");
        assertThat(codes(new BookArchiveLimits(9, 10, 10_000))).containsExactly("TOO-LARGE");
        assertThat(codes(new BookArchiveLimits(9, 1_000, 20))).containsExactly("TOO-LARGE");
        assertThat(codes(new BookArchiveLimits(3, 1_000, 10_000))).isEmpty();

        ArchiveBytes.fine().promised("kite.jpg", 2_000_000_001L, Hash.of(new byte[0]).hex()).packed("book/kite.jpg", "").write(zip);
        assertThat(codes()).containsExactly("TOO-LARGE");
    }

    private List<String> codes(BookArchiveLimits limits) throws IOException {
        Problems problems = new Problems();
        try (BookArchiveReader reader = BookArchiveReader.open(zip, limits, problems)) {
            reader.check();
        }
        return problems.all().stream().map(Problem::code).toList();
    }

    @Test
    void manifestOfTooManyBytesIsNotRead() throws IOException {
        ArchiveBytes.fine().write(zip, " ".repeat(33_000_000) + "{}");

        assertThat(codes()).containsExactly("TOO-LARGE");
    }

    @Test
    void manifestThatIsMissingOrSenselessIsRefused() throws IOException {
        ArchiveBytes.fine().write(zip, null);
        assertThat(codes()).containsExactly("NOT-A-COPY");

        for (String text : List.of("", "[]", "{", "null", "{\"hearthrule-copy\": \"1\", \"made\": \"x\", \"files\": {}}",
                ArchiveBytes.fine().manifest().replace("\"bytes\": ", "\"bytes\": -"), ArchiveBytes.fine().manifest().replace("\"sha-256\": \"", "\"sha-256\": \"Z"),
                ArchiveBytes.fine().manifest().replace("\"path\": \"family.json\"", "\"path\": 7"), ArchiveBytes.fine().manifest().replace("made", "mode"))) {
            ArchiveBytes.fine().write(zip, text);
            assertThat(codes()).as(text).isNotEmpty();
        }
    }

    @Test
    void copyOfANewerVersionIsOneProblem() throws IOException {
        for (String version : List.of("2", "999999999999")) {
            ArchiveBytes.fine().version(version).packed("book/more.txt", "x").write(zip);
            assertThat(codes()).containsExactly("NEWER-VERSION");
        }
        ArchiveBytes.fine().version("0").write(zip);
        assertThat(codes()).containsExactly("OUT-OF-RANGE");
    }

    @Test
    void recordsOfANewerVersionAreRefused() throws IOException {
        ArchiveBytes.fine().with("2026-27.json", "{\"hearthrule\": 2, \"year\": \"2026-27\"}").write(zip);

        assertThat(codes()).containsExactly("NEWER-VERSION");
    }

    @Test
    void copyWithoutRecordsIsRefused() throws IOException {
        new ArchiveBytes().with("photos/kite.jpg", "kite").write(zip);

        assertThat(codes()).containsExactly("NOT-A-COPY");
    }

    @Test
    void everyFaultIsToldAtOnce() throws IOException {
        ArchiveBytes.fine().packed("../evil.txt", "evil").packed("book/more.txt", "x").promised("gone.txt", "x").write(zip);

        assertThat(codes()).containsExactlyInAnyOrder("PATH-OUTSIDE", "NOT-IN-MANIFEST", "MISSING-FILE");
    }

    /** The ZIP's own list and the header before each entry may disagree; only one of them may count. */
    @Test
    void nameInAnEntrysOwnHeaderIsNotUsed() throws Exception {
        ArchiveBytes.fine().with("kite.jpg", "kite").write(zip);
        byte[] bytes = Files.readAllBytes(zip);
        int header = new String(bytes, StandardCharsets.ISO_8859_1).indexOf("book/kite.jpg");
        System.arraycopy("../../evil.tx".getBytes(StandardCharsets.US_ASCII), 0, bytes, header, 13);
        Files.write(zip, bytes);

        BookArchive.restore(zip, book, CLOCK);

        assertThat(book.resolve("kite.jpg")).hasContent("kite");
        try (Stream<Path> beside = Files.list(folder)) {
            assertThat(beside.map(path -> path.getFileName().toString())).containsExactlyInAnyOrder("book", "copy.zip", "secret.txt");
        }
    }

    /** A field that gives an entry a second name, which some programs prefer to the first (APPNOTE 4.6.9). */
    @Test
    void secondNameOfAnEntryIsNotUsed() throws Exception {
        var entry = new org.apache.commons.compress.archivers.zip.ZipArchiveEntry("book/kite.jpg");
        byte[] evil = "book/../../evil.txt".getBytes(StandardCharsets.UTF_8);
        entry.addExtraField(new org.apache.commons.compress.archivers.zip.UnicodePathExtraField("book/../../evil.txt",
                "book/kite.jpg".getBytes(StandardCharsets.UTF_8)));
        CRC32 sum = new CRC32();
        sum.update(evil);
        ArchiveBytes.fine().packed(entry, "kite").promised("kite.jpg", "kite").write(zip);

        BookArchive.restore(zip, book, CLOCK);

        assertThat(book.resolve("kite.jpg")).hasContent("kite");
        assertThat(folder.resolve("evil.txt")).doesNotExist();
    }

    /** A link that lies in the book already would carry the new file to where it leads. */
    @Test
    void linkInTheBookIsNotWrittenThrough() throws Exception {
        Path outside = Files.createDirectory(folder.resolve("outside"));
        Files.createSymbolicLink(book.resolve("work"), outside);
        Files.createSymbolicLink(book.resolve("kite.jpg"), folder.resolve("secret.txt"));
        ArchiveBytes.fine().with("work/a.jpg", "new").with("kite.jpg", "new").write(zip);

        BookArchive.restore(zip, book, CLOCK);

        assertThat(folder.resolve("secret.txt")).hasContent("secret");
        try (Stream<Path> inside = Files.list(outside)) {
            assertThat(inside).isEmpty();
        }
        assertThat(book.resolve("work/a.jpg")).hasContent("new");
        assertThat(book.resolve("kite.jpg")).hasContent("new");
    }

    /** A name mistyped on the command line must not strew a book between other things. */
    @Test
    void folderOfOtherThingsIsNoPlaceForABook() throws Exception {
        ArchiveBytes.fine().write(zip);
        Path other = Files.createDirectory(folder.resolve("other"));
        Files.writeString(other.resolve("taxes.pdf"), "taxes");

        BadInputException refused = catchThrowableOfType(BadInputException.class, () -> BookArchive.restore(zip, other, CLOCK));
        assertThat(refused.problems()).extracting(Problem::code).containsExactly("NOT-A-BOOK");
        refused = catchThrowableOfType(BadInputException.class, () -> BookArchive.restore(zip, folder.resolve("secret.txt"), CLOCK));
        assertThat(refused.problems()).extracting(Problem::code).containsExactly("NOT-A-FOLDER");
    }
}
