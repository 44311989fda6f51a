package org.hearthrule.law;

import java.math.BigDecimal;
import java.util.List;

/**
 * A comparison of scores with a number, or with the scores of the test before.
 *
 * @param measure    what the number is, for example {@code percentile}, {@code stanine}, {@code grade-level}
 * @param areas      areas that must each pass; {@code composite} for the whole; empty: every area reported
 * @param comparison the exact comparison
 * @param number     the law's number; null when the score of the test before takes its place
 */
public record Threshold(String measure, List<String> areas, Comparison comparison, BigDecimal number) {

    /** @return true when a score is held against that of the test before */
    public boolean againstTestBefore() {
        return number == null;
    }

    public enum Comparison {
        ABOVE("above"), AT_LEAST("at least"), BELOW("below"), AT_MOST("at most");

        private final String words;

        Comparison(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }

        public boolean holds(BigDecimal value, BigDecimal bound) {
            int order = value.compareTo(bound);
            return switch (this) {
                case ABOVE -> order > 0;
                case AT_LEAST -> order >= 0;
                case BELOW -> order < 0;
                case AT_MOST -> order <= 0;
            };
        }
    }
}
