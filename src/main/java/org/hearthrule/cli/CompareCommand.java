package org.hearthrule.cli;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hearthrule.checklist.Checklist;
import org.hearthrule.checklist.Checkup;
import org.hearthrule.checklist.CompareJson;
import org.hearthrule.checklist.CompareSheet;
import org.hearthrule.checklist.Comparison;
import org.hearthrule.input.BadInputException;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Profiles;
import org.hearthrule.records.Book;
import org.hearthrule.records.Placement;
import org.hearthrule.terms.Wording;
import picocli.CommandLine.Model.CommandSpec;

/** {@code compare A B}: two laws side by side, for one child when named, and what a move brings. */
final class CompareCommand implements Command {

    @Override
    public void describe(CommandSpec spec) {
        Options.parameter(spec, 0, "HERE");
        Options.parameter(spec, 1, "THERE");
        Options.option(spec, "--pathway-here", "P");
        Options.option(spec, "--pathway-there", "P");
        Options.option(spec, "--born", "DATE");
        Options.option(spec, "--grade", "G");
        Options.option(spec, "--starts", "DATE");
        Options.option(spec, "--moves", "DATE");
        Options.option(spec, "--as-of", "DATE");
        Options.option(spec, "--format", "FORMAT");
        Options.option(spec, "--out", "FILE");
    }

    @Override
    public int run(Given given, Terminal terminal) throws BadInputException, IOException {
        Output output = Output.of(given, terminal, List.of("text", "json"));
        LocalDate born = given.date("--born");
        LocalDate moves = given.date("--moves");
        LocalDate today = given.asOf(terminal);
        LocalDate asOf = moves == null ? today : moves;
        LocalDate starts = given.date("--starts");
        Optional<Integer> grade = TypedBook.grade(given);
        checkTogether(given);
        Profiles profiles = Laws.open(given);
        Optional<Profile> here = Laws.find(profiles, given.text("HERE"), given);
        Optional<Profile> there = Laws.find(profiles, given.text("THERE"), given);
        Optional<Pathway> wayHere = here.flatMap(law -> TypedBook.pathway(law, "--pathway-here", given));
        Optional<Pathway> wayThere = there.flatMap(law -> TypedBook.pathway(law, "--pathway-there", given));
        // a child of whom no start is named is taken to have been taught at home for more than a year
        LocalDate from = starts != null ? starts : asOf.minusYears(1).withDayOfMonth(1);
        checkOrder(given, born, from, moves);
        given.throwIfErrors();

        Child child = born == null ? null : new Child(born, grade.orElseThrow(), from, asOf, given, profiles);
        Comparison.Side left = child == null ? Comparison.Side.of(here.get(), wayHere.get(), asOf)
                : child.side(here.get(), wayHere.get(), from);
        Comparison.Side right = child == null ? Comparison.Side.of(there.get(), wayThere.get(), asOf)
                : child.side(there.get(), wayThere.get(), moves == null ? from : moves);
        Comparison.Move move = moves == null ? null : child.move(left, right, moves);
        Comparison comparison = new Comparison(asOf, left, right, move);
        terminal.warn(given.problems());
        if (output.format().equals("json")) {
            output.data(CompareJson.write(comparison, Wording.english()));
        } else {
            output.sheet(CompareSheet.of(comparison, Wording.english()));
        }
        return Exit.OK;
    }

    private static void checkTogether(Given given) {
        for (String option : List.of("--grade", "--moves", "--starts")) {
            if (given.text(option) != null && given.text("--born") == null) {
                given.problem(given.text(option), "NO-CHILD", option + " without --born", "--born DATE and --grade G beside it",
                        null);
            }
        }
        if (given.text("--moves") != null && given.text("--as-of") != null) {
            given.problem(given.text("--as-of"), "TWO-DAYS", "--as-of beside --moves", "one of the two: with a move, both laws are"
                    + " taken as they stand on its day", null);
        }
        if (given.text("--born") != null && given.text("--grade") == null) {
            given.problem(given.text("--born"), "NO-GRADE", "--born without --grade", "--grade K or 1 to 12 beside it", null);
        }
    }

    private static void checkOrder(Given given, LocalDate born, LocalDate from, LocalDate moves) {
        if (born != null && !born.isBefore(from)) {
            given.problem(given.text("--born"), "BEFORE-BIRTH", born + ", which is not before home instruction starts (" + from
                    + ')', "the birth date, or --starts with a later day", null);
        }
        if (moves != null && !from.isBefore(moves)) {
            given.problem(given.text("--moves"), "BEFORE-START", moves + ", which is not after home instruction starts (" + from
                    + ')', "the first day in the new place", null);
        }
    }

    /** One child of whom nothing is known but what was typed. */
    private record Child(LocalDate born, int grade, LocalDate starts, LocalDate asOf, Given given, Profiles profiles) {

        Comparison.Side side(Profile law, Pathway way, LocalDate from) throws BadInputException {
            return Comparison.Side.of(law, way, asOf, judged(List.of(TypedBook.placement(law, way, from, null))));
        }

        Comparison.Move move(Comparison.Side here, Comparison.Side there, LocalDate day) throws BadInputException {
            Checklist stayed = judged(List.of(TypedBook.placement(here.law(), here.pathway(), starts, null)));
            Checklist moved = judged(List.of(TypedBook.placement(here.law(), here.pathway(), starts, day.minusDays(1)),
                    TypedBook.placement(there.law(), there.pathway(), day, null)));
            return Comparison.Move.of(day, here, there, stayed, moved);
        }

        private Checklist judged(List<Placement> placements) throws BadInputException {
            Book book = TypedBook.of(born, grade, placements, asOf, List.of());
            return Checklist.of(Checkup.judge(book, profiles, asOf, given.problems()), book);
        }
    }
}
