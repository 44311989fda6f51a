package org.hearthrule.page.family;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthrule.input.BadInputException;
import org.hearthrule.page.frame.Answer;
import org.hearthrule.page.frame.Call;
import org.hearthrule.page.frame.Feature;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Routes;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookEdits;
import org.hearthrule.records.Placement;
import org.hearthrule.records.Placements;
import org.hearthrule.records.Student;
import org.hearthrule.terms.Wording;

/** {@code /family/place}: where a child lives and since when it is taught so, as far as it goes on now. */
final class PlacePages implements Feature {

    @Override
    public void addTo(Routes routes) {
        routes.get("/family/place", PlacePages::open);
        routes.post("/family/place", PlacePages::save);
    }

    private static Answer open(Call call) throws BadInputException {
        Optional<Placement> found = Placements.open(call.desk().book(), call.query("child"));
        return found.isEmpty() ? new Answer.Nothing() : form(call, filled(found.get()), found.get(), 200, List.of());
    }

    private static Form filled(Placement one) {
        return Form.empty().fill("child", one.student()).fill("print", print(one)).fill("from", one.from())
                .fill("district", one.district()).fill("city", one.city()).fill("county", one.county());
    }

    /** Where it stands in the file does not count. */
    private static String print(Placement one) {
        return Household.print(List.of(one.student(), one.jurisdiction(), one.pathway(), one.from(), String.valueOf(one.district()),
                String.valueOf(one.city()), String.valueOf(one.county())));
    }

    private static Answer form(Call call, Form form, Placement one, int status, List<String> there) throws BadInputException {
        Household house = Household.of(call);
        return Household.shown("place", "Where and since when", form, status, Map.of("who",
                house.book().student(one.student()).map(Student::name).orElse(one.student()), "stretch", house.stretch(one),
                "there", there));
    }

    private static Answer save(Call call) throws Exception {
        Form form = call.form();
        Optional<Placement> found = Placements.open(call.desk().book(), form.raw("child"));
        if (found.isEmpty()) {
            return new Answer.Nothing();
        }
        Placement before = found.get();
        LocalDate from = form.mustDay("from", "Enter the day it began.");
        Placement after = new Placement(before.student(), before.jurisdiction(), before.pathway(), from, null, null,
                before.started(), form.text("district"), form.text("city"), form.text("county"), before.optIns(), null);
        check(form, call.desk().book(), before, from);
        boolean changed = !print(before).equals(form.raw("print"));
        if (!form.isFine() || changed) {
            List<String> there = changed ? List.of(Household.of(call).stretch(before), "City or town: " + said(before.city()),
                    "County: " + said(before.county())) : List.of();
            return form(call, changed ? form.fill("print", print(before)) : form, before, 422, there);
        }
        String name = Household.of(call).names(List.of(before.student()));
        call.desk().edit("Where " + name + " lives", book -> {
            List<Placement> placements = new ArrayList<>(book.placements());
            placements.replaceAll(one -> one.equals(before) ? after : one);
            return BookEdits.withPlacements(book, placements);
        });
        return Answer.done("Saved: where " + name + " lives, and since when.", "/family");
    }

    private static void check(Form form, Book book, Placement before, LocalDate from) {
        if (from == null) {
            return;
        }
        book.student(before.student()).map(Student::born).filter(born -> !from.isAfter(born))
                .ifPresent(born -> form.complain("from", "This lies before the birth date."));
        book.placements().stream().filter(one -> one.student().equals(before.student()) && one.to() != null
                && !one.to().isBefore(from)).findFirst().ifPresent(one -> form.complain("from", "Until "
                + Wording.english().date(one.to()) + " something else is noted. Enter a later day."));
        if (before.started() != null && from.isBefore(before.started())) {
            form.complain("from", "Home instruction began on " + Wording.english().date(before.started()) + ". Enter that day or a later one.");
        }
    }

    private static String said(String words) {
        return words == null ? "not entered" : words;
    }
}
