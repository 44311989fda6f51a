package org.hearthrule.input;

import java.util.Collection;

/** Pieces of messages. */
public final class Phrases {

    private static final int LONGEST_LIST = 12;

    private Phrases() { }

    /** @return a value cut to 60 characters, in double quotes */
    public static String quoted(String text) {
        return Shown.quoted(text);
    }

    /** @return {@code a, b or c}; only their number when there are many, such as {@code one of 30 columns} */
    public static String or(Collection<String> words, String many) {
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
