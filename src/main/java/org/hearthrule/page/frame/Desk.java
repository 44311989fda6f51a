package org.hearthrule.page.frame;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.hearthrule.checklist.Checklist;
import org.hearthrule.checklist.Checkup;
import org.hearthrule.input.BadInputException;
import org.hearthrule.input.Problem;
import org.hearthrule.input.Problems;
import org.hearthrule.law.Profiles;
import org.hearthrule.records.Book;
import org.hearthrule.records.OpenBook;
import org.hearthrule.rules.Judgement;

/**
 * A family's book as it lies open: what is in it, what the rules say of it, and the way to change it. What was judged
 * is kept until the book changes, of the days that were asked for last. Safe for several threads.
 */
public final class Desk {

    /** Days of which the judgement is kept: whoever looks back turns from year to year, and there may be thirteen. */
    private static final int DAYS = 16;

    private final Path folder;
    private final Profiles profiles;
    private final Clock clock;
    private final LocalDate asOf;
    private final OpenBook open;
    /** By day; of {@code judgedBook}. */
    private final Map<LocalDate, Judged> judged = new LinkedHashMap<>(DAYS, 0.75f, true);
    private Book judgedBook;

    private record Judged(Judgement judgement, Checklist checklist) { }

    Desk(Path folder, Profiles profiles, Clock clock, LocalDate asOf) {
        this.folder = folder;
        this.profiles = profiles;
        this.clock = clock;
        this.asOf = asOf;
        this.open = new OpenBook(folder, clock);
    }

    public Path folder() {
        return folder;
    }

    /** @return where the page keeps its own notes beside the book */
    public Path ownFolder() throws IOException {
        return OwnFolder.of(folder);
    }

    /** @return the day the page looks at */
    public LocalDate today() {
        return asOf == null ? LocalDate.now(clock) : asOf;
    }

    /** @return whether the page looks at another day than the real one */
    public boolean isAsOf() {
        return asOf != null;
    }

    /** @return the real time, to the second: when something is written */
    public LocalDateTime now() {
        return LocalDateTime.now(clock).truncatedTo(ChronoUnit.SECONDS);
    }

    /** @return tells the real time */
    public Clock clock() {
        return clock;
    }

    public Profiles profiles() {
        return profiles;
    }

    /** @return the book as it is on the disk now */
    public Book book() {
        return open.book();
    }

    /** @return what is wrong with the files of the book, warnings among it */
    public List<Problem> problems() {
        return open.problems();
    }

    /** @return whether the files cannot be read now; the book is then as it was when they could last be */
    public boolean isUnreadable() {
        return open.isUnreadable();
    }

    /** @throws BadInputException when the book names a law or a pathway that is not there */
    public Judgement judgement() throws BadInputException {
        return judgement(today());
    }

    /**
     * @param day from which the book is looked at
     * @throws BadInputException when the book names a law or a pathway that is not there
     */
    public Judgement judgement(LocalDate day) throws BadInputException {
        return judged(day).judgement();
    }

    /** @throws BadInputException when the book names a law or a pathway that is not there */
    public Checklist checklist() throws BadInputException {
        return checklist(today());
    }

    /**
     * @param day from which the book is looked at
     * @throws BadInputException when the book names a law or a pathway that is not there
     */
    public Checklist checklist(LocalDate day) throws BadInputException {
        return judged(day).checklist();
    }

    /** One at a time: whoever comes meanwhile waits and takes what the first has worked out. */
    private synchronized Judged judged(LocalDate day) throws BadInputException {
        Book book = book();
        if (judgedBook != book) {
            judged.clear();
            judgedBook = book;
        }
        Judged found = judged.get(day);
        if (found == null) {
            Judgement judgement = Checkup.judge(book, profiles, day, new Problems());
            found = new Judged(judgement, Checklist.of(judgement, book));
            judged.put(day, found);
            if (judged.size() > DAYS) {
                judged.remove(judged.keySet().iterator().next());
            }
        }
        return found;
    }

    /**
     * Changes the book.
     *
     * @param label what is done, as it is told where it can be undone: {@code the entry of May 14}
     * @param edit  makes the new book of the one that is on the disk now
     * @throws BadInputException when the new book could not be read again; nothing is written then
     * @throws IOException       when writing fails; nothing is changed then
     */
    public void edit(String label, UnaryOperator<Book> edit) throws IOException, BadInputException {
        open.edit(label, edit);
    }

    /** @return what an undo would take back */
    public Optional<String> undoable() {
        return open.undoable();
    }

    /** @return what was taken back and can be done again */
    public Optional<String> redoable() {
        return open.redoable();
    }

    /** @return what was taken back; empty when there was nothing */
    public Optional<String> undo() throws IOException, BadInputException {
        return open.undo();
    }

    /** @return what was done again; empty when there was nothing */
    public Optional<String> redo() throws IOException, BadInputException {
        return open.redo();
    }
}
