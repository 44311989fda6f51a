package org.hearthrule.page.family;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.hearthrule.input.BadInputException;
import org.hearthrule.law.Profile;
import org.hearthrule.page.frame.Answer;
import org.hearthrule.page.frame.Call;
import org.hearthrule.page.frame.Choices;
import org.hearthrule.page.frame.Feature;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Option;
import org.hearthrule.page.frame.Print;
import org.hearthrule.page.frame.Routes;
import org.hearthrule.page.welcome.EnteredChild;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookEdits;
import org.hearthrule.records.Placement;
import org.hearthrule.records.Placements;
import org.hearthrule.records.Student.FormerSchool;
import org.hearthrule.records.Student;
import org.hearthrule.records.YearLabel;
import org.hearthrule.terms.Wording;

/** {@code /family/child}: a child comes into the book, or what is noted of it is mended. */
final class ChildPages implements Feature {

    @Override
    public void addTo(Routes routes) {
        routes.get("/family/child", ChildPages::open);
        routes.post("/family/child", ChildPages::save);
    }

    private static String year(Call call) {
        return YearLabel.of(call.desk().today()).toString();
    }

    private static String grade(Book book, String year, String student) {
        return book.years().containsKey(year) ? book.years().get(year).grades().get(student) : null;
    }

    /** What the form shows of a child, by which a change from elsewhere is noticed. */
    private static String print(Call call, Student child) {
        return Print.of(child + " " + grade(call.desk().book(), year(call), child.id()));
    }

    private static Answer open(Call call) throws BadInputException {
        String id = call.query("id");
        if (id.isEmpty()) {
            return form(call, Form.empty(), 200, List.of());
        }
        Optional<Student> found = call.desk().book().student(id);
        if (found.isEmpty()) {
            return new Answer.Nothing();
        }
        Student child = found.get();
        Form form = Form.empty().fill("id", id).fill("print", print(call, child)).fill("name", child.name())
                .fill("born", child.born()).fill("grade", grade(call.desk().book(), year(call), id));
        return form(call, SchoolRows.fill(form, child.schools()), 200, List.of());
    }

    private static Answer form(Call call, Form form, int status, List<String> there) throws BadInputException {
        Household house = Household.of(call);
        Optional<Student> child = house.book().student(form.raw("id"));
        Optional<Placement> like = last(house.book());
        Optional<Profile> law = like.isEmpty() ? Optional.empty() : house.law(like.get().jurisdiction());
        String heading = child.map(Student::name).orElse("Another child");
        return Household.shown("child", heading, form, status, Map.of("grades", EnteredChild.grades(), "year", year(call), "isNew",
                child.isEmpty(), "heading", heading, "where", law.map(Profile::name).orElse(""), "ways",
                Household.ways(law, house.today()), "rows", SchoolRows.filled(form), "states", states(house, child),
                "there", there));
    }

    private static List<Option> states(Household house, Optional<Student> child) {
        List<FormerSchool> schools = child.map(Student::schools).orElse(List.of());
        return Choices.keeping(house.states(), schools.stream().map(FormerSchool::state).filter(Objects::nonNull)
                .distinct().toList());
    }

    private static Optional<Placement> last(Book book) {
        return book.placements().isEmpty() ? Optional.empty() : Optional.of(book.placements().get(book.placements().size() - 1));
    }

    private static Answer save(Call call) throws Exception {
        Form form = call.form();
        Household house = Household.of(call);
        EnteredChild entered = EnteredChild.read(form, house.today());
        Optional<Student> before = house.book().student(form.raw("id"));
        List<FormerSchool> schools = SchoolRows.read(form, entered.born(), states(house, before));
        Placements.Beginning beginning = before.isPresent() ? null : beginning(form, house, entered);
        boolean changed = before.isPresent() && !print(call, before.get()).equals(form.raw("print"));
        if (!form.isFine() || changed) {
            return form(call, changed ? form.fill("print", print(call, before.get())) : form, 422,
                    changed ? there(call, before.get()) : List.of());
        }
        String year = year(call);
        call.desk().edit(entered.name(), book -> {
            String id = before.map(Student::id).orElseGet(() -> BookEdits.newPersonId(book, entered.name()));
            Student child = new Student(id, entered.name(), entered.born(), schools);
            List<Student> students = new ArrayList<>(book.students());
            if (before.isPresent()) {
                students.replaceAll(one -> one.id().equals(id) ? child : one);
            } else {
                students.add(child);
            }
            Book with = BookEdits.withStudents(book, students);
            with = beginning == null ? with : Placements.begin(with, List.of(id), beginning);
            return BookEdits.inYear(with, year, one -> BookEdits.withGrade(one, id, entered.grade()));
        });
        return Answer.done("Saved: " + entered.name() + '.', "/family");
    }

    /** Where the last child is taught, another one is too; a move has its own form. Null while the book knows no law. */
    private static Placements.Beginning beginning(Form form, Household house, EnteredChild entered) throws BadInputException {
        Optional<Placement> like = last(house.book());
        if (like.isEmpty()) {
            return null;
        }
        List<Option> ways = Household.ways(house.law(like.get().jurisdiction()), house.today());
        String way = form.mustOneOf("pathway", Choices.values(ways), "Choose the way this child is taught.");
        LocalDate starts = form.mustDay("starts", "Enter the day home instruction starts, or started.");
        entered.checkStart(form, starts);
        return new Placements.Beginning(starts, like.get().jurisdiction(), way, like.get().district(), like.get().city(),
                like.get().county());
    }

    private static List<String> there(Call call, Student child) {
        String grade = grade(call.desk().book(), year(call), child.id());
        List<String> there = new ArrayList<>(List.of(child.name(), child.born() == null ? "no birth date"
                : "born on " + Wording.english().date(child.born()),
                grade == null ? "no grade for this school year" : "grade " + grade));
        there.addAll(SchoolRows.words(child, Household.of(call).states()));
        return there;
    }
}
