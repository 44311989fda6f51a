package org.hearthrule.page.checklist;

import java.util.List;
import java.util.Map;
import org.hearthrule.checklist.Checklist;
import org.hearthrule.input.BadInputException;
import org.hearthrule.page.frame.Answer;
import org.hearthrule.page.frame.Call;
import org.hearthrule.page.frame.Feature;
import org.hearthrule.page.frame.Option;
import org.hearthrule.page.frame.Part;
import org.hearthrule.page.frame.Routes;
import org.hearthrule.records.Book;

/** {@code /checklist}: what is due, for one child or all. */
public final class ChecklistPages implements Feature {

    @Override
    public void addTo(Routes routes) {
        routes.get("/checklist", ChecklistPages::checklist);
    }

    private static Answer checklist(Call call) throws BadInputException {
        Book book = call.desk().book();
        String child = book.student(call.query("child")).isPresent() ? call.query("child") : "";
        Checklist checklist = call.desk().checklist();
        List<Option> children = book.students().stream().map(s -> Option.of(s.id(), s.name())).toList();
        ChecklistView view = ChecklistView.of(child.isEmpty() ? checklist : checklist.forStudent(child), children, child);
        return Answer.page("checklist/checklist.jte", "Checklist", Part.CHECKLIST, Map.of("view", view));
    }
}
