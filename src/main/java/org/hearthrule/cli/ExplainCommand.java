package org.hearthrule.cli;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hearthrule.checklist.Checklist;
import org.hearthrule.checklist.Checkup;
import org.hearthrule.checklist.ExplainSheet;
import org.hearthrule.checklist.Line;
import org.hearthrule.checklist.SheetText;
import org.hearthrule.input.BadInputException;
import org.hearthrule.input.Nearest;
import org.hearthrule.law.Profiles;
import org.hearthrule.records.Book;
import org.hearthrule.rules.Judgement;
import org.hearthrule.terms.Wording;
import picocli.CommandLine.Model.CommandSpec;

/** {@code explain BOOK LINE-ID}: why a line says what it says. */
final class ExplainCommand implements Command {

    private static final int MOST_SHOWN = 8;

    @Override
    public void describe(CommandSpec spec) {
        Options.parameter(spec, 0, "BOOK");
        Options.parameter(spec, 1, "LINE-ID");
        Options.option(spec, "--as-of", "DATE");
        Options.flag(spec, "--all");
    }

    @Override
    public int run(Given given, Terminal terminal) throws BadInputException, IOException {
        LocalDate asOf = given.asOf(terminal);
        Profiles profiles = Laws.open(given);
        Optional<Book> book = Books.read(given);
        given.throwIfErrors();
        Judgement judgement = Checkup.judge(book.orElseThrow(), profiles, asOf, given.problems());
        Optional<Line> line = find(Checklist.of(judgement, book.orElseThrow()).lines(), given);
        given.throwIfErrors();
        terminal.print(SheetText.of(ExplainSheet.of(line.orElseThrow(), judgement, Wording.english(), given.is("--all")),
                Wording.english(), terminal.style()));
        return Exit.OK;
    }

    /** The line whose id is, or alone contains, what was typed. */
    static Optional<Line> find(List<Line> lines, Given given) {
        String typed = given.text("LINE-ID");
        List<Line> found = new ArrayList<>();
        for (Line line : lines) {
            if (line.id().equals(typed)) {
                return Optional.of(line);
            }
            if (line.id().contains(typed)) {
                found.add(line);
            }
        }
        if (found.size() == 1) {
            return Optional.of(found.get(0));
        }
        if (found.isEmpty()) {
            given.problem(typed, "UNKNOWN-LINE", '"' + typed + '"', "the id of a line, or a part of it that only one has",
                    nearest(typed, lines));
        } else {
            given.problem(typed, "SEVERAL-LINES", '"' + typed + "\", which " + found.size() + " lines have",
                    "more of the id", "you meant one of " + shown(found.stream().map(Line::id).toList()));
        }
        return Optional.empty();
    }

    private static String shown(List<String> ids) {
        String some = String.join(", ", ids.subList(0, Math.min(MOST_SHOWN, ids.size())));
        return ids.size() > MOST_SHOWN ? some + " …" : some;
    }

    /** Whole ids are compared, then their ends, since that is what is typed. */
    private static String nearest(String typed, List<Line> lines) {
        List<String> ids = lines.stream().map(Line::id).sorted(Comparator.naturalOrder()).toList();
        Optional<String> near = Nearest.of(typed, ids);
        for (int parts = 1; near.isEmpty() && parts <= 3; parts++) {
            List<String> ends = new ArrayList<>();
            for (String id : ids) {
                ends.add(local(id, parts));
            }
            near = Nearest.of(typed, ends).map(end -> ids.get(ends.indexOf(end)));
        }
        return near.map(id -> "you meant " + id).orElse(null);
    }

    /** So many parts of an id after jurisdiction and pathway. */
    private static String local(String id, int parts) {
        int from = 0;
        for (int i = 0; i < 2 && id.indexOf('/', from) >= 0; i++) {
            from = id.indexOf('/', from) + 1;
        }
        int to = from;
        for (int i = 0; i < parts && to >= 0 && to < id.length(); i++) {
            int slash = id.indexOf('/', to + 1);
            to = slash < 0 ? id.length() : slash;
        }
        return id.substring(from, to);
    }
}
