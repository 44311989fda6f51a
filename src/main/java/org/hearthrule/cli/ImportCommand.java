package org.hearthrule.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hearthrule.input.BadInputException;
import org.hearthrule.input.Severity;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Profiles;
import org.hearthrule.law.SubjectWords;
import org.hearthrule.law.UnknownJurisdictionException;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookReader;
import org.hearthrule.records.BookWriter;
import org.hearthrule.records.Snapshot;
import org.hearthrule.records.YearRecord;
import org.hearthrule.rules.BookPlacements;
import org.hearthrule.tables.ImportOptions;
import org.hearthrule.tables.ImportPreview;
import org.hearthrule.tables.ListKind;
import org.hearthrule.tables.TableFile;
import org.hearthrule.tables.TableImport;
import org.hearthrule.terms.Wording;
import picocli.CommandLine.Model.CommandSpec;

/** {@code import log FILE BOOK} and its like: a list kept in a spreadsheet. Shows what it would do, asks, then writes. */
final class ImportCommand<T extends YearRecord> implements Command {

    private final ListKind<T> kind;

    ImportCommand(ListKind<T> kind) {
        this.kind = kind;
    }

    @Override
    public void describe(CommandSpec spec) {
        Options.parameter(spec, 0, "FILE");
        Options.parameter(spec, 1, "BOOK");
        Options.option(spec, "--sheet", "NAME");
        Options.option(spec, "--columns", "COLUMN=HEADER,…");
        Options.option(spec, "--dates", "FORM");
        if (kind == ListKind.LOG) {
            Options.option(spec, "--time", "UNIT");
        } else {
            Options.option(spec, "--year", "YEAR");
        }
        Options.option(spec, "--children", "NAMES");
        Options.option(spec, "--subjects", "NAME=SUBJECT,…");
        Options.flag(spec, "--leave-out");
        Options.flag(spec, "--yes");
    }

    @Override
    public int run(Given given, Terminal terminal) throws BadInputException, IOException {
        Path path = given.path("FILE");
        Path folder = given.path("BOOK");
        Optional<Snapshot> before = folder == null ? Optional.empty() : BookReader.snapshot(folder, given.problems());
        ImportGiven said = new ImportGiven(given, kind);
        ImportOptions options = said.options(before.map(Snapshot::book).orElse(Snapshot.nothing().book()));
        given.throwIfErrors();
        Book book = before.orElseThrow().book();
        TableFile file = TableFile.read(path.toString(), bytes(path), said.choice());
        ImportPreview<T> preview = TableImport.preview(file, kind, book,
                options.withNamesOfLaws(SubjectWords.of(laws(book, given))));
        terminal.print(ImportText.of(preview, path.toString(), Wording.english(), terminal.style()));
        if (preview.hasErrors()) {
            throw new BadInputException(preview.problems());
        }
        preview.problems().stream().filter(problem -> problem.severity() == Severity.WARNING || options.leaveOut())
                .forEach(problem -> terminal.error(problem.toText() + '\n'));
        if (preview.count() == 0) {
            return Exit.OK;
        }
        if (!given.is("--yes") && !agreed(preview, terminal)) {
            terminal.print(Wording.english().say("import.not-written") + '\n');
            return Exit.OK;
        }
        new BookWriter(folder, Clock.systemDefaultZone()).write(before.orElseThrow(),
                TableImport.apply(preview.accept()));
        terminal.print(Wording.english().count("import.written", preview.count(), folder) + '\n'
                + Wording.english().say("import.undo") + '\n');
        return Exit.OK;
    }

    private static byte[] bytes(Path path) throws IOException {
        try (var in = Files.newInputStream(path)) {
            return TableFile.bytes(in);
        }
    }

    private static boolean agreed(ImportPreview<?> preview, Terminal terminal) {
        terminal.print('\n' + Wording.english().count("import.ask", preview.count()) + "\n> ");
        String answer = terminal.readLine();
        return answer != null && List.of("yes", "y").contains(answer.strip().toLowerCase(Locale.ROOT));
    }

    /** Returns the laws of the book's placements. One that is not known is no matter for a table. */
    private static List<Profile> laws(Book book, Given given) throws BadInputException {
        Profiles profiles = Laws.open(given);
        List<Profile> laws = new ArrayList<>();
        for (String code : BookPlacements.jurisdictions(book)) {
            try {
                profiles.find(code, given.problems()).ifPresent(laws::add);
            } catch (UnknownJurisdictionException e) {
                continue;
            }
        }
        return laws;
    }
}
