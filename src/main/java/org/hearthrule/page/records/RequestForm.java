package org.hearthrule.page.records;

import java.util.ArrayList;
import java.util.List;
import org.hearthrule.page.frame.Field;
import org.hearthrule.page.frame.Form;
import org.hearthrule.records.RecordKind;
import org.hearthrule.records.YearRecords.Request;

/** Somebody asked to see the records. */
final class RequestForm extends RecordForm<Request> {

    @Override
    RecordKind kind() {
        return RecordKind.REQUESTS;
    }

    @Override
    String path() {
        return "/requests";
    }

    @Override
    String one() {
        return "a request";
    }

    @Override
    String many() {
        return "Requests to see your records";
    }

    @Override
    String about() {
        return "When an authority asks for your records, note it here: some laws hang a day on it.";
    }

    @Override
    List<Field> fields(Form form, Offered offered) {
        List<Field> fields = new ArrayList<>();
        fields.add(form.field("date", "It came on").type("date").must());
        fields.add(form.field("by", "Who asked"));
        fields.add(form.field("written", "It came").options(List.of(org.hearthrule.page.frame.Option.of("yes", "in writing"),
                org.hearthrule.page.frame.Option.of("no", "by word of mouth"))).type("one").must());
        fields.add(form.field("students", "About whom").options(offered.children()).type("several")
                .hint("None ticked: about all children."));
        fields.add(form.field("cause", "The reason they gave"));
        return fields;
    }

    @Override
    Form fill(Request one) {
        return Form.empty().fill("date", one.date()).fill("by", one.by()).fill("written", one.written() ? "yes" : "no")
                .tick("students", one.students()).fill("cause", one.cause());
    }

    @Override
    Request read(Form form, Offered offered, String id, Request before) {
        String written = form.mustOneOf("written", List.of("yes", "no"), "Choose whether it came in writing.");
        return new Request(id, form.ticked("students", offered.childIds()), form.text("by"), "yes".equals(written),
                form.mustDay("date", "Enter the day it came."), form.text("cause"));
    }

    @Override
    List<String> students(Request one) {
        return one.students();
    }

    @Override
    String title(Request one, Offered offered) {
        return one.by() == null ? "A request" : "A request by " + one.by();
    }

    @Override
    List<String> words(Request one, Offered offered) {
        return List.of(when(one.date()) + (one.written() ? ", in writing" : ", by word of mouth")
                + (one.cause() == null ? "." : ": " + one.cause()));
    }
}
