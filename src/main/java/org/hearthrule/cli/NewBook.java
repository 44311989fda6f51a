package org.hearthrule.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookStart;
import org.hearthrule.records.YearLabel;

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
        Book empty = new Book(null, null, List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), new TreeMap<>());
        return new BookStart(family, children.stream().map(child -> new BookStart.Child(child.name, child.born, child.grade,
                child.profile.code(), child.pathway.slug(), child.starts)).toList(), year).in(empty);
    }
}
