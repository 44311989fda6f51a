package org.hearthrule.tables;

import java.math.BigDecimal;
import java.util.Locale;
import org.hearthrule.input.Phrases;
import org.hearthrule.input.Problems;

/** Reads a time spent: {@code 90}, {@code 1:30} or {@code 1.5 h}; nothing else. */
final class ImportMinutes {

    private static final int HOUR = 60;
    private static final int LONGEST_DAY = 24 * HOUR;
    private static final int LONGEST = 12;
    private static final int UNREADABLE = -1;

    private ImportMinutes() { }

    /**
     * Returns the minutes, or 0 after recording why there are none.
     *
     * @param header of the column; when it speaks of hours, a bare number is not taken for minutes
     */
    static int read(CsvTable.Cell cell, String header, Problems problems) {
        String text = cell.text();
        boolean hours = header.toLowerCase(Locale.ROOT).matches(".*\\b(h|hrs?|hours?)\\b.*");
        boolean bare = text.matches("[0-9]+");
        int minutes = bare && hours ? UNREADABLE : parse(text);
        if (minutes > LONGEST_DAY) {
            problems.error(cell.place(), "OUT-OF-RANGE", Phrases.quoted(text), "at most 24 hours, which are "
                    + LONGEST_DAY + " minutes", null);
            return 0;
        }
        if (minutes >= 0) {
            return minutes;
        }
        problems.error(cell.place(), "WRONG-MINUTES", Phrases.quoted(text),
                "minutes such as 90, or hours such as 1:30 or 1.5 h", guess(text, hours));
        return 0;
    }

    private static int parse(String text) {
        if (text.length() > LONGEST) {
            return UNREADABLE;
        }
        if (text.matches("[0-9]{1,6}")) {
            return Integer.parseInt(text);
        }
        if (text.matches("[0-9]{1,2}:[0-5][0-9]")) {
            int colon = text.indexOf(':');
            return Integer.parseInt(text.substring(0, colon)) * HOUR + Integer.parseInt(text.substring(colon + 1));
        }
        if (!text.matches("[0-9]{1,3}(\\.[0-9]{1,4})? ?h")) {
            return UNREADABLE;
        }
        BigDecimal minutes = new BigDecimal(text.substring(0, text.length() - 1).strip()).multiply(
                BigDecimal.valueOf(HOUR)).stripTrailingZeros();
        return minutes.scale() > 0 ? UNREADABLE : minutes.intValueExact();
    }

    private static String guess(String text, boolean hours) {
        String plain = text.toLowerCase(Locale.ROOT).replace(',', '.').strip();
        if (plain.matches("[0-9]{1,2}(\\.[0-9]{1,2})?") && (hours || plain.indexOf('.') >= 0)) {
            return "write \"" + plain + " h\"";
        }
        if (plain.matches("[0-9]{1,4} ?(m|min|mins|minutes)\\.?")) {
            return "write \"" + plain.replaceAll("[^0-9]", "") + '"';
        }
        if (plain.matches("[0-9]{1,2}(\\.[0-9]{1,2})? ?(h|hr|hrs|hour|hours)\\.?")) {
            BigDecimal number = new BigDecimal(plain.replaceAll("[^0-9.]", "").replaceAll("\\.$", ""));
            BigDecimal minutes = number.multiply(BigDecimal.valueOf(HOUR)).stripTrailingZeros();
            return minutes.scale() > 0 ? "write the minutes" : "write \"" + minutes.toPlainString() + '"';
        }
        return null;
    }
}
