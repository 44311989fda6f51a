package org.hearthrule.records;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.hearthrule.input.BadInputException;
import org.hearthrule.input.Phrases;
import org.hearthrule.input.Place;
import org.hearthrule.input.Problems;

/** Puts a copy of a book back. Not safe for use by several threads at once. */
final class BookArchiveRestore {

    private static final String EARLIER = "book.";
    private static final String ZIP = ".zip";
    private static final String HALF = ".book-half.tmp";
    private static final int KEPT = 3;
    private static final int HEAD = 1 << 16;

    private final Path zip;
    private final Path folder;
    private final Clock clock;
    private final BookArchiveSwap.Step step;
    private final Problems problems = new Problems();

    private BookArchiveRestore(Path zip, Path folder, Clock clock, BookArchiveSwap.Step step) {
        this.zip = zip;
        this.folder = folder;
        this.clock = clock;
        this.step = step;
    }

    /** Does what {@link BookArchive#restore} says. */
    static BookArchive.Restored run(Path zip, Path folder, Clock clock, BookArchiveSwap.Step step)
            throws IOException, BadInputException {
        return run(zip, folder, clock, FolderLock.PATIENCE, step);
    }

    /** @param patience how long to wait for other writers */
    static BookArchive.Restored run(Path zip, Path folder, Clock clock, Duration patience, BookArchiveSwap.Step step)
            throws IOException, BadInputException {
        BookArchiveRestore restore = new BookArchiveRestore(zip, folder, clock, step);
        BookArchive.check(zip, restore.problems);
        restore.checkFolder();
        restore.problems.throwIfErrors();
        Files.createDirectories(folder);
        FolderLock lock = FolderLock.take(folder, patience);
        try {
            return restore.locked();
        } finally {
            lock.close();
        }
    }

    static List<Path> earlier(Path folder) throws IOException {
        Path copies = folder.resolve(Copies.FOLDER);
        List<Path> found = new ArrayList<>();
        if (Files.isDirectory(copies)) {
            try (DirectoryStream<Path> all = Files.newDirectoryStream(copies, EARLIER + "*" + ZIP)) {
                all.forEach(found::add);
            }
        }
        // without the ending: "…T101500" comes before "…T101500-2"
        found.sort(Comparator.comparing((Path path) -> path.toString().substring(0, path.toString().length() - ZIP.length()))
                .reversed());
        return List.copyOf(found);
    }

    /** A folder of other things is no place for a book: whoever mistypes a name would find hers between them. */
    private void checkFolder() throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        Place place = new Place(folder.toString(), 1, 1);
        if (!Files.isDirectory(folder)) {
            problems.error(place, "NOT-A-FOLDER", "a file", "the folder of a record book, or a new one", null);
            return;
        }
        Set<String> names = names();
        boolean book = names.contains(Copies.FOLDER) || names.stream().anyMatch(BookNames::isPart);
        if (!book && names.stream().anyMatch(name -> !name.startsWith("."))) {
            problems.error(place, "NOT-A-BOOK", "a folder that holds other things and no record book",
                    "the folder of a record book, or a new one", null);
        }
    }

    private Set<String> names() throws IOException {
        try (DirectoryStream<Path> found = Files.newDirectoryStream(folder)) {
            Set<String> names = new TreeSet<>();
            found.forEach(path -> names.add(path.getFileName().toString()));
            return names;
        }
    }

    private BookArchive.Restored locked() throws IOException, BadInputException {
        refuseNewer();
        try (BookArchiveReader reader = BookArchiveReader.open(zip, BookArchiveLimits.DEFAULT, problems)) {
            // read again from the beginning: it may be another file by now
            reader.checkNames();
            problems.throwIfErrors();
            List<BookArchiveManifest.Entry> coming = new ArrayList<>();
            for (BookArchiveManifest.Entry file : reader.files()) {
                if (!isThere(file)) {
                    coming.add(file);
                }
            }
            Set<String> leaving = leaving(reader.files(), coming);
            problems.throwIfErrors();
            if (coming.isEmpty() && leaving.isEmpty()) {
                return new BookArchive.Restored(reader.contents(), 0, null);
            }
            BookArchiveFiles now = BookArchiveFiles.of(folder, BookArchiveLimits.DEFAULT);
            refuseWithoutRoom(coming, now);
            BookArchiveSwap swap = new BookArchiveSwap(folder, step);
            Path earlier = prepare(reader, coming, leaving, now, swap);
            swap.swap(leaving);
            letGo();
            return new BookArchive.Restored(reader.contents(), leaving.size(), earlier);
        }
    }

    private void refuseNewer() throws IOException {
        for (String name : names()) {
            Path file = folder.resolve(name);
            if (BookNames.isPart(name) && Files.isRegularFile(file)) {
                try (InputStream in = Files.newInputStream(file)) {
                    if (FormatVersion.of(in.readNBytes(HEAD)) > Book.VERSION) {
                        throw new UnknownVersionException(file, "was written by a newer Hearthrule");
                    }
                }
            }
        }
    }

    /** Whether the very same content lies at the path already; photos mostly do. */
    private boolean isThere(BookArchiveManifest.Entry file) throws IOException {
        try {
            Path path = folder.resolve(file.path());
            // a record may be a link to where the family's own drive keeps it; it becomes a plain file when it changes
            boolean here = BookNames.isPart(file.path()) ? Files.isRegularFile(path)
                    : Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS) && path.toRealPath().startsWith(folder.toRealPath());
            return here && Files.size(path) == file.bytes() && Hash.of(path).equals(file.hash());
        } catch (InvalidPathException e) {
            problems.error(new Place(zip.toString(), 1, 1), "PATH-OUTSIDE", "a name that this computer cannot have: "
                    + Phrases.quoted(file.path()), "a name that it can", null);
            return true;
        }
    }

    /** Returns what makes room: records that the copy does not have, and whatever lies where a file is to come. */
    private Set<String> leaving(List<BookArchiveManifest.Entry> all, List<BookArchiveManifest.Entry> coming) throws IOException {
        Set<String> leaving = new TreeSet<>();
        Set<String> inCopy = all.stream().map(BookArchiveManifest.Entry::path).collect(Collectors.toSet());
        for (String name : names()) {
            if ((BookNames.isPart(name) || BookNames.isConflict(name)) && !inCopy.contains(name)) {
                leaving.add(name);
            }
        }
        for (BookArchiveManifest.Entry file : coming) {
            inTheWay(file.path(), leaving);
        }
        return leaving;
    }

    private void inTheWay(String path, Set<String> leaving) {
        for (int slash = path.indexOf('/'); slash >= 0; slash = path.indexOf('/', slash + 1)) {
            String above = path.substring(0, slash);
            Path file = folder.resolve(above);
            if (Files.exists(file, LinkOption.NOFOLLOW_LINKS) && !Files.isDirectory(file, LinkOption.NOFOLLOW_LINKS)) {
                leaving.add(above);
                return;
            }
        }
        if (Files.exists(folder.resolve(path), LinkOption.NOFOLLOW_LINKS)) {
            leaving.add(path);
        }
    }

    private void refuseWithoutRoom(List<BookArchiveManifest.Entry> coming, BookArchiveFiles now)
            throws IOException, BadInputException {
        long needed = coming.stream().mapToLong(BookArchiveManifest.Entry::bytes).sum();
        for (String path : now.others()) {
            needed += Files.size(folder.resolve(path));
        }
        long room = Files.getFileStore(folder).getUsableSpace();
        if (needed > room) {
            problems.error(new Place(folder.toString(), 1, 1), "NO-ROOM", "room for " + room + " bytes on this disk",
                    "room for " + needed + ": the files of the copy, and a copy of the book as it is now", null);
        }
        problems.throwIfErrors();
    }

    /** Writes the new files, and the book as it is now into a copy; returns that, or null when there is no book yet. */
    private Path prepare(BookArchiveReader reader, List<BookArchiveManifest.Entry> coming, Set<String> leaving, BookArchiveFiles now,
                         BookArchiveSwap swap) throws IOException, BadInputException {
        try {
            for (BookArchiveManifest.Entry file : coming) {
                try (FileChannel channel = FileChannel.open(swap.staging(file.path()), StandardOpenOption.CREATE_NEW,
                        StandardOpenOption.WRITE)) {
                    reader.copy(file, Channels.newOutputStream(channel));
                    channel.force(true);
                }
            }
            problems.throwIfErrors();
            return now.records().isEmpty() && leaving.isEmpty() ? null : keep(now);
        } catch (IOException | BadInputException | RuntimeException e) {
            swap.drop();
            throw e;
        }
    }

    /** Keeps the book as it is now. */
    private Path keep(BookArchiveFiles now) throws IOException {
        Path copies = Files.createDirectories(folder.resolve(Copies.FOLDER));
        String stem = EARLIER + Copies.stamp(LocalDateTime.now(clock));
        Path half = copies.resolve(HALF);
        step.before("keep");
        try {
            try (FileChannel channel = FileChannel.open(half, StandardOpenOption.CREATE,
                    StandardOpenOption.TRUNCATE_EXISTING, StandardOpenOption.WRITE);
                 OutputStream out = new BufferedOutputStream(Channels.newOutputStream(channel))) {
                BookArchiveWriter.write(now, out, clock);
                channel.force(true);
            }
            Path kept = copies.resolve(stem + ZIP);
            for (int number = 2; Files.exists(kept); number++) {
                kept = copies.resolve(stem + '-' + number + ZIP);
            }
            SafeFiles.move(half, kept);
            SafeFiles.force(copies);
            return kept;
        } finally {
            Files.deleteIfExists(half);
        }
    }

    /** Deletes all but the newest copies. To keep too many does no harm. */
    private void letGo() {
        try {
            for (Path copy : earlier(folder).stream().skip(KEPT).toList()) {
                Files.deleteIfExists(copy);
            }
        } catch (IOException e) {
            // the book is restored, which is what was asked; the next time lets go again
        }
    }
}
