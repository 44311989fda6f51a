package org.hearthrule.checklist;

import java.time.LocalDate;
import java.util.List;
import org.hearthrule.law.Requirement;
import org.hearthrule.records.YearRecords.Reading;
import org.hearthrule.records.YearRecords.Sample;

/**
 * What lies ready for an evaluation of one child in one school year.
 *
 * @param asOf       the day
 * @param student    the child's name
 * @param follows    law and pathway, or null when the child follows none
 * @param first      first day of the school year looked at
 * @param last       its last day
 * @param thirds     the days taught, cut in three equal parts
 * @param before     the day by which it must be ready
 * @param beforeWhat what falls due then, or null when it is only the year's end
 * @param subjects   one for each subject the law names
 * @param items      the portfolio, item by item
 * @param tests      what is said of tests and evaluations
 * @param evaluators who may evaluate or test, a sentence each
 * @param steps      the shortest list of things to do
 */
public record Readiness(LocalDate asOf, String student, Checklist.Follows follows, LocalDate first, LocalDate last,
                        List<Third> thirds, LocalDate before, String beforeWhat, List<SubjectRow> subjects,
                        List<Item> items, List<Assessment> tests, List<String> evaluators, List<Step> steps) {

    /** From a day to a day, both included. */
    public record Third(LocalDate from, LocalDate to) {
        boolean holds(LocalDate day) {
            return !day.isBefore(from) && !day.isAfter(to);
        }
    }

    /**
     * What the year's records hold of one subject.
     *
     * @param name    the law's name
     * @param may     the law permits it without asking it
     * @param asked   the duty that names it
     * @param days    days with an entry
     * @param minutes minutes logged; an entry for several subjects counts whole for each
     * @param samples dated samples of work, by third, the earliest first
     * @param undated samples without a date
     * @param books   books and other readings
     */
    public record SubjectRow(String name, boolean may, Requirement asked, int days, int minutes, List<List<Sample>> samples,
                             List<Sample> undated, List<Reading> books) {

        /** @return how many dated samples each third holds */
        public List<Integer> counts() {
            return samples.stream().map(List::size).toList();
        }
    }

    /** How much of an item is there. */
    public enum Presence {
        THERE, SOME, MISSING,
        /** Cannot be counted here. */
        NOT_COUNTED
    }

    /**
     * One thing a portfolio holds.
     *
     * @param name  the law's or a plain name
     * @param found what was found, in words
     * @param scans of the results that were found
     */
    public record Item(String name, Presence presence, String found, List<Scan> scans) {
        Item(String name, Presence presence, String found) {
            this(name, presence, found, List.of());
        }
    }

    /**
     * A line about a test or an evaluation.
     *
     * @param scans of the results that it counted
     */
    public record Assessment(Line line, List<Scan> scans) { }

    /**
     * A scan of a result.
     *
     * @param of   the test or evaluation, with its day
     * @param path in the folder of the book; the file may be missing there
     */
    public record Scan(String of, String path) { }

    /**
     * One thing to do.
     *
     * @param by    the day, or null
     * @param title what it is about
     * @param next  what to do
     * @param found what was found
     * @param line  the line of the checklist it comes from, or null when it is about work across the year
     */
    public record Step(LocalDate by, String title, String next, String found, Line line) { }
}
