package org.hearthrule.records;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** Changes of where, and in which way, children are taught; each is a new book. */
public final class Placements {

    private Placements() { }

    /**
     * What begins on a day.
     *
     * @param jurisdiction code in lower case
     * @param pathway      slug
     * @param district     or null, as are city and county: who stays in a state keeps what was noted there
     */
    public record Beginning(LocalDate day, String jurisdiction, String pathway, String district, String city, String county) { }

    /** @return what goes on for a child, with no last day; empty when nothing does */
    public static Optional<Placement> open(Book book, String student) {
        return book.placements().stream().filter(one -> one.student().equals(student) && one.to() == null).findFirst();
    }

    /** @return why something cannot begin on that day: what still goes on then, or has begun later; empty when it can */
    public static Optional<Placement> inTheWay(Book book, String student, LocalDate day) {
        return book.placements().stream().filter(one -> one.student().equals(student)
                && (one.to() == null ? !one.from().isBefore(day) : !one.to().isBefore(day))).findFirst();
    }

    /**
     * Ends what goes on for the children on the day before, as a move or as a change of the way, and lets something else
     * begin on the day. The day of a move in is read from this, so that no event has to be noted beside it.
     */
    public static Book begin(Book book, Collection<String> students, Beginning next) {
        List<Placement> placements = new ArrayList<>();
        for (Placement one : book.placements()) {
            boolean ends = one.to() == null && students.contains(one.student());
            String why = one.jurisdiction().equals(next.jurisdiction()) ? "changed-pathway" : "moved";
            placements.add(ends ? ended(one, next.day().minusDays(1), why) : one);
        }
        for (String student : students) {
            placements.add(begun(student, next, open(book, student)));
        }
        return BookEdits.withPlacements(book, placements);
    }

    /** Ends what goes on for the children; what was over before stays as it was. */
    public static Book end(Book book, Collection<String> students, LocalDate last, String why) {
        List<Placement> placements = new ArrayList<>(book.placements());
        placements.replaceAll(one -> one.to() == null && students.contains(one.student()) ? ended(one, last, why) : one);
        return BookEdits.withPlacements(book, placements);
    }

    private static Placement ended(Placement one, LocalDate last, String why) {
        return new Placement(one.student(), one.jurisdiction(), one.pathway(), one.from(), last, why, one.started(),
                one.district(), one.city(), one.county(), one.optIns(), null);
    }

    private static Placement begun(String student, Beginning next, Optional<Placement> before) {
        Optional<Placement> stays = before.filter(one -> one.jurisdiction().equals(next.jurisdiction()));
        return new Placement(student, next.jurisdiction(), next.pathway(), next.day(), null, null, null,
                next.district() == null ? stays.map(Placement::district).orElse(null) : next.district(),
                next.city() == null ? stays.map(Placement::city).orElse(null) : next.city(),
                next.county() == null ? stays.map(Placement::county).orElse(null) : next.county(),
                stays.map(Placement::optIns).orElse(List.of()), null);
    }
}
