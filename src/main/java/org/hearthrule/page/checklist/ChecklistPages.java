package org.hearthrule.page.checklist;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthrule.checklist.Checklist;
import org.hearthrule.checklist.ExplainSheet;
import org.hearthrule.checklist.Line;
import org.hearthrule.checklist.Sheet;
import org.hearthrule.input.BadInputException;
import org.hearthrule.page.frame.Answer;
import org.hearthrule.page.frame.Call;
import org.hearthrule.page.frame.Choices;
import org.hearthrule.page.frame.Feature;
import org.hearthrule.page.frame.Option;
import org.hearthrule.page.frame.Part;
import org.hearthrule.page.frame.Routes;
import org.hearthrule.page.records.NextSteps;
import org.hearthrule.page.sheet.Addresses;
import org.hearthrule.records.Book;
import org.hearthrule.records.Student;
import org.hearthrule.terms.Wording;

/** {@code /checklist}: what is due, for one child or all. */
public final class ChecklistPages implements Feature {

    private final LastLooks looks = new LastLooks();

    @Override
    public void addTo(Routes routes) {
        routes.get("/checklist", this::checklist);
        routes.post("/checklist/seen", this::seen);
        routes.get("/line", ChecklistPages::line);
    }

    private Answer checklist(Call call) throws BadInputException {
        Book book = call.desk().book();
        String child = book.student(call.query("child")).isPresent() ? call.query("child") : "";
        Checklist checklist = call.desk().checklist();
        List<Option> children = Choices.children(book);
        ChecklistView view = ChecklistView.of(child.isEmpty() ? checklist : checklist.forStudent(child), children, child,
                NextSteps.of(call));
        Map<String, Object> values = new HashMap<>(Map.of("view", view));
        since(call, checklist, book.student(child).map(Student::name).orElse(null)).ifPresent(since -> values.put("since", since));
        return Answer.page("checklist/checklist.jte", "Checklist", Part.CHECKLIST, values);
    }

    /** A page that looks at another day than the real one is no look. */
    private Optional<Since> since(Call call, Checklist checklist, String child) {
        if (call.desk().isAsOf()) {
            return Optional.empty();
        }
        Look now = Look.at(checklist);
        return looks.before(call.desk(), now).map(before -> Since.of(before, now, child));
    }

    private Answer seen(Call call) throws BadInputException {
        looks.seen(call.desk(), Look.at(call.desk().checklist()));
        return Answer.see(call.back("/checklist"));
    }

    /** Everything there is to say about one line: rule, law, records counted, sums, what would change it. */
    private static Answer line(Call call) throws BadInputException {
        Optional<Line> line = call.desk().checklist().lines().stream().filter(one -> one.id().equals(call.query("id"))).findFirst();
        if (line.isEmpty()) {
            return new Answer.Nothing();
        }
        Sheet sheet = ExplainSheet.of(line.get(), call.desk().judgement(), Wording.english(), true);
        return Answer.page("checklist/line.jte", line.get().finding().title(), Part.CHECKLIST,
                Map.of("sheet", sheet, "addresses", new Addresses(null)));
    }
}
