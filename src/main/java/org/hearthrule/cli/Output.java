package org.hearthrule.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.stream.Stream;
import org.hearthrule.checklist.CalendarFile;
import org.hearthrule.checklist.Sheet;
import org.hearthrule.checklist.SheetText;
import org.hearthrule.checklist.Style;
import org.hearthrule.input.Nearest;
import org.hearthrule.terms.Wording;

/** Where a command's result goes: the terminal, or the file of {@code --out}, which is written whole or not at all. */
final class Output {

    static final List<String> FORMATS = List.of("text", "json", "ics");

    private final Given given;
    private final Terminal terminal;
    private final Path file;
    private final String format;
    private String before = "";

    private Output(Given given, Terminal terminal, List<String> formats) {
        this.given = given;
        this.terminal = terminal;
        this.file = given.path("--out");
        this.format = given.oneOf("--format", formats);
        if (file != null) {
            checkFolder();
        }
    }

    /** Reads {@code --format} and {@code --out}; what is wrong with them becomes a problem of {@code given}. */
    static Output of(Given given, Terminal terminal, List<String> formats) {
        return new Output(given, terminal, formats);
    }

    String format() {
        return format;
    }

    /** @return what text may use there: a file has no weight */
    Style style() {
        return file == null ? terminal.style() : Style.PLAIN;
    }

    private void checkFolder() {
        String typed = given.text("--out");
        Path folder = file.toAbsolutePath().getParent();
        if (Files.isDirectory(file) || folder == null) {
            given.problem(typed, "NOT-A-FILE", "the folder " + file, "the name of a file", null);
        } else if (!Files.isDirectory(folder)) {
            given.problem(typed, "NO-FOLDER", "no folder " + folder, "a file in a folder that exists",
                    nearestFolder(folder));
        }
    }

    private static String nearestFolder(Path folder) {
        Path parent = folder.getParent();
        if (parent == null || folder.getFileName() == null || !Files.isDirectory(parent)) {
            return "make the folder first";
        }
        try (Stream<Path> beside = Files.list(parent)) {
            List<String> names = beside.filter(Files::isDirectory).map(p -> p.getFileName().toString()).sorted().toList();
            return Nearest.of(folder.getFileName().toString(), names).map(name -> "you meant " + parent.resolve(name))
                    .orElse("make the folder first");
        } catch (IOException e) {
            return "make the folder first";
        }
    }

    /** @return the calendar that stands in the file of {@code --out} already; anything else there is a problem */
    CalendarFile previousCalendar() throws IOException {
        if (file == null || !Files.isRegularFile(file)) {
            return CalendarFile.NONE;
        }
        String text = Files.readString(file, StandardCharsets.UTF_8);
        return CalendarFile.read(text).orElseGet(() -> {
            given.problem(given.text("--out"), "NOT-OUR-CALENDAR", "a file that Hearthrule did not write",
                    "a new file, or a calendar written by Hearthrule", "choose another name");
            return CalendarFile.NONE;
        });
    }

    /** Text to stand before the text that is written next. */
    void before(String text) {
        before = text;
    }

    /** Writes text in the terminal's own characters. */
    void text(String text) throws IOException {
        if (file == null) {
            terminal.print(before + text);
        } else {
            save(before + text);
        }
    }

    /** Writes a sheet as text. */
    void sheet(Sheet sheet) throws IOException {
        text(SheetText.of(sheet, Wording.english(), style()));
    }

    /** Writes a file's text, which is UTF-8 everywhere. */
    void data(String text) throws IOException {
        if (file == null) {
            terminal.printUtf8(text);
        } else {
            save(text);
        }
    }

    /** Writes the bytes of a file to the file of {@code --out}. */
    void file(byte[] content) throws IOException {
        save(content);
    }

    private void save(String text) throws IOException {
        save(text.getBytes(StandardCharsets.UTF_8));
    }

    private void save(byte[] content) throws IOException {
        Path whole = Files.isSymbolicLink(file) ? file.toRealPath() : file.toAbsolutePath();
        Path half = whole.resolveSibling(".hearthrule-" + ProcessHandle.current().pid() + ".tmp");
        try {
            Files.write(half, content);
            Files.move(half, whole, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(half);
        }
    }
}
