package org.hearthrule.input;

/**
 * Knows which plain text another YAML reader would take for something other than text: the words,
 * numbers, dates and times of the YAML 1.1 type repository and of the YAML 1.2 core schema, and what
 * could be mistaken for a number with underscores.
 */
final class Unquoted {

    private Unquoted() {}

    static boolean isAmbiguous(String text) {
        if (text.isEmpty()) {
            return false;
        }
        char first = text.charAt(0);
        if (first >= '0' && first <= '9' || first == '+' || first == '-' || first == '.' || first == '_') {
            return isNumber(text) || isTimestamp(text);
        }
        return text.length() <= 5 && isWord(text);
    }

    private static boolean isWord(String text) {
        switch (text) {
            case "~": case "null": case "Null": case "NULL":
            case "true": case "True": case "TRUE": case "false": case "False": case "FALSE":
            case "yes": case "Yes": case "YES": case "no": case "No": case "NO":
            case "on": case "On": case "ON": case "off": case "Off": case "OFF":
            case "y": case "Y": case "n": case "N":
            case "=": case "<<":
                return true;
            default:
                return false;
        }
    }

    private static boolean isNumber(String text) {
        int i = text.charAt(0) == '+' || text.charAt(0) == '-' ? 1 : 0;
        if (i == text.length()) {
            return false;
        }
        String rest = i == 0 ? text : text.substring(i);
        return isDecimal(rest) || isBased(rest) || isNamed(rest);
    }

    private static boolean isNamed(String rest) {
        switch (rest) {
            case ".inf": case ".Inf": case ".INF": case ".nan": case ".NaN": case ".NAN":
                return true;
            default:
                return false;
        }
    }

    private static boolean isBased(String rest) {
        if (rest.length() < 3 || rest.charAt(0) != '0') {
            return false;
        }
        char base = rest.charAt(1);
        int radix = base == 'x' ? 16 : base == 'o' ? 8 : base == 'b' ? 2 : 0;
        if (radix == 0) {
            return false;
        }
        for (int i = 2; i < rest.length(); i++) {
            char c = rest.charAt(i);
            if (c != '_' && (c > 'f' || Character.digit(c, radix) < 0)) {
                return false;
            }
        }
        return true;
    }

    /** Digits with underscores, points and colons, and perhaps an exponent. */
    private static boolean isDecimal(String rest) {
        boolean digits = false;
        int i = 0;
        while (i < rest.length() && isDecimalPart(rest.charAt(i))) {
            digits |= isDigit(rest.charAt(i));
            i++;
        }
        if (!digits || i == rest.length()) {
            return digits;
        }
        if (rest.charAt(i) != 'e' && rest.charAt(i) != 'E') {
            return false;
        }
        i++;
        if (i < rest.length() && (rest.charAt(i) == '+' || rest.charAt(i) == '-')) {
            i++;
        }
        int exponent = i;
        while (i < rest.length() && isDigit(rest.charAt(i))) {
            i++;
        }
        return i == rest.length() && i > exponent;
    }

    private static boolean isDecimalPart(char c) {
        return isDigit(c) || c == '_' || c == '.' || c == ':';
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    /** Four digits, one or two, one or two, with hyphens, and perhaps a time after them. */
    private static boolean isTimestamp(String text) {
        int month = digitsThenHyphen(text, 0, 4, 4);
        int day = month < 0 ? -1 : digitsThenHyphen(text, month, 1, 2);
        if (day < 0 || day >= text.length() || !isDigit(text.charAt(day))) {
            return false;
        }
        int i = day + 1;
        if (i < text.length() && isDigit(text.charAt(i))) {
            i++;
        }
        if (i == text.length()) {
            return true;
        }
        char after = text.charAt(i);
        if (after != 'T' && after != 't' && after != ' ' && after != '\t') {
            return false;
        }
        for (; i < text.length(); i++) {
            if (!isDigit(text.charAt(i)) && "TtZz:.+- \t".indexOf(text.charAt(i)) < 0) {
                return false;
            }
        }
        return true;
    }

    private static int digitsThenHyphen(String text, int start, int fewest, int most) {
        int i = start;
        while (i < text.length() && i - start < most && isDigit(text.charAt(i))) {
            i++;
        }
        return i - start >= fewest && i < text.length() && text.charAt(i) == '-' ? i + 1 : -1;
    }
}
