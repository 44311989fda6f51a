package org.hearthrule.tables;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthrule.records.Book;
import org.hearthrule.records.Person;
import org.hearthrule.records.Student;
import org.hearthrule.terms.SubjectNames;
import org.hearthrule.terms.Subjects;

/** How children, people and subjects are written in a table: by name, unless only the id leads back to them. */
final class WrittenNames {

    private final Map<String, String> students = new HashMap<>();
    private final Map<String, String> persons = new HashMap<>();
    private final Map<String, String> subjects = new HashMap<>();

    WrittenNames(Book book) {
        CellNames.Vocabulary children = new Vocabularies.OfStudents(book);
        for (Student student : book.students()) {
            boolean leadsBack = children.find(Cells.clean(student.name())).equals(Optional.of(student.id()))
                    && CellList.split(student.name(), children.between()).size() == 1;
            students.put(student.id(), leadsBack ? student.name() : student.id());
        }
        for (Person person : book.persons()) {
            boolean alone = book.persons().stream().allMatch(other -> other.equals(person)
                    || !other.name().equalsIgnoreCase(person.name()) && !other.id().equalsIgnoreCase(person.name()));
            persons.put(person.id(), alone ? person.name() : person.id());
        }
        for (String id : Subjects.ids()) {
            String name = Subjects.name(id);
            boolean leadsBack = SubjectNames.find(name).equals(Optional.of(id)) && !name.contains(CellList.SEMICOLON);
            subjects.put(id, leadsBack ? name : id);
        }
    }

    String student(String id) {
        return id == null ? null : students.getOrDefault(id, id);
    }

    String students(List<String> ids) {
        return String.join("; ", ids.stream().map(this::student).toList());
    }

    String person(String id) {
        return id == null ? null : persons.getOrDefault(id, id);
    }

    /** Returns a person's name, or the words of a role. */
    String personOrRole(String by) {
        return by == null ? null : persons.getOrDefault(by, BookLists.words(by));
    }

    String anybody(String id) {
        return id == null ? null : students.getOrDefault(id, person(id));
    }

    String subjects(List<String> ids) {
        return String.join("; ", ids.stream().map(id -> subjects.getOrDefault(id, id)).toList());
    }
}
