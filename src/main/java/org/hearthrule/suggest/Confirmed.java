package org.hearthrule.suggest;

import java.util.Set;

/**
 * A line that a family has logged, with the subjects under which it stands in their book.
 *
 * @param words    what they wrote
 * @param subjects ids of the common vocabulary; ids that are none are passed over
 */
public record Confirmed(String words, Set<String> subjects) {

    public Confirmed {
        subjects = Set.copyOf(subjects);
    }
}
