package org.hearthrule.page.records;

import java.util.ArrayList;
import java.util.List;
import org.hearthrule.page.frame.Field;
import org.hearthrule.page.frame.Form;
import org.hearthrule.records.RecordKind;
import org.hearthrule.records.YearRecords.KeptDocument;

/** A paper that is kept, not sent. */
final class DocumentForm extends RecordForm<KeptDocument> {

    @Override
    RecordKind kind() {
        return RecordKind.DOCUMENTS;
    }

    @Override
    String path() {
        return "/documents";
    }

    @Override
    String one() {
        return "a paper you keep";
    }

    @Override
    String many() {
        return "Papers you keep";
    }

    @Override
    String about() {
        return "A plan book, a register, a certificate: papers the law asks you to have at hand.";
    }

    @Override
    List<Field> fields(Form form, Offered offered) {
        List<Field> fields = new ArrayList<>(kindFields(form, "kind", "What it is", offered.documents()));
        fields.add(form.field("students", "For whom").options(offered.children()).type("several")
                .hint("None ticked: it is for all children."));
        fields.add(form.field("date", "Its day").type("date").must());
        fields.add(form.field("scan", "A scan or photo of it").type("file"));
        return fields;
    }

    @Override
    Form fill(KeptDocument one) {
        return Form.empty().fill("kind", one.kind()).tick("students", one.students()).fill("date", one.date())
                .fill("copy", one.file());
    }

    @Override
    KeptDocument read(Form form, Offered offered, String id, KeptDocument before) {
        return new KeptDocument(id, form.ticked("students", offered.childIds()),
                kindOf(form, "kind", offered.documents(), "Choose what it is, or name another."),
                form.mustDay("date", "Enter its day."), form.text("copy"));
    }

    @Override
    List<String> students(KeptDocument one) {
        return one.students();
    }

    @Override
    String title(KeptDocument one, Offered offered) {
        return offered.document(one.kind());
    }

    @Override
    List<String> words(KeptDocument one, Offered offered) {
        return List.of(when(one.date()) + '.');
    }

    @Override
    String scan(KeptDocument one) {
        return one.file();
    }
}
