package org.hearthrule.suggest;

import java.util.ArrayList;
import java.util.List;

/** How often a word stood in a family's lines, and under which subjects. Not safe for several threads. */
final class Tally {

    /** When a word has stood in so many lines, all its counts are halved, so that a new habit can outweigh an old one. */
    private static final int FULL = 32;

    /** Counts of one subject. */
    static final class Count {

        private final String subject;
        private int together;
        private int unexplained;

        Count(String subject) {
            this.subject = subject;
        }

        String subject() {
            return subject;
        }

        /** @return lines with the word that stood under the subject */
        int together() {
            return together;
        }

        /** @return those of them in which nothing else explained the subject */
        int unexplained() {
            return unexplained;
        }
    }

    private final boolean fades;

    /** Few words have more than three: looking through a list is quicker than a map, and there are thousands of words. */
    private final List<Count> counts = new ArrayList<>(2);

    private int lines;

    Tally(boolean fades) {
        this.fades = fades;
    }

    int lines() {
        return lines;
    }

    List<Count> counts() {
        return counts;
    }

    /** @return how many lines with the word stood under the subject */
    int together(String subject) {
        Count count = find(subject);
        return count == null ? 0 : count.together;
    }

    private Count find(String subject) {
        for (Count count : counts) {
            if (count.subject.equals(subject)) {
                return count;
            }
        }
        return null;
    }

    /** One line more, or, with -1, one less. */
    void line(int step) {
        lines = Math.max(0, lines + step);
    }

    /** One line more, or less, that stood under the subject. */
    void under(String subject, boolean unexplained, int step) {
        Count count = find(subject);
        if (count == null) {
            count = new Count(subject);
            counts.add(count);
        }
        count.together = Math.max(0, count.together + step);
        count.unexplained = Math.max(0, count.unexplained + (unexplained ? step : 0));
        if (count.together == 0) {
            counts.remove(count);
        }
    }

    /** To be called after each line. */
    void fade() {
        if (fades && lines >= FULL) {
            lines /= 2;
            counts.forEach(count -> {
                count.together /= 2;
                count.unexplained /= 2;
            });
            counts.removeIf(count -> count.together == 0);
        }
    }
}
