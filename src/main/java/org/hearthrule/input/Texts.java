package org.hearthrule.input;

/** Checks one value as text. */
final class Texts {

    private Texts() {}

    /** Returns the text of a value, or null after recording why it cannot be used. */
    static String text(Node node, int limit, Problems problems) {
        if (!(node instanceof Scalar)) {
            notText(node.place(), kind(node), null, problems);
            return null;
        }
        Scalar scalar = (Scalar) node;
        switch (scalar.form()) {
            case NUMBER:
                notText(scalar.place(), "the number " + Shown.cut(scalar.text()), asText(scalar), problems);
                return null;
            case BOOLEAN:
                notText(scalar.place(), scalar.text(), asText(scalar), problems);
                return null;
            case NULL:
                notText(scalar.place(), "null", "leave the key out", problems);
                return null;
            default:
                return isUnquoted(scalar, problems) || !isSound(scalar, limit, problems) ? null : scalar.text();
        }
    }

    /** What a value is, as a phrase that follows "found". */
    static String kind(Node node) {
        if (node instanceof Mapping) {
            return "keys with values";
        }
        if (node instanceof Listing) {
            return "a list";
        }
        Scalar scalar = (Scalar) node;
        switch (scalar.form()) {
            case PLAIN:
                return scalar.text().isEmpty() ? "nothing" : Shown.cut(scalar.text());
            case NUMBER:
            case BOOLEAN:
            case NULL:
                return Shown.cut(scalar.text());
            default:
                return Shown.quoted(scalar.text());
        }
    }

    private static String asText(Scalar scalar) {
        return "write " + Shown.quoted(scalar.text());
    }

    private static void notText(Place place, String found, String perhaps, Problems problems) {
        problems.error(place, "NOT-TEXT", found, "text", perhaps);
    }

    /** Whether a value is plain text that another YAML reader would not read as text. */
    static boolean isUnquoted(Scalar scalar, Problems problems) {
        if (scalar.form() != Scalar.Form.PLAIN || !Unquoted.isAmbiguous(scalar.text())) {
            return false;
        }
        unquoted(scalar, problems);
        return true;
    }

    static void unquoted(Scalar scalar, Problems problems) {
        problems.error(
                scalar.place(),
                "UNQUOTED",
                "unquoted " + Shown.cut(scalar.text()),
                "text in quotes",
                asText(scalar));
    }

    /** Whether text is not blank, not too long and free of hidden characters; records what is wrong. */
    static boolean isSound(Scalar scalar, int limit, Problems problems) {
        String text = scalar.text();
        boolean blank = true;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c > ' ' && c <= '~') {
                blank = false;
            } else if (c != ' ' && c != '\n') {
                if (isHiddenAt(text, i)) {
                    hidden(scalar, c, problems);
                    return false;
                }
                blank &= Character.isWhitespace(c) || Character.isSpaceChar(c);
            }
        }
        if (blank) {
            problems.error(scalar.place(), "BLANK", text.isEmpty() ? "nothing" : "only space", "text", null);
            return false;
        }
        if (text.length() > limit) {
            problems.error(
                    scalar.place(),
                    "TOO-LONG",
                    "text of " + text.length() + " characters",
                    "at most " + limit + " characters",
                    null);
            return false;
        }
        return true;
    }

    private static boolean isHiddenAt(String text, int i) {
        char c = text.charAt(i);
        if (Character.isHighSurrogate(c)) {
            return i + 1 == text.length() || !Character.isLowSurrogate(text.charAt(i + 1));
        }
        if (Character.isLowSurrogate(c)) {
            return i == 0 || !Character.isHighSurrogate(text.charAt(i - 1));
        }
        return Unseen.is(c);
    }

    private static void hidden(Scalar scalar, char c, Problems problems) {
        problems.error(
                scalar.place(),
                "HIDDEN-CHARACTER",
                "the hidden character " + Shown.codePoint(c),
                "characters that can be seen",
                "delete it; it may have come along with copied text");
    }
}
