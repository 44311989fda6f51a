package org.hearthrule.law;

import java.time.MonthDay;
import java.util.List;
import org.hearthrule.terms.EventKind;

/**
 * Between which ages the law binds a child.
 *
 * @param when     whom this entry is for; of several in force the first that holds is taken
 * @param starts   when it begins
 * @param ends     when it ends
 * @param early    binds a younger child too, or null: for example enrolled by the parent's own act
 * @param validity days in force
 * @param note     words for the reader, or null
 */
public record AttendanceAge(Condition when, Starts starts, Ends ends, Condition early, List<Cite> cites,
                            Validity validity, String note) {

    /** When a child is first bound. */
    public sealed interface Starts {
        /** From the birthday itself. {@code midYear} says what a birthday inside the school year does. */
        record Birthday(int age, MidYear midYear) implements Starts { }

        /**
         * Reached by a date inside the school year.
         *
         * @param inclusive  a birthday on the date counts
         * @param bindsFrom  date in that school year from which it binds, or null for the year's first day
         * @param midYear    what a birthday after the date does
         */
        record ByDate(int age, MonthDay date, boolean inclusive, MonthDay bindsFrom, MidYear midYear)
                implements Starts { }

        /** In the calendar year of the birthday, from this date. */
        record CalendarYear(int age, MonthDay from) implements Starts { }

        /**
         * Reached by the district's first day of school.
         *
         * @param inclusive a birthday on the day counts
         */
        record BySchoolFirstDay(int age, boolean inclusive) implements Starts { }

        record EarlierOf(List<Starts> parts) implements Starts { }

        record LaterOf(List<Starts> parts) implements Starts { }
    }

    /** What a birthday in mid-year does. */
    public enum MidYear {
        /** Binds from the birthday. */
        OWED,
        /** Binds from the next school year. */
        NEXT_YEAR,
        /** The law does not say: ask, until the next school year. */
        UNCLEAR
    }

    /** When a child is free. */
    public sealed interface Ends {
        record Birthday(int age) implements Ends { }

        /** At the end of the school year of the birthday. */
        record YearEnd(int age) implements Ends { }

        /** Reached by a date inside the school year: free for that whole year. */
        record ByDate(int age, MonthDay date) implements Ends { }

        /** With an event such as a diploma. */
        record OnEvent(EventKind event) implements Ends { }

        /** When this grade is completed. */
        record GradeCompleted(int grade) implements Ends { }

        record EarlierOf(List<Ends> parts) implements Ends { }

        record LaterOf(List<Ends> parts) implements Ends { }
    }
}
