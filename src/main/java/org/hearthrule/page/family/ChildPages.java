package org.hearthrule.page.family;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthrule.input.BadInputException;
import org.hearthrule.law.Profile;
import org.hearthrule.page.frame.Answer;
import org.hearthrule.page.frame.Call;
import org.hearthrule.page.frame.Choices;
import org.hearthrule.page.frame.Feature;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Option;
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

    private static final String NEVER = "never";
    private static final List<Option> SCHOOLS = List.of(Option.of(NEVER, "In no school yet"),
            Option.of("public-school", "In a public school"), Option.of("private-school", "In a private school"),
            Option.of("home-program", "Taught at home before"));

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
        return Household.print(child + " " + grade(call.desk().book(), year(call), child.id()));
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
        if (child.schools() != null) {
            form.fill("school", child.schools().isEmpty() ? NEVER : child.schools().get(0).kind());
            form.fill("left", child.schools().isEmpty() ? null : child.schools().get(0).to());
        }
        return form(call, form, 200, List.of());
    }

    private static Answer form(Call call, Form form, int status, List<String> there) throws BadInputException {
        Household house = Household.of(call);
        Optional<Student> child = house.book().student(form.raw("id"));
        Optional<Placement> like = last(house.book());
        Optional<Profile> law = like.isEmpty() ? Optional.empty() : house.law(like.get().jurisdiction());
        String heading = child.map(Student::name).orElse("Another child");
        return Household.shown("child", heading, form, status, Map.of("grades", EnteredChild.grades(), "year", year(call), "isNew",
                child.isEmpty(), "heading", heading, "where", law.map(Profile::name).orElse(""), "ways",
                Household.ways(law, house.today()), "schools", SCHOOLS, "oneSchool", oneSchool(child), "there", there));
    }

    /** A story of several schools is kept as it is: this form has room for one. */
    private static boolean oneSchool(Optional<Student> child) {
        return child.isEmpty() || child.get().schools() == null || child.get().schools().size() < 2;
    }

    private static Optional<Placement> last(Book book) {
        return book.placements().isEmpty() ? Optional.empty() : Optional.of(book.placements().get(book.placements().size() - 1));
    }

    private static Answer save(Call call) throws Exception {
        Form form = call.form();
        Household house = Household.of(call);
        EnteredChild entered = EnteredChild.read(form, house.today());
        Optional<Student> before = house.book().student(form.raw("id"));
        List<FormerSchool> schools = schools(form, before);
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

    /** @return null while nothing is said of it */
    private static List<FormerSchool> schools(Form form, Optional<Student> before) {
        if (!oneSchool(before)) {
            return before.get().schools();
        }
        String kind = form.oneOf("school", Choices.values(SCHOOLS));
        LocalDate left = form.day("left");
        if (left != null && (kind == null || kind.equals(NEVER))) {
            form.complain("school", "Choose what the child left on that day, or leave the day empty.");
        }
        if (kind == null || kind.equals(NEVER)) {
            return kind == null ? null : List.of();
        }
        List<FormerSchool> known = before.map(Student::schools).orElse(List.of());
        FormerSchool old = known == null || known.isEmpty() ? new FormerSchool(kind, null, null, null) : known.get(0);
        if (left != null && old.from() != null && left.isBefore(old.from())) {
            form.complain("left", "That school began on " + Wording.english().date(old.from()) + ". Enter a later day.");
        }
        return List.of(new FormerSchool(kind, old.state(), old.from(), left));
    }

    private static List<String> there(Call call, Student child) {
        String grade = grade(call.desk().book(), year(call), child.id());
        return List.of(child.name(), child.born() == null ? "no birth date" : "born on " + Wording.english().date(child.born()),
                grade == null ? "no grade for this school year" : "grade " + grade);
    }
}
