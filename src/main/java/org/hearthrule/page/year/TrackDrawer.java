package org.hearthrule.page.year;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.hearthrule.checklist.year.Minimum;
import org.hearthrule.page.year.CurveDrawing.Label;
import org.hearthrule.page.year.CurveDrawing.Stroke;
import org.hearthrule.page.year.CurveDrawing.Track;
import org.hearthrule.rules.Pace;
import org.hearthrule.rules.TimeCourse;

/** Lays the line of one stretch, and the labels at its ends so that they do not cover each other. */
final class TrackDrawer {

    private static final double ABOVE = 5;
    private static final double HIGHER = 20;
    private static final double LINE = 14;
    private static final double DIGIT = 7;

    private final Scale scale;
    private final LocalDate today;
    private final boolean alone;
    private final List<Label> labels = new ArrayList<>();

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
                List.copyOf(labels));
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
        labels.add(early(part) ? new Label(Num.of(Scale.RIGHT), Num.of(asked + LINE), "end", amount(part))
                : new Label(Num.of(Scale.LEFT), Num.of(asked - ABOVE), "start", amount(part)));
    }

    private static String amount(Minimum.Part part) {
        return YearWords.say("year.curve.label", YearWords.number(part.course().asked()),
                part.course().measure().name().toLowerCase(Locale.ROOT));
    }

    private boolean early(Minimum.Part part) {
        return alone && part.reachedOn().filter(day -> scale.x(day) < width(amount(part)) + width("September 30")).isPresent();
    }

    private static double width(String text) {
        return text.length() * DIGIT;
    }

    /** The day it is reached, or will be, above the hairline; where the line has risen above it early, below. */
    private void day(Minimum.Part part, double asked) {
        LocalDate there = part.isReached() ? part.reachedOn().orElse(null)
                : part.pace() == null ? null : part.pace().reachedOn().orElse(null);
        if (there == null || !scale.holds(there)) {
            return;
        }
        double x = scale.x(there);
        String text = YearWords.dayOfMonth(there);
        if (early(part)) {
            labels.add(new Label(Num.of(x + ABOVE), Num.of(asked + LINE), "start", text));
        } else {
            boolean room = x - width(text) > Scale.LEFT + width(amount(part));
            labels.add(new Label(Num.of(x), Num.of(asked - (room ? ABOVE : HIGHER)), x - width(text) > Scale.LEFT ? "end" : "start",
                    text));
        }
    }

    /** The number reached: left above the line where there is room below the hairline, else right of its end. */
    private void number(Minimum.Part part, double endX, double endY, double asked) {
        String text = YearWords.number(part.reached());
        double width = width(text) + 2 * ABOVE;
        boolean over = endY < asked;
        if (endY - asked > LINE + ABOVE && endX - width > Scale.LEFT) {
            labels.add(new Label(Num.of(endX - ABOVE), Num.of(endY - ABOVE), "end", text));
        } else if (endX + width < Scale.RIGHT) {
            labels.add(new Label(Num.of(endX + ABOVE), Num.of(over ? endY - ABOVE : endY + LINE), "start", text));
        } else {
            labels.add(new Label(Num.of(Scale.RIGHT), Num.of(over ? endY - LINE : endY + 2 * LINE), "end", text));
        }
    }
}
