package org.hearthrule.cli;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.hearthrule.checklist.Checklist;
import org.hearthrule.checklist.Page;
import org.hearthrule.input.BadInputException;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Profiles;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookEvent;
import org.hearthrule.records.Placement;
import org.hearthrule.records.Student;
import org.hearthrule.records.YearLabel;
import org.hearthrule.records.YearRecords;
import org.hearthrule.terms.Grades;
import org.hearthrule.terms.Wording;
import picocli.CommandLine.Model.CommandSpec;

/** {@code deadlines JURISDICTION}: what is due and when, without a record book. */
final class DeadlinesCommand implements Command {

    private static final String CHILD = "child";

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
        Optional<Integer> grade = grade(given);
        List<BookEvent> events = EventOptions.read(given);
        Profiles profiles = Laws.open(given);
        Optional<Profile> profile = Laws.find(profiles, given.text("JURISDICTION"), given);
        Optional<Pathway> pathway = profile.flatMap(law -> pathway(law, given));
        given.throwIfErrors();
        Profile law = profile.orElseThrow();
        Pathway way = pathway.orElseThrow();
        Book book = book(law, way, born, starts, asOf, grade.orElseThrow(), events);
        if (given.text("--pathway") == null && output.format().equals("text")) {
            output.before(pathways(law, way, asOf, output));
        }
        Checklist checklist = Checklist.of(Checkup.judge(book, profiles, asOf, given.problems()), book);
        terminal.warn(given.problems());
        return Delivery.of(checklist, "deadlines\n" + born, given, output);
    }

    private static Optional<Integer> grade(Given given) {
        String typed = given.text("--grade");
        Optional<Integer> grade = Grades.number(typed.toUpperCase(Locale.ROOT));
        if (grade.isEmpty()) {
            given.problem(typed, "WRONG-GRADE", '"' + typed + '"', "K or a number from 1 to 12", null);
        }
        return grade;
    }

    private static Optional<Pathway> pathway(Profile law, Given given) {
        String typed = given.text("--pathway");
        if (typed == null) {
            return Optional.of(law.usualPathway());
        }
        Optional<Pathway> found = law.pathway(typed.toLowerCase(Locale.ROOT));
        if (found.isEmpty()) {
            given.unknown(typed, "UNKNOWN-PATHWAY", "pathway", law.pathways().stream().map(Pathway::slug).toList());
        }
        return found;
    }

    /**
     * A book with nothing in it but what was typed. The grade is that of the first year and rises by one each school
     * year; only the year that runs gets a file, so that nothing seems to have been entered for earlier ones.
     */
    private static Book book(Profile law, Pathway way, LocalDate born, LocalDate starts, LocalDate asOf, int grade,
                             List<BookEvent> events) {
        String name = Wording.english().say("deadlines.child");
        SortedMap<String, YearRecords> years = new TreeMap<>();
        YearLabel first = YearLabel.of(starts);
        YearLabel now = YearLabel.of(asOf.isAfter(starts) ? asOf : starts);
        int gradeNow = Math.min(grade + now.first().getYear() - first.first().getYear(), Grades.LAST);
        years.put(now.toString(), new YearRecords(now.toString(), Map.of(CHILD, Grades.name(gradeNow)),
                YearRecords.Calendar.EMPTY, List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
                List.of(), List.of(), List.of(), List.of()));
        Placement placement = new Placement(CHILD, law.code().toLowerCase(Locale.ROOT), way.slug(), starts, null, null,
                null, null, null, null, List.of(), null);
        return new Book(null, null, List.of(new Student(CHILD, name, born, null)), List.of(), List.of(placement), events,
                List.of(), List.of(), years);
    }

    /** The ways there are, one line each, and which one is shown below. */
    private static String pathways(Profile law, Pathway shown, LocalDate asOf, Output output) {
        Wording wording = Wording.english();
        Page page = new Page(output.style(), wording);
        page.heading(wording.say("deadlines.pathways", law.name().toUpperCase(Locale.ROOT)));
        for (Pathway pathway : law.pathways()) {
            if (pathway.validity().inForceOn(asOf)) {
                page.hanging(2, "", pathway.slug() + (pathway == shown ? wording.say("deadlines.usual") : "")
                        + ": " + pathway.inShort());
            }
        }
        page.blank().paragraph(0, wording.say("deadlines.shown", shown.slug())).blank();
        return page.toString();
    }
}
