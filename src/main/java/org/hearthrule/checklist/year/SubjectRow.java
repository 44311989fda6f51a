package org.hearthrule.checklist.year;

import java.util.List;

/**
 * What the records hold of one subject.
 *
 * @param name    the law's name, or that of the common vocabulary; null for what was tagged with no subject
 * @param origin  why it stands here
 * @param months  one cell for each month of the year, in order
 * @param undated pieces of work and books without a day
 */
public record SubjectRow(String name, Origin origin, List<Cell> months, Cell undated) {

    /** Why a subject stands in the list. */
    public enum Origin {
        ASKED,
        /** The law permits it without asking it. */
        PERMITTED,
        /** The family's own, beside the law's. */
        OTHER,
        /** No subject was noted. */
        NONE
    }

    /**
     * One month of one subject. What was done for several subjects counts whole for each.
     *
     * @param minutes of the entries
     * @param entries log entries
     * @param samples pieces of work
     * @param books   books and other readings finished, or begun and not finished
     */
    public record Cell(int minutes, int entries, int samples, int books) {
        static final Cell EMPTY = new Cell(0, 0, 0, 0);

        Cell plus(Cell other) {
            return new Cell(minutes + other.minutes, entries + other.entries, samples + other.samples, books + other.books);
        }

        public boolean isEmpty() {
            return entries == 0 && samples == 0 && books == 0;
        }
    }

    /** @return the whole year, with what has no day */
    public Cell total() {
        return months.stream().reduce(undated, Cell::plus);
    }
}
