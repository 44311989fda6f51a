package org.hearthrule.records;

import java.nio.file.Path;
import java.time.Clock;

/** A program of its own for {@link BookArchiveRestoreTest}: it puts a copy back and dies before one of its steps. */
final class DyingRestore {

    static final int DIED = 7;

    private DyingRestore() { }

    /** @param args the copy, the folder of the book, the step */
    public static void main(String[] args) throws Exception {
        BookArchiveRestore.run(Path.of(args[0]), Path.of(args[1]), Clock.systemUTC(), step -> {
            if (step.equals(args[2])) {
                Runtime.getRuntime().halt(DIED);
            }
        });
    }
}
