package org.hearthrule.page.records;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.hearthrule.page.frame.Choices;
import org.hearthrule.page.frame.Field;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Option;
import org.hearthrule.records.RecordKind;
import org.hearthrule.records.YearRecords.Answer;
import org.hearthrule.records.YearRecords.Filing;

/** A paper that was sent, and what came back. */
final class FilingForm extends RecordForm<Filing> {

    private static final List<Option> ANSWERS = List.of(Option.of("received", "They have received it"),
            Option.of("materials", "They sent forms"), Option.of("approved", "They agreed to it"),
            Option.of("refused", "They refused it"), Option.of("deficiency", "They said that something is missing"),
            Option.of("answered", "They answered otherwise"));
    private static final int MOST_PARTS = 366;

    @Override
    RecordKind kind() {
        return RecordKind.FILINGS;
    }

    @Override
    String path() {
        return "/papers";
    }

    @Override
    String one() {
        return "a paper you sent";
    }

    @Override
    String many() {
        return "Papers you sent";
    }

    @Override
    String about() {
        return "Notices, affidavits, reports: what was sent, when, how, and what came back. A scan of what you sent can lie beside it.";
    }

    @Override
    List<Field> fields(Form form, Offered offered) {
        List<Field> fields = new ArrayList<>(kindFields(form, "paper", "Which paper", offered.papers()));
        fields.add(form.field("students", "For whom").options(offered.children()).type("several")
                .hint("None ticked: it is for all children."));
        fields.add(form.field("sent", "Sent on").type("date").must());
        fields.add(form.field("how", "How").hint("For example certified mail, by hand, online form."));
        fields.add(form.field("to", "To whom"));
        fields.add(form.field("for", "For which school year").options(offered.years()).type("select"));
        fields.add(form.field("part", "Which of several in the year").type("number").hint("2 for the second quarterly report."));
        fields.add(form.field("states", "What it says").type("area").hint("A line for each thing."));
        fields.add(form.field("attached", "What came with it").type("area").hint("A line for each thing."));
        fields.add(form.field("scan", "A scan or photo of it").type("file"));
        fields.add(form.field("answer", "What came back").options(ANSWERS).type("select"));
        fields.add(form.field("answer-day", "It came on").type("date"));
        fields.add(form.field("answer-note", "What it said"));
        return fields;
    }

    @Override
    Form fill(Filing filing) {
        return Form.empty().fill("paper", filing.paper()).tick("students", filing.students()).fill("sent", filing.sent())
                .fill("how", filing.how()).fill("to", filing.to()).fill("for", filing.year()).fill("part", filing.part())
                .fill("states", String.join("\n", filing.states())).fill("attached", String.join("\n", filing.attached()))
                .fill("copy", filing.copy());
    }

    @Override
    Filing read(Form form, Offered offered, String id, Filing before) {
        String paper = kindOf(form, "paper", offered.papers(), "Choose which paper it was, or name another.");
        LocalDate sent = form.mustDay("sent", "Enter the day you sent it, for example 2026-07-28.");
        List<String> years = Choices.values(offered.years());
        var part = form.number("part", 1, MOST_PARTS);
        List<Answer> answers = new ArrayList<>(before == null ? List.of() : before.answers());
        String kind = form.oneOf("answer", Choices.values(ANSWERS));
        LocalDate day = form.day("answer-day");
        if (kind != null && day == null && form.complaint("answer-day") == null) {
            form.complain("answer-day", "Enter the day it came.");
        } else if (kind == null && (day != null || form.is("answer-note"))) {
            form.complain("answer", "Choose what came back.");
        } else if (kind != null) {
            answers.add(new Answer(kind, day, form.text("answer-note")));
        }
        return new Filing(id, form.ticked("students", offered.childIds()), paper, sent, form.text("how"), form.text("to"),
                form.oneOf("for", years), part.isPresent() ? part.getAsInt() : null, lines(form, "states"),
                lines(form, "attached"), form.text("copy"), List.copyOf(answers));
    }

    private static List<String> lines(Form form, String name) {
        String text = form.text(name, 2_000);
        return text == null ? List.of() : text.lines().map(String::strip).filter(line -> !line.isEmpty()).toList();
    }

    @Override
    List<String> students(Filing filing) {
        return filing.students();
    }

    @Override
    String title(Filing filing, Offered offered) {
        return offered.paper(filing.paper());
    }

    @Override
    List<String> words(Filing filing, Offered offered) {
        List<String> words = new ArrayList<>();
        words.add("Sent" + (filing.sent() == null ? "" : " on " + when(filing.sent())) + (filing.to() == null ? "" : " to " + filing.to())
                + (filing.how() == null ? "" : ", " + filing.how()) + '.');
        if (filing.year() != null) {
            words.add("For the school year " + filing.year() + '.');
        }
        for (Answer answer : filing.answers()) {
            String said = ANSWERS.stream().filter(one -> one.value().equals(answer.kind())).map(Option::words).findFirst()
                    .orElse(answer.kind());
            words.add(said + (answer.date() == null ? "" : ", " + when(answer.date())) + (answer.note() == null ? "." : ": " + answer.note()));
        }
        return words;
    }

    @Override
    String scan(Filing filing) {
        return filing.copy();
    }

    @Override
    String label(Filing filing, String now, Offered offered) {
        return filing.year() == null ? super.label(filing, now, offered) : filing.year();
    }
}
