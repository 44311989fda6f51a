package org.hearthrule.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hearthrule.input.BadInputException;
import org.hearthrule.records.Book;
import org.hearthrule.tables.Export;
import org.hearthrule.tables.ExportChoice;
import org.hearthrule.tables.ExportFormat;
import org.hearthrule.terms.Wording;
import picocli.CommandLine.Model.CommandSpec;

/** {@code export BOOK}: all lists of a book, or a part of them, as tables or as one document. */
final class ExportCommand implements Command {

    @Override
    public void describe(CommandSpec spec) {
        Options.parameter(spec, 0, "BOOK");
        Options.required(spec, "--format", "FORMAT");
        Options.required(spec, "--out", "FILE");
        Options.repeated(spec, "--student", "NAME");
        Options.option(spec, "--from", "DATE");
        Options.option(spec, "--to", "DATE");
    }

    @Override
    public int run(Given given, Terminal terminal) throws BadInputException, IOException {
        List<String> formats = Arrays.stream(ExportFormat.values()).map(ExportFormat::key).toList();
        Output output = Output.of(given, terminal, formats);
        Optional<Book> book = Books.read(given);
        ExportChoice choice = choice(book, given);
        ExportFormat format = ExportFormat.values()[formats.indexOf(output.format())];
        checkFile(format, given);
        given.throwIfErrors();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        Export.write(book.orElseThrow(), choice, format, bytes);
        output.file(bytes.toByteArray());
        Wording wording = Wording.english();
        terminal.print(wording.say(choice.equals(ExportChoice.ALL) ? "export.whole" : "export.part", given.path("--out"))
                + '\n' + wording.say("export.holds." + format.key()) + '\n');
        return Exit.OK;
    }

    /** A file under a name of another kind is opened by the wrong program, and one among the book's files may be one of them. */
    private static void checkFile(ExportFormat format, Given given) {
        Path file = given.path("--out");
        Path folder = given.path("BOOK");
        String typed = given.text("--out");
        if (file == null || folder == null) {
            return;
        }
        if (!typed.toLowerCase(Locale.ROOT).endsWith('.' + format.ending())) {
            given.problem(typed, "WRONG-ENDING", '"' + typed + '"', "a name that ends with ." + format.ending()
                    + (format == ExportFormat.CSV ? ", since there is one file for each list" : ""),
                    "write " + typed.replaceAll("\\.[A-Za-z]{1,4}$", "") + '.' + format.ending());
        }
        if (file.toAbsolutePath().normalize().startsWith(folder.toAbsolutePath().normalize())) {
            given.problem(typed, "INSIDE-BOOK", "a file in the folder of the book", "a file outside of it", null);
        }
    }

    private static ExportChoice choice(Optional<Book> book, Given given) {
        LocalDate from = given.date("--from");
        LocalDate to = given.date("--to");
        if (from != null && to != null && to.isBefore(from)) {
            given.problem(given.text("--to"), "BACKWARDS", '"' + given.text("--to") + "\", which lies before --from",
                    '"' + given.text("--from") + "\" or a later day", null);
        }
        List<String> students = new ArrayList<>();
        for (String asked : book.isPresent() ? given.texts("--student") : List.<String>of()) {
            Books.student(book.get(), asked, asked, given).ifPresent(student -> students.add(student.id()));
        }
        return new ExportChoice(students, from, to);
    }
}
