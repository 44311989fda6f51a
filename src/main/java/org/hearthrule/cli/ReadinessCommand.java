package org.hearthrule.cli;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hearthrule.checklist.Checklist;
import org.hearthrule.checklist.Checkup;
import org.hearthrule.checklist.Readiness;
import org.hearthrule.checklist.ReadinessCheck;
import org.hearthrule.checklist.ReadinessJson;
import org.hearthrule.checklist.ReadinessSheet;
import org.hearthrule.input.BadInputException;
import org.hearthrule.law.Profiles;
import org.hearthrule.records.Book;
import org.hearthrule.records.Student;
import org.hearthrule.terms.Wording;
import picocli.CommandLine.Model.CommandSpec;

/** {@code readiness BOOK --student NAME}: the check before an evaluation. */
final class ReadinessCommand implements Command {

    @Override
    public void describe(CommandSpec spec) {
        Options.parameter(spec, 0, "BOOK");
        Options.required(spec, "--student", "NAME");
        Options.option(spec, "--as-of", "DATE");
        Options.option(spec, "--format", "FORMAT");
        Options.option(spec, "--out", "FILE");
    }

    @Override
    public int run(Given given, Terminal terminal) throws BadInputException, IOException {
        Output output = Output.of(given, terminal, List.of("text", "json"));
        LocalDate asOf = given.asOf(terminal);
        Profiles profiles = Laws.open(given);
        Optional<Book> book = Books.read(given);
        Optional<Student> student = book.flatMap(read -> Books.student(read, given));
        given.throwIfErrors();
        Book read = book.orElseThrow();
        Checklist checklist = Checklist.of(Checkup.judge(read, profiles, asOf, given.problems()), read);
        Readiness ready = ReadinessCheck.of(checklist, read, student.orElseThrow(), Wording.english());
        if (output.format().equals("json")) {
            output.data(ReadinessJson.of(ready, Wording.english()));
        } else {
            output.sheet(ReadinessSheet.of(ready, Wording.english()));
        }
        terminal.warn(given.problems());
        return Exit.OK;
    }
}
