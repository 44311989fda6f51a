package org.hearthrule.pictures;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.security.MessageDigest;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hearthrule.records.FolderLock;
import org.hearthrule.records.Hash;
import org.hearthrule.records.SafeFiles;
import org.hearthrule.terms.Wording;

/**
 * Takes photos and scans into a book, many at once, and says of each what became of it.
 *
 * <p>What a file is, its content says. It gets a name of ours, is brought down to the disk and then put in its place in
 * one step. The same content is stored once.
 *
 * <p>Safe for several threads and several processes.
 */
public final class Intake {

    /** The most bytes of a file that are taken. */
    public static final long MOST_BYTES = 40_000_000;

    private static final String INCOMING = ".page/incoming";
    private static final int BUFFER = 1 << 16;
    private static final int HEAD = 8_192;
    private static final long MILLION = 1_000_000;
    private static final long CUT_SHORT = -1;
    private static final int END = -1;
    private static final int BROKEN = -2;

    private final Path folder;
    private final Clock clock;
    private final long mostBytes;

    /**
     * @param folder of the book; must be there
     * @param clock  tells today, for days that are not offered and for names of files that tell no day
     */
    public Intake(Path folder, Clock clock) {
        this(folder, clock, MOST_BYTES);
    }

    /** @param mostBytes the most bytes of a file that are taken */
    public Intake(Path folder, Clock clock, long mostBytes) {
        this.folder = folder;
        this.clock = clock;
        this.mostBytes = mostBytes;
    }

    /**
     * Takes files in. One that is refused does not keep out the others.
     *
     * @param piece what they are, such as {@code drawing} or {@code notice of intent}; becomes part of their names
     * @return what became of each, in the same order
     * @throws IOException when the book's folder cannot be written; what was stored before stays
     */
    public List<Taken> take(List<Upload> uploads, String piece) throws IOException {
        Path incoming = Files.createDirectories(folder.resolve(INCOMING));
        deleteLeftovers(incoming);
        StoredBefore before = StoredBefore.in(folder);
        List<Taken> taken = new ArrayList<>(uploads.size());
        for (Upload upload : uploads) {
            // a temporary file of Java's could be read by nobody else in the family, and stay so
            Path half = Files.createFile(incoming.resolve("half-" + UUID.randomUUID() + ".tmp"));
            try {
                taken.add(take(upload, piece, half, before));
            } finally {
                Files.deleteIfExists(half);
            }
        }
        return List.copyOf(taken);
    }

    /** Deletes what a program that died left behind. */
    private static void deleteLeftovers(Path incoming) throws IOException {
        FileTime longAgo = FileTime.from(Instant.now().minus(Duration.ofDays(1)));
        try (DirectoryStream<Path> found = Files.newDirectoryStream(incoming)) {
            for (Path half : found) {
                if (Files.getLastModifiedTime(half).compareTo(longAgo) < 0) {
                    Files.deleteIfExists(half);
                }
            }
        } catch (NoSuchFileException e) {
            // another program was quicker
        }
    }

    private Taken take(Upload upload, String piece, Path half, StoredBefore before) throws IOException {
        String name = OriginalName.shown(upload.name());
        MessageDigest sum = Hash.sum();
        long bytes = copy(upload, half, sum);
        if (bytes == CUT_SHORT) {
            return new Taken.Refused(name, Taken.Reason.CUT_SHORT, Wording.english().say("picture.refused.cut-short", name));
        }
        if (bytes > mostBytes) {
            return new Taken.Refused(name, Taken.Reason.TOO_LARGE,
                    Wording.english().say("picture.refused.too-large", name, mostBytes / MILLION));
        }
        byte[] head = head(half);
        Optional<FileKind> kind = FileKind.of(head);
        if (kind.isEmpty()) {
            return refused(name, OtherKind.of(head));
        }
        PictureFacts facts = PictureFacts.read(half, kind.get(), upload.name(), clock);
        Hash hash = Hash.of(sum);
        Optional<String> same = before.find(bytes, hash);
        if (same.isPresent()) {
            return new Taken.AlreadyThere(name, same.get(), facts);
        }
        LocalDate day = facts.offer().map(DateOffer::day).orElse(LocalDate.now(clock));
        Path file = place(half, day, piece, hash, kind.get());
        before.add(bytes, file);
        return new Taken.Stored(name, InsideBook.path(folder, file), bytes, facts);
    }

    /** Returns how many bytes came, one more than the cap at least when there are too many; brought down to the disk. */
    private long copy(Upload upload, Path half, MessageDigest sum) throws IOException {
        byte[] buffer = new byte[BUFFER];
        long bytes = 0;
        try (FileChannel out = FileChannel.open(half, StandardOpenOption.WRITE)) {
            InputStream in = null;
            try {
                in = open(upload);
                for (int read = read(in, buffer); read != END; read = read(in, buffer)) {
                    if (read == BROKEN) {
                        return CUT_SHORT;
                    }
                    bytes += read;
                    if (bytes > mostBytes) {
                        return bytes;
                    }
                    sum.update(buffer, 0, read);
                    ByteBuffer left = ByteBuffer.wrap(buffer, 0, read);
                    while (left.hasRemaining()) {
                        out.write(left);
                    }
                }
            } finally {
                close(in);
            }
            out.force(true);
        }
        return bytes;
    }

    private static InputStream open(Upload upload) {
        try {
            return upload.content().open();
        } catch (IOException e) {
            return null; // reads as broken
        }
    }

    /** What fails on the way here is the sender's; what fails on the way to the disk is ours. */
    private static int read(InputStream in, byte[] buffer) {
        try {
            return in == null ? BROKEN : in.read(buffer);
        } catch (IOException e) {
            return BROKEN;
        }
    }

    private static void close(InputStream in) {
        try {
            if (in != null) {
                in.close();
            }
        } catch (IOException e) {
            // all that was needed has been read
        }
    }

    private static byte[] head(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return in.readNBytes(HEAD);
        }
    }

    private static Taken.Refused refused(String name, OtherKind kind) {
        Wording wording = Wording.english();
        if (kind == OtherKind.EMPTY) {
            return new Taken.Refused(name, Taken.Reason.EMPTY, wording.say("picture.refused.empty", name));
        }
        String words = wording.say("picture.refused", name, wording.say("picture.other." + kind.key()));
        String advice = "picture.advice." + kind.key();
        return new Taken.Refused(name, kind == OtherKind.HEIC ? Taken.Reason.HEIC : Taken.Reason.OTHER_KIND,
                wording.has(advice) ? words + ' ' + wording.say(advice) : words);
    }

    private Path place(Path half, LocalDate day, String piece, Hash hash, FileKind kind) throws IOException {
        FolderLock lock = FolderLock.take(folder);
        try {
            for (int number = 1;; number++) {
                Path file = folder.resolve(OurName.path(day, piece, hash, kind, number));
                if (Files.exists(file)) {
                    continue;
                }
                Path month = Files.createDirectories(file.getParent());
                if (!InsideBook.isBelow(folder.toRealPath(), month.toRealPath())) {
                    throw new FileSystemException(month.toString(), null, "leads out of the book");
                }
                SafeFiles.move(half, file);
                SafeFiles.force(month);
                return file;
            }
        } finally {
            lock.close();
        }
    }
}
