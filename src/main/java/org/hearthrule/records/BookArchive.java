package org.hearthrule.records;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.hearthrule.input.BadInputException;
import org.hearthrule.input.Place;
import org.hearthrule.input.Problems;

/**
 * A whole book as one ZIP: below {@code book/} every file of its folder that is not hidden, and {@code manifest.json}, which
 * names each with its length and SHA-256. Unpacked by hand, {@code book} is a record book as any other.
 *
 * <p>The same files give the same bytes but for the time in the manifest. Later programs read the copies of earlier ones.
 *
 * <p>Safe for several threads and several processes.
 */
public final class BookArchive {

    /** Version of the form of copies that this program writes; it reads this and all earlier ones. */
    public static final int VERSION = 1;

    static final String BOOK = "book/";

    private BookArchive() { }

    /**
     * What went into a copy.
     *
     * @param files   how many
     * @param bytes   how long they are together, before they were packed
     * @param leftOut paths of files that are not in it: links that lead out of the book, names that not every computer can
     *                have, files larger than 2 GB
     */
    public record Written(int files, long bytes, List<String> leftOut) { }

    /**
     * What a copy holds.
     *
     * @param version of its form
     * @param program that made it, such as {@code 0.1.0}; empty when it does not say
     * @param made    when
     * @param files   how many
     * @param bytes   how long they are together when unpacked
     */
    public record Contents(int version, String program, Instant made, int files, long bytes) { }

    /**
     * What a restore did.
     *
     * @param contents of the copy that was put back
     * @param replaced how many files of the book were replaced, or taken out since the copy does not have them
     * @param earlier  a copy of the book as it was before, which undoes this; null when there was nothing before
     */
    public record Restored(Contents contents, int replaced, Path earlier) { }

    /**
     * Writes a copy, file by file. Others may go on writing the book; the copy holds its records as they were at one moment.
     *
     * @param folder of the book
     * @param out    takes the ZIP; is not closed
     * @param clock  tells when the copy is made
     * @throws BadInputException when there is no book in the folder, or more than a copy can hold
     * @throws BookBusyException when another program does not stop writing
     */
    public static Written write(Path folder, OutputStream out, Clock clock) throws IOException, BadInputException {
        Problems problems = new Problems();
        FolderSource.open(folder, problems).ifPresent(source -> BookNames.check(source, problems));
        problems.throwIfErrors();
        BookArchiveFiles files;
        FolderLock lock = Files.isWritable(folder) ? FolderLock.take(folder) : null;
        try {
            files = BookArchiveFiles.of(folder, BookArchiveLimits.DEFAULT);
        } finally {
            if (lock != null) {
                lock.close();
            }
        }
        return BookArchiveWriter.write(files, out, clock);
    }

    /**
     * Checks a copy: its form, every path, every length and every SHA-256. Changes nothing. Never throws for what lies there.
     *
     * @param zip      the copy
     * @param problems takes every problem
     * @return what it holds, or empty when there was an error
     */
    public static Optional<Contents> check(Path zip, Problems problems) {
        Problems found = new Problems(); // the caller's may hold errors of other files
        Contents contents = null;
        try (BookArchiveReader reader = BookArchiveReader.open(zip, BookArchiveLimits.DEFAULT, found)) {
            contents = reader.check() ? reader.contents() : null;
        } catch (IOException e) {
            found.error(new Place(zip.toString(), 1, 1), "NOT-A-COPY", Files.exists(zip) ? "a file that is no whole ZIP"
                    : "nothing of that name", "a copy that Hearthrule made of a book", null);
        }
        addAll(found, problems);
        return Optional.ofNullable(contents);
    }

    static void addAll(Problems found, Problems to) {
        found.all().forEach(one -> to.error(one.place(), one.code(), one.found(), one.expected(), one.perhaps()));
    }

    /**
     * Puts a copy back. The book as it is now is kept as another copy first; a program that dies on the way leaves the book
     * as it was or as it is to be, as soon as it is next read. Files of the folder that are no records and that the copy
     * does not have stay where they are.
     *
     * @param zip    the copy; is checked first
     * @param folder of the book; made when it is not there
     * @param clock  names the copy of the book as it is now
     * @throws BadInputException       with every problem of the copy, or when the folder holds other things but no book;
     *                                 nothing is changed then
     * @throws UnknownVersionException when a newer program wrote the book that is there
     * @throws BookBusyException       when another program does not stop writing
     * @throws IOException             when writing fails; the book is as it was then, or as it is to be when next read
     */
    public static Restored restore(Path zip, Path folder, Clock clock) throws IOException, BadInputException {
        return BookArchiveRestore.run(zip, folder, clock, step -> { });
    }

    /** @return copies that were kept before others were put back, the newest first; each can be put back in the same way */
    public static List<Path> earlier(Path folder) throws IOException {
        return BookArchiveRestore.earlier(folder);
    }
}
