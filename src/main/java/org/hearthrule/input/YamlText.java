package org.hearthrule.input;

import java.util.Optional;

/**
 * Reads a YAML text strictly.
 *
 * <p>Only mappings, lists and text are read. Refused, each at its place: {@code REPEATED-KEY},
 * {@code ANCHOR}, {@code ALIAS}, {@code TAG}, {@code MERGE-KEY}, {@code DIRECTIVE}, {@code
 * SEVERAL-DOCUMENTS}, {@code TAB-INDENT}, {@code KEY-NOT-TEXT}, {@code EMPTY-DOCUMENT}, {@code
 * CONTROL-CHARACTER} and {@code HIDDEN-CHARACTER} (also in comments), {@code TOO-BIG} (more than
 * 2,000,000 characters), {@code TOO-DEEP} (more than 60 levels) and, for any other wrong syntax,
 * {@code WRONG-YAML}. A byte-order mark at the start is skipped.
 */
public final class YamlText {

    /** The most characters (UTF-16 units) that a text may have. */
    public static final int MAX_CHARACTERS = 2_000_000;

    /** The most mappings and lists that may lie within one another. */
    public static final int MAX_DEPTH = 60;

    private YamlText() {}

    /**
     * Reads a text. Never throws for what the text contains.
     *
     * @param file the name of the file as it is to be shown
     * @param content the text
     * @param problems takes every problem; the file is registered there
     * @return the tree; empty when the text is not YAML. Other problems leave a tree, so that more
     *     problems can be found in it: see {@link Problems#hasErrors()}
     */
    public static Optional<Node> read(String file, String content, Problems problems) {
        problems.register(file, content);
        if (content.length() > MAX_CHARACTERS) {
            problems.error(
                    new Place(file, 1, 1),
                    "TOO-BIG",
                    content.length() + " characters",
                    "at most " + MAX_CHARACTERS,
                    "split the file");
            return Optional.empty();
        }
        YamlSource source = new YamlSource(file, content);
        if (!source.isReadable(problems)) {
            return Optional.empty();
        }
        return new YamlTree(source, problems).read();
    }
}
