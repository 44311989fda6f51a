package org.hearthrule.input;

/** Makes text from a file safe and short enough to show. */
final class Shown {

    /** The most characters of a source line that are shown. */
    static final int EXCERPT_WIDTH = 76;

    private static final int VALUE_WIDTH = 60;
    private static final char MORE = '…';

    private Shown() {}

    /** Returns {@code U+XXXX}. */
    static String codePoint(int c) {
        return String.format("U+%04X", c);
    }

    /** Returns the text with each hidden character as {@code \}{@code uXXXX}. */
    static String escaped(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (Unseen.is(text.charAt(i))) {
                return escapedFrom(text);
            }
        }
        return text;
    }

    private static String escapedFrom(String text) {
        StringBuilder out = new StringBuilder(text.length() + 20);
        for (int i = 0; i < text.length(); ) {
            int c = text.codePointAt(i);
            appendCell(out, c);
            i += Character.charCount(c);
        }
        return out.toString();
    }

    /** Returns a value cut to 60 characters. */
    static String cut(String text) {
        if (text.length() <= VALUE_WIDTH) {
            return text;
        }
        int end = VALUE_WIDTH - 1;
        if (Character.isHighSurrogate(text.charAt(end - 1))) {
            end--;
        }
        return text.substring(0, end) + MORE;
    }

    /** Returns a value cut to 60 characters, in double quotes. */
    static String quoted(String text) {
        return '"' + cut(text) + '"';
    }

    private static void appendCell(StringBuilder out, int c) {
        if (Unseen.is(c)) {
            out.append(String.format("\\u%04X", c));
        } else {
            out.appendCodePoint(c);
        }
    }

    /** Appends a window of the line round the column, a line end and a caret under the column. */
    static void appendExcerpt(StringBuilder out, String line, int column) {
        int at = Math.max(0, Math.min(column - 1, line.length()));
        boolean whole = line.length() <= EXCERPT_WIDTH && escaped(line).length() <= EXCERPT_WIDTH;
        int start = whole ? 0 : at;
        int room = EXCERPT_WIDTH / 2;
        while (start > 0 && room > 0) {
            start -= start > 1 && Character.isSurrogatePair(line.charAt(start - 2), line.charAt(start - 1)) ? 2 : 1;
            room -= width(line.codePointAt(start));
        }
        StringBuilder shown = new StringBuilder();
        if (start > 0) {
            shown.append(MORE);
        }
        int caret = -1;
        int i = start;
        while (i < line.length() && shown.length() < (whole ? EXCERPT_WIDTH : EXCERPT_WIDTH - 6)) {
            if (i >= at && caret < 0) {
                caret = shown.length();
            }
            int c = line.codePointAt(i);
            appendCell(shown, c);
            i += Character.charCount(c);
        }
        if (caret < 0) {
            caret = shown.length();
        }
        if (i < line.length()) {
            String rest = escaped(line.substring(i, Math.min(line.length(), i + EXCERPT_WIDTH)));
            if (shown.length() + rest.length() <= EXCERPT_WIDTH) {
                shown.append(rest);
            } else {
                shown.append(MORE);
            }
        }
        out.append(shown).append('\n').append(" ".repeat(caret)).append('^');
    }

    private static int width(int c) {
        return Unseen.is(c) ? 6 : 1;
    }
}
