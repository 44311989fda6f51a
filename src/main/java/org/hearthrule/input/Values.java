package org.hearthrule.input;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;

/** Checks one value as a number, as yes or no, or as one of a few words. */
final class Values {

    private static final int LONGEST_LIST = 12;

    private Values() {}

    /** Returns a value that is sound text in quotes, or null after recording why it is not. */
    static Scalar quoted(Node node, Problems problems) {
        if (!(node instanceof Scalar) || ((Scalar) node).form() != Scalar.Form.PLAIN) {
            return Texts.text(node, Fields.MAX_TEXT, problems) == null ? null : (Scalar) node;
        }
        Scalar scalar = (Scalar) node;
        if (Texts.isSound(scalar, Fields.MAX_TEXT, problems)) {
            Texts.unquoted(scalar, problems);
        }
        return null;
    }

    static OptionalInt integer(Node node, int min, int max, Problems problems) {
        Scalar scalar = node instanceof Scalar ? (Scalar) node : null;
        String text = scalar == null ? "" : scalar.text();
        boolean json = scalar != null && scalar.form() == Scalar.Form.NUMBER;
        boolean form = json || scalar != null && scalar.form() == Scalar.Form.PLAIN;
        if (!form || !isInteger(text, json)) {
            notAnInteger(node, text, problems);
            return OptionalInt.empty();
        }
        long number = text.length() > 11 ? Long.MAX_VALUE : Long.parseLong(text);
        if (text.length() > 11 || number < min || number > max) {
            String range = "a number from " + min + " to " + max;
            problems.error(node.place(), "OUT-OF-RANGE", Shown.cut(text), range, null);
            return OptionalInt.empty();
        }
        return OptionalInt.of((int) number);
    }

    private static boolean isInteger(String text, boolean json) {
        int start = json && text.startsWith("-") ? 1 : 0;
        if (start == text.length() || text.charAt(start) == '0' && text.length() > start + 1) {
            return false;
        }
        for (int i = start; i < text.length(); i++) {
            if (text.charAt(i) < '0' || text.charAt(i) > '9') {
                return false;
            }
        }
        return true;
    }

    private static void notAnInteger(Node node, String text, Problems problems) {
        String digits = text.replace("_", "").replace(",", "").replace("+", "").replace(" ", "");
        int zeros = 0;
        while (zeros < digits.length() - 1 && digits.charAt(zeros) == '0') {
            zeros++;
        }
        digits = digits.substring(zeros);
        String perhaps = isInteger(digits, false) ? "write " + Shown.cut(digits) : null;
        String expected = "a whole number in plain digits";
        problems.error(node.place(), "NOT-AN-INTEGER", Texts.kind(node), expected, perhaps);
    }

    static Optional<Boolean> yesNo(Node node, Problems problems) {
        Scalar scalar = node instanceof Scalar ? (Scalar) node : null;
        if (scalar != null && scalar.form() == Scalar.Form.BOOLEAN) {
            return Optional.of(scalar.text().equals("true"));
        }
        if (scalar != null && scalar.form() == Scalar.Form.PLAIN) {
            if (scalar.text().equals("yes")) {
                return Optional.of(true);
            }
            if (scalar.text().equals("no")) {
                return Optional.of(false);
            }
        }
        String perhaps = scalar == null ? null : yesNoGuess(scalar);
        problems.error(node.place(), "NOT-YES-OR-NO", Texts.kind(node), "yes or no, without quotes", perhaps);
        return Optional.empty();
    }

    private static String yesNoGuess(Scalar scalar) {
        boolean json = scalar.form() == Scalar.Form.QUOTED;
        switch (scalar.text().toLowerCase(Locale.ROOT)) {
            case "yes": case "y": case "on":
                return "write yes";
            case "no": case "n": case "off":
                return "write no";
            case "true":
                return json ? "write true (in JSON) or yes (in YAML)" : "write yes";
            case "false":
                return json ? "write false (in JSON) or no (in YAML)" : "write no";
            default:
                return null;
        }
    }

    static <E extends Enum<E>> E oneOf(Node node, Class<E> type, Problems problems) {
        E[] constants = type.getEnumConstants();
        if (isTextual(node)) {
            Scalar scalar = (Scalar) node;
            for (E constant : constants) {
                if (isKebab(constant.name(), scalar.text())) {
                    return Texts.isUnquoted(scalar, problems) ? null : constant;
                }
            }
        }
        List<String> known = new ArrayList<>();
        for (E constant : constants) {
            known.add(constant.name().toLowerCase(Locale.ROOT).replace('_', '-'));
        }
        unknown(node, known, problems);
        return null;
    }

    static String oneOf(Node node, Collection<String> known, Problems problems) {
        if (isTextual(node) && known.contains(((Scalar) node).text())) {
            return Texts.isUnquoted((Scalar) node, problems) ? null : ((Scalar) node).text();
        }
        unknown(node, known, problems);
        return null;
    }

    private static boolean isTextual(Node node) {
        return node instanceof Scalar
                && (((Scalar) node).form() == Scalar.Form.PLAIN || ((Scalar) node).form() == Scalar.Form.QUOTED);
    }

    private static boolean isKebab(String name, String text) {
        if (name.length() != text.length()) {
            return false;
        }
        for (int i = 0; i < name.length(); i++) {
            char c = name.charAt(i);
            char kebab = c == '_' ? '-' : c >= 'A' && c <= 'Z' ? (char) (c + 32) : c;
            if (kebab != text.charAt(i)) {
                return false;
            }
        }
        return true;
    }

    private static void unknown(Node node, Collection<String> known, Problems problems) {
        String perhaps = node instanceof Scalar
                ? Nearest.of(((Scalar) node).text(), known)
                        .map(word -> "you meant " + word)
                        .orElse(null)
                : null;
        String expected = list(known, LONGEST_LIST, "nothing", '\0');
        problems.error(node.place(), "UNKNOWN-VALUE", Texts.kind(node), expected, perhaps);
    }

    /** Lists words, each between quote characters unless that is NUL; only their number if too many. */
    static String list(Collection<String> words, int most, String none, char quote) {
        if (words.isEmpty()) {
            return none;
        }
        if (words.size() > most) {
            return "one of " + words.size() + " known words";
        }
        StringBuilder list = new StringBuilder(words.size() == 1 ? "" : "one of ");
        int left = words.size();
        for (String word : words) {
            if (quote != '\0') {
                list.append(quote).append(word).append(quote);
            } else {
                list.append(word);
            }
            left--;
            if (left > 0) {
                list.append(left == 1 ? " or " : ", ");
            }
        }
        return list.toString();
    }
}
