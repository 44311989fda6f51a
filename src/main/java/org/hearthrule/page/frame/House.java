package org.hearthrule.page.frame;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.hearthrule.input.BadInputException;
import org.hearthrule.law.Profiles;
import org.hearthrule.records.Book;

/**
 * The books the page knows: the family's own, and the invented one in a place of its own. One of them is open. Safe for
 * several threads.
 */
public final class House {

    private static final String FAMILY = "family.json";

    private final Settings settings;
    private final Desk own;
    private final AtomicReference<Desk> demo = new AtomicReference<>();
    private final AtomicReference<String> notice = new AtomicReference<>();
    private volatile boolean inDemo;

    public House(Settings settings) throws IOException {
        this.settings = settings;
        this.own = new Desk(settings.book(), settings.profiles(), settings.clock(), settings.asOf());
        if (settings.startInDemo()) {
            openDemo(false);
        }
    }

    /** Reads and judges the open book aside, so that the first page need not wait for it to begin. */
    public void prepare() {
        Thread aside = new Thread(() -> {
            try {
                desk().checklist();
            } catch (BadInputException | RuntimeException e) {
                // the first page says what is wrong
            }
        }, "first look");
        aside.setDaemon(true);
        aside.start();
    }

    public Profiles profiles() {
        return settings.profiles();
    }

    /** @return the book that is open */
    public Desk desk() {
        return inDemo ? demo.get() : own;
    }

    /** @return whether there is a book to look at */
    public boolean hasBook() {
        return Files.isRegularFile(desk().folder().resolve(FAMILY));
    }

    /** @return the folder of the family's own book */
    public Path ownFolder() {
        return own.folder();
    }

    public boolean inDemo() {
        return inDemo;
    }

    /** @return the day looked at when there is no book */
    public LocalDate today() {
        return desk().today();
    }

    /**
     * Opens the invented family.
     *
     * @param afresh throws away what was tried out on it before
     */
    public synchronized void openDemo(boolean afresh) throws IOException {
        Path folder = settings.demo();
        if (afresh || !Files.isRegularFile(folder.resolve(FAMILY))) {
            DemoFamily.layOut(folder);
            demo.set(null);
        }
        if (demo.get() == null) {
            demo.set(new Desk(folder, settings.profiles(), settings.clock(),
                    settings.asOf() == null ? DemoFamily.DAY : settings.asOf()));
        }
        inDemo = true;
    }

    /** Goes back to the family's own book. */
    public void leaveDemo() {
        inDemo = false;
    }

    /** Says something at the top of the next page. */
    public void tell(String words) {
        notice.set(words);
    }

    /** @return what is to be said now, once */
    Optional<String> takeNotice() {
        return Optional.ofNullable(notice.getAndSet(null));
    }

    /** @return the family's name of the open book, or null */
    String familyName() {
        Book book = hasBook() ? desk().book() : null;
        return book == null ? null : book.familyName();
    }
}
