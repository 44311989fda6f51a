package org.hearthrule.checklist;

/**
 * What the place text is written to can show.
 *
 * @param columns how wide a line may be
 * @param unicode false: only ASCII
 * @param weight  true: bold, dim and one colour may be used
 */
public record Style(int columns, boolean unicode, boolean weight) {

    public static final int COLUMNS = 80;

    /** A file or a pipe: no weight. */
    public static final Style PLAIN = new Style(COLUMNS, true, false);
    public static final Style ASCII = new Style(COLUMNS, false, false);

    private static final String BOLD = "\u001b[1m";
    private static final String DIM = "\u001b[2m";
    private static final String ACCENT = "\u001b[1;33m";
    private static final String END = "\u001b[0m";

    public String bold(String text) {
        return set(BOLD, text);
    }

    public String dim(String text) {
        return set(DIM, text);
    }

    /** The one colour, for what has passed. */
    public String accent(String text) {
        return set(ACCENT, text);
    }

    private String set(String weightOn, String text) {
        return weight && !text.isEmpty() ? weightOn + text + END : text;
    }
}
