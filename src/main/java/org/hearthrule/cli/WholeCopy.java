package org.hearthrule.cli;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.hearthrule.checklist.TextPage;
import org.hearthrule.input.BadInputException;
import org.hearthrule.records.BookArchive;
import org.hearthrule.terms.Wording;

/** Copies of the whole book: {@code copy} writes one, {@code restore --from} puts one back. */
final class WholeCopy {

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.US);
    private static final long THOUSAND = 1_000;

    private WholeCopy() { }

    /** Writes a copy whole or not at all, and never over another file. */
    static int write(Given given, Terminal terminal) throws BadInputException, IOException {
        Path folder = given.path("BOOK");
        Path file = given.path("--out");
        if (folder != null && file != null) {
            checkOut(folder, file, given);
        }
        given.throwIfErrors();
        Path half = file.toAbsolutePath().resolveSibling(".hearthrule-" + ProcessHandle.current().pid() + ".tmp");
        BookArchive.Written written;
        try {
            try (FileChannel channel = FileChannel.open(half, StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING,
                    StandardOpenOption.WRITE);
                 OutputStream out = new BufferedOutputStream(Channels.newOutputStream(channel))) {
                written = BookArchive.write(folder, out, Clock.systemDefaultZone());
                channel.force(true);
            }
            Files.move(half, file.toAbsolutePath(), StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(half);
        }
        terminal.print(done(written, file, terminal));
        return Exit.OK;
    }

    private static void checkOut(Path folder, Path file, Given given) {
        String typed = given.text("--out");
        Path whole = file.toAbsolutePath().normalize();
        if (Files.exists(file)) {
            given.problem(typed, "FILE-EXISTS", "a file of that name", "a new name: a copy is never written over another file", null);
        } else if (whole.getParent() == null || !Files.isDirectory(whole.getParent())) {
            given.problem(typed, "NO-FOLDER", "no folder " + whole.getParent(), "a file in a folder that exists",
                    "make the folder first");
        } else if (whole.startsWith(folder.toAbsolutePath().normalize())) {
            given.problem(typed, "IN-THE-BOOK", "a place within the book", "another place: what happens to the book happens to it too",
                    null);
        }
    }

    private static String done(BookArchive.Written written, Path file, Terminal terminal) {
        Wording wording = Wording.english();
        TextPage page = new TextPage(terminal.style(), wording);
        page.paragraph(0, wording.count("copy.done", written.files(), file, size(written.bytes())));
        if (!written.leftOut().isEmpty()) {
            page.blank().paragraph(0, wording.say("copy.left-out"));
            written.leftOut().forEach(path -> page.line("  " + page.clean(path)));
        }
        return page.toString();
    }

    /** Puts a copy back, after showing what it is and asking. */
    static int restore(Given given, Terminal terminal) throws BadInputException, IOException {
        Path folder = given.path("BOOK");
        Path file = given.path("--from");
        if (given.text("--copy") != null) {
            given.problem(given.text("--copy"), "TWO-COPIES", "--copy and --from", "one of the two", null);
        }
        given.throwIfErrors();
        BookArchive.Contents contents = BookArchive.check(file, given.problems()).orElse(null);
        given.throwIfErrors();
        Wording wording = Wording.english();
        terminal.print(wording.count("restore.whole.contents", contents.files(), day(contents.made()), size(contents.bytes())) + '\n');
        if (!given.is("--yes") && !RestoreCommand.agreed(wording.say("restore.whole.ask", folder), terminal)) {
            terminal.print(wording.say("restore.not-done") + '\n');
            return Exit.OK;
        }
        BookArchive.Restored restored = BookArchive.restore(file, folder, Clock.systemDefaultZone());
        TextPage page = new TextPage(terminal.style(), wording);
        page.paragraph(0, wording.say("restore.whole.done", folder, day(contents.made())));
        if (restored.earlier() != null) {
            page.paragraph(0, wording.count("restore.whole.kept", restored.replaced()));
            page.line("  hearthrule restore " + page.clean(quoted(folder) + " --from " + quoted(restored.earlier())));
        }
        terminal.print(page.toString());
        return Exit.OK;
    }

    private static String quoted(Path path) {
        return path.toString().indexOf(' ') < 0 ? path.toString() : '"' + path.toString() + '"';
    }

    private static String day(Instant time) {
        LocalDateTime here = LocalDateTime.ofInstant(time, ZoneId.systemDefault());
        return Wording.english().date(here.toLocalDate()) + ", " + TIME.format(here);
    }

    /** Returns a length in bytes, KB, MB or GB, whichever is of one to three digits. */
    static String size(long bytes) {
        List<String> units = List.of("bytes", "KB", "MB", "GB", "TB");
        int unit = 0;
        double left = bytes;
        while (left >= THOUSAND - 0.5 && unit < units.size() - 1) {
            left /= THOUSAND;
            unit++;
        }
        boolean exact = unit == 0 || left >= 10;
        return String.format(Locale.US, exact ? "%.0f %s" : "%.1f %s", left, units.get(unit));
    }
}
