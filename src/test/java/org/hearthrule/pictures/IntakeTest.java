package org.hearthrule.pictures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFileAttributeView;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hearthrule.records.Hash;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class IntakeTest {

    @TempDir
    private Path above;
    private Path folder;
    private Intake intake;

    @BeforeEach
    void intoABook() throws IOException {
        folder = Files.createDirectory(above.resolve("book"));
        intake = new Intake(folder, Samples.CLOCK);
    }

    private Taken take(String name, byte[] content) throws IOException {
        return intake.take(List.of(Samples.upload(name, content)), "drawing").get(0);
    }

    private Taken.Stored stored(String name, byte[] content) throws IOException {
        Taken taken = take(name, content);
        assertThat(taken).isInstanceOf(Taken.Stored.class);
        return (Taken.Stored) taken;
    }

    private Taken.Refused refused(String name, byte[] content) throws IOException {
        Taken taken = take(name, content);
        assertThat(taken).isInstanceOf(Taken.Refused.class);
        return (Taken.Refused) taken;
    }

    /** Every file in the folder of the book, except the lock. */
    private List<String> files() throws IOException {
        try (Stream<Path> found = Files.walk(folder)) {
            return found.filter(Files::isRegularFile).map(file -> InsideBook.path(folder, file))
                    .filter(path -> !path.equals(".lock")).sorted().toList();
        }
    }

    @Test
    void photoIsStoredUnderOurNameByTheDayOfTheCamera() throws IOException {
        byte[] photo = ExifBytes.bigEndian().original("2026:05:14 16:02:33").in(Samples.jpeg());

        Taken.Stored stored = stored("IMG_2041.JPG", photo);

        String hash = Hash.of(photo).hex().substring(0, 12);
        assertThat(stored.path()).isEqualTo("work/2026-05/2026-05-14-drawing-" + hash + ".jpg");
        assertThat(stored.name()).isEqualTo("IMG_2041.JPG");
        assertThat(stored.bytes()).isEqualTo(photo.length);
        assertThat(stored.facts().offer()).get().extracting(DateOffer::day).isEqualTo(LocalDate.of(2026, 5, 14));
        assertThat(folder.resolve(stored.path())).hasBinaryContent(photo);
        assertThat(files()).containsExactly(stored.path());
    }

    /** Where a family shares a folder, a photo that only its sender may read is as good as not there. */
    @Test
    void whoeverMayReadOtherNewFilesMayReadThisOne() throws IOException {
        Path plain = Files.createFile(folder.resolve("plain"));
        PosixFileAttributeView view = Files.getFileAttributeView(plain, PosixFileAttributeView.class);
        Path file = folder.resolve(stored("x.jpg", Samples.jpeg()).path());

        if (view != null) {
            assertThat(Files.getPosixFilePermissions(file)).isEqualTo(view.readAttributes().permissions());
        }
        assertThat(Files.isReadable(file)).isTrue();
    }

    @Test
    void fileThatTellsNoDayIsNamedByToday() throws IOException {
        assertThat(stored("scan.pdf", Samples.PDF).path()).startsWith("work/2026-05/2026-05-20-drawing-").endsWith(".pdf");
    }

    @Test
    void kindIsDecidedByTheContent() throws IOException {
        assertThat(stored("letter.pdf", Samples.jpeg()).path()).endsWith(".jpg");
        assertThat(refused("photo.jpg", "<html><script>".getBytes(StandardCharsets.UTF_8)).words())
                .isEqualTo("photo.jpg is a web page. Hearthrule takes pictures (JPEG, PNG, GIF, WebP) and PDF. Print it as PDF.");
    }

    // the advice is common practice, without a source
    @Test
    void heicIsRefusedWithWhatToDo() throws IOException {
        byte[] heic = "\0\0\0\30ftypheic\0\0\0\0mif1heic".getBytes(StandardCharsets.ISO_8859_1);

        Taken.Refused refused = refused("IMG_2041.HEIC", heic);

        assertThat(refused.reason()).isEqualTo(Taken.Reason.HEIC);
        assertThat(refused.words()).isEqualTo("IMG_2041.HEIC is a HEIC picture, the form in which newer phones store photos."
                + " Hearthrule takes pictures (JPEG, PNG, GIF, WebP) and PDF. On an iPhone, Settings > Camera > Formats > Most"
                + " Compatible makes new photos JPEG. A photo you have already becomes a JPEG when you share it or send it by mail.");
        assertThat(files()).isEmpty();
    }

    @Test
    void emptyFileIsRefused() throws IOException {
        assertThat(refused("photo.jpg", new byte[0]).reason()).isEqualTo(Taken.Reason.EMPTY);
        assertThat(files()).isEmpty();
    }

    /** Every way in which a name may try to be a path. */
    @ParameterizedTest
    @ValueSource(strings = {"../../../etc/passwd", "..\\..\\family.json", "/etc/cron.d/x", "C:\\Windows\\x.jpg", "C:x.jpg",
        "x\0.jpg", "family.json", ".page/x.jpg", "....//x.jpg", "%2e%2e%2fx.jpg", "a\nb.jpg", "NUL", "x.jpg:stream", "~/x.jpg", ""})
    void nameAtHomeIsNeverAPath(String name) throws IOException {
        Path outside = above;
        List<Path> before;
        try (Stream<Path> found = Files.list(outside)) {
            before = found.sorted().toList();
        }

        Taken.Stored stored = stored(name, Samples.jpeg());

        assertThat(stored.path()).matches("work/2026-05/2026-05-20-drawing-[0-9a-f]{12}\\.jpg");
        assertThat(files()).containsExactly(stored.path());
        assertThat(stored.name()).doesNotContain("/", "\\", "\0", "\n").isNotEmpty();
        try (Stream<Path> found = Files.list(outside)) {
            assertThat(found.sorted().toList()).isEqualTo(before);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"../../x", "Zeichnung über Ebbe & Flut!", "", "   ", "a/b\\c:d", "-", "日本"})
    void wordsForThePieceBecomePlain(String piece) throws IOException {
        Taken taken = intake.take(List.of(Samples.upload("x.jpg", Samples.jpeg())), piece).get(0);

        assertThat(((Taken.Stored) taken).path()).matches("work/2026-05/2026-05-20-[a-z0-9]+(-[a-z0-9]+)*-[0-9a-f]{12}\\.jpg");
        assertThat(OurName.isOurs(((Taken.Stored) taken).path())).isTrue();
    }

    @Test
    void sameContentIsStoredOnceAndSaidSo() throws IOException {
        Taken.Stored first = stored("one.jpg", Samples.jpeg());

        Taken second = take("two.jpg", Samples.jpeg());

        assertThat(second).isInstanceOfSatisfying(Taken.AlreadyThere.class, there -> {
            assertThat(there.path()).isEqualTo(first.path());
            assertThat(there.name()).isEqualTo("two.jpg");
        });
        assertThat(files()).containsExactly(first.path());
    }

    @Test
    void whatWasPutThereByHandCountsToo() throws IOException {
        Files.createDirectories(folder.resolve("photos"));
        Files.write(folder.resolve("photos/jetty.jpg"), Samples.jpeg());

        assertThat(take("x.jpg", Samples.jpeg())).isInstanceOfSatisfying(Taken.AlreadyThere.class,
                there -> assertThat(there.path()).isEqualTo("photos/jetty.jpg"));
    }

    /** A copy that was put aside, or a preview, is no piece of the book. */
    @Test
    void whatLiesInHiddenFoldersDoesNotCount() throws IOException {
        Files.createDirectories(folder.resolve(".copies/attachments"));
        Files.write(folder.resolve(".copies/attachments/x.jpg"), Samples.jpeg());

        assertThat(take("x.jpg", Samples.jpeg())).isInstanceOf(Taken.Stored.class);
    }

    @Test
    void sameLengthIsNotTheSameContent() throws IOException {
        byte[] other = Samples.PDF.clone();
        other[other.length - 1] = 'x';

        assertThat(stored("a.pdf", Samples.PDF).path()).isNotEqualTo(stored("b.pdf", other).path());
    }

    @Test
    void manyAtOnceAreAllAnswered() throws IOException {
        List<Taken> taken = intake.take(List.of(Samples.upload("a.jpg", Samples.jpeg(1)), Samples.upload("b.txt", "Dear".getBytes()),
                Samples.upload("c.jpg", Samples.jpeg(1)), Samples.upload("d.heic", new byte[0]),
                Samples.upload("e.jpg", Samples.jpeg(2))), "piece");

        assertThat(taken).extracting(each -> each.getClass().getSimpleName())
                .containsExactly("Stored", "Refused", "AlreadyThere", "Refused", "Stored");
        assertThat(taken).extracting(Taken::name).containsExactly("a.jpg", "b.txt", "c.jpg", "d.heic", "e.jpg");
        assertThat(files()).hasSize(2);
    }

    @Test
    void fileOfExactlyTheCapIsTakenAndOneByteMoreIsNot() throws IOException {
        intake = new Intake(folder, Samples.CLOCK, 1_000);
        byte[] most = Arrays.copyOf(Samples.PDF, 1_000);

        assertThat(take("most.pdf", most)).isInstanceOf(Taken.Stored.class);
        assertThat(refused("more.pdf", Arrays.copyOf(Samples.PDF, 1_001)).reason()).isEqualTo(Taken.Reason.TOO_LARGE);
        assertThat(files()).hasSize(1);
    }

    /** A stream that never ends must not fill the disk before somebody looks at its length. */
    @Test
    void copyingStopsAtTheCap() throws IOException {
        AtomicLong read = new AtomicLong();
        InputStream endless = new InputStream() {
            @Override
            public int read() {
                read.incrementAndGet();
                return 0;
            }

            @Override
            public int read(byte[] into, int from, int length) {
                read.addAndGet(length);
                return length;
            }
        };

        Taken taken = intake.take(List.of(new Upload("endless.pdf",
                () -> new SequenceInputStream(new ByteArrayInputStream(Samples.PDF), endless))), "piece").get(0);

        assertThat(taken).isInstanceOfSatisfying(Taken.Refused.class, refused -> assertThat(refused.words()).isEqualTo(
                "endless.pdf is larger than 40 MB, the most that is taken. A scan of 200 dots per inch, or a photo saved smaller,"
                        + " is easily small enough."));
        assertThat(read.get()).isBetween(40_000_000L, 40_200_000L);
        assertThat(files()).isEmpty();
    }

    @Test
    void streamThatBreaksIsRefusedAndTheOthersAreTaken() throws IOException {
        InputStream breaks = new InputStream() {
            @Override
            public int read() throws IOException {
                throw new IOException("connection reset");
            }
        };
        List<Taken> taken = intake.take(List.of(
                new Upload("broken.jpg", () -> new SequenceInputStream(new ByteArrayInputStream(Samples.jpeg()), breaks)),
                new Upload("gone.jpg", () -> {
                    throw new IOException("gone");
                }),
                Samples.upload("whole.jpg", Samples.jpeg())), "piece");

        assertThat(taken).extracting(each -> each.getClass().getSimpleName()).containsExactly("Refused", "Refused", "Stored");
        assertThat(((Taken.Refused) taken.get(0)).words()).isEqualTo("broken.jpg did not arrive whole. Please send it again.");
        assertThat(files()).hasSize(1);
    }

    @Test
    void damagedPictureIsKeptAndSaid() throws IOException {
        byte[] noise = "\u00FF\u00D8\u00FFnot a picture".getBytes(StandardCharsets.ISO_8859_1);

        assertThat(stored("x.jpg", noise).facts().notes()).hasSize(1);
    }

    /** Somebody changes a stored file in another program; the first content sent again must not overwrite that. */
    @Test
    void fileThatWasChangedSinceIsNotOverwritten() throws IOException {
        Taken.Stored first = stored("x.jpg", Samples.jpeg(1));
        Files.write(folder.resolve(first.path()), Samples.jpeg(2));

        Taken.Stored again = stored("x.jpg", Samples.jpeg(1));

        assertThat(again.path()).isEqualTo(first.path().replace(".jpg", "-2.jpg"));
        assertThat(OurName.isOurs(again.path())).isTrue();
        assertThat(folder.resolve(first.path())).hasBinaryContent(Samples.jpeg(2));
    }

    @Test
    void whatAProgramThatDiedLeftBehindIsSweptUp() throws IOException {
        Path incoming = Files.createDirectories(folder.resolve(".page/incoming"));
        Path old = Files.createFile(incoming.resolve("half-1.tmp"));
        Path fresh = Files.createFile(incoming.resolve("half-2.tmp"));
        Files.setLastModifiedTime(old, FileTime.from(Instant.now().minus(Duration.ofDays(2))));

        stored("x.jpg", Samples.jpeg());

        assertThat(old).doesNotExist();
        assertThat(fresh).exists();
    }

    /** A folder that is a link would carry a family's photos out of the book. */
    @Test
    void nothingIsStoredThroughALinkThatLeadsOut(@TempDir Path elsewhere) throws IOException {
        Files.createSymbolicLink(folder.resolve("work"), elsewhere);

        assertThatThrownBy(() -> take("x.jpg", Samples.jpeg())).isInstanceOf(FileSystemException.class);

        try (Stream<Path> found = Files.walk(elsewhere)) {
            assertThat(found.filter(Files::isRegularFile)).isEmpty();
        }
    }

    @Test
    void severalThreadsStoreEachContentOnce() throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(4);
        List<Callable<Taken>> jobs = IntStream.range(0, 24).<Callable<Taken>>mapToObj(i -> () -> new Intake(folder, Samples.CLOCK)
                .take(List.of(Samples.upload("x.jpg", Samples.jpeg(i))), "piece").get(0)).toList();

        for (var job : threads.invokeAll(jobs)) {
            assertThat(job.get()).isInstanceOf(Taken.Stored.class);
        }

        threads.shutdown();
        assertThat(files()).hasSize(24);
    }

    @Test
    void longNameIsCutAndUnseenCharactersAreLeftOut() {
        assertThat(OriginalName.shown("a\u202Egpj.exe")).isEqualTo("agpj.exe");
        assertThat(OriginalName.shown("C:\\photos\\jetty.jpg")).isEqualTo("jetty.jpg");
        assertThat(OriginalName.shown("x".repeat(300))).hasSize(120).endsWith("…");
        assertThat(OriginalName.shown("😀".repeat(300)).codePoints()).doesNotContain(0xD83D);
        assertThat(OriginalName.shown(null)).isEqualTo("a file without a name");
        assertThat(OriginalName.shown(" \u0000 ")).isEqualTo("a file without a name");
    }
}
