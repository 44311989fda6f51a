package org.hearthrule.records;

import java.io.IOException;
import java.nio.file.Path;

/** Thrown when another program goes on writing the same book for longer than one wants to wait. */
public final class BookBusyException extends IOException {

    private static final long serialVersionUID = 1L;

    BookBusyException(Path folder) {
        super("Another program is writing the book in " + folder + ". Nothing was changed. Try again in a moment.");
    }
}
