package org.hearthrule.page.family;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.hearthrule.page.frame.Answer;
import org.hearthrule.page.frame.Call;
import org.hearthrule.page.frame.Choices;
import org.hearthrule.page.frame.Feature;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Option;
import org.hearthrule.page.frame.Routes;
import org.hearthrule.records.BookEdits;
import org.hearthrule.records.BookEvent;
import org.hearthrule.records.Placements;
import org.hearthrule.terms.EventKind;
import org.hearthrule.terms.Wording;

/** {@code /family/stop}: home instruction ends, or a child enters a school. */
final class EndPages implements Feature {

    private static final List<Option> ENDINGS = List.of(Option.of("entered-school", "The child enters a school"),
            Option.of("stopped", "Home instruction stops"));

    @Override
    public void addTo(Routes routes) {
        routes.get("/family/stop", call -> form(call, Stories.carry(Form.empty(), Household.of(call)), 200, List.of()));
        routes.post("/family/stop", EndPages::sent);
    }

    private static Answer form(Call call, Form form, int status, List<String> now) {
        return Household.shown("stop", "Home instruction ends", form, status,
                Map.of("children", Household.of(call).children(), "endings", ENDINGS, "now", now));
    }

    private static Answer sent(Call call) throws Exception {
        Form form = call.form();
        Household house = Household.of(call);
        LocalDate day = form.mustDay("day", "Enter the last day of home instruction.");
        String ended = form.mustOneOf("ended", Choices.values(ENDINGS), "Choose what happens.");
        List<String> students = form.mustTick("students", house.ids(), "Tick the children it is about.");
        for (String student : students) {
            String name = house.names(List.of(student));
            if (Placements.open(house.book(), student).isEmpty()) {
                form.complain("students", "Nothing goes on for " + name + " that could end. Leave " + name + " out.");
            } else if (day != null && Placements.open(house.book(), student).get().from().isAfter(day)) {
                form.complain("day", "Home instruction of " + name + " began after that day.");
            }
        }
        List<String> now = Stories.changed(form, house, students);
        if (!form.isFine() || !now.isEmpty()) {
            return form(call, now.isEmpty() ? form : Stories.carry(form, house), 422, now);
        }
        EventKind kind = ended.equals("stopped") ? EventKind.STOPPED : EventKind.ENTERED_SCHOOL;
        call.desk().edit("The end of home instruction", book -> BookEdits.withEvent(
                Placements.end(book, students, day, ended), new BookEvent(kind, day, students, null)));
        return Answer.done("Saved: the end of home instruction on " + Wording.english().date(day) + '.', "/checklist");
    }
}
