package org.hearthrule.input;

/**
 * A single value.
 *
 * @param place where it begins
 * @param text the text, with quotes taken off and escapes undone
 * @param form how it was written
 */
public record Scalar(Place place, String text, Form form) implements Node {

    /** How a single value was written. */
    public enum Form {
        /** YAML, without quotes; also a value left out, which has the text "". */
        PLAIN,
        /** YAML in single or double quotes, or a JSON string. */
        QUOTED,
        /** YAML, a block after {@code |} or {@code >}. */
        BLOCK,
        /** A JSON number. */
        NUMBER,
        /** JSON true or false. */
        BOOLEAN,
        /** JSON null. */
        NULL
    }
}
