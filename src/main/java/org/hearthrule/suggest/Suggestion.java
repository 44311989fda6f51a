package org.hearthrule.suggest;

import java.util.List;

/**
 * A subject offered for a line.
 *
 * @param subject id of the common vocabulary: a subject, or an area when the line says no more
 * @param because the words of the line that led to it, as they were written, in their order; never empty
 * @param learned whether it comes from what this family confirmed before, not from the vocabulary
 */
public record Suggestion(String subject, List<String> because, boolean learned) {

    public Suggestion {
        because = List.copyOf(because);
    }
}
