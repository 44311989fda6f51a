package org.hearthrule.records;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.hearthrule.input.Fields;
import org.hearthrule.input.Listing;
import org.hearthrule.input.Node;
import org.hearthrule.input.Problems;
import org.hearthrule.terms.EventKind;

/** Reads {@code family.json}. */
final class FamilyReader {

    private static final List<String> SCHOOL_KINDS = List.of("public-school", "private-school", "home-program");

    private final Names names;
    private final Ids ids = new Ids();
    private final Problems problems;

    FamilyReader(Names names, Problems problems) {
        this.names = names;
        this.problems = problems;
    }

    /**
     * Returns a book without years, which may lack what could not be read; empty when a newer version wrote the file.
     * Everybody who is read is added to the names.
     */
    Optional<Book> read(Node node) {
        Item root = new Item(Fields.of(node, problems, "the family file"), names);
        if (!FormatVersion.isReadable(root.fields())) {
            return Optional.empty();
        }
        String familyName = root.fields().optionalFields("family", "the family").map(this::familyName).orElse(null);
        List<Item> studentItems = people(root, "students", "the student");
        List<Item> personItems = people(root, "persons", "the person");
        if (root.fields().node("students") instanceof Listing list && list.items().isEmpty()) {
            root.fields().error("students", "NO-STUDENT", "an empty list", "at least one student", null);
        }
        takeGivenIds(studentItems);
        takeGivenIds(personItems);
        List<Student> students = new ArrayList<>();
        for (Item item : studentItems) {
            students.add(student(item, students.size() + 1));
        }
        List<Person> persons = new ArrayList<>();
        for (Item item : personItems) {
            persons.add(person(item, persons.size() + 1));
        }
        List<Placement> placements = new ArrayList<>();
        root.items("placements", "the placement").forEach(item -> placements.add(placement(item)));
        Order.checkOverlaps(placements, problems);
        List<BookEvent> events = new ArrayList<>();
        root.items("events", "the event").forEach(item -> events.add(event(item)));
        List<AnsweredFact> facts = new ArrayList<>();
        root.items("facts", "the fact").forEach(item -> facts.add(fact(item)));
        List<AnsweredDoubt> answers = new ArrayList<>();
        root.items("answers", "the answer").forEach(item -> answers.add(answer(item)));
        root.done();
        return Optional.of(new Book(null, familyName, List.copyOf(students), List.copyOf(persons),
                List.copyOf(placements), List.copyOf(events), List.copyOf(facts), List.copyOf(answers),
                Collections.emptySortedMap()));
    }

    private String familyName(Fields fields) {
        Item family = new Item(fields, names);
        String name = family.textOrNull("name");
        family.done();
        return name;
    }

    private List<Item> people(Item root, String key, String what) {
        List<Item> items = root.items(key, what);
        int listed = root.fields().optionalNode(key).orElse(null) instanceof Listing list ? list.items().size() : 0;
        if (listed != items.size() || key.equals("students") && items.isEmpty()) {
            names.isIncomplete();
        }
        return items;
    }

    /** Ids that were given come first: one that is made must not take them away. */
    private void takeGivenIds(List<Item> people) {
        for (Item item : people) {
            String id = item.textOrNull("id");
            if (id != null) {
                ids.take(id, item.place("id"), problems);
            }
        }
    }

    private String idOrMade(Item item, String name, String otherwise) {
        String id = item.textOrNull("id");
        if (id == null && name == null) {
            names.isIncomplete();
            return otherwise;
        }
        return id == null ? ids.makeFromName(name, otherwise, item.place()) : id;
    }

    private Student student(Item item, int position) {
        String name = item.text("name");
        String id = idOrMade(item, name, "child-" + position);
        LocalDate born = item.dateOrNull("born");
        List<Item> schoolItems = item.itemsOrNull("schools", "the school");
        List<Student.FormerSchool> schools = null;
        if (schoolItems != null) {
            schools = new ArrayList<>(schoolItems.size());
            for (Item school : schoolItems) {
                schools.add(school(school));
            }
            schools = List.copyOf(schools);
        }
        item.done();
        names.addStudent(id, String.valueOf(name));
        return new Student(id, name, born, schools);
    }

    private static Student.FormerSchool school(Item item) {
        LocalDate from = item.dateOrNull("from");
        LocalDate to = item.dateOrNull("to");
        Order.check(item, "from", from, "to", to);
        Student.FormerSchool school = new Student.FormerSchool(item.oneOf("kind", SCHOOL_KINDS),
                item.textOrNull("state"), from, to);
        item.done();
        return school;
    }

    private Person person(Item item, int position) {
        String name = item.text("name");
        String id = idOrMade(item, name, "person-" + position);
        List<String> roles = item.texts("roles");
        List<Person.Credential> credentials = new ArrayList<>();
        for (Item one : item.items("credentials", "the credential")) {
            credentials.add(new Person.Credential(one.text("kind"), one.textOrNull("state"), one.dateOrNull("date")));
            one.done();
        }
        item.done();
        names.addPerson(id, String.valueOf(name));
        return new Person(id, name, roles, List.copyOf(credentials));
    }

    private static Placement placement(Item item) {
        String student = item.student("student");
        String jurisdiction = item.text("jurisdiction");
        String pathway = item.text("pathway");
        LocalDate from = item.date("from");
        LocalDate to = item.dateOrNull("to");
        String ended = item.textOrNull("ended");
        LocalDate started = item.dateOrNull("started");
        Order.check(item, "from", from, "to", to);
        Order.check(item, "started", started, "from", from);
        Placement placement = new Placement(student, jurisdiction, pathway, from, to, ended, started,
                item.textOrNull("district"), item.textOrNull("city"), item.textOrNull("county"), item.texts("optIns"),
                new Placement.Where(item.place(), item.fields().place("jurisdiction"), item.fields().place("pathway")));
        item.done();
        return placement;
    }

    private static BookEvent event(Item item) {
        BookEvent event = new BookEvent(item.fields().oneOf("kind", EventKind.class), item.date("date"),
                item.students("students"), item.textOrNull("note"));
        item.done();
        return event;
    }

    private static AnsweredFact fact(Item item) {
        AnsweredFact fact = new AnsweredFact(item.text("fact"), item.anybodyOrNull("about"), item.yesNo("is"),
                item.dateOrNull("date"));
        item.done();
        return fact;
    }

    private static AnsweredDoubt answer(Item item) {
        AnsweredDoubt answer = new AnsweredDoubt(item.text("doubt"), item.text("answer"), item.textOrNull("from"),
                item.dateOrNull("date"));
        item.done();
        return answer;
    }
}
