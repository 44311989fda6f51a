package org.hearthrule.input;

import org.yaml.snakeyaml.error.Mark;

/** A YAML text before it is parsed: looks for characters that may not stand in it, and finds places. */
final class YamlSource {

    private final String file;
    private final String text;
    private boolean surrogates;
    private Problems problems;
    private int line = 1;
    private int lineStart;
    private boolean readable = true;

    YamlSource(String file, String content) {
        this.file = file;
        this.text = content.startsWith("\uFEFF") ? content.substring(1) : content;
    }

    /** The text without a byte-order mark. */
    String text() {
        return text;
    }

    /** Records every character that may not stand here; returns whether there was none. */
    boolean isReadable(Problems into) {
        problems = into;
        boolean indent = true;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\n' || c == '\r') {
                if (c == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n') {
                    i++;
                }
                line++;
                lineStart = i + 1;
                indent = true;
            } else if (c == '\t') {
                if (indent) {
                    tab(i);
                }
                indent = false;
            } else {
                indent &= c == ' ';
                if (c < ' ' || c > '~') {
                    i += check(i);
                }
            }
        }
        return readable;
    }

    private void tab(int index) {
        readable = false;
        problems.error(
                at(index),
                "TAB-INDENT",
                "a tab in front of a line",
                "spaces",
                "set the editor to indent with spaces");
    }

    /** Checks one character that is not plain ASCII; returns how many more units it takes up. */
    private int check(int index) {
        int c = text.codePointAt(index);
        if (c > 0xFFFF) {
            surrogates = true;
            return 1;
        }
        if (Unseen.is(c) || c >= 0xFFFE) {
            readable = false;
            boolean control = c < 0xA0;
            problems.error(
                    at(index),
                    control ? "CONTROL-CHARACTER" : "HIDDEN-CHARACTER",
                    (control ? "the control character " : "the hidden character ") + Shown.codePoint(c),
                    "characters that can be seen",
                    "delete it; it may have come along with copied text");
        }
        return 0;
    }

    private Place at(int index) {
        return new Place(file, line, index - lineStart + 1);
    }

    /** Returns the place of a mark of the parser, which counts lines and code points from 0. */
    Place place(Mark mark) {
        int column = mark.getColumn();
        if (surrogates) {
            int at = text.offsetByCodePoints(0, mark.getIndex());
            column = at - text.offsetByCodePoints(at, -column);
        }
        return new Place(file, mark.getLine() + 1, column + 1);
    }

    /** Returns the character at a mark as a phrase. */
    String found(Mark mark) {
        int at = surrogates ? text.offsetByCodePoints(0, mark.getIndex()) : mark.getIndex();
        if (at >= text.length()) {
            return "the end of the file";
        }
        int c = text.codePointAt(at);
        return c == '\n' || c == '\r' ? "the end of the line" : "`" + Character.toString(c) + "`";
    }
}
