package org.hearthrule.page.frame;

/**
 * One of several answers of a field.
 *
 * @param value as sent
 * @param words as read
 * @param hint  a further sentence, or null
 */
public record Option(String value, String words, String hint) {

    public static Option of(String value, String words) {
        return new Option(value, words, null);
    }
}
