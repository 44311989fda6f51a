package org.hearthrule.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hearthrule.input.BadInputException;
import org.hearthrule.input.Nearest;
import org.hearthrule.input.Severity;
import org.hearthrule.records.BookReader;
import org.hearthrule.records.BookWriter;
import org.hearthrule.records.Snapshot;
import org.hearthrule.tables.DateForm;
import org.hearthrule.tables.ImportColumn;
import org.hearthrule.tables.ImportOptions;
import org.hearthrule.tables.ImportPreview;
import org.hearthrule.tables.LogImport;
import org.hearthrule.terms.Wording;
import picocli.CommandLine.Model.CommandSpec;

/** {@code import log FILE.csv BOOK}: a log kept in a spreadsheet. Shows what it would do, asks, then writes. */
final class ImportLogCommand implements Command {

    @Override
    public void describe(CommandSpec spec) {
        Options.parameter(spec, 0, "FILE.csv");
        Options.parameter(spec, 1, "BOOK");
        Options.option(spec, "--columns", "COLUMN=HEADER,…");
        Options.option(spec, "--dates", "FORM");
        Options.flag(spec, "--yes");
    }

    @Override
    public int run(Given given, Terminal terminal) throws BadInputException, IOException {
        ImportOptions options = new ImportOptions(columns(given), dateForm(given), null);
        Path table = given.path("FILE.csv");
        Path folder = given.path("BOOK");
        Optional<Snapshot> before = folder == null ? Optional.empty() : BookReader.snapshot(folder, given.problems());
        given.throwIfErrors();
        ImportPreview preview = LogImport.preview(table, before.orElseThrow().book(), options);
        terminal.print(ImportText.of(preview, table.toString(), Wording.english(), terminal.style()));
        if (preview.hasErrors()) {
            throw new BadInputException(preview.problems());
        }
        preview.problems().stream().filter(p -> p.severity() == Severity.WARNING)
                .forEach(problem -> terminal.error(problem.toText() + '\n'));
        if (preview.count() == 0) {
            return Exit.OK;
        }
        if (!given.is("--yes") && !agreed(preview, terminal)) {
            terminal.print(Wording.english().say("import.not-written") + '\n');
            return Exit.OK;
        }
        new BookWriter(folder, Clock.systemDefaultZone()).write(before.orElseThrow(), LogImport.apply(preview.accept()));
        terminal.print(Wording.english().count("import.written", preview.count(), folder) + '\n'
                + Wording.english().say("import.undo") + '\n');
        return Exit.OK;
    }

    private static boolean agreed(ImportPreview preview, Terminal terminal) {
        terminal.print('\n' + Wording.english().count("import.ask", preview.count()) + "\n> ");
        String answer = terminal.readLine();
        return answer != null && List.of("yes", "y").contains(answer.strip().toLowerCase(Locale.ROOT));
    }

    private static Map<ImportColumn, String> columns(Given given) {
        Map<ImportColumn, String> columns = new EnumMap<>(ImportColumn.class);
        String typed = given.text("--columns");
        if (typed == null) {
            return columns;
        }
        List<String> keys = Arrays.stream(ImportColumn.values()).map(ImportColumn::key).toList();
        for (String pair : typed.split(",")) {
            int equals = pair.indexOf('=');
            String key = equals < 0 ? pair.strip() : pair.substring(0, equals).strip();
            int known = keys.indexOf(key);
            if (equals < 0 || pair.substring(equals + 1).isBlank()) {
                given.problem(typed, "NO-HEADER", '"' + pair.strip() + '"', "a column and its header, such as date=Day",
                        null);
            } else if (known < 0) {
                given.problem(typed, "UNKNOWN-COLUMN", "the column \"" + key + '"', "one of " + String.join(", ", keys),
                        Nearest.of(key, keys).map(near -> "you meant " + near).orElse(null));
            } else {
                columns.put(ImportColumn.values()[known], pair.substring(equals + 1).strip());
            }
        }
        return columns;
    }

    private static DateForm dateForm(Given given) {
        String typed = given.text("--dates");
        if (typed == null) {
            return null;
        }
        Optional<DateForm> form = DateForm.of(typed);
        if (form.isEmpty()) {
            List<String> known = Arrays.stream(DateForm.values()).map(DateForm::pattern).toList();
            given.problem(typed, "UNKNOWN-DATE-FORM", '"' + typed + '"', "one of " + String.join(", ", known),
                    Nearest.of(typed, known).map(near -> "you meant " + near).orElse(null));
        }
        return form.orElse(null);
    }
}
