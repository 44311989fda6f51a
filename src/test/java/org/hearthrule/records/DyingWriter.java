package org.hearthrule.records;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import org.hearthrule.input.Problems;

/** A program of its own for {@link BookWriterTest}: it adds a child and dies, or holds the lock until it is ended. */
final class DyingWriter {

    static final int DIED = 7;

    private DyingWriter() { }

    /** @param args the folder of a book, then {@code die} or {@code hold} */
    public static void main(String[] args) throws Exception {
        Path folder = Path.of(args[0]);
        Snapshot before = BookReader.snapshot(folder, new Problems()).orElseThrow();
        BookWriter.BeforeMove step = args[1].equals("die") ? name -> Runtime.getRuntime().halt(DIED) : name -> {
            System.out.println("holding");
            hold();
        };
        new BookWriter(folder, Clock.systemUTC(), Duration.ofSeconds(5), step)
                .write(before, Books.withStudent(before.book(), "cy"));
    }

    private static void hold() {
        try {
            Thread.sleep(60_000);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
