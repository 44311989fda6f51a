package org.hearthrule.page.family;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthrule.checklist.CompareSheet;
import org.hearthrule.checklist.Sheet;
import org.hearthrule.input.BadInputException;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.page.frame.Answer;
import org.hearthrule.page.frame.Call;
import org.hearthrule.page.frame.Choices;
import org.hearthrule.page.frame.Feature;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Option;
import org.hearthrule.page.frame.Routes;
import org.hearthrule.page.law.Mover;
import org.hearthrule.page.sheet.Addresses;
import org.hearthrule.records.Book;
import org.hearthrule.records.Placement;
import org.hearthrule.records.Placements;
import org.hearthrule.terms.Wording;

/** {@code /family/move}: another state, or another way in the same one, from a day on; what it brings is shown before. */
public final class MovePages implements Feature {

    @Override
    public void addTo(Routes routes) {
        routes.get("/family/move", MovePages::open);
        routes.post("/family/move", MovePages::sent);
    }

    private static Answer open(Call call) throws BadInputException {
        Form form = Form.empty().fill("state", call.query("state"));
        return form(call, Stories.carry(form, Household.of(call)), 200, List.of(), List.of());
    }

    /** What a move brings one child. */
    public record Brings(String child, Sheet sheet) { }

    /** What was asked for; null where it was not, or wrongly. */
    private record Asked(Optional<Profile> law, String state, LocalDate day, String way, List<String> students,
                         Placements.Beginning beginning) { }

    /** @param now what the book holds now where that is not what the form was made from */
    private static Answer form(Call call, Form form, int status, List<Brings> brings, List<String> now)
            throws BadInputException {
        Household house = Household.of(call);
        Optional<Profile> law = house.law(form.raw("state"));
        LocalDate day = dayOf(form, house);
        Book book = house.book();
        String here = book.placements().isEmpty() ? "" : book.placements().get(book.placements().size() - 1).jurisdiction();
        return Household.shown("move", "A move, or another way", form, status, Map.of("states", house.states(), "children",
                house.children(), "ways", Household.ways(law, day), "there", law.map(Profile::name).orElse(""), "here", here,
                "brings", brings, "addresses", new Addresses(null), "now", now));
    }

    /** The day that was typed, if it is one; a way can end or begin before it. */
    private static LocalDate dayOf(Form form, Household house) {
        LocalDate typed = Form.empty().fill("day", form.raw("day")).day("day");
        return typed == null ? house.today() : typed;
    }

    private static Asked read(Form form, Household house) throws BadInputException {
        String state = form.mustOneOf("state", Choices.values(house.states()), "Choose the state.");
        Optional<Profile> law = house.law(form.raw("state"));
        LocalDate day = form.mustDay("day", "Enter the first day there, or the first day of the other way.");
        List<Option> ways = Household.ways(law, dayOf(form, house));
        String way = form.mustOneOf("pathway", Choices.values(ways), "Choose the way to teach.");
        List<String> students = form.mustTick("students", house.ids(), "Tick the children it is about.");
        Placements.Beginning beginning = new Placements.Beginning(day, state, way, form.text("district"), form.text("city"),
                form.text("county"));
        if (form.isFine()) {
            students.forEach(student -> checkDay(form, house, student, beginning));
        }
        return new Asked(law, state, day, way, students, beginning);
    }

    private static void checkDay(Form form, Household house, String student, Placements.Beginning next) {
        String name = house.names(List.of(student));
        Placements.inTheWay(house.book(), student, next.day()).ifPresent(one -> form.complain("day", one.to() == null
                ? "What goes on now for " + name + " began on " + Wording.english().date(one.from()) + ". Enter a later day."
                : "Until " + Wording.english().date(one.to()) + " something else is noted for " + name + ". Enter a later day."));
        boolean same = Placements.open(house.book(), student).filter(one -> one.jurisdiction().equals(next.jurisdiction())
                && one.pathway().equals(next.pathway())).isPresent();
        if (same) {
            form.complain("pathway", name + " is taught in this way already. Choose another, or leave " + name + " out.");
        }
    }

    private static Answer sent(Call call) throws Exception {
        Form form = call.form();
        Household house = Household.of(call);
        Asked asked = read(form, house);
        List<String> now = Stories.changed(form, house, asked.students());
        if (!form.isFine() || !now.isEmpty()) {
            return form(call, now.isEmpty() ? form : Stories.carry(form, house), 422, List.of(), now);
        }
        boolean look = form.raw("do").equals("look");
        return look ? form(call, form, 200, brings(call, asked), List.of()) : note(call, asked);
    }

    /** Nothing is written: the book as it would be is judged in memory. */
    private static List<Brings> brings(Call call, Asked asked) throws BadInputException {
        Profile there = asked.law().orElseThrow();
        Pathway way = there.pathway(asked.way()).orElseThrow();
        List<Brings> all = new ArrayList<>();
        for (Mover mover : Mover.all(call.desk(), call.desk().profiles())) {
            boolean moves = asked.students().contains(mover.student().id()) && !mover.code().equals(asked.state());
            if (moves) {
                all.add(new Brings(mover.student().name(), CompareSheet.ofMove(mover.comparison(there, way, asked.day(), true,
                        call.desk()), mover.student().id() + '-', Wording.english())));
            }
        }
        return all;
    }

    /** One change, so that one undo takes it back. */
    private static Answer note(Call call, Asked asked) throws Exception {
        boolean moves = asked.students().stream().flatMap(student -> Placements.open(call.desk().book(), student).stream())
                .map(Placement::jurisdiction).anyMatch(state -> !state.equals(asked.state()));
        String label = moves ? "The move to " + asked.law().orElseThrow().name() : "The change of the way to teach";
        call.desk().edit(label, book -> Placements.begin(book, asked.students(), asked.beginning()));
        return Answer.done(label + " is noted from " + Wording.english().date(asked.day()) + ". What it brings stands here.",
                "/checklist");
    }
}
