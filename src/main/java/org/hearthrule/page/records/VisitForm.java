package org.hearthrule.page.records;

import java.util.ArrayList;
import java.util.List;
import org.hearthrule.page.frame.Field;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Option;
import org.hearthrule.records.RecordKind;
import org.hearthrule.records.YearRecords.Visit;

/** A contact of a teacher or supervisor with the child. */
final class VisitForm extends RecordForm<Visit> {

    private static final int LONGEST_DAY = 1_440;

    @Override
    RecordKind kind() {
        return RecordKind.VISITS;
    }

    @Override
    String path() {
        return "/visits";
    }

    @Override
    String one() {
        return "a visit";
    }

    @Override
    String many() {
        return "Visits of a teacher or supervisor";
    }

    @Override
    String about() {
        return "Some laws ask that a teacher or supervisor meets the child so many times. Note each meeting.";
    }

    @Override
    List<Field> fields(Form form, Offered offered) {
        List<Field> fields = new ArrayList<>();
        fields.add(form.field("students", "Who was met").options(offered.children()).type("several").must());
        fields.add(form.field("date", "On").type("date").must());
        fields.add(form.field("minutes", "Minutes").type("number"));
        fields.add(form.field("by", "By whom"));
        fields.add(form.field("how", "How").options(List.of(Option.of("face-to-face", "face to face"), Option.of("otherwise", "otherwise")))
                .type("one").must());
        return fields;
    }

    @Override
    Form fill(Visit one) {
        return Form.empty().tick("students", one.students()).fill("date", one.date()).fill("minutes", one.minutes() == 0 ? null : one.minutes())
                .fill("by", one.by()).fill("how", one.faceToFace() ? "face-to-face" : "otherwise");
    }

    @Override
    Visit read(Form form, Offered offered, String id, Visit before) {
        String how = form.mustOneOf("how", List.of("face-to-face", "otherwise"), "Choose whether they met face to face.");
        return new Visit(id, form.mustTick("students", offered.childIds(), "Tick who was met."),
                form.mustDay("date", "Enter the day."), form.number("minutes", 0, LONGEST_DAY).orElse(0), form.text("by"),
                "face-to-face".equals(how));
    }

    @Override
    List<String> students(Visit one) {
        return one.students();
    }

    @Override
    String title(Visit one, Offered offered) {
        return one.by() == null ? "A visit" : "A visit by " + offered.person(one.by());
    }

    @Override
    List<String> words(Visit one, Offered offered) {
        return List.of(when(one.date()) + (one.minutes() == 0 ? "" : ", " + one.minutes() + " minutes")
                + (one.faceToFace() ? ", face to face." : "."));
    }
}
