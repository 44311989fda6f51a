package org.hearthrule.pictures;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.hearthrule.records.Book;
import org.hearthrule.records.FolderLock;
import org.hearthrule.records.Hash;
import org.hearthrule.records.RecordFiles;
import org.hearthrule.records.SafeFiles;

/**
 * The photos and scans in a book's folder.
 *
 * <p>A record that is deleted leaves its files where they are, so that the deletion can be undone; {@link #tidy} puts
 * those that no record names aside, {@link #bringBack} fetches them again. Nothing is ever thrown away.
 *
 * <p>Safe for several threads and several processes.
 */
public final class Attachments {

    private static final String ASIDE = ".copies/attachments";
    private static final Duration MAY_STILL_BE_NAMED = Duration.ofDays(1);
    private static final int HEAD = 16;

    private final Path folder;
    private final Clock clock;

    /**
     * @param folder of the book; must be there
     * @param clock  tells today and now
     */
    public Attachments(Path folder, Clock clock) {
        this.folder = folder;
        this.clock = clock;
    }

    /**
     * A file of the book that may be shown.
     *
     * @param path  within the book, as it was asked for
     * @param file  where it really lies
     * @param bytes how long it is
     */
    public record Opened(String path, Path file, FileKind kind, long bytes) { }

    Path folder() {
        return folder;
    }

    /**
     * Stores one file; see {@link Intake#take}.
     *
     * @param piece what it is, such as {@code drawing}
     */
    public Taken store(Upload upload, String piece) throws IOException {
        return new Intake(folder, clock).take(List.of(upload), piece).get(0);
    }

    /**
     * Finds a file to be shown.
     *
     * @param path within the book, with slashes
     * @return the file; empty when there is none, when its content is of no kind that is taken, or when the path is
     *         absolute, names a drive, holds a backslash or NUL, leads up, is hidden or leads through a link out of the
     *         book or into a hidden folder
     */
    public Optional<Opened> open(String path) {
        Path file = InsideBook.file(folder, path).orElse(null);
        if (file == null) {
            return Optional.empty();
        }
        try (InputStream in = Files.newInputStream(file)) {
            Optional<FileKind> kind = FileKind.of(in.readNBytes(HEAD));
            return kind.isEmpty() ? Optional.empty()
                    : Optional.of(new Opened(path, file, kind.get(), Files.size(file)));
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** @return paths of files stored under our names that no record names, sorted; files put there by hand are not looked at */
    public List<String> unreferenced(Book book) throws IOException {
        // on some drives names differ by more than their capitals only
        Set<String> named = RecordFiles.of(book).stream().map(path -> path.toLowerCase(Locale.ROOT)).collect(Collectors.toSet());
        List<String> found = new ArrayList<>();
        StoredBefore.walk(folder, (bytes, file) -> {
            String path = InsideBook.path(folder, file);
            if (OurName.isOurs(path) && !named.contains(path)) {
                found.add(path);
            }
        });
        found.sort(null);
        return found;
    }

    /** @return paths that records name and under which there is no file in the book, sorted */
    public List<String> missing(Book book) {
        return RecordFiles.of(book).stream().filter(path -> InsideBook.file(folder, path).isEmpty()).toList();
    }

    /**
     * Puts files that no record names aside, into {@code .copies/attachments}. One that was stored within the last day
     * stays: its record may be about to be written.
     *
     * @param book as it is now
     * @return the paths of what was put aside
     */
    public List<String> tidy(Book book) throws IOException {
        Instant limit = clock.instant().minus(MAY_STILL_BE_NAMED);
        List<String> moved = new ArrayList<>();
        FolderLock lock = FolderLock.take(folder);
        try {
            for (String path : unreferenced(book)) {
                Path file = folder.resolve(path);
                if (Files.getLastModifiedTime(file).toInstant().isBefore(limit)) {
                    move(file, free(folder.resolve(ASIDE).resolve(path), file));
                    deleteIfEmpty(file.getParent());
                    moved.add(path);
                }
            }
        } finally {
            lock.close();
        }
        return moved;
    }

    /**
     * Fetches files again that were put aside and that a record names, for example after a deletion was undone.
     *
     * @return the paths of what is back
     */
    public List<String> bringBack(Book book) throws IOException {
        List<String> moved = new ArrayList<>();
        FolderLock lock = FolderLock.take(folder);
        try {
            for (String path : missing(book)) {
                Path aside = aside(path);
                if (aside != null && !Files.exists(folder.resolve(path))) {
                    move(aside, folder.resolve(path));
                    moved.add(path);
                }
            }
        } finally {
            lock.close();
        }
        return moved;
    }

    private Path aside(String path) {
        try {
            Path file = InsideBook.isPlain(path) ? folder.resolve(ASIDE).resolve(path) : null;
            return file != null && OurName.isOurs(path) && Files.isRegularFile(file) ? file : null;
        } catch (InvalidPathException e) {
            return null;
        }
    }

    private static void move(Path from, Path to) throws IOException {
        Files.createDirectories(to.getParent());
        SafeFiles.move(from, to);
        SafeFiles.force(to.getParent());
        SafeFiles.force(from.getParent());
    }

    /** Returns the wished path, or one with a number when something else lies there. */
    private static Path free(Path wish, Path file) throws IOException {
        Path path = wish;
        for (int number = 2; Files.exists(path) && !Hash.of(path).equals(Hash.of(file)); number++) {
            String name = wish.getFileName().toString();
            int dot = name.lastIndexOf('.');
            path = wish.resolveSibling(name.substring(0, dot) + '-' + number + name.substring(dot));
        }
        return path;
    }

    private static void deleteIfEmpty(Path month) {
        try {
            Files.deleteIfExists(month);
        } catch (IOException e) {
            // others still lie there
        }
    }
}
