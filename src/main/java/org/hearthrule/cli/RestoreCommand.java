package org.hearthrule.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.hearthrule.checklist.TextPage;
import org.hearthrule.input.BadInputException;
import org.hearthrule.records.BookArchive;
import org.hearthrule.records.BookWriter;
import org.hearthrule.records.Copy;
import org.hearthrule.records.Hash;
import org.hearthrule.terms.Wording;
import picocli.CommandLine.Model.CommandSpec;

/**
 * {@code restore BOOK}: lists the earlier versions that are kept, and puts one back, or with {@code --from} a copy of the
 * whole book. What it replaces is kept too.
 */
final class RestoreCommand implements Command {

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.US);

    @Override
    public void describe(CommandSpec spec) {
        Options.parameter(spec, 0, "BOOK");
        Options.option(spec, "--copy", "N");
        Options.option(spec, "--from", "FILE.zip");
        Options.flag(spec, "--yes");
    }

    @Override
    public int run(Given given, Terminal terminal) throws BadInputException, IOException {
        if (given.text("--from") != null) {
            return WholeCopy.restore(given, terminal);
        }
        Path folder = given.path("BOOK");
        if (folder != null && !Files.isDirectory(folder)) {
            given.problem(given.text("BOOK"), "NOT-A-FOLDER", "nothing of that name", "the folder of a record book", null);
        }
        given.throwIfErrors();
        BookWriter writer = new BookWriter(folder, Clock.systemDefaultZone());
        List<Copy> copies = writer.copies();
        String typed = given.text("--copy");
        int number = typed == null ? 0 : number(typed, copies.size(), given);
        given.throwIfErrors();
        if (number == 0) {
            terminal.print(list(copies, BookArchive.earlier(folder), terminal));
            return Exit.OK;
        }
        Copy copy = copies.get(number - 1);
        if (!given.is("--yes") && !agreed(copy, terminal)) {
            terminal.print(Wording.english().say("restore.not-done") + '\n');
            return Exit.OK;
        }
        writer.restore(copy, Hash.of(folder.resolve(copy.name())));
        terminal.print(Wording.english().say("restore.done", copy.name(), day(copy)) + '\n');
        return Exit.OK;
    }

    private static int number(String typed, int last, Given given) {
        boolean digits = !typed.isEmpty() && typed.length() < 6 && typed.chars().allMatch(c -> c >= '0' && c <= '9');
        int number = digits ? Integer.parseInt(typed) : 0;
        if (number < 1 || number > last) {
            given.problem(typed, "NO-SUCH-COPY", '"' + typed + '"', last == 0 ? "no number, since no copy is kept yet"
                    : "a number from 1 to " + last + " of the list that `restore` shows", null);
        }
        return number;
    }

    private static String list(List<Copy> copies, List<Path> whole, Terminal terminal) {
        Wording wording = Wording.english();
        TextPage page = new TextPage(terminal.style(), wording);
        if (copies.isEmpty()) {
            page.paragraph(0, wording.say("restore.none"));
        } else {
            versions(copies, page, wording);
        }
        if (!whole.isEmpty()) {
            page.blank().heading(wording.say("restore.whole.heading"));
            whole.forEach(copy -> page.line("  " + page.clean(copy.toString())));
            page.blank().paragraph(0, wording.say("restore.whole.how"));
        }
        return page.toString();
    }

    private static void versions(List<Copy> copies, TextPage page, Wording wording) {
        page.heading(wording.say("restore.heading"));
        for (int i = 0; i < copies.size(); i++) {
            page.hanging(2, String.format(Locale.ROOT, "%2d  ", i + 1), wording.say("restore.copy", copies.get(i).name(), day(copies.get(i))));
        }
        page.blank().paragraph(0, wording.say("restore.how"));
    }

    private static String day(Copy copy) {
        return Wording.english().date(copy.time().toLocalDate()) + ", " + TIME.format(copy.time());
    }

    private static boolean agreed(Copy copy, Terminal terminal) {
        return agreed(Wording.english().say("restore.ask", copy.name(), day(copy)), terminal);
    }

    static boolean agreed(String question, Terminal terminal) {
        terminal.print(question + "\n> ");
        String answer = terminal.readLine();
        return answer != null && List.of("yes", "y").contains(answer.strip().toLowerCase(Locale.ROOT));
    }
}
