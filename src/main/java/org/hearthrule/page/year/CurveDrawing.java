package org.hearthrule.page.year;

import java.util.List;

/**
 * How one minimum came together, as it is drawn: 300 wide, {@link #HEIGHT} high.
 *
 * @param id      unique in the page
 * @param name    what tells it from the other amounts of its line
 * @param title   of the drawing
 * @param desc    everything it shows, in words
 * @param months  marks on the axis of time
 * @param due     the day it is due on the axis, or null
 * @param half    half the amount and where it stands; null where there is no room for it
 * @param today   where today is, or null when it lies outside
 * @param tracks  one; or one for each quarter
 * @param said    what the lines say, in the order of reading
 * @param notes   what else there is to know
 * @param rows    of the table
 * @param sums    how it was counted, a line each
 */
public record CurveDrawing(String id, String name, String title, String desc, List<Label> months, Label due, Label half,
                           String today, List<Track> tracks, List<Said> said, List<String> notes, List<Row> rows) {

    public static final int WIDTH = 300;
    public static final int HEIGHT = 194;

    /** Text at a place; {@code anchor} is {@code start}, {@code middle} or {@code end}. */
    public record Label(String x, String y, String anchor, String text) { }

    /** A straight line. */
    public record Stroke(String x1, String y1, String x2, String y2) { }

    /**
     * One stretch of time with its amount.
     *
     * @param asked  hairline at the amount asked
     * @param path   what was reached, day by day; null while nothing was
     * @param endX   where it ends
     * @param endY   the same
     * @param needed from there to the amount on the due day, or null
     * @param pace   from there as up to now, or null
     * @param labels at the ends of the lines
     */
    public record Track(Stroke asked, String path, String endX, String endY, Stroke needed, Stroke pace,
                        List<Label> labels) { }

    /**
     * A sentence beside a piece of the line it speaks of.
     *
     * @param line class of the line: {@code so-far}, {@code needed}, {@code pace} or {@code asked}; or none of them
     */
    public record Said(String line, String words) { }

    public record Row(String name, String value) { }
}
