package org.hearthrule.suggest;

/**
 * One word of a line that can mean something.
 *
 * @param stem     its stem; the stems of a phrase that is read as one word, with spaces between
 * @param start    where it begins in the line, in characters (UTF-16 units)
 * @param end      where it ends, exclusive
 * @param sentence the number of its sentence, from 0
 * @param clause   the number of its part between two marks such as commas, from 0
 */
record Word(String stem, int start, int end, int sentence, int clause) {

    /** The shortest word that can be told apart from another when it is spelled wrong. */
    private static final int SHORTEST_MISSPELLED = 7;

    String in(String line) {
        return line.substring(start, end);
    }

    boolean mayBeMisspelled() {
        return end - start >= SHORTEST_MISSPELLED && stem.indexOf(' ') < 0 && !isNumber();
    }

    boolean isNumber() {
        return Character.isDigit(stem.charAt(0));
    }

    Word as(String otherStem) {
        return new Word(otherStem, start, end, sentence, clause);
    }
}
