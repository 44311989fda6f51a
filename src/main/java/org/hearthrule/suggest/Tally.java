package org.hearthrule.suggest;

import java.util.HashMap;
import java.util.Map;

/** How often a word stood in a family's lines, and under which subjects. Not safe for several threads. */
final class Tally {

    /** When a word has stood in so many lines, all its counts are halved, so that a new habit can outweigh an old one. */
    private static final int FULL = 32;

    /** Counts of one subject. */
    static final class Count {
        /** Lines with the word that stood under the subject. */
        int together;
        /** Those of them in which nothing else explained the subject. */
        int unexplained;
    }

    private final boolean fades;
    private final Map<String, Count> counts = new HashMap<>(4);
    private int lines;

    Tally(boolean fades) {
        this.fades = fades;
    }

    int lines() {
        return lines;
    }

    Map<String, Count> counts() {
        return counts;
    }

    /** @return how many lines with the word stood under the subject */
    int together(String subject) {
        Count count = counts.get(subject);
        return count == null ? 0 : count.together;
    }

    /** One line more, or, with -1, one less. */
    void line(int step) {
        lines = Math.max(0, lines + step);
    }

    /** One line more, or less, that stood under the subject. */
    void under(String subject, boolean unexplained, int step) {
        Count count = counts.computeIfAbsent(subject, id -> new Count());
        count.together = Math.max(0, count.together + step);
        count.unexplained = Math.max(0, count.unexplained + (unexplained ? step : 0));
    }

    /** To be called after each line. */
    void fade() {
        if (fades && lines >= FULL) {
            lines /= 2;
            counts.values().forEach(count -> {
                count.together /= 2;
                count.unexplained /= 2;
            });
        }
        counts.values().removeIf(count -> count.together == 0);
    }
}
