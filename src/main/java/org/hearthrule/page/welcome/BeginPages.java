package org.hearthrule.page.welcome;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.hearthrule.input.BadInputException;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.page.frame.Answer;
import org.hearthrule.page.frame.Call;
import org.hearthrule.page.frame.Choices;
import org.hearthrule.page.frame.Feature;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Option;
import org.hearthrule.page.frame.Routes;
import org.hearthrule.records.BookStart;
import org.hearthrule.records.YearLabel;
import org.hearthrule.terms.Wording;

/**
 * {@code /begin}: one child after the other, then all of it to look over, then a book. What was entered travels in the
 * forms, sent and never in an address, and nothing is kept before the book is begun.
 */
public final class BeginPages implements Feature {

    private static final List<String> FIELDS = List.of("name", "born", "grade", "pathway", "starts");
    private static final int MOST = 30;

    @Override
    public void addTo(Routes routes) {
        routes.getWithoutBook("/begin", call -> child(call, call.query("state"), Form.empty(), List.of(), 200));
        routes.postWithoutBook("/begin", BeginPages::sent);
    }

    /**
     * A child that was entered.
     *
     * @param fields as they were typed, to travel on
     * @param words  the same, read
     */
    public record Entered(Map<String, String> fields, BookStart.Child child, List<String> words) { }

    private static Answer sent(Call call) throws Exception {
        Form form = call.form();
        if (call.house().inDemo()) {
            return Answer.done("This is the invented family. Leave the demo first, then begin your own book.", "/checklist");
        }
        if (call.house().hasBook()) {
            return Answer.done("There is a book already. Another child is added here.", "/family");
        }
        Optional<Profile> law = call.house().profiles().known(form.raw("state"));
        if (law.isEmpty()) {
            return Answer.see("/welcome");
        }
        List<Entered> earlier = earlier(call, law.get());
        String step = form.raw("do");
        if (step.startsWith("change-")) {
            return change(call, form, earlier, step.substring("change-".length()));
        }
        if (!earlier.isEmpty() && step.equals("another")) {
            return child(call, form.raw("state"), fresh(form), earlier, 200);
        }
        if (!earlier.isEmpty() && step.equals("summary")) {
            return summary(call, law.get(), form, earlier);
        }
        return !earlier.isEmpty() && step.equals("begin") ? make(call, law.get(), form, earlier) : takeChild(call, law.get(), form, earlier);
    }

    private static Answer takeChild(Call call, Profile law, Form form, List<Entered> earlier) throws BadInputException {
        form.must("family", "Type what your family is called, for example The Harbours.");
        BookStart.Child child = read(call, law, form, "");
        if (child.name() != null && earlier.stream().anyMatch(one -> one.child().name().equalsIgnoreCase(child.name()))) {
            form.complain("name", "This name is entered already. Type it so that you can tell the two apart.");
        }
        if (earlier.size() >= MOST) {
            form.complain("name", "That is enough for a beginning. The others are added under Family.");
        }
        if (!form.isFine()) {
            return child(call, form.raw("state"), form, earlier, 422);
        }
        List<Entered> all = new ArrayList<>(earlier);
        all.add(entered(law, form, "", child));
        return summary(call, law, form, all);
    }

    /** A child of the summary goes back into the form; the others wait. */
    private static Answer change(Call call, Form form, List<Entered> earlier, String number) throws BadInputException {
        List<Entered> others = new ArrayList<>(earlier);
        int at = number.matches("[1-9][0-9]?") ? Integer.parseInt(number) - 1 : others.size();
        Form one = fresh(form);
        if (at < others.size()) {
            others.remove(at).fields().forEach(one::fill);
        }
        return child(call, form.raw("state"), one, others, 200);
    }

    private static Form fresh(Form form) {
        return Form.empty().fill("family", form.raw("family")).fill("state", form.raw("state"));
    }

    private static Answer make(Call call, Profile law, Form form, List<Entered> earlier) throws Exception {
        String family = form.must("family", "Type what your family is called, for example The Harbours.");
        if (family == null) {
            return summary(call, law, form, earlier);
        }
        YearLabel year = YearLabel.of(call.house().today());
        BookStart start = new BookStart(family, earlier.stream().map(Entered::child).toList(), year);
        call.desk().edit("The book begun", start::in);
        return Answer.done("Your book is begun. What is due stands here.", "/checklist");
    }

    /** Reads again what travelled with the form; a child that is no longer right is left out, as nothing of ours sends one. */
    private static List<Entered> earlier(Call call, Profile law) {
        List<Entered> all = new ArrayList<>();
        for (int number = 1; number <= MOST && call.form().is("name-" + number); number++) {
            Form travelled = Form.of(call.sent());
            BookStart.Child child = read(call, law, travelled, "-" + number);
            if (travelled.isFine()) {
                all.add(entered(law, travelled, "-" + number, child));
            }
        }
        return all;
    }

    private static BookStart.Child read(Call call, Profile law, Form form, String after) {
        LocalDate today = call.house().today();
        EnteredChild child = EnteredChild.read(form, after, today);
        String way = form.mustOneOf("pathway" + after, law.pathwaysOn(today).stream().map(Pathway::slug).toList(),
                "Choose the way your child is taught. If you are not sure, look at the ways side by side.");
        LocalDate starts = form.mustDay("starts" + after, "Enter the day home instruction starts, or started, under this law.");
        child.checkStart(form, after, starts);
        return new BookStart.Child(child.name(), child.born(), child.grade(), law.code(), way, starts);
    }

    private static Entered entered(Profile law, Form form, String after, BookStart.Child child) {
        Map<String, String> fields = new TreeMap<>();
        FIELDS.forEach(field -> fields.put(field, form.raw(field + after)));
        Wording wording = Wording.english();
        return new Entered(Map.copyOf(fields), child, List.of("Born on " + wording.date(child.born()),
                child.grade().equals("K") ? "Kindergarten" : "Grade " + child.grade(),
                law.pathway(child.pathway()).map(Pathway::name).orElse(child.pathway()),
                "From " + wording.date(child.starts())));
    }

    private static Answer child(Call call, String code, Form form, List<Entered> earlier, int status) throws BadInputException {
        Optional<Profile> law = call.house().profiles().known(code);
        if (law.isEmpty()) {
            return Answer.see("/welcome");
        }
        List<Option> ways = Choices.ways(law.get(), call.house().today());
        return new Answer.Shown("welcome/begin.jte", "Begin a book", null, Map.of("form", form, "law", law.get(), "code",
                law.get().slug(), "ways", ways, "earlier", earlier, "year",
                YearLabel.of(call.house().today()).toString(), "folder", call.house().ownFolder().toString()), status);
    }

    private static Answer summary(Call call, Profile law, Form form, List<Entered> children) {
        return new Answer.Shown("welcome/summary.jte", "Look it over", null, Map.of("form", form, "law", law, "children", children,
                "year", YearLabel.of(call.house().today()).toString(), "folder", call.house().ownFolder().toString()),
                form.isFine() ? 200 : 422);
    }
}
