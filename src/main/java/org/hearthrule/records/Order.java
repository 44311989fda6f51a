package org.hearthrule.records;

import java.time.LocalDate;
import java.util.List;
import org.hearthrule.input.Problems;

/** Checks stretches of time: none ends before it begins, and no child is twice on one pathway at the same time. */
final class Order {

    private Order() { }

    /** Records that a day lies before the one it should follow; does nothing when either is missing. */
    static void check(Item item, String earlierKey, LocalDate earlier, String laterKey, LocalDate later) {
        if (earlier != null && later != null && later.isBefore(earlier)) {
            item.fields().error(laterKey, "BACKWARDS", "\"" + later + "\", which lies before `" + earlierKey + "`",
                    "\"" + earlier + "\" or a later day", null);
        }
    }

    /** Records each placement that runs into an earlier one of the same child on the same pathway. */
    static void checkOverlaps(List<Placement> placements, Problems problems) {
        for (int i = 0; i < placements.size(); i++) {
            for (int j = 0; j < i; j++) {
                Placement one = placements.get(j);
                Placement other = placements.get(i);
                if (isSamePath(one, other)) {
                    boolean inOrder = !other.from().isBefore(one.from());
                    checkOverlap(inOrder ? one : other, inOrder ? other : one, problems);
                }
            }
        }
    }

    private static boolean isSamePath(Placement one, Placement other) {
        return one.student() != null && one.student().equals(other.student())
                && one.jurisdiction() != null && one.jurisdiction().equals(other.jurisdiction())
                && one.pathway() != null && one.pathway().equals(other.pathway())
                && one.from() != null && other.from() != null;
    }

    private static void checkOverlap(Placement first, Placement second, Problems problems) {
        if (first.to() != null && first.to().isBefore(second.from())) {
            return;
        }
        String until = first.to() == null ? "has no last day" : "lasts until " + first.to();
        String perhaps = second.from().isAfter(first.from())
                ? "the first ended on " + second.from().minusDays(1)
                : "one of the two was entered twice";
        problems.error(second.where().placement(), "OVERLAP",
                "a second time on `" + second.pathway() + "` for \"" + second.student() + "\" from " + second.from(),
                "one at a time; the other, on line " + first.where().placement().line() + ", " + until, perhaps);
    }
}
