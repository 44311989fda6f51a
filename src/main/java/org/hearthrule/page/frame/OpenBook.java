package org.hearthrule.page.frame;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.hearthrule.input.BadInputException;
import org.hearthrule.input.Problems;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookReader;
import org.hearthrule.records.BookWriter;
import org.hearthrule.records.Snapshot;

/** Stands in until the records package has it. */
final class OpenBook {
    private final Path folder;
    private final BookWriter writer;
    private Snapshot now;

    OpenBook(Path folder, Clock clock) {
        this.folder = folder;
        this.writer = new BookWriter(folder, clock);
    }

    synchronized Book book() {
        if (now == null) {
            now = BookReader.snapshot(folder, new Problems()).orElse(Snapshot.nothing());
        }
        return now.book();
    }

    synchronized void edit(String label, UnaryOperator<Book> edit) throws IOException, BadInputException {
        book();
        now = writer.write(now, edit.apply(now.book()));
    }

    Optional<String> undoable() {
        return Optional.empty();
    }

    Optional<String> redoable() {
        return Optional.empty();
    }

    Optional<String> undo() throws IOException, BadInputException {
        return Optional.empty();
    }

    Optional<String> redo() throws IOException, BadInputException {
        return Optional.empty();
    }
}
