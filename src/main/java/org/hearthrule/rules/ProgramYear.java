package org.hearthrule.rules;

import java.time.LocalDate;
import java.time.MonthDay;
import org.hearthrule.law.SchoolYear;

/**
 * One school year of a pathway.
 *
 * @param start first day
 * @param end   last day
 */
public record ProgramYear(LocalDate start, LocalDate end) {

    /** Written out, since generated comparisons cost a short-lived process several milliseconds. */
    @Override
    public boolean equals(Object other) {
        return other instanceof ProgramYear that && start.equals(that.start) && end.equals(that.end);
    }

    @Override
    public int hashCode() {
        return start.hashCode();
    }

    /** @return the school year of this kind that holds {@code day} */
    public static ProgramYear holding(SchoolYear shape, LocalDate day) {
        LocalDate start = shape.from().atYear(day.getYear());
        if (start.isAfter(day)) {
            start = shape.from().atYear(day.getYear() - 1);
        }
        return startingOn(shape, start);
    }

    private static ProgramYear startingOn(SchoolYear shape, LocalDate start) {
        LocalDate end = shape.to().atYear(start.getYear());
        return new ProgramYear(start, end.isAfter(start) ? end : shape.to().atYear(start.getYear() + 1));
    }

    ProgramYear plus(int years) {
        return new ProgramYear(start.plusYears(years), end.plusYears(years));
    }

    boolean holds(LocalDate day) {
        return !day.isBefore(start) && !day.isAfter(end);
    }

    /** @return the day of this year that bears the date; the last one before the year when it has none */
    LocalDate day(MonthDay date) {
        LocalDate found = date.atYear(end.getYear());
        return found.isAfter(end) ? date.atYear(end.getYear() - 1) : found;
    }

    /** @return {@code 2026-27}, or {@code 2026} for a calendar year */
    public String label() {
        if (start.getYear() == end.getYear()) {
            return Integer.toString(start.getYear());
        }
        return span(start.getYear());
    }

    /** @return the label of the record book's file that holds this year's papers */
    String fileLabel() {
        int first = start.getMonthValue() >= 7 ? start.getYear() : start.getYear() - (start.getYear() == end.getYear() ? 0 : 1);
        return span(first);
    }

    private static String span(int first) {
        int last = (first + 1) % 100;
        return first + (last < 10 ? "-0" : "-") + last;
    }
}
