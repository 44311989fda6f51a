package org.hearthrule.records;

import java.time.LocalDate;
import java.time.Month;
import java.util.Optional;

/**
 * The name of a school year and of its file, for example {@code 2026-27}. In a record book a year runs from 1 July to
 * 30 June; what the law counts as a year is the profile's matter.
 *
 * @param start the calendar year in which it begins
 */
public record YearLabel(int start) implements Comparable<YearLabel> {

    private static final int LENGTH = 7;

    /** @return the year of this label, or empty when the text is not one, such as {@code 2026-2027} */
    public static Optional<YearLabel> parse(String text) {
        if (text.length() != LENGTH || text.charAt(4) != '-') {
            return Optional.empty();
        }
        for (int i = 0; i < LENGTH; i++) {
            if (i != 4 && (text.charAt(i) < '0' || text.charAt(i) > '9')) {
                return Optional.empty();
            }
        }
        int start = Integer.parseInt(text.substring(0, 4));
        boolean next = Integer.parseInt(text.substring(5)) == (start + 1) % 100;
        return next && start >= 1000 && start < 9999 ? Optional.of(new YearLabel(start)) : Optional.empty();
    }

    /** @return the year this day belongs to */
    public static YearLabel of(LocalDate day) {
        return new YearLabel(day.getMonthValue() >= Month.JULY.getValue() ? day.getYear() : day.getYear() - 1);
    }

    /** @return 1 July */
    public LocalDate first() {
        return LocalDate.of(start, Month.JULY, 1);
    }

    /** @return 30 June */
    public LocalDate last() {
        return LocalDate.of(start + 1, Month.JUNE, 30);
    }

    /** @return true when the day lies in this year */
    public boolean holds(LocalDate day) {
        return of(day).start == start;
    }

    /** @return the name of the year's file, for example {@code 2026-27.json} */
    public String fileName() {
        return this + ".json";
    }

    @Override
    public int compareTo(YearLabel other) {
        return Integer.compare(start, other.start);
    }

    /** @return for example {@code 2026-27} */
    @Override
    public String toString() {
        String first = Integer.toString(start);
        int end = (start + 1) % 100;
        return "0".repeat(4 - Math.min(4, first.length())) + first + (end < 10 ? "-0" : "-") + end;
    }
}
