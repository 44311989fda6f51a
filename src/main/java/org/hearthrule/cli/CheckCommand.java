package org.hearthrule.cli;

import java.io.IOException;
import java.time.LocalDate;
import java.util.Optional;
import org.hearthrule.checklist.Checklist;
import org.hearthrule.checklist.Checkup;
import org.hearthrule.input.BadInputException;
import org.hearthrule.law.Profiles;
import org.hearthrule.records.Book;
import org.hearthrule.records.Student;
import picocli.CommandLine.Model.CommandSpec;

/** {@code check BOOK}: a record book in, a dated checklist out. */
final class CheckCommand implements Command {

    @Override
    public void describe(CommandSpec spec) {
        Options.parameter(spec, 0, "BOOK");
        Options.option(spec, "--as-of", "DATE");
        Options.option(spec, "--student", "NAME");
        Delivery.options(spec);
        Options.flag(spec, "--names");
    }

    @Override
    public int run(Given given, Terminal terminal) throws BadInputException, IOException {
        Output output = Output.of(given, terminal, Output.FORMATS);
        LocalDate asOf = given.asOf(terminal);
        Profiles profiles = Laws.open(given);
        Optional<Book> book = Books.read(given);
        Optional<Student> student = book.flatMap(read -> Books.student(read, given));
        given.throwIfErrors();
        Book read = book.orElseThrow();
        Checklist whole = Checklist.of(Checkup.judge(read, profiles, asOf, given.problems()), read);
        Checklist checklist = student.map(child -> whole.forStudent(child.id())).orElse(whole);
        terminal.warn(given.problems());
        return Delivery.of(checklist, "book\n" + read.familyName(), given, output);
    }
}
