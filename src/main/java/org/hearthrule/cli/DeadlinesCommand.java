package org.hearthrule.cli;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hearthrule.checklist.Checklist;
import org.hearthrule.checklist.Checkup;
import org.hearthrule.checklist.TextPage;
import org.hearthrule.input.BadInputException;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Profiles;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookEvent;
import org.hearthrule.terms.Wording;
import picocli.CommandLine.Model.CommandSpec;

/** {@code deadlines JURISDICTION}: what is due and when, without a record book. */
final class DeadlinesCommand implements Command {

    @Override
    public void describe(CommandSpec spec) {
        Options.parameter(spec, 0, "JURISDICTION");
        Options.option(spec, "--pathway", "P");
        Options.required(spec, "--born", "DATE");
        Options.required(spec, "--grade", "G");
        Options.required(spec, "--starts", "DATE");
        Options.repeated(spec, "--event", "KIND=DATE");
        Options.option(spec, "--as-of", "DATE");
        Delivery.options(spec);
    }

    @Override
    public int run(Given given, Terminal terminal) throws BadInputException, IOException {
        Output output = Output.of(given, terminal, Output.FORMATS);
        LocalDate asOf = given.asOf(terminal);
        LocalDate born = given.date("--born");
        LocalDate starts = given.date("--starts");
        if (born != null && starts != null && !born.isBefore(starts)) {
            given.problem(given.text("--starts"), "BEFORE-BIRTH", starts + ", which is not after the birth date",
                    "the day home instruction starts", null);
        }
        Optional<Integer> grade = TypedBook.grade(given);
        List<BookEvent> events = EventOptions.read(given);
        Profiles profiles = Laws.open(given);
        Optional<Profile> profile = Laws.find(profiles, given.text("JURISDICTION"), given);
        Optional<Pathway> pathway = profile.flatMap(law -> TypedBook.pathway(law, "--pathway", given));
        given.throwIfErrors();
        Profile law = profile.orElseThrow();
        Pathway way = pathway.orElseThrow();
        Book book = TypedBook.of(born, TypedBook.gradeOn(asOf, starts, grade.orElseThrow()),
                List.of(TypedBook.placement(law, way, starts, null)), asOf, events);
        if (given.text("--pathway") == null && output.format().equals("text")) {
            output.before(pathways(law, way, asOf, output));
        }
        Checklist checklist = Checklist.of(Checkup.judge(book, profiles, asOf, given.problems()), book);
        terminal.warn(given.problems());
        return Delivery.of(checklist, "deadlines\n" + born, given, output);
    }

    /** The ways there are, one line each, and which one is shown below. */
    private static String pathways(Profile law, Pathway shown, LocalDate asOf, Output output) {
        Wording wording = Wording.english();
        TextPage page = new TextPage(output.style(), wording);
        page.heading(wording.say("deadlines.pathways", law.name().toUpperCase(Locale.ROOT)));
        for (Pathway pathway : law.pathwaysOn(asOf)) {
            page.hanging(2, "", pathway.slug() + (pathway == shown ? wording.say("deadlines.usual") : "")
                    + ": " + pathway.inShort());
        }
        page.blank().paragraph(0, wording.say("deadlines.shown", shown.slug())).blank();
        return page.toString();
    }
}
