package org.hearthrule.suggest;

/**
 * Something learned from a family's own lines, so that it can be shown to them.
 *
 * @param word     the stem of a word, or the stems of a phrase of the vocabulary with spaces between
 * @param subject  id of the common vocabulary
 * @param kind     what follows from it
 * @param together how many of the lines with the word stood under the subject
 * @param lines    how many lines held the word; long habits are halved from time to time, so that new ones count
 */
public record Habit(String word, String subject, Kind kind, int together, int lines) {

    /** What a habit does. */
    public enum Kind {
        /** The word suggests the subject, though the vocabulary does not say so. */
        TAUGHT,
        /** The word no longer suggests the subject, though the vocabulary says so. */
        STRUCK
    }
}
