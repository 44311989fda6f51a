package org.hearthrule.cli;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookEvent;
import org.hearthrule.records.Placement;
import org.hearthrule.records.Student;
import org.hearthrule.records.YearLabel;
import org.hearthrule.records.YearRecords;
import org.hearthrule.terms.Grades;
import org.hearthrule.terms.Wording;

/** A book of one child with nothing in it but what was typed. */
final class TypedBook {

    private static final String CHILD = "child";

    private TypedBook() { }

    /**
     * Only one year gets a file, so that nothing seems to have been entered for earlier ones: that of the day, or that of
     * the start when it is still to come.
     *
     * @param placements in order; the first says when home instruction starts
     * @param grade      in that year
     */
    static Book of(LocalDate born, int grade, List<Placement> placements, LocalDate asOf, List<BookEvent> events) {
        YearLabel now = year(placements.get(0).from(), asOf);
        SortedMap<String, YearRecords> years = new TreeMap<>();
        years.put(now.toString(), new YearRecords(now.toString(), Map.of(CHILD, Grades.name(grade)),
                YearRecords.Calendar.EMPTY, List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
                List.of(), List.of(), List.of(), List.of()));
        return new Book(null, null, List.of(new Student(CHILD, Wording.english().say("deadlines.child"), born, null)),
                List.of(), placements, events, List.of(), List.of(), years);
    }

    /** @return the grade on the day of a child whose grade in the year of the start is known: one more each year */
    static int gradeOn(LocalDate asOf, LocalDate starts, int grade) {
        return Math.min(grade + year(starts, asOf).start() - YearLabel.of(starts).start(), Grades.LAST);
    }

    private static YearLabel year(LocalDate starts, LocalDate asOf) {
        return YearLabel.of(asOf.isAfter(starts) ? asOf : starts);
    }

    /** @param to last day, or null while it goes on; one that ended did so by a move */
    static Placement placement(Profile law, Pathway way, LocalDate from, LocalDate to) {
        return new Placement(CHILD, law.slug(), way.slug(), from, to, to == null ? null : "moved",
                null, null, null, null, List.of(), null);
    }

    /** @return the grade typed; empty with a problem when it is none, and without one when nothing was typed */
    static Optional<Integer> grade(Given given) {
        String typed = given.text("--grade");
        Optional<Integer> grade = typed == null ? Optional.empty() : Grades.number(typed.toUpperCase(Locale.ROOT));
        if (typed != null && grade.isEmpty()) {
            given.problem(typed, "WRONG-GRADE", '"' + typed + '"', "K or a number from 1 to 12", null);
        }
        return grade;
    }

    /** @return the pathway an option names, the usual one when nothing was typed; empty with a problem */
    static Optional<Pathway> pathway(Profile law, String option, Given given) {
        String typed = given.text(option);
        if (typed == null) {
            return Optional.of(law.usualPathway());
        }
        Optional<Pathway> found = law.pathway(typed.toLowerCase(Locale.ROOT));
        if (found.isEmpty()) {
            given.unknown(typed, "UNKNOWN-PATHWAY", "pathway", law.pathways().stream().map(Pathway::slug).toList());
        }
        return found;
    }
}
