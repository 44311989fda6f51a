package org.hearthrule.page.year;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import org.hearthrule.checklist.year.Minimum;
import org.hearthrule.page.year.CurveDrawing.Stroke;
import org.hearthrule.page.year.CurveDrawing.Track;
import org.hearthrule.page.year.Labels.Spot;
import org.hearthrule.rules.Pace;
import org.hearthrule.rules.TimeCourse;

/** Lays the line of one stretch, and the labels at its ends so that they do not cover each other. */
final class TrackDrawer {

    private static final double ABOVE = 5;
    private static final double HIGHER = 20;
    private static final double LINE = 14;
    private static final double EARLY = 135;

    private final Scale scale;
    private final LocalDate today;
    private final boolean alone;
    private final Labels labels = new Labels();

    /** @param alone whether the drawing holds one stretch only, which leaves room for dates */
    TrackDrawer(Scale scale, LocalDate today, boolean alone) {
        this.scale = scale;
        this.today = today;
        this.alone = alone;
    }

    Track draw(Minimum.Part part) {
        TimeCourse course = part.course();
        double asked = scale.y(course.asked());
        double start = scale.start(part.from());
        LocalDate end = today.isBefore(part.to()) ? today : part.to();
        boolean begun = !end.isBefore(part.from());
        double endX = begun ? scale.x(end) : start;
        double endY = scale.y(part.reached());
        if (part.course().part() <= 1) {
            asked(part, asked);
        }
        Stroke needed = null;
        Stroke pace = null;
        if (part.pace() != null && part.pace().left() > 0) {
            needed = new Stroke(Num.of(endX), Num.of(endY), Num.of(scale.x(part.due())), Num.of(asked));
            pace = pace(part, endX, endY, asked);
        }
        if (alone) {
            day(part, asked);
        }
        if (begun) {
            number(part, endX, endY, asked);
        }
        Stroke hairline = new Stroke(Num.of(start), Num.of(asked), Num.of(scale.x(part.to())), Num.of(asked));
        return new Track(hairline, begun ? path(course, start, endX) : null, Num.of(endX), Num.of(endY), needed, pace,
                labels.placed());
    }

    /** A step for each day that counts, then level up to the end. */
    private String path(TimeCourse course, double start, double endX) {
        StringBuilder path = new StringBuilder("M").append(Num.of(start)).append(' ').append(Num.of(Scale.BOTTOM));
        String last = "";
        for (TimeCourse.Point point : course.points()) {
            String step = "L" + Num.of(scale.x(point.day())) + ' ' + Num.of(scale.y(point.reached()));
            if (!step.equals(last)) {
                path.append(step);
            }
            last = step;
        }
        return path.append('H').append(Num.of(endX)).toString();
    }

    private Stroke pace(Minimum.Part part, double endX, double endY, double asked) {
        Pace pace = part.pace();
        if (pace.past() == 0 || pace.reached().signum() == 0) {
            return null;
        }
        LocalDate there = pace.reachedOn().orElse(null);
        if (there != null && !there.isAfter(part.to())) {
            return new Stroke(Num.of(endX), Num.of(endY), Num.of(scale.x(there)), Num.of(asked));
        }
        return new Stroke(Num.of(endX), Num.of(endY), Num.of(scale.x(part.due())), Num.of(scale.y(onTheDay(pace))));
    }

    /** What there would be on the due day at the pace so far. */
    private static BigDecimal onTheDay(Pace pace) {
        return pace.reached().add(pace.reached().multiply(BigDecimal.valueOf(pace.left()))
                .divide(BigDecimal.valueOf(pace.past()), 1, RoundingMode.DOWN));
    }

    /** The amount at the left above its hairline; at the right below it, where the line crosses it early. */
    private void asked(Minimum.Part part, double asked) {
        String text = YearWords.say("year.curve.label", YearWords.number(part.course().asked()),
                part.course().measure().slug());
        Spot left = Spot.from(Scale.LEFT, asked - ABOVE);
        Spot right = Spot.upTo(Scale.RIGHT, asked + LINE);
        labels.put(text, isEarly(part) ? right : left);
    }

    /** Whether the line rises above the hairline where the amount would stand. */
    private boolean isEarly(Minimum.Part part) {
        return alone && part.reachedOn().filter(day -> scale.x(day) < EARLY).isPresent();
    }

    /** The day it is reached, or will be: above the hairline, higher, or below it right of the line. */
    private void day(Minimum.Part part, double asked) {
        LocalDate there = part.isReached() ? part.reachedOn().orElse(null)
                : part.pace() == null ? null : part.pace().reachedOn().orElse(null);
        if (there == null || !scale.holds(there)) {
            return;
        }
        double x = scale.x(there);
        Spot above = Spot.upTo(x, asked - ABOVE);
        Spot below = Spot.from(x + ABOVE, asked + LINE);
        labels.put(YearWords.dayOfMonth(there), isEarly(part) ? below : above, Spot.upTo(x, asked - HIGHER),
                Spot.from(x, asked - HIGHER), below);
    }

    /** The number reached: left above the line where there is room below the hairline, else right of its end. */
    private void number(Minimum.Part part, double x, double y, double asked) {
        Spot left = Spot.upTo(x - ABOVE, y - ABOVE);
        Spot rightBelow = Spot.from(x + ABOVE, y + LINE);
        Spot rightAbove = Spot.from(x + ABOVE, y - ABOVE);
        Spot[] spots = y < asked ? new Spot[] {rightAbove, Spot.upTo(Scale.RIGHT, y - LINE), left, rightBelow}
                : y - asked > LINE + ABOVE ? new Spot[] {left, rightBelow, rightAbove, Spot.upTo(x, y + 2 * LINE)}
                : new Spot[] {rightBelow, Spot.upTo(Scale.RIGHT, y + 2 * LINE), Spot.from(x + ABOVE, y + 2 * LINE), rightAbove};
        labels.put(YearWords.number(part.reached()), spots);
    }
}
