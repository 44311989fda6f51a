package org.hearthrule.page.welcome;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hearthrule.checklist.StateOutlook;
import org.hearthrule.input.BadInputException;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.law.UnknownJurisdictionException;
import org.hearthrule.page.frame.Answer;
import org.hearthrule.page.frame.Call;
import org.hearthrule.page.frame.Feature;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Option;
import org.hearthrule.page.frame.Routes;
import org.hearthrule.page.sheet.Addresses;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookEdits;
import org.hearthrule.records.Placement;
import org.hearthrule.records.Student;
import org.hearthrule.records.YearLabel;
import org.hearthrule.terms.Grades;
import org.hearthrule.terms.Wording;

/** {@code /welcome}: what a state asks before anything is entered; {@code /begin}: the first child, and with it a book. */
public final class WelcomePages implements Feature {

    private static final int OLDEST = 25;

    @Override
    public void addTo(Routes routes) {
        routes.getWithoutBook("/welcome", WelcomePages::welcome);
        routes.getWithoutBook("/begin", call -> begin(call, Form.empty(), 200));
        routes.postWithoutBook("/begin", WelcomePages::make);
        routes.postWithoutBook("/demo", WelcomePages::demo);
        routes.postWithoutBook("/demo/leave", WelcomePages::leave);
    }

    private static Answer welcome(Call call) throws BadInputException {
        Map<String, Object> values = new HashMap<>();
        values.put("folder", call.house().ownFolder().toString());
        values.put("form", Form.empty().fill("state", call.query("state")));
        values.put("states", states(call));
        values.put("hasBook", call.house().hasBook());
        values.put("addresses", new Addresses(null));
        Optional<Profile> law = law(call, call.query("state"));
        law.ifPresent(found -> {
            Pathway way = found.pathway(call.query("pathway")).orElse(found.usualPathway());
            values.put("outlook", StateOutlook.of(found, way, call.house().today(), Wording.english()));
            values.put("ways", standing(found, call.house().today()));
        });
        return Answer.page("welcome/welcome.jte", "Welcome", null, values);
    }

    private static List<Option> states(Call call) {
        return call.house().profiles().names().entrySet().stream()
                .map(one -> Option.of(one.getKey().toLowerCase(Locale.ROOT), one.getValue())).toList();
    }

    private static Optional<Profile> law(Call call, String code) throws BadInputException {
        if (code.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(call.house().profiles().find(code));
        } catch (UnknownJurisdictionException e) {
            return Optional.empty();
        }
    }

    private static List<Pathway> standing(Profile law, LocalDate day) {
        return law.pathways().stream().filter(way -> way.validity().inForceOn(day)).toList();
    }

    private static Answer begin(Call call, Form form, int status) throws BadInputException {
        String code = form.is("state") ? form.raw("state") : call.query("state");
        Optional<Profile> law = law(call, code);
        if (law.isEmpty()) {
            return Answer.see("/welcome");
        }
        List<Option> ways = standing(law.get(), call.house().today()).stream()
                .map(way -> new Option(way.slug(), way.name(), way.inShort())).toList();
        return new Answer.Shown("welcome/begin.jte", "Begin a book", null, Map.of("form", form, "law", law.get(), "code", code, "ways", ways,
                "year", YearLabel.of(call.house().today()).toString(), "folder", call.house().ownFolder().toString()), status);
    }

    private static Answer make(Call call) throws Exception {
        Form form = call.form();
        LocalDate today = call.house().today();
        if (call.house().hasBook()) {
            return Answer.done("There is a book already. Another child is added here.", "/family");
        }
        Optional<Profile> law = law(call, form.raw("state"));
        if (law.isEmpty()) {
            return Answer.see("/welcome");
        }
        String family = form.must("family", "Type what your family is called, for example The Harbours.");
        Child child = Child.read(form, today);
        String way = form.mustOneOf("pathway", standing(law.get(), today).stream().map(Pathway::slug).toList(),
                "Choose the way your child is taught. If you are not sure, look at the ways side by side.");
        LocalDate starts = form.mustDay("starts", "Enter the day home instruction starts, or started, under this law.");
        if (starts != null && child.born() != null && !starts.isAfter(child.born())) {
            form.complain("starts", "This lies before the birth date.");
        }
        if (!form.isFine()) {
            return begin(call, form, 422);
        }
        call.desk().edit("The book begun", book -> book(book, family, child, law.get().code(), way, starts, today));
        return Answer.done("Your book is begun. What is due stands here; add another child under Family.", "/checklist");
    }

    private static Book book(Book empty, String family, Child child, String state, String way, LocalDate starts, LocalDate today) {
        String id = BookEdits.newPersonId(empty, child.name());
        Book book = BookEdits.withName(empty, family);
        book = BookEdits.withStudents(book, List.of(new Student(id, child.name(), child.born(), null)));
        book = BookEdits.withPlacements(book, List.of(new Placement(id, state.toLowerCase(Locale.ROOT), way, starts, null, null, null,
                null, null, null, List.of(), null)));
        return BookEdits.inYear(book, YearLabel.of(today).toString(), year -> BookEdits.withGrade(year, id, child.grade()));
    }

    /** A child as it is entered. */
    public record Child(String name, LocalDate born, String grade) {

        /** @return the child; whatever when the form has complaints */
        public static Child read(Form form, LocalDate today) {
            String name = form.must("name", "Type the child's name, or what you call them.");
            LocalDate born = form.mustDay("born", "Enter the birth date: laws count ages by it.");
            if (born != null && (born.isAfter(today) || born.isBefore(today.minusYears(OLDEST)))) {
                form.complain("born", "Look at the year: that day is no birth date of a child who is taught now.");
            }
            String grade = form.mustOneOf("grade", grades().stream().map(Option::value).toList(), "Choose the grade of this school year.");
            return new Child(name, born, grade);
        }

        public static List<Option> grades() {
            List<Option> grades = new ArrayList<>();
            for (int grade = Grades.KINDERGARTEN; grade <= Grades.LAST; grade++) {
                grades.add(Option.of(Grades.name(grade), grade == Grades.KINDERGARTEN ? "Kindergarten" : "Grade " + grade));
            }
            return grades;
        }
    }

    private static Answer demo(Call call) throws Exception {
        call.house().openDemo(call.form().is("afresh"));
        return Answer.see("/checklist");
    }

    private static Answer leave(Call call) {
        call.house().leaveDemo();
        return Answer.see("/");
    }
}
