package org.hearthrule.tables;

import java.util.HashMap;
import java.util.Map;
import org.hearthrule.input.Place;

/** Makes the cells of one table. Names and subjects stand in it a thousand times and are kept once. */
final class Cells {

    private static final int WORTH_KEEPING = 60;
    private static final CellValue.Text NOTHING = new CellValue.Text("");

    private final Map<String, CellValue.Text> kept = new HashMap<>();

    Cell text(Place place, String text) {
        return new Cell(place, text(text));
    }

    CellValue.Text text(String text) {
        String clean = clean(text);
        if (clean.isEmpty()) {
            return NOTHING;
        }
        return clean.length() > WORTH_KEEPING ? new CellValue.Text(clean)
                : kept.computeIfAbsent(clean, CellValue.Text::new);
    }

    /** Returns a text with line ends of one kind, spaces for tabs, and no space of any kind around it. */
    static String clean(String text) {
        String plain = text.replace("\r\n", "\n").replace('\r', '\n').replace('\t', ' ');
        int start = 0;
        int end = plain.length();
        while (start < end && isSpace(plain.charAt(start))) {
            start++;
        }
        while (start < end && isSpace(plain.charAt(end - 1))) {
            end--;
        }
        return plain.substring(start, end);
    }

    /** Spreadsheets and web pages leave no-break spaces behind, which {@link String#strip} does not take. */
    static boolean isSpace(char c) {
        return Character.isWhitespace(c) || Character.isSpaceChar(c);
    }
}
