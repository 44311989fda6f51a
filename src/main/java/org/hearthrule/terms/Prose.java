package org.hearthrule.terms;

import java.util.Locale;

/** Fits words from a law file into a sentence. */
public final class Prose {

    private Prose() { }

    /** @return the text with a full stop, unless it ends a sentence already */
    public static String ended(String text) {
        return text.endsWith(".") || text.endsWith("?") || text.endsWith("!") ? text : text + '.';
    }

    /** @return the text without its full stop */
    public static String unended(String text) {
        return text.endsWith(".") ? text.substring(0, text.length() - 1) : text;
    }

    /** @return the text fit for the middle of a sentence; an abbreviation keeps its capitals */
    public static String lowerFirst(String text) {
        boolean word = text.length() > 1 && Character.isLowerCase(text.charAt(1));
        return word ? text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1) : text;
    }

    /** @return the text fit for the beginning of a sentence */
    public static String upperFirst(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
