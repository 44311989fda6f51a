package org.hearthrule.page.family;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.hearthrule.page.frame.Answer;
import org.hearthrule.page.frame.Call;
import org.hearthrule.page.frame.Choices;
import org.hearthrule.page.frame.Feature;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Option;
import org.hearthrule.page.frame.Print;
import org.hearthrule.page.frame.Routes;
import org.hearthrule.page.records.HeldAnswers;
import org.hearthrule.page.welcome.EnteredChild;
import org.hearthrule.records.AnsweredFact;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookEdits;
import org.hearthrule.records.Student;
import org.hearthrule.records.YearLabel;

/** {@code /family/grades}: the grade of each child in each school year; and answers taken back. */
public final class GradePages implements Feature {

    @Override
    public void addTo(Routes routes) {
        routes.get("/family/grades", call -> form(call, filled(call), 200, List.of()));
        routes.post("/family/grades", GradePages::save);
        routes.post("/family/unsaid", GradePages::unsaid);
    }

    /** @return the years of the book and the one that is now, the latest first */
    private static List<String> years(Call call) {
        TreeSet<String> years = new TreeSet<>(call.desk().book().years().keySet());
        years.add(YearLabel.of(call.desk().today()).toString());
        return List.copyOf(years.descendingSet());
    }

    private static String name(String year, Student child) {
        return "grade:" + year + ':' + child.id();
    }

    private static Form filled(Call call) {
        Form form = Form.empty().fill("print", print(call.desk().book()));
        call.desk().book().years().forEach((year, records) -> call.desk().book().students().forEach(child ->
                form.fill(name(year, child), records.grades().get(child.id()))));
        return form;
    }

    private static String print(Book book) {
        TreeMap<String, Object> grades = new TreeMap<>();
        book.years().forEach((year, records) -> grades.put(year, new TreeMap<>(records.grades())));
        return Print.of(grades);
    }

    private static Answer form(Call call, Form form, int status, List<String> there) {
        return Household.shown("grades", "Grades by year", form, status, Map.of("years", years(call), "children",
                call.desk().book().students(), "grades", EnteredChild.grades(), "there", there));
    }

    private static Answer save(Call call) throws Exception {
        Form form = call.form();
        Book before = call.desk().book();
        List<String> offered = Choices.values(EnteredChild.grades());
        Map<String, Map<String, String>> entered = new TreeMap<>();
        for (String year : years(call)) {
            Map<String, String> grades = new TreeMap<>();
            for (Student child : before.students()) {
                grades.put(child.id(), form.oneOf(name(year, child), offered));
            }
            entered.put(year, grades);
        }
        boolean changed = !print(before).equals(form.raw("print"));
        if (!form.isFine() || changed) {
            return form(call, changed ? form.fill("print", print(before)) : form, 422, changed ? there(call) : List.of());
        }
        call.desk().edit("Grades by year", book -> {
            Book with = book;
            for (Map.Entry<String, Map<String, String>> year : entered.entrySet()) {
                for (Map.Entry<String, String> one : year.getValue().entrySet()) {
                    boolean nothing = one.getValue() == null && !with.years().containsKey(year.getKey());
                    with = nothing ? with : BookEdits.inYear(with, year.getKey(), records ->
                            BookEdits.withGrade(records, one.getKey(), one.getValue()));
                }
            }
            return with;
        });
        return Answer.done("Saved: the grades.", "/family");
    }

    private static List<String> there(Call call) {
        List<String> there = new ArrayList<>();
        Household house = Household.of(call);
        house.book().years().forEach((year, records) -> records.grades().forEach((child, grade) -> there.add(year + ", "
                + house.names(List.of(child)) + ": " + grades().getOrDefault(grade, grade))));
        return there.isEmpty() ? List.of("no grades") : there;
    }

    private static Map<String, String> grades() {
        Map<String, String> words = new TreeMap<>();
        for (Option one : EnteredChild.grades()) {
            words.put(one.value(), one.words());
        }
        return words;
    }

    /** An answer that was given too soon becomes a question again. */
    private static Answer unsaid(Call call) throws Exception {
        String fact = call.form().raw("fact");
        String about = call.form().raw("about");
        Optional<AnsweredFact> held = HeldAnswers.fact(call.desk().book(), fact, about);
        if (held.isEmpty()) {
            return new Answer.Nothing();
        }
        if (!Print.ofHeld(held).equals(call.form().raw("print"))) {
            return Answer.done("Not taken back: the answer was changed elsewhere. It stands here as it is now.",
                    "/family");
        }
        call.desk().edit("Your answer taken back", book -> BookEdits.withFacts(book,
                book.facts().stream().filter(one -> !HeldAnswers.answers(one, fact, about)).toList()));
        return Answer.done("It is not said any more.", "/family");
    }
}
