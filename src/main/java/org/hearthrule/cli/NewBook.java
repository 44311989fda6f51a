package org.hearthrule.cli;

import java.text.Normalizer;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.records.Book;
import org.hearthrule.records.Placement;
import org.hearthrule.records.Student;
import org.hearthrule.records.YearLabel;
import org.hearthrule.records.YearRecords;

/** A book in the making. Not safe for use by several threads at once. */
final class NewBook {

    /** A child in the making. */
    static final class Child {
        String name;
        LocalDate born;
        String grade;
        Profile profile;
        Pathway pathway;
        LocalDate starts;
    }

    private final YearLabel year;
    private final List<Child> children = new ArrayList<>();
    String family;

    /** @param today a day of the school year that the grades are for */
    NewBook(LocalDate today) {
        this.year = YearLabel.of(today);
    }

    YearLabel year() {
        return year;
    }

    List<Child> children() {
        return children;
    }

    /** @return the child that is being asked about */
    Child child() {
        return children.get(children.size() - 1);
    }

    /** @return what was answered, as a book */
    Book book() {
        List<Student> students = new ArrayList<>();
        List<Placement> placements = new ArrayList<>();
        Map<String, String> grades = new HashMap<>();
        for (Child child : children) {
            String id = id(child.name, students);
            students.add(new Student(id, child.name, child.born, null));
            placements.add(new Placement(id, child.profile.code().toLowerCase(Locale.ROOT), child.pathway.slug(),
                    child.starts, null, null, null, null, null, null, List.of(), null));
            grades.put(id, child.grade);
        }
        YearRecords records = new YearRecords(year.toString(), Map.copyOf(grades), YearRecords.Calendar.EMPTY, List.of(),
                List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
                List.of());
        return new Book(null, family, students, List.of(), placements, List.of(), List.of(), List.of(),
                new TreeMap<>(Map.of(year.toString(), records)));
    }

    /** The first name in plain letters; a number where that says nothing or is taken. */
    private static String id(String name, List<Student> others) {
        String first = name.strip().split(" ", 2)[0];
        StringBuilder plain = new StringBuilder();
        for (char c : Normalizer.normalize(first, Normalizer.Form.NFD).toLowerCase(Locale.ROOT).toCharArray()) {
            if (c >= 'a' && c <= 'z' || c >= '0' && c <= '9') {
                plain.append(c);
            }
        }
        String id = plain.toString();
        boolean taken = id.isEmpty() || others.stream().anyMatch(other -> other.id().equals(id));
        return taken ? "child-" + (others.size() + 1) : id;
    }
}
