package org.hearthrule.suggest;

import java.util.List;

/**
 * One word or phrase of the vocabulary.
 *
 * @param stems   its stems, at least one
 * @param subject id of the subject it speaks for
 * @param kind    how surely
 */
record Cue(List<String> stems, String subject, Kind kind) {

    /** How much a cue says; the constants are the keys of the file. */
    enum Kind {
        /** One is enough. */
        SURELY,
        /** Enough when one of {@link #WITH} stands near. */
        PERHAPS,
        /** Says nothing alone. */
        WITH
    }

    Cue {
        stems = List.copyOf(stems);
    }

    /** @return the stems with spaces between, under which a family's habits are kept */
    String key() {
        return stems.size() == 1 ? stems.get(0) : String.join(" ", stems);
    }
}
