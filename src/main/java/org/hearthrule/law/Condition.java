package org.hearthrule.law;

import java.time.MonthDay;
import java.util.List;
import org.hearthrule.terms.EventKind;
import org.hearthrule.terms.Grades;

/** When a rule applies. Twelve conditions, joined by {@link Any}, {@link All} and {@link Not}. */
public sealed interface Condition {

    Condition ALWAYS = new All(List.of());

    /** Holds when one part holds. */
    record Any(List<Condition> parts) implements Condition { }

    /** Holds when every part holds. */
    record All(List<Condition> parts) implements Condition { }

    record Not(Condition part) implements Condition { }

    /**
     * The child's age on a day.
     *
     * @param atLeast age in whole years, or null
     * @param below   age not yet reached, or null
     * @param on      the day it is taken on
     */
    record Age(Integer atLeast, Integer below, AgeDay on) implements Condition { }

    /**
     * The day an age is taken on.
     *
     * @param anchor  named day
     * @param date    for {@link Anchor#ON} and {@link Anchor#BEFORE}: the date inside the school year
     */
    record AgeDay(Anchor anchor, MonthDay date) {
        public enum Anchor {
            /** The day the duty is about: its due date, or today when it has none. */
            THAT_DAY,
            YEAR_START,
            YEAR_END,
            /** A date inside the school year; a birthday on the date counts. */
            ON,
            /** A date inside the school year; a birthday on the date does not count. */
            BEFORE
        }

        public static final AgeDay THAT_DAY = new AgeDay(Anchor.THAT_DAY, null);
    }

    /** The child's grade in the school year. */
    record Grade(Grades grades) implements Condition { }

    /**
     * The year of the program: 1 in the school year in which it starts.
     *
     * @param atLeast first such year
     * @param atMost  last such year, or null
     * @param every   1, or the step from {@code atLeast}
     */
    record YearOfProgram(int atLeast, Integer atMost, int every) implements Condition { }

    /**
     * Something happened.
     *
     * @param kind     what
     * @param order    how it stands to {@code date} or {@code other}, or null when any day will do
     * @param date     a date inside the school year, or null
     * @param other    another event, or null
     * @param within   it happened no longer than this before the day in question, or null
     * @param ago      it happened so long before the day in question or longer, or null
     * @param thisYear only this school year counts
     */
    record Event(EventKind kind, Order order, MonthDay date, EventKind other, Span within, Span ago, boolean thisYear)
            implements Condition {
        public enum Order { BEFORE, ON_OR_BEFORE, AFTER, ON_OR_AFTER }
    }

    /**
     * Where the child was taught before.
     *
     * @param kinds   {@code public-school}, {@code private-school}, {@code home-program}
     * @param inState true: in this state; false: elsewhere; null: anywhere
     * @param within  no longer ago than this before the program started, or null
     */
    record CameFrom(List<String> kinds, Boolean inState, Span within) implements Condition { }

    /** The parent chose one of these values. The choice is declared at the pathway. */
    record Choice(String name, List<String> values) implements Condition { }

    /**
     * What an earlier year holds.
     *
     * @param requirement id of a requirement of the same pathway
     * @param was         {@code met}, {@code missing}, {@code owed} (it applied at all, whether met or not), or the
     *                    method used
     * @param yearsAgo    1 for last school year; 0, this one, only with {@code met} and {@code missing} of a paper
     */
    record History(String requirement, String was, int yearsAgo) implements Condition { }

    /**
     * A recorded result. Of several tests the last decides; for a duty that comes up on each test, that very test.
     *
     * @param requirement id of the requirement whose result it is: only tests by a method of it count
     * @param threshold   comparison that must hold
     * @param yearsAgo    0 for this school year
     * @param orEarlier   without a test in that year, the last one before it counts
     */
    record Result(String requirement, Threshold threshold, int yearsAgo, boolean orEarlier) implements Condition { }

    /**
     * What an evaluation found.
     *
     * @param requirement id of the requirement whose evaluation it is: only those by a method of it count
     * @param says        outcome words, one of which it must be
     * @param yearsAgo    0 for this school year
     * @param orEarlier   without an evaluation in that year, the last one before it counts
     */
    record Outcome(String requirement, List<String> says, int yearsAgo, boolean orEarlier) implements Condition { }

    /** A declared fact of the child, the parent, the teacher or the family. */
    record Attribute(String fact, boolean is) implements Condition { }

    /** The family lives in one of these districts, cities or counties. */
    record Place(List<String> names) implements Condition { }

    /** An authority asked in writing this school year. */
    record Asked(String by) implements Condition { }

    /** The family takes part in an optional program. */
    record OptIn(String program) implements Condition { }
}
