package org.hearthrule.tables;

/**
 * Keeps text from being run as a formula when a spreadsheet program opens a table as text: what begins with
 * {@code = + - @}, a tab or a line end gets an apostrophe before it, and loses it again when we read it. So say
 * OWASP's pages on CSV injection (owasp.org/www-community/attacks/CSV_Injection). Space before the sign does not count,
 * since some programs drop it; apostrophes before it do, so that what was written with one comes back with one.
 */
final class CsvGuard {

    private static final char GUARD = '\'';
    private static final String SIGNS = "=+-@\t\r\n";

    private CsvGuard() { }

    /** Returns a text as it is to be written. */
    static String given(String text) {
        return isSign(text, 0) ? GUARD + text : text;
    }

    /** Returns a text that was read as it was before it was written. */
    static String taken(String text) {
        return !text.isEmpty() && text.charAt(0) == GUARD && isSign(text, 1) ? text.substring(1) : text;
    }

    private static boolean isSign(String text, int start) {
        int i = start;
        while (i < text.length() && text.charAt(i) == GUARD) {
            i++;
        }
        while (i < text.length() && SIGNS.indexOf(text.charAt(i)) < 0 && Cells.isSpace(text.charAt(i))) {
            i++;
        }
        return i < text.length() && SIGNS.indexOf(text.charAt(i)) >= 0;
    }
}
