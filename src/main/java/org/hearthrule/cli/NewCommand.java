package org.hearthrule.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import org.hearthrule.checklist.TextPage;
import org.hearthrule.input.BadInputException;
import org.hearthrule.law.Profiles;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookWriter;
import org.hearthrule.records.Snapshot;
import org.hearthrule.terms.Wording;
import picocli.CommandLine.Model.CommandSpec;

/** {@code new BOOK}: a guided start that asks one thing at a time. */
final class NewCommand implements Command {

    @Override
    public void describe(CommandSpec spec) {
        Options.parameter(spec, 0, "BOOK");
    }

    @Override
    public int run(Given given, Terminal terminal) throws BadInputException, IOException {
        Path folder = given.path("BOOK");
        if (folder != null && Files.exists(folder.resolve("family.json"))) {
            given.problem(given.text("BOOK"), "BOOK-EXISTS", "a record book in " + folder, "a new folder",
                    "you want: hearthrule check " + given.text("BOOK"));
        } else if (folder != null && Files.exists(folder) && !Files.isDirectory(folder)) {
            given.problem(given.text("BOOK"), "NOT-A-FOLDER", "the file " + folder, "a new folder", null);
        }
        Profiles profiles = Laws.open(given);
        given.throwIfErrors();
        Optional<Book> book = new NewDialog(terminal, profiles).run();
        if (book.isEmpty()) {
            return Exit.OK;
        }
        new BookWriter(folder, Clock.systemDefaultZone()).write(Snapshot.nothing(), book.get());
        Wording wording = Wording.english();
        TextPage page = new TextPage(terminal.style(), wording);
        page.blank().paragraph(0, wording.say("new.done", folder));
        page.blank().line("  hearthrule check " + shell(given.text("BOOK"))).blank();
        page.paragraph(0, wording.say("new.log"));
        terminal.print(page.toString());
        return Exit.OK;
    }

    /** A word as it can be typed again. */
    static String shell(String word) {
        return word.indexOf(' ') < 0 ? word : '\'' + word.replace("'", "'\\''") + '\'';
    }
}
