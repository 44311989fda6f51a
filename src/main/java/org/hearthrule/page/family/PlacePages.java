package org.hearthrule.page.family;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthrule.input.BadInputException;
import org.hearthrule.law.Profile;
import org.hearthrule.page.frame.Answer;
import org.hearthrule.page.frame.Call;
import org.hearthrule.page.frame.Feature;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Routes;
import org.hearthrule.records.Placement;
import org.hearthrule.records.Placements;
import org.hearthrule.records.Student;
import org.hearthrule.terms.EventKind;
import org.hearthrule.terms.Prose;
import org.hearthrule.terms.Wording;

/**
 * {@code /family/place}: one stretch of a child's story, whether it goes on or has ended: noted late, mended, taken
 * out. A stretch is named by its print; without one, what goes on now is meant.
 */
final class PlacePages implements Feature {

    private static final String NEW = "new";

    @Override
    public void addTo(Routes routes) {
        routes.get("/family/place", PlacePages::open);
        routes.post("/family/place", PlacePages::save);
        routes.post("/family/place/delete", PlacePages::delete);
    }

    static String address(Placement one) {
        return "/family/place?child=" + one.student() + "&place=" + PlaceForm.print(one);
    }

    private static Optional<Placement> find(Household house, String child, String print) {
        return Placements.of(house.book(), child).stream().filter(one -> PlaceForm.print(one).equals(print))
                .findFirst();
    }

    /** The one a form was made from; when it was changed since, the one that began on the same day. */
    private static Optional<Placement> meant(Household house, Form form) {
        String child = form.raw("child");
        return find(house, child, form.raw("print")).or(() -> Placements.of(house.book(), child).stream()
                .filter(one -> one.from().toString().equals(form.raw("began"))).findFirst());
    }

    private static Answer open(Call call) throws BadInputException {
        Household house = Household.of(call);
        Optional<Student> child = house.book().student(call.query("child"));
        String place = call.query("place");
        Optional<Placement> found = place.isEmpty() ? Placements.open(house.book(), call.query("child"))
                : find(house, call.query("child"), place);
        if (child.isEmpty() || found.isEmpty() && !place.equals(NEW)) {
            return new Answer.Nothing();
        }
        Form form = found.map(PlaceForm::filled)
                .orElseGet(() -> Form.empty().fill("child", child.get().id()).fill("place", NEW));
        if (!call.query("state").isEmpty()) {
            form.fill("state", call.query("state"));
        }
        return form(PlaceForm.of(house, child.get(), found, form.raw("state")), form, 200, List.of());
    }

    private static Answer form(PlaceForm place, Form form, int status, List<String> there) throws BadInputException {
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("who", place.child().name());
        values.put("stretch", place.before().isEmpty() ? "" : place.house().stretch(place.before().get()));
        values.put("address", place.before().map(PlacePages::address).orElse("/family"));
        values.put("place", place.before().map(PlaceForm::print).orElse(NEW));
        values.put("states", place.house().states());
        values.put("state", place.law().map(Profile::name).orElse(""));
        values.put("ways", place.ways(form));
        values.put("endings", place.endings());
        values.put("programs", place.programs());
        values.put("there", there);
        return Household.shown("place", "Where, how and since when", form, status, values);
    }

    private static Answer save(Call call) throws Exception {
        Form form = call.form();
        Household house = Household.of(call);
        Optional<Student> child = house.book().student(form.raw("child"));
        if (child.isEmpty()) {
            return new Answer.Nothing();
        }
        boolean isNew = form.raw("place").equals(NEW);
        Optional<Placement> before = isNew ? Optional.empty() : meant(house, form);
        PlaceForm place = PlaceForm.of(house, child.get(), before, form.raw("state"));
        Placement after = place.read(form);
        boolean changed = !isNew && !before.map(PlaceForm::print).orElse("").equals(form.raw("print"));
        if (!form.isFine() || changed) {
            return changed ? bothVersions(place, form) : form(place, form, 422, List.of());
        }
        String what = "where and how " + child.get().name() + " is taught";
        call.desk().edit(Prose.upperFirst(what), book -> Placements.put(book, before.orElse(null), after));
        return Answer.done("Saved: " + what + '.' + dayBeside(house, before, after), "/family");
    }

    /** What was taken out elsewhere becomes something new when it is saved once more. */
    private static Answer bothVersions(PlaceForm place, Form form) throws BadInputException {
        List<String> there = new ArrayList<>();
        if (place.before().isPresent()) {
            form.fill("print", PlaceForm.print(place.before().get())).fill("began", place.before().get().from());
            there.addAll(words(place.house(), place.before().get()));
        } else {
            form.fill("place", NEW);
            there.addAll(place.house().story(place.child().id()));
        }
        return form(place, form, 422, there);
    }

    private static List<String> words(Household house, Placement one) throws BadInputException {
        List<String> words = new ArrayList<>(List.of(house.stretch(one), "City or town: " + said(one.city()),
                "County: " + said(one.county())));
        if (one.started() != null) {
            words.add("First day of home instruction anywhere: " + Wording.english().date(one.started()));
        }
        if (!one.optIns().isEmpty()) {
            List<String> names = one.optIns().stream().map(name -> name.replace('-', ' ')).toList();
            words.add("Programs: " + Wording.english().and(names));
        }
        return words;
    }

    private static String said(String words) {
        return words == null ? "not entered" : words;
    }

    /** The end of home instruction is noted as a day too, which laws read; it is not moved without being asked. */
    private static String dayBeside(Household house, Optional<Placement> before, Placement after) {
        LocalDate day = before.map(Placement::to).orElse(null);
        boolean noted = day != null && !day.equals(after.to()) && house.book().events().stream().anyMatch(event ->
                List.of(EventKind.STOPPED, EventKind.ENTERED_SCHOOL).contains(event.kind()) && event.date().equals(day)
                && (event.students().isEmpty() || event.students().contains(after.student())));
        return noted ? " " + Wording.english().date(day)
                + " is still noted below as a day that something happened on: change it there too." : "";
    }

    private static Answer delete(Call call) throws Exception {
        Form form = call.form();
        Household house = Household.of(call);
        Optional<Student> child = house.book().student(form.raw("child"));
        Optional<Placement> found = meant(house, form);
        if (child.isEmpty() || found.isEmpty()) {
            return new Answer.Nothing();
        }
        Placement one = found.get();
        if (!PlaceForm.print(one).equals(form.raw("print"))) {
            return form(PlaceForm.of(house, child.get(), found, one.jurisdiction()), PlaceForm.filled(one), 422,
                    words(house, one));
        }
        call.desk().edit("A time of " + child.get().name() + " taken out", book -> Placements.remove(book, one));
        return Answer.done("Taken out: " + house.stretch(one) + " It can be taken back below." + endBefore(house, one),
                "/family");
    }

    private static String endBefore(Household house, Placement taken) {
        LocalDate last = taken.from().minusDays(1);
        boolean ended = Placements.of(house.book(), taken.student()).stream().anyMatch(one -> last.equals(one.to()));
        return ended ? " What went before still ends on " + Wording.english().date(last) + ": mend it if it goes on."
                : "";
    }
}
