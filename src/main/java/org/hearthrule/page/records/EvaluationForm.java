package org.hearthrule.page.records;

import java.util.ArrayList;
import java.util.List;
import org.hearthrule.page.frame.Choices;
import org.hearthrule.page.frame.Field;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Option;
import org.hearthrule.records.RecordKind;
import org.hearthrule.records.YearRecords.Evaluation;

/** A judgement by a person who looked at the work. */
final class EvaluationForm extends RecordForm<Evaluation> {

    private static final List<Option> INCLUDES = List.of(Option.of("portfolio", "A look at the portfolio"),
            Option.of("interview", "A talk with the child"));

    @Override
    RecordKind kind() {
        return RecordKind.EVALUATIONS;
    }

    @Override
    String path() {
        return "/evaluations";
    }

    @Override
    String one() {
        return "an evaluation";
    }

    @Override
    String many() {
        return "Evaluations";
    }

    @Override
    String about() {
        return "Who looked over the year's work, when, and what they said. A scan of their report can lie beside it.";
    }

    @Override
    List<Field> fields(Form form, Offered offered) {
        List<Field> fields = new ArrayList<>();
        fields.add(form.field("student", "Whose work").options(offered.children()).type("one").must());
        fields.add(form.field("date", "On").type("date").must());
        fields.addAll(kindFields(form, "method", "What kind", offered.evaluationMethods()));
        fields.addAll(personFields(form, "by", "By whom", "A role, such as certified teacher.", offered));
        fields.add(form.field("consent", "Who agreed to it beforehand"));
        fields.add(form.field("includes", "It rested on").options(INCLUDES).type("several"));
        fields.add(form.field("outcome", "What the report says").hint("Its own word, for example appropriate or satisfactory."));
        fields.add(form.field("note", "Anything else"));
        fields.add(form.field("scan", "A scan or photo of the report or certificate").type("file"));
        return fields;
    }

    @Override
    Form fill(Evaluation one) {
        return Form.empty().fill("method", one.method()).fill("student", one.student()).fill("date", one.date())
                .fill("by", one.by()).fill("consent", one.consent()).tick("includes", one.includes())
                .fill("outcome", one.outcome()).fill("note", one.note()).fill("copy", one.file());
    }

    @Override
    Evaluation read(Form form, Offered offered, String id, Evaluation before) {
        List<String> includes = new ArrayList<>(form.ticked("includes", Choices.values(INCLUDES)));
        if (before != null) {
            before.includes().stream().filter(one -> INCLUDES.stream().noneMatch(known -> known.value().equals(one))).forEach(includes::add);
        }
        return new Evaluation(id, form.mustOneOf("student", offered.childIds(), "Choose whose work was looked at."),
                form.mustDay("date", "Enter the day of the evaluation."),
                kindOf(form, "method", offered.evaluationMethods(), "Choose what kind it was, or name another."),
                personOf(form, "by", offered), form.text("consent"), includes, form.text("outcome"),
                form.text("note", 2_000), form.text("copy"));
    }

    @Override
    List<String> students(Evaluation one) {
        return List.of(one.student());
    }

    @Override
    String title(Evaluation one, Offered offered) {
        return Offered.plain(one.method());
    }

    @Override
    List<String> words(Evaluation one, Offered offered) {
        List<String> words = new ArrayList<>();
        words.add(when(one.date()) + (one.by() == null ? "." : ", by " + offered.person(one.by()) + '.'));
        if (one.outcome() != null) {
            words.add("It says: " + one.outcome() + '.');
        }
        if (one.note() != null) {
            words.add(one.note());
        }
        return words;
    }

    @Override
    String scan(Evaluation one) {
        return one.file();
    }
}
