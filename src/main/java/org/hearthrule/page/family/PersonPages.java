package org.hearthrule.page.family;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hearthrule.page.frame.Answer;
import org.hearthrule.page.frame.Call;
import org.hearthrule.page.frame.Choices;
import org.hearthrule.page.frame.Feature;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Option;
import org.hearthrule.page.frame.Print;
import org.hearthrule.page.frame.Routes;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookEdits;
import org.hearthrule.records.Person;
import org.hearthrule.terms.Wording;

/** {@code /family/person}: who teaches, answers for the program, looks over the work; and what they hold. */
final class PersonPages implements Feature {

    private static final List<Option> ROLES = List.of(Option.of("parent", "Parent or guardian"), Option.of("teacher", "Teaches"),
            Option.of("supervisor", "Answers for the program"), Option.of("spouse", "Spouse of the parent"),
            Option.of("evaluator", "Looks over the work"), Option.of("certified-teacher", "Certified teacher"));

    @Override
    public void addTo(Routes routes) {
        routes.get("/family/person", PersonPages::open);
        routes.post("/family/person", PersonPages::save);
        routes.post("/family/person/delete", PersonPages::delete);
    }

    /** @return what a person does and holds, in words */
    static List<String> words(Person person) {
        List<String> words = new ArrayList<>();
        words.add(String.join(", ", person.roles().stream().map(PersonPages::role).toList()));
        for (Person.Credential one : person.credentials()) {
            words.add(one.kind().replace('-', ' ') + (one.date() == null ? "" : ", given " + Wording.english().date(one.date())));
        }
        return words;
    }

    private static String role(String slug) {
        return ROLES.stream().filter(one -> one.value().equals(slug)).map(Option::words).findFirst().orElse(slug.replace('-', ' '))
                .toLowerCase(Locale.ROOT);
    }

    private static Optional<Person> find(Book book, String id) {
        return book.persons().stream().filter(one -> one.id().equals(id)).findFirst();
    }

    private static Answer open(Call call) {
        String id = call.query("id");
        if (id.isEmpty()) {
            return form(call, Form.empty(), 200, List.of());
        }
        return find(call.desk().book(), id).map(person -> form(call, filled(person), 200, List.of())).orElse(new Answer.Nothing());
    }

    private static Form filled(Person person) {
        Form form = Form.empty().fill("id", person.id()).fill("print", Print.of(person)).fill("name", person.name())
                .tick("roles", person.roles());
        for (int number = 0; number < person.credentials().size(); number++) {
            Person.Credential one = person.credentials().get(number);
            form.fill("credential-" + number, one.kind().replace('-', ' ')).fill("given-" + number, one.date());
        }
        return form;
    }

    private static Answer form(Call call, Form form, int status, List<String> there) {
        Optional<Person> person = find(call.desk().book(), form.raw("id"));
        int held = person.map(one -> one.credentials().size()).orElse(0);
        return Household.shown("person", person.map(Person::name).orElse("A person"), form, status, Map.of("roles", roles(person),
                "held", held, "heading", person.map(Person::name).orElse("A person"), "there", there));
    }

    private static List<Option> roles(Optional<Person> person) {
        return Choices.keeping(ROLES, person.map(Person::roles).orElse(List.of()));
    }

    private static Answer save(Call call) throws Exception {
        Form form = call.form();
        Optional<Person> before = find(call.desk().book(), form.raw("id"));
        String name = form.must("name", "Type the name.");
        List<String> roles = form.mustTick("roles", Choices.values(roles(before)), "Tick what this person does.");
        List<Person.Credential> credentials = credentials(form, before);
        boolean changed = before.isPresent() && !Print.of(before.get()).equals(form.raw("print"));
        if (!form.isFine() || changed) {
            return form(call, changed ? form.fill("print", Print.of(before.get())) : form, 422,
                    changed ? there(before.get()) : List.of());
        }
        call.desk().edit(name, book -> {
            List<Person> persons = new ArrayList<>(book.persons());
            String id = before.map(Person::id).orElseGet(() -> BookEdits.newPersonId(book, name));
            Person person = new Person(id, name, roles, credentials);
            if (find(book, id).isPresent()) {
                persons.replaceAll(one -> one.id().equals(id) ? person : one);
            } else {
                persons.add(person);
            }
            return BookEdits.withPersons(book, persons);
        });
        return Answer.done("Saved: " + name + '.', "/family");
    }

    private static List<String> there(Person person) {
        List<String> there = new ArrayList<>(List.of(person.name()));
        there.addAll(words(person));
        return there;
    }

    /** A field left empty takes its credential out; the state it is from is kept. */
    private static List<Person.Credential> credentials(Form form, Optional<Person> before) {
        List<Person.Credential> held = before.map(Person::credentials).orElse(List.of());
        List<Person.Credential> credentials = new ArrayList<>();
        for (int number = 0; number <= held.size(); number++) {
            String typed = form.text("credential-" + number);
            LocalDate given = form.day("given-" + number);
            String kind = typed == null ? "" : BookEdits.slug(typed);
            if (!kind.isEmpty()) {
                credentials.add(new Person.Credential(kind, number < held.size() ? held.get(number).state() : null, given));
            } else if (typed != null) {
                form.complain("credential-" + number, "Type it in plain letters, for example high school diploma.");
            } else if (given != null) {
                form.complain("credential-" + number, "Type what was given on that day, or leave the day empty too.");
            }
        }
        return List.copyOf(credentials);
    }

    private static Answer delete(Call call) throws Exception {
        String id = call.form().raw("id");
        Optional<Person> found = find(call.desk().book(), id);
        if (found.isEmpty()) {
            return new Answer.Nothing();
        }
        call.desk().edit(found.get().name() + " taken out", book -> BookEdits.withPersons(book,
                book.persons().stream().filter(one -> !one.id().equals(id)).toList()));
        return Answer.done("Taken out: " + found.get().name() + ". It can be taken back below.", "/family");
    }
}
