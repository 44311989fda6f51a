package org.hearthrule.records;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
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

    /** @return a child's story, the earliest first */
    public static List<Placement> of(Book book, String student) {
        return book.placements().stream().filter(one -> one.student().equals(student))
                .sorted(Comparator.comparing(Placement::from)).toList();
    }

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
     * What would be noted for a child twice on the same days. Two that shared days before are left so: a book may come
     * from elsewhere, and its other faults can then still be mended one by one.
     *
     * @param before what is mended, or null for something new
     * @return what else is noted on a day of {@code after}; empty when nothing is
     */
    public static Optional<Placement> inTheWay(Book book, Placement before, Placement after) {
        return of(book, after.student()).stream().filter(one -> !one.equals(before) && one.meets(after))
                .filter(one -> before == null || !one.meets(before) || isSamePath(one, after)).findFirst();
    }

    private static boolean isSamePath(Placement one, Placement other) {
        return one.jurisdiction().equals(other.jurisdiction()) && one.pathway().equals(other.pathway());
    }

    /**
     * Puts one in the place of another.
     *
     * @param before what is mended; null for something new, which comes before what began later for the same child
     */
    public static Book put(Book book, Placement before, Placement after) {
        List<Placement> placements = new ArrayList<>(book.placements());
        int at = before == null ? -1 : placements.indexOf(before);
        if (at >= 0) {
            placements.set(at, after);
        } else {
            Optional<Placement> next = of(book, after.student()).stream()
                    .filter(one -> one.from().isAfter(after.from())).findFirst();
            placements.add(next.map(placements::indexOf).orElse(placements.size()), after);
        }
        return BookEdits.withPlacements(book, placements);
    }

    public static Book remove(Book book, Placement one) {
        return BookEdits.withPlacements(book, book.placements().stream().filter(other -> !other.equals(one)).toList());
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
