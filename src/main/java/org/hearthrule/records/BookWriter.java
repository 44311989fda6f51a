package org.hearthrule.records;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.hearthrule.input.BadInputException;
import org.hearthrule.input.Problems;

/**
 * Writes the files of a book, and never over a change made by somebody else: a file that is not as it was read is left
 * alone, and the new version is kept beside it ({@link ChangedMeanwhileException}).
 *
 * <p>A file is written beside the old one, brought down to the disk and put in its place in one step, while a lock
 * keeps other writers out. The version before is kept as a {@link Copy}. Several files are written all or none.
 *
 * <p>Safe for several threads and several processes.
 */
public final class BookWriter {

    private static final Duration PATIENCE = Duration.ofSeconds(5);

    private final Path folder;
    private final Clock clock;
    private final Duration patience;
    private final BeforeMove beforeMove;

    /**
     * @param folder of the book; made when it is not there
     * @param clock  tells the day and the zone for copies and for names of versions that were not saved
     */
    public BookWriter(Path folder, Clock clock) {
        this(folder, clock, PATIENCE, name -> { });
    }

    BookWriter(Path folder, Clock clock, Duration patience, BeforeMove beforeMove) {
        this.folder = folder;
        this.clock = clock;
        this.patience = patience;
        this.beforeMove = beforeMove;
    }

    /**
     * Writes those files of a book that differ from what was read, all or none.
     *
     * @param before what was read; {@link Snapshot#nothing()} for a new book
     * @param after  what is to be; has all the years of before
     * @return what the folder holds now
     * @throws ChangedMeanwhileException when a file to be written is not as it was read; nothing is changed then
     * @throws BadInputException         when the book could not be read again; nothing is changed then
     * @throws UnknownVersionException   when a newer program wrote a file that is to be replaced
     * @throws BookBusyException         when another program does not stop writing
     * @throws IOException               when writing fails; what was replaced already is put back
     */
    public Snapshot write(Snapshot before, Book after) throws IOException, BadInputException {
        return write(before, after, true).orElseThrow();
    }

    /** @param keepOurs whether a version that cannot be saved is kept beside the file, and said so; else nothing is done */
    private Optional<Snapshot> write(Snapshot before, Book after, boolean keepOurs) throws IOException, BadInputException {
        if (!after.years().keySet().containsAll(before.book().years().keySet())) {
            throw new IllegalArgumentException("a year that was read may not go missing");
        }
        Map<String, String> texts = changedTexts(before.book(), after);
        checkReadable(after, texts);
        List<Change> changes = new ArrayList<>();
        texts.forEach((name, text) -> changes.add(Change.to(name, bytes(text), before.hash(name))));
        if (!write(changes, keepOurs)) {
            return Optional.empty();
        }
        Map<String, Hash> hashes = new HashMap<>(before.hashes());
        changes.forEach(change -> hashes.put(change.name(), change.hash()));
        return Optional.of(new Snapshot(BookReader.inFolder(after, folder), hashes));
    }

    /**
     * Does the same as {@link #write(Snapshot, Book)}, and nothing at all when a file is not as it was read.
     *
     * @return what the folder holds now; empty when a file has changed
     */
    Optional<Snapshot> writeUnlessChanged(Snapshot before, Book after) throws IOException, BadInputException {
        // years name the children and persons of this file
        boolean sameFamily = !before.hashes().containsKey(BookNames.FAMILY)
                || Hash.of(folder.resolve(BookNames.FAMILY)).equals(before.hash(BookNames.FAMILY));
        return sameFamily ? write(before, after, false) : Optional.empty();
    }

    /**
     * Writes one file.
     *
     * @param name {@code family.json} or the name of a year's file
     * @param text what it is to contain, such as {@link BookText} makes
     * @param read the hash of what was read; {@link Hash#NONE} when there was no file
     * @return the hash of the file now
     * @throws IOException as {@link #write(Snapshot, Book)} does
     */
    public Hash write(String name, String text, Hash read) throws IOException {
        Change change = Change.to(name, bytes(text), read);
        write(List.of(change), true);
        return change.hash();
    }

    /** @return the copies that are kept of every file of the book, the newest first; works for a book that cannot be read */
    public List<Copy> copies() throws IOException {
        return new Copies(folder).all();
    }

    /** @return the copies that are kept of a file, the newest first */
    public List<Copy> copies(String name) throws IOException {
        return List.copyOf(new Copies(folder).all(checked(name)));
    }

    /**
     * Puts a copy in the place of the file it was. The file as it is now becomes a copy first, so that this can be
     * undone in the same way.
     *
     * @param copy one of {@link #copies}
     * @param read the hash of the file as it is now
     * @return the hash of the file afterwards
     * @throws IOException as {@link #write(Snapshot, Book)} does; also when the version of the copy is not known
     */
    public Hash restore(Copy copy, Hash read) throws IOException {
        Change change = Change.to(copy.name(), Files.readAllBytes(copy.path()), read);
        write(List.of(change), true);
        return change.hash();
    }

    private static Map<String, String> changedTexts(Book before, Book after) {
        Map<String, String> texts = new TreeMap<>();
        String family = BookText.family(after);
        if (!family.equals(BookText.family(before))) {
            texts.put(BookNames.FAMILY, family);
        }
        after.years().forEach((label, year) -> {
            if (!year.equals(before.years().get(label))) {
                texts.put(BookText.fileName(label), BookText.year(year));
            }
        });
        return texts;
    }

    /** Refuses to write what could not be read again: a book that its owner cannot open is as good as lost. */
    private static void checkReadable(Book after, Map<String, String> texts) throws BadInputException {
        Map<String, String> files = new TreeMap<>(texts);
        if (texts.containsKey(BookNames.FAMILY)) {
            files.putAll(BookText.files(after)); // a year that stays may name a child that goes
        } else {
            files.put(BookNames.FAMILY, BookText.family(after));
        }
        Problems problems = new Problems();
        Optional<Book> again = BookReader.read(files, problems);
        problems.throwIfErrors();
        if (again.isEmpty()) {
            throw new IllegalStateException("neither a book nor an error");
        }
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static String checked(String name) {
        if (!BookNames.isPart(name)) {
            throw new IllegalArgumentException("not a file of a book: " + name);
        }
        return name;
    }

    void write(List<Change> changes) throws IOException {
        write(changes, true);
    }

    private boolean write(List<Change> changes, boolean keepOurs) throws IOException {
        for (Change change : changes) {
            checked(change.name());
        }
        Files.createDirectories(folder);
        FolderLock lock = FolderLock.take(folder, patience);
        try {
            SafeFiles.deleteLeftovers(folder);
            return writeLocked(changes, keepOurs);
        } finally {
            lock.close();
        }
    }

    /** @return false when a file is not as it was read, and our version was not to be kept */
    private boolean writeLocked(List<Change> changes, boolean keepOurs) throws IOException {
        List<Replacement> replacements = new ArrayList<>();
        try {
            for (Change change : changes) {
                replacements.add(prepare(change));
            }
            List<Path> changed = changed(replacements);
            if (!changed.isEmpty()) {
                if (keepOurs) {
                    refuse(changed, replacements);
                }
                return false;
            }
            replace(replacements);
            return true;
        } finally {
            for (Replacement replacement : replacements) {
                Files.deleteIfExists(replacement.temporary());
            }
        }
    }

    private Replacement prepare(Change change) throws IOException {
        Path file = folder.resolve(change.name());
        if (Files.isSymbolicLink(file)) {
            file = file.toRealPath();
        }
        if (FormatVersion.of(change.content()) < 1 || FormatVersion.of(change.content()) > Book.VERSION) {
            throw new UnknownVersionException(file, "was to be replaced by a version this program does not know");
        }
        Path temporary = SafeFiles.writeBeside(file, file, change.content());
        return new Replacement(change, file, temporary, readOrNull(file));
    }

    private static byte[] readOrNull(Path file) throws IOException {
        try {
            return Files.readAllBytes(file);
        } catch (NoSuchFileException e) {
            return null;
        }
    }

    /** Returns the files that are not as they were read. */
    private static List<Path> changed(List<Replacement> replacements) throws IOException {
        List<Path> changed = new ArrayList<>();
        for (Replacement replacement : replacements) {
            byte[] old = replacement.old();
            if (!(old == null ? Hash.NONE : Hash.of(old)).equals(replacement.change().read())) {
                changed.add(replacement.file());
            } else if (old != null && FormatVersion.of(old) > Book.VERSION) {
                throw new UnknownVersionException(replacement.file(), "was written by a newer Hearthrule");
            }
        }
        return changed;
    }

    private void refuse(List<Path> changed, List<Replacement> replacements) throws IOException {
        List<Path> kept = new ArrayList<>();
        String time = Copies.stamp(LocalDateTime.now(clock));
        for (Replacement replacement : replacements) {
            String name = replacement.change().name();
            String stem = name.substring(0, name.lastIndexOf('.'));
            kept.add(SafeFiles.writeNew(folder.resolve(stem + BookNames.CONFLICT + time + ".json"),
                    replacement.file(), replacement.change().content()));
        }
        SafeFiles.force(folder);
        throw new ChangedMeanwhileException(changed, kept);
    }

    private void replace(List<Replacement> replacements) throws IOException {
        Copies copies = new Copies(folder);
        List<Replacement> done = new ArrayList<>();
        try {
            for (Replacement replacement : replacements) {
                if (replacement.change().hash().equals(replacement.change().read())) {
                    continue;
                }
                if (replacement.old() != null) {
                    copies.keep(replacement.change().name(), replacement.file(), replacement.old(), clock.getZone());
                }
                beforeMove.run(replacement.change().name());
                SafeFiles.move(replacement.temporary(), replacement.file());
                done.add(replacement);
                SafeFiles.force(replacement.file().getParent());
            }
        } catch (IOException | RuntimeException e) {
            putBack(done, e);
            throw e;
        }
        for (Replacement replacement : done) {
            copies.pruneIfPossible(replacement.change().name(), LocalDate.now(clock));
        }
    }

    private static void putBack(List<Replacement> done, Exception cause) {
        for (Replacement replacement : done) {
            try {
                if (replacement.old() == null) {
                    Files.deleteIfExists(replacement.file());
                } else {
                    Path temporary = SafeFiles.writeBeside(replacement.file(), replacement.file(), replacement.old());
                    SafeFiles.move(temporary, replacement.file());
                }
                SafeFiles.force(replacement.file().getParent());
            } catch (IOException e) {
                cause.addSuppressed(e); // the version before is among the copies
            }
        }
    }

    /** What a file is to contain, its hash, and the hash of what it contained when it was read. */
    record Change(String name, byte[] content, Hash hash, Hash read) {
        static Change to(String name, byte[] content, Hash read) {
            return new Change(name, content, Hash.of(content), read);
        }
    }

    private record Replacement(Change change, Path file, Path temporary, byte[] old) { }

    /** Runs when everything is ready and nothing replaced yet; tests let the program die here. */
    interface BeforeMove {
        void run(String name) throws IOException;
    }
}
