package org.hearthrule.checklist.year;

import java.util.List;

/**
 * Something that begins, ends or happens on a day.
 *
 * @param number   of the quarter or term, else 0
 * @param what     name of the law that is followed or left, or the event in plain words; null for a bound
 * @param note     the parent's remark on an event, or why a law is left; or null
 * @param children names of those it is about; empty for all that are looked at
 */
public record DayMark(Kind kind, int number, String what, String note, List<String> children) {

    /** What it is. */
    public enum Kind {
        YEAR_BEGINS, YEAR_ENDS, SCHOOL_BEGINS, SCHOOL_ENDS, QUARTER_BEGINS, QUARTER_ENDS, TERM_BEGINS, TERM_ENDS,
        /** A child begins to be taught under a law: home instruction starts, or the family moves in. */
        FOLLOWS,
        /** The last day under a law. */
        LEAVES,
        EVENT;

        public boolean isBound() {
            return ordinal() < FOLLOWS.ordinal();
        }
    }

    static DayMark bound(Kind kind, int number) {
        return new DayMark(kind, number, null, null, List.of());
    }
}
