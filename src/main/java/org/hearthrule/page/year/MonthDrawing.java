package org.hearthrule.page.year;

import java.util.List;
import org.hearthrule.rules.Status;

/**
 * A month as it is drawn: weeks as rows from Sunday on, one square of 42 by 40 for each day below a row of letters.
 *
 * @param id     unique in the page
 * @param name   such as {@code October 2026}
 * @param summed what was logged in it, in short
 * @param title  of the drawing
 * @param desc   everything it shows, in words
 * @param weeks  rows of days
 * @param cells  its days in order
 * @param told   days with something to tell beside the log
 * @param rows   days with anything, for the table
 */
public record MonthDrawing(String id, String name, String summed, String title, String desc, int weeks, List<Cell> cells,
                           List<Told> told, List<Row> rows) {

    /** Width of the drawing. */
    public static final int WIDTH = 7 * Cell.WIDTH;

    /** @return height of the drawing */
    public int height() {
        return Cell.HEAD + weeks * Cell.HEIGHT + 1;
    }

    /**
     * A day.
     *
     * @param x      left edge
     * @param y      upper edge
     * @param column 1 for Sunday
     * @param radius of the disc; null without minutes
     * @param tone   1 for little to 3 for much; 0 without an entry
     * @param due    statuses of what is due, each once, the most pressing first
     * @param begins whether a hairline stands before it
     * @param ends   whether a hairline stands after it
     * @param log    address of the day's log
     * @param tip    what was logged, in one line
     */
    public record Cell(int x, int y, int column, int number, String radius, int tone, List<Status> due, boolean free,
                       boolean begins, boolean ends, boolean today, String log, String tip) {
        static final int WIDTH = 42;
        static final int HEIGHT = 40;
        static final int HEAD = 20;
    }

    /**
     * A day with something to tell.
     *
     * @param number of the day
     * @param iso    the day
     * @param items  what there is to tell
     */
    public record Told(int number, String iso, List<Item> items) { }

    /**
     * @param status of a due date, else null
     * @param line   id of the checklist's line, else null
     * @param free   whether it is a holiday or closed day
     */
    public record Item(String words, Status status, String line, boolean free) { }

    /**
     * A row of the table.
     *
     * @param day    in words, such as {@code October 5}
     * @param log    address of the day's log
     * @param logged what was logged, or empty
     * @param also   due dates, holidays and what else falls on it
     */
    public record Row(String day, String log, String logged, String also) { }
}
