package org.hearthrule.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Several texts in one cell, parted by semicolons. A text that holds a semicolon itself stands in double quotes, those
 * in it written twice, as CSV does for whole cells.
 */
final class CellList {

    static final String SEMICOLON = ";";
    private static final Pattern QUOTED = Pattern.compile("\\s*\"((?:[^\"]|\"\")*)\"\\s*(;|$)");

    private CellList() { }

    static String join(List<String> texts) {
        List<String> written = new ArrayList<>(texts.size());
        for (String text : texts) {
            written.add(text.contains(SEMICOLON) ? '"' + text.replace("\"", "\"\"") + '"' : text);
        }
        return String.join("; ", written);
    }

    /** Returns the texts of a cell as {@link #join} writes them. */
    static List<String> split(String cell) {
        List<String> parts = new ArrayList<>();
        int at = 0;
        Matcher quoted = QUOTED.matcher(cell);
        while (at < cell.length()) {
            quoted.region(at, cell.length());
            if (quoted.lookingAt() && quoted.group(1).contains(SEMICOLON)) {
                parts.add(quoted.group(1).replace("\"\"", "\""));
                at = quoted.end();
            } else {
                int end = cell.indexOf(SEMICOLON, at);
                add(parts, cell.substring(at, end < 0 ? cell.length() : end));
                at = end < 0 ? cell.length() : end + 1;
            }
        }
        return List.copyOf(parts);
    }

    /** Returns the parts of a text between signs, given as a pattern; blank ones are left out. */
    static List<String> split(String text, String signs) {
        List<String> parts = new ArrayList<>();
        for (String part : text.split(signs)) {
            add(parts, part);
        }
        return List.copyOf(parts);
    }

    private static void add(List<String> parts, String part) {
        String clean = Cells.clean(part);
        if (!clean.isEmpty()) {
            parts.add(clean);
        }
    }
}
