package org.hearthrule.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hearthrule.input.Nearest;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookReader;
import org.hearthrule.records.Student;

/** Reads the record book, and finds the child, that a command line names. */
final class Books {

    private Books() { }

    /** @return the book of the parameter BOOK; empty with problems when it cannot be read */
    static Optional<Book> read(Given given) {
        Path folder = given.path("BOOK");
        return folder == null ? Optional.empty() : BookReader.read(folder, given.problems());
    }

    /**
     * @return the child of {@code --student}, by name, first name or id, whatever the capitals; empty when it was not
     *         given, and with a problem when there is no such child, or more than one
     */
    static Optional<Student> student(Book book, Given given) {
        String asked = given.text("--student");
        return asked == null ? Optional.empty() : student(book, asked, asked, given);
    }

    /**
     * @param typed the whole value in which the name stands
     * @return the child of a name, as for {@code --student}
     */
    static Optional<Student> student(Book book, String asked, String typed, Given given) {
        Map<String, List<Student>> byName = byName(book);
        List<Student> found = byName.getOrDefault(key(asked), List.of());
        if (found.size() == 1) {
            return Optional.of(found.get(0));
        }
        String names = String.join(", ", book.students().stream().map(Student::name).toList());
        if (found.size() > 1) {
            given.problem(typed, "SEVERAL-STUDENTS", '"' + asked + "\", which is the name of several children",
                    "a whole name: " + names, null);
            return Optional.empty();
        }
        String perhaps = Nearest.of(key(asked), byName.keySet()).map(near -> "you meant "
                + byName.get(near).get(0).name()).orElse(null);
        given.problem(typed, "UNKNOWN-STUDENT", '"' + asked + '"', "a child of this book: " + names, perhaps);
        return Optional.empty();
    }

    private static Map<String, List<Student>> byName(Book book) {
        Map<String, List<Student>> byName = new LinkedHashMap<>();
        for (Student student : book.students()) {
            String name = key(student.name());
            int space = name.indexOf(' ');
            for (String each : List.of(name, space < 0 ? name : name.substring(0, space), key(student.id()))) {
                List<Student> named = byName.computeIfAbsent(each, k -> new ArrayList<>());
                if (!named.contains(student)) {
                    named.add(student);
                }
            }
        }
        // a whole name or id wins over a first name that others share
        for (Student student : book.students()) {
            byName.put(key(student.id()), List.of(student));
        }
        for (Student student : book.students()) {
            byName.put(key(student.name()), byName.get(key(student.name())).stream()
                    .filter(s -> key(s.name()).equals(key(student.name()))).toList());
        }
        return byName;
    }

    private static String key(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }
}
