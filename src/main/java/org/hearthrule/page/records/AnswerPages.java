package org.hearthrule.page.records;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.hearthrule.page.frame.Answer;
import org.hearthrule.page.frame.Call;
import org.hearthrule.page.frame.Feature;
import org.hearthrule.page.frame.Field;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Option;
import org.hearthrule.page.frame.Part;
import org.hearthrule.page.frame.Print;
import org.hearthrule.page.frame.Routes;
import org.hearthrule.records.AnsweredDoubt;
import org.hearthrule.records.AnsweredFact;
import org.hearthrule.records.BookEdits;
import org.hearthrule.records.BookEvent;
import org.hearthrule.terms.EventKind;
import org.hearthrule.terms.Prose;

/**
 * Answers to what the checklist asks: a fact, the day of an event, what somebody said about a doubt. Each is
 * one change of the book, made only with what the parent said. Where an answer takes the place of another, the form
 * carries the print of that one; nothing while there is none.
 */
public final class AnswerPages implements Feature {

    private static final String PRINT = "print";

    @Override
    public void addTo(Routes routes) {
        routes.post("/answers/fact", AnswerPages::fact);
        routes.post("/answers/event", AnswerPages::event);
        routes.post("/answers/doubt", AnswerPages::doubt);
    }

    private static Answer fact(Call call) throws Exception {
        Form form = call.form();
        String name = form.raw("fact");
        boolean known = call.desk().judgement().profiles().stream().anyMatch(profile -> profile.facts().containsKey(name));
        String answer = form.mustOneOf("is", List.of("yes", "no"), "Choose yes or no.");
        String about = form.is("about") ? form.oneOf("about", Offered.of(call).childIds()) : null;
        List<String> there = changed(form, HeldAnswers.fact(call.desk().book(), name, form.raw("about")),
                HeldAnswers::words);
        if (!known || !form.isFine() || !there.isEmpty()) {
            return again(call, "Answer", "/answers/fact", List.of(form.field("is", form.raw("question"))
                    .options(List.of(Option.of("yes", "Yes"), Option.of("no", "No"))).type("one").must()),
                    List.of("fact", "about", "question", PRINT), there);
        }
        LocalDate today = call.desk().now().toLocalDate();
        call.desk().edit("Your answer", book -> BookEdits.answerFact(book, new AnsweredFact(name, about, "yes".equals(answer), today)));
        return Answer.done("Saved: your answer is " + answer + '.', call.back("/checklist"));
    }

    private static Answer event(Call call) throws Exception {
        Form form = call.form();
        EventKind kind = EventKind.of(form.raw("kind")).orElse(null);
        LocalDate day = form.mustDay("date", "Enter the day, for example 2026-08-24.");
        List<String> students = form.ticked("students", Offered.of(call).childIds());
        if (kind == null || !form.isFine()) {
            return again(call, kind == null ? "Note a day" : Prose.upperFirst(kind.words()), "/answers/event",
                    List.of(form.field("date", "Which day").type("date").must()), List.of("kind", "students"),
                    List.of());
        }
        call.desk().edit("The note of a day", book -> BookEdits.withEvent(book, new BookEvent(kind, day, students, null)));
        return Answer.done("Saved: " + kind.words() + ", " + RecordForm.when(day) + '.', call.back("/checklist"));
    }

    private static Answer doubt(Call call) throws Exception {
        Form form = call.form();
        String doubt = form.raw("doubt");
        boolean known = call.desk().judgement().profiles().stream().anyMatch(profile -> profile.doubts().stream()
                .anyMatch(one -> one.id().equals(doubt)) || profile.pathways().stream().anyMatch(way -> way.asks().stream()
                .anyMatch(asked -> asked.id().equals(doubt) && asked.question() != null)));
        String answer = form.text("answer", 2_000);
        if (answer == null && form.complaint("answer") == null) {
            form.complain("answer", "Type what you were told.");
        }
        String from = form.text("from");
        List<String> there = changed(form, HeldAnswers.doubt(call.desk().book(), doubt), HeldAnswers::words);
        if (!known || !form.isFine() || !there.isEmpty()) {
            return again(call, "What you were told", "/answers/doubt", List.of(form.field("answer", "What you were told").type("area").must(),
                    form.field("from", "By whom")), List.of("doubt", PRINT), there);
        }
        LocalDate today = call.desk().now().toLocalDate();
        call.desk().edit("What you were told", book -> BookEdits.answerDoubt(book, new AnsweredDoubt(doubt, answer, from, today)));
        return Answer.done("Saved: what you were told.", call.back("/checklist"));
    }

    /** @return what the book holds now, where that is not what the form was made from; the form takes its print then */
    private static <T> List<String> changed(Form form, Optional<T> held, Function<T, String> words) {
        String print = Print.ofHeld(held);
        if (print.equals(form.raw(PRINT))) {
            return List.of();
        }
        form.fill(PRINT, print);
        return List.of(held.map(words).orElse("no answer"));
    }

    /** A small form to be put right. */
    private static Answer again(Call call, String heading, String action, List<Field> fields, List<String> hidden,
                                List<String> there) {
        return Answer.again("records/answer.jte", heading, Part.CHECKLIST, Map.of("heading", heading, "action", action,
                "fields", fields, "hidden", hidden, "form", call.form(), "back", call.back("/checklist"),
                "there", there));
    }
}
