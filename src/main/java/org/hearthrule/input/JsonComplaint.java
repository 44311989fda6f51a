package org.hearthrule.input;

import com.fasterxml.jackson.core.JsonParseException;

/** Turns what the JSON parser complains of into a problem that says what to do. */
final class JsonComplaint {

    private JsonComplaint() {}

    static void record(JsonParseException e, Place place, boolean inside, Problems problems) {
        String complaint = String.valueOf(e.getOriginalMessage());
        String found = found(complaint);
        String expected;
        String perhaps = null;
        if (complaint.contains("double-quote to start field name")) {
            expected = "a key in double quotes";
            perhaps = found.equals("`}`") ? "remove the comma before it" : "put the key in double quotes";
        } else if (complaint.contains("expecting a colon")) {
            expected = "a colon after the key";
            perhaps = "a colon is missing before it";
        } else if (complaint.contains("expecting comma")) {
            expected = "a comma or the closing bracket";
            perhaps = "a comma is missing before it";
        } else if (complaint.startsWith("Unexpected close marker")) {
            expected = "the bracket that closes the last one opened";
        } else if (complaint.startsWith("Illegal unquoted character")) {
            found = "a line end or control character within text";
            expected = "text on one line";
            perhaps = "a closing quote is missing, or write a line end as `\\n`";
        } else if (complaint.startsWith("Unrecognized character escape")) {
            found = "a backslash before a character that needs none";
            expected = "`\\\\`, `\\\"`, `\\n` or another JSON escape";
            perhaps = "write each backslash twice";
        } else if (complaint.contains("Leading zeroes not allowed")) {
            found = "a number that begins with 0";
            expected = "a number without zeros before it";
        } else if (complaint.startsWith("Illegal character ((CTRL-CHAR")) {
            found = "a control character";
            expected = "JSON";
            perhaps = "the file is damaged; a copy may be in the backups";
        } else if (complaint.contains("plus signs")) {
            expected = "a number without `+`";
        } else if (complaint.contains("in numeric value")) {
            expected = "a digit";
        } else {
            expected = "text in double quotes, a number, true, false, null, `{` or `[`";
            perhaps = found.equals("`]`") || found.equals("`,`") && inside ? "remove the comma before it" : null;
        }
        problems.error(begin(complaint, place), "WRONG-JSON", found, expected, perhaps);
    }

    /** The parser tells where a wrong word ends; this is where it begins. */
    private static Place begin(String complaint, Place end) {
        if (complaint.contains("plus signs") && end.column() > 1) {
            return new Place(end.file(), end.line(), end.column() - 1);
        }
        String token = token(complaint);
        boolean whole = token != null && token.length() < end.column() && !token.endsWith("...");
        return whole ? new Place(end.file(), end.line(), end.column() - token.length()) : end;
    }

    private static String token(String complaint) {
        String token = between(complaint, "Unrecognized token '", "':");
        return token == null ? between(complaint, "Non-standard token '", "':") : token;
    }

    private static String found(String complaint) {
        String token = token(complaint);
        if (token != null) {
            return "`" + Shown.cut(token) + "`";
        }
        String character = between(complaint, "('", "' (code");
        if (character != null) {
            return "`" + character + "`";
        }
        String marker = between(complaint, "Unexpected close marker '", "':");
        return marker == null ? "what is not JSON (" + complaint + ")" : "`" + marker + "`";
    }

    private static String between(String text, String before, String after) {
        int start = text.indexOf(before);
        int end = start < 0 ? -1 : text.indexOf(after, start + before.length());
        return end < 0 ? null : text.substring(start + before.length(), end);
    }
}
