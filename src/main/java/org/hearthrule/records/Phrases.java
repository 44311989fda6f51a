package org.hearthrule.records;

import java.util.Collection;

/** Pieces of messages. */
final class Phrases {

    private static final int LONGEST_VALUE = 60;
    private static final int LONGEST_LIST = 12;

    private Phrases() { }

    /** Returns a value cut to 60 characters, in double quotes. */
    static String quoted(String text) {
        if (text.length() <= LONGEST_VALUE) {
            return '"' + text + '"';
        }
        int end = LONGEST_VALUE - 1;
        if (Character.isHighSurrogate(text.charAt(end - 1))) {
            end--;
        }
        return '"' + text.substring(0, end) + "…\"";
    }

    /** Returns {@code a, b or c}; only their number when there are many. */
    static String or(Collection<String> words, String many) {
        if (words.size() > LONGEST_LIST) {
            return "one of " + words.size() + " " + many;
        }
        StringBuilder text = new StringBuilder();
        int left = words.size();
        for (String word : words) {
            text.append(word);
            left--;
            if (left > 0) {
                text.append(left == 1 ? " or " : ", ");
            }
        }
        return text.toString();
    }
}
