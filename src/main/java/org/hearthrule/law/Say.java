package org.hearthrule.law;

import java.util.Collection;

/** Short phrases for messages. */
final class Say {

    private static final int LONGEST_WORD = 60;
    private static final int LONGEST_LIST = 12;

    private Say() { }

    /** @return the text between backquotes, cut to 60 characters */
    static String code(String text) {
        return '`' + cut(text) + '`';
    }

    static String cut(String text) {
        if (text.length() <= LONGEST_WORD) {
            return text;
        }
        int end = LONGEST_WORD - 1;
        if (Character.isHighSurrogate(text.charAt(end - 1))) {
            end--;
        }
        return text.substring(0, end) + '…';
    }

    /** @return {@code one of a, b or c}, or the words for none */
    static String oneOf(Collection<String> words, String none) {
        if (words.isEmpty()) {
            return none;
        }
        return words.size() > LONGEST_LIST ? "one of " + words.size() + " known names" : oneOf(words);
    }

    /** @return {@code one of a, b or c}, however many they are */
    static String oneOf(Collection<String> words) {
        StringBuilder out = new StringBuilder(words.size() == 1 ? "" : "one of ");
        int left = words.size();
        for (String word : words) {
            out.append(code(word));
            left--;
            if (left > 0) {
                out.append(left == 1 ? " or " : ", ");
            }
        }
        return out.toString();
    }
}
