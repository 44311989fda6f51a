package org.hearthrule.page.family;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthrule.page.frame.Answer;
import org.hearthrule.page.frame.Call;
import org.hearthrule.page.frame.Feature;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Print;
import org.hearthrule.page.frame.Routes;
import org.hearthrule.records.Book;
import org.hearthrule.records.ChildOut;
import org.hearthrule.records.Placement;
import org.hearthrule.records.RecordKind;
import org.hearthrule.records.YearRecord;

/** {@code /family/child/out}: a child entered by mistake leaves the book; what goes with it is said before. */
final class ChildOutPages implements Feature {

    private static final Map<RecordKind, String> KINDS = new EnumMap<>(Map.of(RecordKind.LOG, "Entries in the log",
            RecordKind.READINGS, "Books", RecordKind.SAMPLES, "Pieces of work", RecordKind.TESTS, "Tests",
            RecordKind.EVALUATIONS, "Evaluations", RecordKind.FILINGS, "Papers you sent", RecordKind.REQUESTS,
            "Requests to see your records", RecordKind.HEALTH, "Health papers", RecordKind.DOCUMENTS, "Papers you keep",
            RecordKind.VISITS, "Visits of a teacher or supervisor"));

    @Override
    public void addTo(Routes routes) {
        routes.get("/family/child/out", ChildOutPages::open);
        routes.post("/family/child/out", ChildOutPages::sent);
    }

    private static Answer open(Call call) {
        return ChildOut.of(call.desk().book(), call.query("id")).map(out -> form(call,
                Form.empty().fill("id", out.child().id()).fill("print", print(out)), out, 200, false))
                .orElse(new Answer.Nothing());
    }

    /** What the page says is made from all of this, so that nothing goes unseen. Of records only which they are counts. */
    private static String print(ChildOut out) {
        List<Placement> placements = out.placements().stream().map(Placement::anywhere).toList();
        return Print.of(List.of(out.child(), ids(out.gone()), ids(out.shared()), out.files(), placements, out.events(),
                out.sharedEvents(), out.facts(), out.grades(), out.choices()));
    }

    private static List<String> ids(Map<RecordKind, List<YearRecord>> records) {
        return records.values().stream().flatMap(List::stream).map(YearRecord::id).toList();
    }

    private static Answer form(Call call, Form form, ChildOut out, int status, boolean changed) {
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("who", out.child().name());
        values.put("alone", isAlone(call.desk().book()));
        values.put("goes", goes(out));
        values.put("stays", stays(out));
        values.put("files", out.files().size());
        values.put("changed", changed);
        return Household.shown("out", "Take " + out.child().name() + " out of the book", form, status, values);
    }

    /** A book is about one child at least. */
    private static boolean isAlone(Book book) {
        return book.students().size() == 1;
    }

    private static List<String> goes(ChildOut out) {
        List<String> goes = new ArrayList<>();
        add(goes, "Times taught under a law", out.placements().size());
        add(goes, "Schools before", out.child().schools() == null ? 0 : out.child().schools().size());
        add(goes, "Grades, one for each school year", out.grades().size());
        addAll(goes, out.gone());
        add(goes, "Days that something happened on", out.events().size());
        add(goes, "Answers to what the law asks", out.facts().size());
        add(goes, "Choices for a school year", out.choices().size());
        return goes;
    }

    private static List<String> stays(ChildOut out) {
        List<String> stays = new ArrayList<>();
        addAll(stays, out.shared());
        add(stays, "Days that something happened on", out.sharedEvents().size());
        return stays;
    }

    private static void addAll(List<String> lines, Map<RecordKind, List<YearRecord>> records) {
        records.forEach((kind, all) -> add(lines, KINDS.get(kind), all.size()));
    }

    private static void add(List<String> lines, String what, int number) {
        if (number > 0) {
            lines.add(what + ": " + number);
        }
    }

    private static Answer sent(Call call) throws Exception {
        Form form = call.form();
        Optional<ChildOut> found = ChildOut.of(call.desk().book(), form.raw("id"));
        if (found.isEmpty()) {
            return new Answer.Nothing();
        }
        ChildOut out = found.get();
        form.mustTick("sure", List.of("yes"), "Tick that you want this, or leave it.");
        boolean changed = !print(out).equals(form.raw("print"));
        if (!form.isFine() || changed || isAlone(call.desk().book())) {
            return form(call, changed ? form.fill("print", print(out)) : form, out, 422, changed);
        }
        call.desk().edit(out.child().name() + " taken out", book -> ChildOut.of(book, out.child().id())
                .map(ChildOut::without).orElse(book));
        return Answer.done("Taken out: " + out.child().name()
                + ", with what was noted of this child alone. One undo below brings all of it back.", "/family");
    }
}
