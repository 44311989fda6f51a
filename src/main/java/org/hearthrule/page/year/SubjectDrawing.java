package org.hearthrule.page.year;

import java.util.List;

/**
 * One subject through the year, as it is drawn: a disc for each month from July on, 24 wide each.
 *
 * @param id     unique in the page
 * @param name   the law's name, or that of the common vocabulary
 * @param summed the year in short
 * @param title  of the drawing
 * @param desc   everything it shows, in words
 * @param months twelve
 * @param pieces whether there is a row for pieces of work
 * @param books  whether there is a row for books
 * @param cells  of the table: each month, what has no date, the year; each in short lines
 */
public record SubjectDrawing(String id, String name, String summed, String title, String desc, List<Month> months,
                             boolean pieces, boolean books, List<List<String>> cells) {

    public static final int WIDTH = 288;

    /** @return height of the drawing */
    public int height() {
        return 54 + (pieces ? 15 : 0) + (books ? 15 : 0);
    }

    /** @return where the numbers of pieces stand */
    public int piecesY() {
        return 66;
    }

    /** @return where the numbers of books stand */
    public int booksY() {
        return pieces ? 81 : 66;
    }

    /**
     * A month.
     *
     * @param x      its middle
     * @param letter first letter of its name
     * @param radius of the disc; null without minutes
     * @param tone   as in the calendar; 0 without an entry
     * @param hours  below the disc, or empty
     * @param pieces number of pieces of work, or empty
     * @param books  number of books, or empty
     */
    public record Month(int x, String letter, String radius, int tone, String hours, String pieces, String books) { }
}
