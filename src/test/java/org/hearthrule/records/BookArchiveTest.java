package org.hearthrule.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.hearthrule.input.BadInputException;
import org.hearthrule.input.Problems;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BookArchiveTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T10:15:30Z"), ZoneOffset.UTC);
    private static final Path VERSION_1 = Path.of("test-fixtures", "archives", "version-1.zip");

    @TempDir
    private Path folder;
    private Path book;
    private Path zip;

    @BeforeEach
    void bookWithAPhoto() throws IOException {
        book = Files.createDirectory(folder.resolve("book"));
        zip = folder.resolve("copy.zip");
        Files.writeString(book.resolve("family.json"), Fixtures.family(""));
        Files.writeString(book.resolve("2026-27.json"), Fixtures.year("2026-27", ""));
        Files.createDirectories(book.resolve("work/2026-09"));
        Files.writeString(book.resolve("work/2026-09/kite.jpg"), "not really a photo");
        for (String hidden : List.of(".copies", ".page/previews", "work/.thumbs")) {
            Files.createDirectories(book.resolve(hidden));
            Files.writeString(book.resolve(hidden).resolve("x.jpg"), "hidden");
        }
        Files.writeString(book.resolve(".lock"), "");
        Files.writeString(book.resolve("work/.DS_Store"), "");
    }

    private BookArchive.Written write() throws IOException, BadInputException {
        try (var out = Files.newOutputStream(zip)) {
            return BookArchive.write(book, out, CLOCK);
        }
    }

    private Map<String, String> packed() throws IOException {
        Map<String, String> texts = new java.util.LinkedHashMap<>();
        try (ZipFile file = new ZipFile(zip.toFile())) {
            for (ZipEntry entry : Collections.list(file.entries())) {
                try (InputStream in = file.getInputStream(entry)) {
                    texts.put(entry.getName(), new String(in.readAllBytes(), StandardCharsets.UTF_8));
                }
            }
        }
        return texts;
    }

    @Test
    void everyFileThatIsNotHiddenGoesInAndTheManifestLast() throws Exception {
        BookArchive.Written written = write();

        assertThat(packed().keySet()).containsExactly("book/2026-27.json", "book/family.json", "book/work/2026-09/kite.jpg",
                "manifest.json");
        assertThat(packed().get("book/work/2026-09/kite.jpg")).isEqualTo("not really a photo");
        assertThat(written.files()).isEqualTo(3);
        assertThat(written.leftOut()).isEmpty();
    }

    /**
     * Copies lie on drives for years. Whoever changes this text must raise the version and go on reading this one; the
     * hashes are those of sha256sum.
     */
    @Test
    void manifestHasTheFormOfVersionOne() throws Exception {
        Files.delete(book.resolve("2026-27.json"));
        Files.writeString(book.resolve("family.json"), "{\"hearthrule\": 1, \"students\": [{\"id\": \"ada\", \"name\": \"Ada Rowe\"}]}\n");
        write();

        assertThat(packed().get("manifest.json").replaceAll("  \"program\": .*\n", "")).isEqualTo("""
                {
                  "hearthrule-copy": 1,
                  "made": "2026-11-25T10:15:30Z",
                  "files": [
                    {"path": "family.json", "bytes": 67, "sha-256": "d33be1d5c971b98b935bb6684d194f2f7cb89f5912a0519ed7945d1fbbaf0760"},
                    {"path": "work/2026-09/kite.jpg", "bytes": 18,
                     "sha-256": "8edd7daf0eb75502845657a637ad9e62b78a8dcdb67a1c6861fb7c91752d519a"}
                  ]
                }
                """);
    }

    @Test
    void sameFilesGiveTheSameBytes() throws Exception {
        write();
        byte[] first = Files.readAllBytes(zip);
        Files.setLastModifiedTime(book.resolve("family.json"), java.nio.file.attribute.FileTime.fromMillis(0));

        write();

        assertThat(Files.readAllBytes(zip)).isEqualTo(first);
    }

    @Test
    void whatCannotGoInIsTold() throws Exception {
        Path outside = Files.writeString(folder.resolve("outside.jpg"), "x");
        Files.createSymbolicLink(book.resolve("out.jpg"), outside);
        Files.createSymbolicLink(book.resolve("up"), folder);
        Files.createSymbolicLink(book.resolve("secret.jpg"), book.resolve(".copies/x.jpg"));
        Files.createSymbolicLink(book.resolve("cover.jpg"), book.resolve("work/2026-09/kite.jpg"));
        for (String name : List.of("12:30.jpg", "con.jpg", "end.", "KITE.txt", "kite.txt", "back\\slash.jpg")) {
            Files.writeString(book.resolve(name), "x");
        }

        BookArchive.Written written = write();

        assertThat(written.leftOut()).containsExactly("12:30.jpg", "back\\slash.jpg", "con.jpg", "end.", "kite.txt", "out.jpg",
                "secret.jpg", "up");
        assertThat(packed().keySet()).contains("book/KITE.txt", "book/cover.jpg");
        assertThat(BookArchive.check(zip, new Problems())).isPresent();
    }

    /** A record kept elsewhere through a link is a part of the book all the same. */
    @Test
    void recordThatIsALinkGoesIn() throws Exception {
        Path elsewhere = Files.move(book.resolve("2026-27.json"), folder.resolve("year.json"));
        Files.createSymbolicLink(book.resolve("2026-27.json"), elsewhere);

        write();

        assertThat(packed().get("book/2026-27.json")).isEqualTo(Files.readString(elsewhere));
    }

    @Test
    void folderWithoutABookIsNotCopied() throws Exception {
        Path empty = Files.createDirectory(folder.resolve("empty"));

        BadInputException refused = catchThrowableOfType(BadInputException.class,
                () -> BookArchive.write(empty, new ByteArrayOutputStream(), CLOCK));

        assertThat(refused.problems()).extracting(problem -> problem.code()).containsExactly("NO-FAMILY-FILE");
    }

    /** A copy that could be written and not be put back would be found out on the worst day. */
    @Test
    void moreThanACopyMayHoldIsNotWritten() throws Exception {
        assertThat(catchThrowableOfType(BadInputException.class, () -> BookArchiveFiles.of(book, new BookArchiveLimits(2, 1_000, 10_000)))
                .problems()).extracting(problem -> problem.code()).containsExactly("TOO-LARGE");
        assertThat(catchThrowableOfType(BadInputException.class, () -> BookArchiveFiles.of(book, new BookArchiveLimits(9, 1_000, 50)))
                .problems()).extracting(problem -> problem.code()).containsExactly("TOO-LARGE");
        assertThat(BookArchiveFiles.of(book, new BookArchiveLimits(9, 20, 10_000)).leftOut())
                .containsExactly("2026-27.json", "family.json");
    }

    @Test
    void copyIsCheckedAndTold() throws Exception {
        BookArchive.Written written = write();

        assertThat(BookArchive.check(zip, new Problems())).get().satisfies(contents -> {
            assertThat(contents.version()).isEqualTo(1);
            assertThat(contents.made()).isEqualTo(CLOCK.instant());
            assertThat(contents.files()).isEqualTo(3);
            assertThat(contents.bytes()).isEqualTo(written.bytes());
        });
    }

    /** Every single byte of a file counts; a copy on an old stick loses them one by one. */
    @Test
    void damageAnywhereIsFound() throws Exception {
        write();
        byte[] whole = Files.readAllBytes(zip);
        String text = new String(whole, StandardCharsets.ISO_8859_1);
        int kite = text.indexOf("not really a photo");
        assertThat(kite).isPositive();
        byte[] spoiled = whole.clone();
        spoiled[kite] ^= 1;
        Files.write(zip, spoiled);

        Problems problems = new Problems();
        assertThat(BookArchive.check(zip, problems)).isEmpty();
        assertThat(problems.all()).extracting(problem -> problem.code()).containsExactly("WRONG-CONTENT");
        assertThat(problems.all().get(0).found()).contains("kite.jpg");

        for (int length = 0; length < whole.length; length += 37) {
            Files.write(zip, Arrays.copyOf(whole, length));
            assertThat(BookArchive.check(zip, new Problems())).as("cut at %d", length).isEmpty();
        }
    }

    /**
     * The copy in test-fixtures was packed with Info-ZIP from files hashed with sha256sum, not by this program. It stands for
     * all copies that families hold: this and every later program must read it.
     */
    @Test
    void copyOfVersionOneIsReadForEver() throws Exception {
        Path restored = folder.resolve("restored");

        BookArchive.Restored done = BookArchive.restore(VERSION_1, restored, CLOCK);

        assertThat(done.contents()).isEqualTo(new BookArchive.Contents(1, "0.1.0", Instant.parse("2026-06-01T18:30:00Z"), 5, 1_796));
        Book read = BookReader.read(restored, new Problems()).orElseThrow();
        assertThat(read.familyName()).isEqualTo("Kestler family");
        assertThat(read.years().get("2025-26").samples().get(0).files()).allSatisfy(file ->
                assertThat(restored.resolve(file)).isRegularFile());
        assertThat(Hash.of(restored.resolve("photos/low tide.jpg")).hex())
                .isEqualTo("c803d69a5663a10a63adf5bc8762b05f9ce77ea245ef007b22647bd1ba243d5e");
        assertThat(Files.readString(restored.resolve("notes.txt"))).isEqualTo("Ask about the tide tables.\n");
    }

    /** Names in other scripts stand in a copy wherever it is checked, whatever this computer's own files may be called. */
    @Test
    void namesOfEveryScriptAreChecked() {
        ArchiveBytes.fine().with("photos/Fähre 渡し船 🛶.jpg", "x").write(zip);

        assertThat(BookArchive.check(zip, new Problems())).isPresent();
    }

    @Test
    void whatIsNoCopyIsSaid() throws Exception {
        Problems problems = new Problems();
        BookArchive.check(folder.resolve("none.zip"), problems);
        Files.writeString(folder.resolve("text.zip"), "PK, but no more");
        BookArchive.check(folder.resolve("text.zip"), problems);
        Files.write(folder.resolve("empty.zip"), new byte[0]);
        BookArchive.check(folder.resolve("empty.zip"), problems);
        BookArchive.check(folder, problems);

        assertThat(problems.all()).hasSize(4).allMatch(problem -> problem.code().equals("NOT-A-COPY"));
    }

    static Map<String, String> files(Path folder) throws IOException {
        Map<String, String> texts = new TreeMap<>();
        try (var found = Files.walk(folder)) {
            for (Path file : found.filter(Files::isRegularFile).toList()) {
                String path = folder.relativize(file).toString().replace('\\', '/');
                if (!path.startsWith(".")) {
                    texts.put(path, Files.readString(file, StandardCharsets.ISO_8859_1));
                }
            }
        }
        return texts;
    }
}
