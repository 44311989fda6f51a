package org.hearthrule.records;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * What a new book begins with, by whatever way it was entered.
 *
 * @param family   what the family is called
 * @param children in the order entered
 * @param year     school year that the grades are of
 */
public record BookStart(String family, List<Child> children, YearLabel year) {

    /**
     * A child, and under which law it is taught from when on.
     *
     * @param grade        as in a year's file, such as {@code K} or {@code 5}
     * @param jurisdiction code, in small letters or large ones
     * @param pathway      slug
     */
    public record Child(String name, LocalDate born, String grade, String jurisdiction, String pathway, LocalDate starts) { }

    /** @return the book in the place of an empty one */
    public Book in(Book empty) {
        Book book = BookEdits.withName(empty, family);
        for (Child child : children) {
            String id = BookEdits.newPersonId(book, child.name());
            List<Student> students = new ArrayList<>(book.students());
            students.add(new Student(id, child.name(), child.born(), null));
            book = Placements.begin(BookEdits.withStudents(book, students), List.of(id), new Placements.Beginning(child.starts(),
                    child.jurisdiction().toLowerCase(java.util.Locale.ROOT), child.pathway(), null, null, null));
            book = BookEdits.inYear(book, year.toString(), records -> BookEdits.withGrade(records, id, child.grade()));
        }
        return book;
    }
}
