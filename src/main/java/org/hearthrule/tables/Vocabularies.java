package org.hearthrule.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hearthrule.input.Nearest;
import org.hearthrule.input.Phrases;
import org.hearthrule.records.Book;
import org.hearthrule.records.Student;
import org.hearthrule.terms.SubjectNames;

/** The names that tables write: of the children of a book, and of subjects. */
final class Vocabularies {

    private Vocabularies() { }

    /** Subjects of the common vocabulary, by id or plain name. */
    static final class OfSubjects implements CellNames.Vocabulary {
        @Override
        public Optional<String> find(String name) {
            return SubjectNames.find(name);
        }

        @Override
        public Optional<String> nearest(String name) {
            return SubjectNames.nearest(name);
        }

        @Override
        public String code() {
            return "UNKNOWN-SUBJECT";
        }

        @Override
        public String expected() {
            return "subjects of the common vocabulary, by id or name, parted by semicolons";
        }

        @Override
        public String between() {
            return CellList.SEMICOLON;
        }

        @Override
        public String perhapsBetween() {
            return "[,&/]";
        }

        @Override
        public String sign() {
            return "; ";
        }
    }

    /** The children of a book, by id, name, or a first name that only one of them has. */
    static final class OfStudents implements CellNames.Vocabulary {

        private final List<Student> students;

        OfStudents(Book book) {
            this.students = book.students();
        }

        @Override
        public Optional<String> find(String name) {
            List<String> whole = students.stream().filter(student -> student.name().equalsIgnoreCase(name))
                    .map(Student::id).toList();
            for (Student student : students) {
                if (student.id().equalsIgnoreCase(name) || whole.size() == 1 && whole.contains(student.id())) {
                    return Optional.of(student.id());
                }
            }
            List<String> byFirstName = students.stream()
                    .filter(student -> student.name().strip().split("\\s+")[0].equalsIgnoreCase(name))
                    .map(Student::id).toList();
            return byFirstName.size() == 1 ? Optional.of(byFirstName.get(0)) : Optional.empty();
        }

        @Override
        public Optional<String> nearest(String name) {
            List<String> known = new ArrayList<>();
            students.forEach(student -> known.add(student.name()));
            students.forEach(student -> known.add(student.id()));
            return Nearest.of(name, known);
        }

        @Override
        public String code() {
            return "UNKNOWN-STUDENT";
        }

        @Override
        public String expected() {
            return "a student of family.json by name or id: "
                    + Phrases.or(students.stream().map(Student::id).toList(), "students");
        }

        @Override
        public String between() {
            return "[;&,]";
        }

        @Override
        public String perhapsBetween() {
            return "(?i)\\s+and\\s+";
        }

        @Override
        public String sign() {
            return " & ";
        }
    }
}
