package org.hearthrule.page.family;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hearthrule.input.BadInputException;
import org.hearthrule.law.Profile;
import org.hearthrule.page.frame.Choices;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Option;
import org.hearthrule.page.frame.Print;
import org.hearthrule.records.Placement;
import org.hearthrule.records.Placements;
import org.hearthrule.records.Student;
import org.hearthrule.terms.Prose;
import org.hearthrule.terms.Wording;

/**
 * The fields of a stretch of a child's story.
 *
 * @param before what the book holds of it, or empty for something new
 * @param law    of the state that is chosen, or empty while none is
 */
record PlaceForm(Household house, Student child, Optional<Placement> before, Optional<Profile> law) {

    private static final List<Option> ENDINGS = List.of(Option.of("moved", "You moved to another state"),
            Option.of("changed-pathway", "The way to teach changed"),
            Option.of("entered-school", "The child entered a school"), Option.of("stopped",
            "Home instruction stopped"));

    static PlaceForm of(Household house, Student child, Optional<Placement> before, String state)
            throws BadInputException {
        return new PlaceForm(house, child, before, house.law(state));
    }

    /** Where it stands in the file does not count. */
    static String print(Placement one) {
        return Print.of(one.anywhere());
    }

    static Form filled(Placement one) {
        return Form.empty().fill("child", one.student()).fill("print", print(one)).fill("began", one.from())
                .fill("state", one.jurisdiction()).fill("pathway", one.pathway()).fill("from", one.from())
                .fill("to", one.to()).fill("ended", one.ended()).fill("started", one.started())
                .fill("district", one.district()).fill("city", one.city()).fill("county", one.county())
                .tick("programs", one.optIns());
    }

    /** @return ways of the law that stand on the first day, and the one that is noted */
    List<Option> ways(Form form) {
        LocalDate typed = Form.empty().fill("from", form.raw("from")).day("from");
        List<Option> offered = Household.ways(law, typed == null ? house.today() : typed);
        return Choices.keeping(offered, here().map(Placement::pathway).stream().toList());
    }

    List<Option> endings() {
        return Choices.keeping(ENDINGS, before.map(Placement::ended).stream().toList());
    }

    /** @return programs that families may join under the law; none of them is a duty */
    List<Option> programs() {
        List<Option> offered = law.map(Profile::optIns).orElse(List.of()).stream().map(one -> new Option(one.name(),
                Prose.upperFirst(one.name().replace('-', ' ')), one.what())).toList();
        return Choices.keeping(offered, here().map(Placement::optIns).orElse(List.of()));
    }

    /** What is noted belongs to its own state alone. */
    private Optional<Placement> here() {
        return before.filter(one -> law.filter(chosen -> chosen.slug().equals(one.jurisdiction())).isPresent());
    }

    /** @return what was entered; whatever when the form has complaints */
    Placement read(Form form) {
        String state = form.mustOneOf("state", Choices.values(house.states()), "Choose the state.");
        String way = form.mustOneOf("pathway", Choices.values(ways(form)), "Choose the way to teach.");
        LocalDate from = form.mustDay("from", "Enter the day it began.");
        LocalDate to = form.day("to");
        String ended = form.oneOf("ended", Choices.values(endings()));
        if (ended != null && to == null) {
            form.complain("to", "Enter the last day too, or leave the reason empty.");
        }
        Placement after = new Placement(child.id(), state, way, from, to, ended, form.day("started"),
                form.text("district"), form.text("city"), form.text("county"),
                form.ticked("programs", Choices.values(programs())), null);
        if (from != null) {
            checkDays(form, after);
        }
        if (form.isFine()) {
            Placements.inTheWay(house.book(), before.orElse(null), after)
                    .ifPresent(other -> checkOverlap(form, after, other));
        }
        return after;
    }

    private void checkDays(Form form, Placement after) {
        if (child.born() != null && !after.from().isAfter(child.born())) {
            form.complain("from", "This lies before the birth date.");
        }
        if (after.to() != null && after.to().isBefore(after.from())) {
            form.complain("to", "This lies before the first day. Enter that day or a later one.");
        }
        if (after.started() != null && after.started().isAfter(after.from())) {
            form.complain("started",
                    "This lies after the first day. Enter that day or an earlier one, or leave it empty.");
        }
    }

    private void checkOverlap(Form form, Placement after, Placement other) {
        String began = Wording.english().date(other.from());
        if (other.from().isAfter(after.from())) {
            form.complain("to", "From " + began + " on something else is noted for " + child.name()
                    + ". Enter a last day before that.");
        } else if (other.to() != null) {
            form.complain("from", "Until " + Wording.english().date(other.to()) + " something else is noted for "
                    + child.name() + ". Enter a later day.");
        } else {
            form.complain("from", "What goes on now for " + child.name() + " began on " + began
                    + ". Enter its last day first, or days before it.");
        }
    }
}
