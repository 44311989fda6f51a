package org.hearthrule.page.law;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.hearthrule.checklist.Checklist;
import org.hearthrule.checklist.Checkup;
import org.hearthrule.checklist.Comparison;
import org.hearthrule.input.BadInputException;
import org.hearthrule.input.Problems;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Profiles;
import org.hearthrule.page.frame.Desk;
import org.hearthrule.page.frame.Option;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookEdits;
import org.hearthrule.records.Placement;
import org.hearthrule.records.Placements;
import org.hearthrule.records.Student;

/**
 * A child of the open book that may move. Nothing is written: the book as it would be is judged in memory.
 *
 * @param placement under which it is taught now
 */
public record Mover(Book book, Student student, Placement placement, Profile law, Pathway pathway) {

    /** @return the children that follow a law on the desk's day and go on with it */
    public static List<Mover> all(Desk desk, Profiles profiles) throws BadInputException {
        Book book = desk.book();
        List<Mover> all = new ArrayList<>();
        for (Checklist.Follows follows : desk.checklist().follows()) {
            book.placements().stream().filter(placement -> placement.student().equals(follows.student()) && placement.to() == null
                    && placement.jurisdiction().equals(follows.profile().slug())
                    && placement.pathway().equals(follows.pathway().slug())).findFirst()
                    .ifPresent(placement -> all.add(new Mover(book, book.student(follows.student()).orElseThrow(), placement,
                            follows.profile(), follows.pathway())));
        }
        return all;
    }

    public String code() {
        return placement.jurisdiction();
    }

    public Option option() {
        return Option.of(student.id(), student.name());
    }

    /** @param moves whether the child moves on that day; else both laws are laid beside it where it is */
    public Comparison comparison(Profile there, Pathway way, LocalDate day, boolean moves, Desk desk)
            throws BadInputException {
        String state = there.slug();
        Placement instead = new Placement(student.id(), state, way.slug(), moves ? day : placement.from(), null, null, null,
                null, null, null, List.of(), null);
        Checklist stayed = desk.checklist(day).forStudent(student.id());
        Comparison.Side left = Comparison.Side.of(law, pathway, day, stayed);
        Comparison.Side right = Comparison.Side.of(there, way, day, judged(taught(instead), day, desk.profiles()));
        Book moved = Placements.begin(book, List.of(student.id()),
                new Placements.Beginning(day, state, way.slug(), null, null, null));
        return new Comparison(day, left, right, moves ? Comparison.Move.of(day, left, right, stayed,
                judged(moved, day, desk.profiles())) : null);
    }

    private Book taught(Placement instead) {
        List<Placement> placements = new ArrayList<>(book.placements());
        placements.set(placements.indexOf(placement), instead);
        return BookEdits.withPlacements(book, placements);
    }

    /** What this child's records show in a book as it would be. */
    private Checklist judged(Book changed, LocalDate day, Profiles profiles) throws BadInputException {
        return Checklist.of(Checkup.judge(changed, profiles, day, new Problems()), changed).forStudent(student.id());
    }
}
