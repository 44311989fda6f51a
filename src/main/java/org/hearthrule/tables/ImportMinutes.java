package org.hearthrule.tables;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.regex.Pattern;
import org.hearthrule.input.Phrases;
import org.hearthrule.input.Problems;

/**
 * Reads a time spent: {@code 90}, {@code 1:30} or {@code 1.5 h}, or a span of time of a spreadsheet; nothing else. A
 * bare number is minutes, or hours where somebody said so.
 */
final class ImportMinutes {

    private static final int HOUR = 60;
    private static final int LONGEST_DAY = 24 * HOUR;
    private static final int LONGEST = 12;
    private static final int LONGEST_NUMBER = 20;
    private static final int UNREADABLE = -1;
    private static final BigDecimal HAIR = new BigDecimal("0.001");

    private static final Pattern OF_HOURS = Pattern.compile("\\b(h|hrs?|hours?)\\b");
    private static final Pattern BARE = Pattern.compile("[0-9]{1,6}(\\.[0-9]+)?");

    private ImportMinutes() { }

    /**
     * Returns the minutes, or 0 after recording why there are none.
     *
     * @param header of the column; when it speaks of hours, a bare number is not taken for minutes unless that was said
     * @param hours  true when a bare number is hours, false when it is minutes, null when nobody said
     */
    static int read(Cell cell, String header, Boolean hours, Problems problems) {
        boolean speaksOfHours = OF_HOURS.matcher(header.toLowerCase(Locale.ROOT)).find();
        boolean unclear = hours == null && speaksOfHours;
        String text = cell.text();
        int minutes = cell.value() instanceof CellValue.Span span
                ? span.isOfDay() ? UNREADABLE : whole(span.minutes())
                : cell.value() instanceof CellValue.Moment || !isBare(text) ? parse(text)
                : unclear ? UNREADABLE : bare(text, Boolean.TRUE.equals(hours));
        if (minutes > LONGEST_DAY) {
            problems.error(cell.place(), "OUT-OF-RANGE", Phrases.quoted(text), "at most 24 hours, which are "
                    + LONGEST_DAY + " minutes", null);
            return 0;
        }
        if (minutes >= 0) {
            return minutes;
        }
        problems.error(cell.place(), unclear && isBare(text) ? "UNCLEAR-MINUTES" : "WRONG-MINUTES", Phrases.quoted(text),
                "minutes such as 90, or hours such as 1:30 or 1.5 h", advice(cell, unclear));
        return 0;
    }

    private static boolean isBare(String text) {
        return text.length() <= LONGEST_NUMBER && BARE.matcher(text).matches();
    }

    private static int bare(String text, boolean hours) {
        BigDecimal number = new BigDecimal(text);
        return whole(hours ? number.multiply(BigDecimal.valueOf(HOUR)) : number);
    }

    /** Returns whole minutes. What a spreadsheet computed may miss them by a hair. */
    private static int whole(BigDecimal minutes) {
        BigDecimal rounded = minutes.setScale(0, RoundingMode.HALF_UP);
        boolean near = rounded.subtract(minutes).abs().compareTo(HAIR) <= 0;
        return !near || rounded.signum() < 0 ? UNREADABLE
                : rounded.min(BigDecimal.valueOf(LONGEST_DAY + 1L)).intValueExact();
    }

    private static String advice(Cell cell, boolean unclear) {
        if (cell.value() instanceof CellValue.Span span && span.isOfDay()) {
            return "it is a time of day: format the column as [h]:mm";
        }
        return guess(cell.text(), unclear);
    }

    private static int parse(String text) {
        if (text.length() > LONGEST) {
            return UNREADABLE;
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
