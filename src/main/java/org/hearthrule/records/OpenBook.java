package org.hearthrule.records;

import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.hearthrule.input.BadInputException;
import org.hearthrule.input.Problem;
import org.hearthrule.input.Problems;
import org.hearthrule.input.Severity;

/**
 * A book that is open for long. It is read again when its files were changed from outside; an edit is made to the book
 * as it is on the disk then, so that a change from outside is never lost. Edits can be taken back and done again, also
 * when other records were changed since.
 *
 * <p>When the files cannot be read any more, what was read last stays, and edits are refused with what is wrong.
 *
 * <p>Safe for several threads.
 */
public final class OpenBook {

    private static final int REMEMBERED = 50;
    private static final int TRIES = 3;

    private final Path folder;
    private final BookWriter writer;
    private final Deque<Change> done = new ArrayDeque<>();
    private final Deque<Change> undone = new ArrayDeque<>();
    private Map<String, Long> seen = Map.of();
    private Snapshot now = Snapshot.nothing();
    private List<Problem> problems = List.of();

    private record Change(String label, Book before, Book after) { }

    public OpenBook(Path folder, Clock clock) {
        this.folder = folder;
        this.writer = new BookWriter(folder, clock);
    }

    /** @return the book as it is on the disk, or as it was when it could last be read */
    public synchronized Book book() {
        refresh();
        return now.book();
    }

    /** @return what is wrong with the files, warnings among it; no errors while the book is the one on the disk */
    public synchronized List<Problem> problems() {
        refresh();
        return problems;
    }

    /** @return whether the files cannot be read now */
    public synchronized boolean isUnreadable() {
        refresh();
        return hasErrors();
    }

    private boolean hasErrors() {
        return problems.stream().anyMatch(problem -> problem.severity() == Severity.ERROR);
    }

    private void refresh() {
        Map<String, Long> there = stamps();
        if (there.equals(seen)) {
            return;
        }
        seen = there;
        Problems found = new Problems();
        if (!there.containsKey(BookNames.FAMILY) && now.hashes().isEmpty()) {
            problems = List.of(); // there is no book yet
            return;
        }
        Optional<Snapshot> read = BookReader.snapshot(folder, found);
        problems = found.all();
        if (read.isPresent() && !hasErrors()) {
            now = read.get();
        }
    }

    /** Size and time of each file of the book: enough to notice a change, and quick. */
    private Map<String, Long> stamps() {
        File[] files = folder.toFile().listFiles((where, name) -> BookNames.isPart(name) || name.contains(BookNames.CONFLICT));
        Map<String, Long> stamps = new TreeMap<>();
        if (files != null) {
            for (File file : files) {
                stamps.put(file.getName(), file.lastModified() * 31 + file.length());
            }
        }
        return stamps;
    }

    /**
     * Changes the book.
     *
     * @param label what is changed, in words
     * @param edit  makes a new book of the one that is on the disk; may be called again when that changed meanwhile
     * @throws BadInputException when the new book could not be read again, or the one on the disk cannot be read
     * @throws IOException       when writing fails; nothing is changed then
     */
    public synchronized void edit(String label, UnaryOperator<Book> edit) throws IOException, BadInputException {
        Change change = write(label, edit::apply);
        if (change == null) {
            return;
        }
        done.push(change);
        undone.clear();
        while (done.size() > REMEMBERED) {
            done.removeLast();
        }
    }

    /** Makes a new book of another, or says why it cannot be. */
    private interface Edit {
        Book of(Book book) throws IOException;
    }

    /**
     * Tries anew when a file has changed in the moment between; at the last try our version is kept beside theirs, and
     * the exception says so.
     *
     * @return the change, or null when there was none
     */
    private Change write(String label, Edit edit) throws IOException, BadInputException {
        for (int tries = 1;; tries++) {
            refresh();
            if (hasErrors()) {
                throw new BadInputException(problems);
            }
            Book before = now.book();
            Book after = edit.of(before);
            if (after == before) {
                return null;
            }
            Optional<Snapshot> written = tries < TRIES ? writer.writeUnlessChanged(now, after)
                    : Optional.of(writer.write(now, after));
            if (written.isPresent()) {
                now = written.get();
                seen = stamps();
                return new Change(label, before, now.book());
            }
            seen = Map.of();
        }
    }

    /** @return what an undo would take back */
    public synchronized Optional<String> undoable() {
        return Optional.ofNullable(done.peek()).map(Change::label);
    }

    /** @return what was taken back and can be done again */
    public synchronized Optional<String> redoable() {
        return Optional.ofNullable(undone.peek()).map(Change::label);
    }

    /**
     * Takes the last change back.
     *
     * @return its label; empty when there is none
     * @throws UndoRefusedException when what it changed was changed again since, from outside
     * @throws IOException          as {@link #edit} does
     */
    public synchronized Optional<String> undo() throws IOException, BadInputException {
        Change last = done.peek();
        if (last == null) {
            return Optional.empty();
        }
        turn(last, last.after(), last.before());
        undone.push(done.pop());
        return Optional.of(last.label());
    }

    /** Does again what was taken back last; otherwise like {@link #undo}. */
    public synchronized Optional<String> redo() throws IOException, BadInputException {
        Change last = undone.peek();
        if (last == null) {
            return Optional.empty();
        }
        turn(last, last.before(), last.after());
        done.push(undone.pop());
        return Optional.of(last.label());
    }

    /** Takes a change from outside that comes at the same time into account, as an edit does. */
    private void turn(Change change, Book from, Book to) throws IOException, BadInputException {
        write(change.label(), book -> BookMerge.merge(from, to, book)
                .orElseThrow(() -> new UndoRefusedException(change.label())));
    }
}
