package org.hearthrule.page.family;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hearthrule.input.BadInputException;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.law.UnknownJurisdictionException;
import org.hearthrule.page.frame.Answer;
import org.hearthrule.page.frame.Call;
import org.hearthrule.page.frame.Feature;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Option;
import org.hearthrule.page.frame.Part;
import org.hearthrule.page.frame.Routes;
import org.hearthrule.page.welcome.WelcomePages.Child;
import org.hearthrule.records.AnsweredFact;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookEdits;
import org.hearthrule.records.BookEvent;
import org.hearthrule.records.Person;
import org.hearthrule.records.Placement;
import org.hearthrule.records.Student;
import org.hearthrule.records.YearLabel;
import org.hearthrule.terms.EventKind;
import org.hearthrule.terms.Prose;
import org.hearthrule.terms.Wording;

/** {@code /family}: who is taught, by whom, where and under which law; and what changes that. */
public final class FamilyPages implements Feature {

    private static final List<Option> ENDINGS = List.of(Option.of("entered-school", "The child enters a school"),
            Option.of("stopped", "Home instruction stops"));

    @Override
    public void addTo(Routes routes) {
        routes.get("/family", FamilyPages::family);
        routes.get("/family/child", call -> childForm(call, Form.empty(), 200));
        routes.post("/family/child", FamilyPages::addChild);
        routes.get("/family/person", call -> personForm(call, Form.empty(), 200));
        routes.post("/family/person", FamilyPages::addPerson);
        routes.get("/family/move", call -> moveForm(call, Form.empty().fill("state", call.query("state")), 200));
        routes.post("/family/move", FamilyPages::move);
        routes.get("/family/stop", call -> stopForm(call, Form.empty(), 200));
        routes.post("/family/stop", FamilyPages::stop);
        routes.get("/family/event", call -> eventForm(call, Form.empty(), 200));
        routes.post("/family/event", FamilyPages::addEvent);
    }

    /** A child and its story, a sentence for each stretch. */
    public record ChildView(Student child, String born, String grade, List<String> story) { }

    /**
     * A fact that a law asks about.
     *
     * @param about  id of the child, or empty for the family
     * @param answer {@code yes}, {@code no}, or what is taken while nobody has said it
     */
    public record FactView(String fact, String question, String about, String who, String answer) { }

    private static Answer family(Call call) throws BadInputException {
        Book book = call.desk().book();
        LocalDate today = call.desk().today();
        List<ChildView> children = new ArrayList<>();
        for (Student child : book.students()) {
            String label = YearLabel.of(today).toString();
            String grade = book.years().containsKey(label) ? book.years().get(label).grades().get(child.id()) : null;
            children.add(new ChildView(child, child.born() == null ? "not entered" : Wording.english().date(child.born()),
                    grade == null ? "not entered for " + label : grade.equals("K") ? "kindergarten" : "grade " + grade, story(call, child)));
        }
        List<String> events = book.events().stream().map(event -> Wording.english().date(event.date()) + ": "
                + event.kind().words() + (event.students().isEmpty() ? "" : " (" + names(book, event.students()) + ')')
                + (event.note() == null ? "" : ", " + event.note())).toList();
        return Answer.page("family/family.jte", "Family", Part.FAMILY, Map.of("book", book, "children", children, "events", events,
                "facts", facts(call)));
    }

    private static List<String> story(Call call, Student child) throws BadInputException {
        List<String> story = new ArrayList<>();
        for (Placement one : call.desk().book().placements()) {
            if (one.student().equals(child.id())) {
                Optional<Profile> law = law(call, one.jurisdiction());
                String way = law.flatMap(found -> found.pathway(one.pathway())).map(Pathway::name).orElse(one.pathway());
                String where = law.map(Profile::name).orElse(one.jurisdiction());
                String until = one.to() == null ? "" : ", until " + Wording.english().date(one.to())
                        + (one.ended() == null ? "" : " (" + one.ended().replace('-', ' ') + ')');
                story.add(where + ", " + Prose.lowerFirst(way) + ", from " + Wording.english().date(one.from()) + until + '.');
            }
        }
        return story;
    }

    private static List<FactView> facts(Call call) throws BadInputException {
        Book book = call.desk().book();
        List<FactView> facts = new ArrayList<>();
        for (Profile law : call.desk().judgement().profiles()) {
            for (Profile.FactAsked fact : law.facts().values()) {
                if (fact.about().equals("child")) {
                    book.students().forEach(child -> facts.add(fact(book, fact, child.id(), child.name())));
                } else {
                    facts.add(fact(book, fact, "", ""));
                }
            }
        }
        return facts;
    }

    private static FactView fact(Book book, Profile.FactAsked asked, String about, String who) {
        Optional<AnsweredFact> answer = book.facts().stream().filter(one -> one.fact().equals(asked.name())
                && (about.isEmpty() || one.about() == null || one.about().equals(about))).findFirst();
        String taken = asked.presume() == null ? "not said yet" : "not said yet, taken as " + (asked.presume() ? "yes" : "no");
        return new FactView(asked.name(), asked.question(), about, who, answer.map(one -> one.is() ? "yes" : "no").orElse(taken));
    }

    static String names(Book book, List<String> ids) {
        return Wording.english().and(ids.stream().map(id -> book.student(id).map(Student::name).orElse(id)).toList());
    }

    private static Optional<Profile> law(Call call, String code) throws BadInputException {
        try {
            return code.isEmpty() ? Optional.empty() : Optional.of(call.desk().profiles().find(code));
        } catch (UnknownJurisdictionException e) {
            return Optional.empty();
        }
    }

    private static List<Option> children(Call call) {
        return call.desk().book().students().stream().map(one -> Option.of(one.id(), one.name())).toList();
    }

    private static List<String> ids(Call call) {
        return call.desk().book().students().stream().map(Student::id).toList();
    }

    private static List<Option> states(Call call) {
        return call.desk().profiles().names().entrySet().stream()
                .map(one -> Option.of(one.getKey().toLowerCase(Locale.ROOT), one.getValue())).toList();
    }

    private static List<Option> ways(Profile law, LocalDate day) {
        return law.pathways().stream().filter(way -> way.validity().inForceOn(day))
                .map(way -> new Option(way.slug(), way.name(), way.inShort())).toList();
    }

    private static Answer shown(String what, String title, Form form, int status, Map<String, Object> more) {
        Map<String, Object> values = new LinkedHashMap<>(more);
        values.put("form", form);
        return new Answer.Shown("family/" + what + ".jte", title, Part.FAMILY, values, status);
    }

    // --- a child ------------------------------------------------------------------------------------------------------

    private static Answer childForm(Call call, Form form, int status) throws BadInputException {
        String id = form.is("id") ? form.raw("id") : call.query("id");
        Optional<Student> child = call.desk().book().student(id);
        if (child.isPresent() && status == 200) {
            String label = YearLabel.of(call.desk().today()).toString();
            form.fill("id", id).fill("name", child.get().name()).fill("born", child.get().born());
            if (call.desk().book().years().containsKey(label)) {
                form.fill("grade", call.desk().book().years().get(label).grades().get(id));
            }
        }
        Placement like = last(call.desk().book());
        Optional<Profile> law = like == null ? Optional.empty() : law(call, like.jurisdiction());
        return shown("child", child.isPresent() ? child.get().name() : "Another child", form, status, Map.of("grades", Child.grades(), "isNew",
                child.isEmpty(), "heading", child.map(Student::name).orElse("Another child"), "where", law.map(Profile::name).orElse(""),
                "ways", law.map(found -> ways(found, call.desk().today())).orElse(List.of())));
    }

    private static Placement last(Book book) {
        return book.placements().isEmpty() ? null : book.placements().get(book.placements().size() - 1);
    }

    private static Answer addChild(Call call) throws Exception {
        Form form = call.form();
        Book book = call.desk().book();
        LocalDate today = call.desk().today();
        Child child = Child.read(form, today);
        String label = YearLabel.of(today).toString();
        Optional<Student> old = book.student(form.raw("id"));
        Placement like = last(book);
        String way = null;
        LocalDate starts = null;
        if (old.isEmpty() && like != null) {
            way = form.mustOneOf("pathway", law(call, like.jurisdiction()).map(law -> ways(law, today)).orElse(List.of()).stream()
                    .map(Option::value).toList(), "Choose the way this child is taught.");
            starts = form.mustDay("starts", "Enter the day home instruction starts, or started.");
        }
        if (!form.isFine()) {
            return childForm(call, form, 422);
        }
        String chosen = way;
        LocalDate begins = starts;
        call.desk().edit(child.name(), now -> {
            List<Student> students = new ArrayList<>(now.students());
            if (old.isPresent()) {
                students.replaceAll(one -> one.id().equals(old.get().id()) ? new Student(one.id(), child.name(), child.born(), one.schools()) : one);
                return BookEdits.inYear(BookEdits.withStudents(now, students), label, year -> BookEdits.withGrade(year, old.get().id(), child.grade()));
            }
            String id = BookEdits.newPersonId(now, child.name());
            students.add(new Student(id, child.name(), child.born(), null));
            Book with = BookEdits.withStudents(now, students);
            if (chosen != null) {
                List<Placement> placements = new ArrayList<>(now.placements());
                placements.add(new Placement(id, like.jurisdiction(), chosen, begins, null, null, null, like.district(), like.city(),
                        like.county(), List.of(), null));
                with = BookEdits.withPlacements(with, placements);
            }
            return BookEdits.inYear(with, label, year -> BookEdits.withGrade(year, id, child.grade()));
        });
        return Answer.done("Saved: " + child.name() + '.', "/family");
    }

    // --- a person -----------------------------------------------------------------------------------------------------

    private static final List<Option> ROLES = List.of(Option.of("parent", "Parent or guardian"), Option.of("teacher", "Teaches"),
            Option.of("supervisor", "Answers for the program"), Option.of("spouse", "Spouse of the parent"),
            Option.of("evaluator", "Looks over the work"), Option.of("certified-teacher", "Certified teacher"));

    private static Answer personForm(Call call, Form form, int status) {
        return shown("person", "A person", form, status, Map.of("roles", ROLES));
    }

    private static Answer addPerson(Call call) throws Exception {
        Form form = call.form();
        String name = form.must("name", "Type the name.");
        List<String> roles = form.mustTick("roles", ROLES.stream().map(Option::value).toList(), "Tick what this person does.");
        String credential = form.text("credential");
        LocalDate given = form.day("given");
        if (!form.isFine()) {
            return personForm(call, form, 422);
        }
        List<Person.Credential> credentials = credential == null ? List.of() : List.of(new Person.Credential(
                credential.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", ""), null, given));
        call.desk().edit(name, book -> {
            List<Person> persons = new ArrayList<>(book.persons());
            persons.add(new Person(BookEdits.newPersonId(book, name), name, roles, credentials));
            return BookEdits.withPersons(book, persons);
        });
        return Answer.done("Saved: " + name + '.', "/family");
    }

    // --- a move, another way ------------------------------------------------------------------------------------------

    private static Answer moveForm(Call call, Form form, int status) throws BadInputException {
        Optional<Profile> law = law(call, form.raw("state"));
        LocalDate day = call.desk().today();
        Placement now = last(call.desk().book());
        return shown("move", "A move, or another way", form, status, Map.of("states", states(call), "children", children(call),
                "ways", law.map(found -> ways(found, day)).orElse(List.of()), "there", law.map(Profile::name).orElse(""),
                "here", now == null ? "" : now.jurisdiction()));
    }

    /** Ends what goes on on the day before, and begins the new law on the day; one change, so that one undo takes it back. */
    private static Answer move(Call call) throws Exception {
        Form form = call.form();
        String state = form.mustOneOf("state", states(call).stream().map(Option::value).toList(), "Choose the state.");
        Optional<Profile> law = law(call, form.raw("state"));
        LocalDate day = form.mustDay("day", "Enter the first day there, or the first day of the other way.");
        String way = form.mustOneOf("pathway", law.map(found -> ways(found, day == null ? call.desk().today() : day)).orElse(List.of())
                .stream().map(Option::value).toList(), "Choose the way to teach.");
        List<String> children = form.mustTick("students", ids(call), "Tick the children it is about.");
        String district = form.text("district");
        if (form.isFine()) {
            for (String child : children) {
                boolean begun = call.desk().book().placements().stream().anyMatch(one -> one.student().equals(child) && one.to() == null
                        && !one.from().isBefore(day));
                if (begun) {
                    form.complain("day", "What goes on now began on that day or later. Enter a later day.");
                }
            }
        }
        if (!form.isFine()) {
            return moveForm(call, form, 422);
        }
        boolean moves = call.desk().book().placements().stream().anyMatch(one -> one.to() == null && children.contains(one.student())
                && !one.jurisdiction().equals(state));
        String label = moves ? "The move to " + law.get().name() : "The change of the way to teach";
        call.desk().edit(label, book -> {
            List<Placement> placements = new ArrayList<>();
            for (Placement one : book.placements()) {
                boolean ends = one.to() == null && children.contains(one.student());
                placements.add(ends ? new Placement(one.student(), one.jurisdiction(), one.pathway(), one.from(), day.minusDays(1),
                        one.jurisdiction().equals(state) ? "changed-pathway" : "moved", one.started(), one.district(), one.city(),
                        one.county(), one.optIns(), null) : one);
            }
            for (String child : children) {
                placements.add(begun(book, child, state, way, day, district));
            }
            return BookEdits.withPlacements(book, placements);
        });
        return Answer.done(label + " is noted from " + Wording.english().date(day) + ". What it brings stands here.", "/checklist");
    }

    /** Who stays in a state lives where they lived: only a move leaves the old district, city and county behind. */
    private static Placement begun(Book book, String child, String state, String way, LocalDate day, String district) {
        Optional<Placement> stays = book.placements().stream().filter(one -> one.student().equals(child) && one.to() == null
                && one.jurisdiction().equals(state)).findFirst();
        return new Placement(child, state, way, day, null, null, null, district == null ? stays.map(Placement::district).orElse(null)
                : district, stays.map(Placement::city).orElse(null), stays.map(Placement::county).orElse(null),
                stays.map(Placement::optIns).orElse(List.of()), null);
    }

    // --- an end, an event ---------------------------------------------------------------------------------------------

    private static Answer stopForm(Call call, Form form, int status) {
        return shown("stop", "Home instruction ends", form, status, Map.of("children", children(call), "endings", ENDINGS));
    }

    private static Answer stop(Call call) throws Exception {
        Form form = call.form();
        LocalDate day = form.mustDay("day", "Enter the last day of home instruction.");
        String ended = form.mustOneOf("ended", ENDINGS.stream().map(Option::value).toList(), "Choose what happens.");
        List<String> children = form.mustTick("students", ids(call), "Tick the children it is about.");
        if (day != null && call.desk().book().placements().stream().anyMatch(one -> children.contains(one.student()) && one.to() == null
                && one.from().isAfter(day))) {
            form.complain("day", "Home instruction began after that day.");
        }
        if (!form.isFine()) {
            return stopForm(call, form, 422);
        }
        EventKind kind = ended.equals("stopped") ? EventKind.STOPPED : EventKind.ENTERED_SCHOOL;
        call.desk().edit("The end of home instruction", book -> {
            List<Placement> placements = new ArrayList<>(book.placements());
            placements.replaceAll(one -> one.to() == null && children.contains(one.student()) ? new Placement(one.student(),
                    one.jurisdiction(), one.pathway(), one.from(), day, ended, one.started(), one.district(), one.city(), one.county(),
                    one.optIns(), null) : one);
            List<BookEvent> events = new ArrayList<>(book.events());
            events.add(new BookEvent(kind, day, children, null));
            return BookEdits.withEvents(BookEdits.withPlacements(book, placements), events);
        });
        return Answer.done("Saved: the end of home instruction on " + Wording.english().date(day) + '.', "/checklist");
    }

    private static List<Option> kinds() {
        List<Option> kinds = new ArrayList<>();
        for (EventKind kind : EventKind.values()) {
            kinds.add(Option.of(kind.slug(), Prose.upperFirst(kind.words())));
        }
        return kinds;
    }

    private static Answer eventForm(Call call, Form form, int status) {
        return shown("event", "Something that happened", form, status, Map.of("children", children(call), "kinds", kinds()));
    }

    private static Answer addEvent(Call call) throws Exception {
        Form form = call.form();
        String kind = form.mustOneOf("kind", kinds().stream().map(Option::value).toList(), "Choose what happened.");
        LocalDate day = form.mustDay("date", "Enter its day.");
        List<String> children = form.ticked("students", ids(call));
        String note = form.text("note");
        if (!form.isFine()) {
            return eventForm(call, form, 422);
        }
        EventKind chosen = List.of(EventKind.values()).stream().filter(one -> one.slug().equals(kind)).findFirst().orElseThrow();
        call.desk().edit("The note of a day", book -> {
            List<BookEvent> events = new ArrayList<>(book.events());
            events.add(new BookEvent(chosen, day, children, note));
            return BookEdits.withEvents(book, events);
        });
        return Answer.done("Saved: " + chosen.words() + ", " + Wording.english().date(day) + '.', "/family");
    }
}
