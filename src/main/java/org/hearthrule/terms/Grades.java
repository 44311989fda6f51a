package org.hearthrule.terms;

import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * A set of school grades. Kindergarten is 0, written {@code K}; grades run to 12.
 *
 * @param numbers the grades, 0 to 12, never empty
 */
public record Grades(SortedSet<Integer> numbers) {

    public static final int KINDERGARTEN = 0;
    public static final int LAST = 12;

    public Grades {
        numbers = java.util.Collections.unmodifiableSortedSet(new TreeSet<>(numbers));
    }

    /**
     * Reads a list such as {@code K-6}, {@code 3, 5, 8} or {@code 9-12}.
     *
     * @return the grades, or empty when the text is not such a list
     */
    public static Optional<Grades> parse(String text) {
        SortedSet<Integer> found = new TreeSet<>();
        for (String part : text.split(",", -1)) {
            int dash = part.indexOf('-');
            Optional<Integer> low = number(dash < 0 ? part : part.substring(0, dash));
            Optional<Integer> high = dash < 0 ? low : number(part.substring(dash + 1));
            if (low.isEmpty() || high.isEmpty() || low.get() > high.get()) {
                return Optional.empty();
            }
            for (int grade = low.get(); grade <= high.get(); grade++) {
                found.add(grade);
            }
        }
        return Optional.of(new Grades(found));
    }

    /**
     * Reads one grade, {@code K} or {@code 1} to {@code 12}.
     *
     * @return the grade as a number, or empty
     */
    public static Optional<Integer> number(String text) {
        String trimmed = text.strip();
        if (trimmed.equals("K")) {
            return Optional.of(KINDERGARTEN);
        }
        if (trimmed.isEmpty() || trimmed.length() > 2 || trimmed.charAt(0) == '0'
                || !isDigit(trimmed.charAt(0)) || !isDigit(trimmed.charAt(trimmed.length() - 1))) {
            return Optional.empty();
        }
        int grade = Integer.parseInt(trimmed);
        return grade >= 1 && grade <= LAST ? Optional.of(grade) : Optional.empty();
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    /** @return {@code K} or the number */
    public static String name(int grade) {
        return grade == KINDERGARTEN ? "K" : Integer.toString(grade);
    }

    /** @return true when the set holds this grade */
    public boolean holds(int grade) {
        return numbers.contains(grade);
    }

    /** @return the set as a reader writes it, for example {@code K-6} or {@code 3, 5, 8} */
    public String words() {
        StringBuilder out = new StringBuilder();
        Integer runStart = null;
        Integer last = null;
        for (int grade : numbers) {
            if (last != null && grade == last + 1) {
                last = grade;
                continue;
            }
            appendRun(out, runStart, last);
            runStart = grade;
            last = grade;
        }
        appendRun(out, runStart, last);
        return out.toString();
    }

    private static void appendRun(StringBuilder out, Integer from, Integer to) {
        if (from == null) {
            return;
        }
        if (out.length() > 0) {
            out.append(", ");
        }
        out.append(name(from));
        if (to > from) {
            out.append(to == from + 1 ? ", " : "-").append(name(to));
        }
    }
}
