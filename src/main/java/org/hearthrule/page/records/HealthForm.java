package org.hearthrule.page.records;

import java.util.ArrayList;
import java.util.List;
import org.hearthrule.page.frame.Field;
import org.hearthrule.page.frame.Form;
import org.hearthrule.records.RecordKind;
import org.hearthrule.records.YearRecords.HealthPaper;

/** A health paper or an exemption. */
final class HealthForm extends RecordForm<HealthPaper> {

    @Override
    RecordKind kind() {
        return RecordKind.HEALTH;
    }

    @Override
    String path() {
        return "/health";
    }

    @Override
    String one() {
        return "a health paper";
    }

    @Override
    String many() {
        return "Health papers";
    }

    @Override
    String about() {
        return "Certificates, examinations and exemptions that the law asks to be kept or sent: that there is one, and of "
                + "which day. A scan can lie beside it; nothing asks for one here.";
    }

    @Override
    List<Field> fields(Form form, Offered offered) {
        List<Field> fields = new ArrayList<>();
        fields.add(form.field("student", "Whose").options(offered.children()).type("one").must());
        fields.addAll(kindFields(form, "kind", "What it is", offered.healthPapers()));
        fields.add(form.field("date", "Its day").type("date").must());
        fields.add(form.field("scan", "A scan or photo of it").type("file"));
        return fields;
    }

    @Override
    Form fill(HealthPaper one) {
        return Form.empty().fill("kind", one.kind()).fill("student", one.student()).fill("date", one.date())
                .fill("copy", one.file());
    }

    @Override
    HealthPaper read(Form form, Offered offered, String id, HealthPaper before) {
        return new HealthPaper(id, form.mustOneOf("student", offered.childIds(), "Choose whose paper it is."),
                kindOf(form, "kind", offered.healthPapers(), "Choose what it is, or name another."),
                form.mustDay("date", "Enter the day that stands on it."), form.text("copy"));
    }

    @Override
    List<String> students(HealthPaper one) {
        return List.of(one.student());
    }

    @Override
    String title(HealthPaper one, Offered offered) {
        return Offered.plain(one.kind());
    }

    @Override
    List<String> words(HealthPaper one, Offered offered) {
        return List.of(when(one.date()) + '.');
    }

    @Override
    String scan(HealthPaper one) {
        return one.file();
    }
}
