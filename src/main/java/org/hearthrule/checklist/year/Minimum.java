package org.hearthrule.checklist.year;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.hearthrule.checklist.Line;
import org.hearthrule.law.Evidence;
import org.hearthrule.law.Period;
import org.hearthrule.rules.Pace;
import org.hearthrule.rules.Progress;
import org.hearthrule.rules.TimeCourse;

/**
 * One amount of time that the law asks, and how it came together.
 *
 * @param line  the checklist's line that counts it
 * @param child whose records were counted
 * @param name  what the law calls it among several amounts of the line, or null
 * @param way   how it stands to the other amounts of the line
 * @param parts one; or one for each quarter, where the amount is asked in each
 */
public record Minimum(Line line, String child, String name, Way way, List<Part> parts) {

    /** How an amount stands to the other amounts of its line. */
    public enum Way {
        ASKED,
        /** One of several of which one is enough. */
        ONE_OF_SEVERAL,
        /** The one of several that the family chose to count by. */
        CHOSEN,
        /** Would be enough as well, but the family counts by another. */
        NOT_CHOSEN
    }

    /**
     * The amount in one stretch.
     *
     * @param due  by when, or null when nothing says so
     * @param pace while it is not reached and can be; else null
     */
    public record Part(TimeCourse course, LocalDate due, Pace pace) {

        public BigDecimal reached() {
            return course.reached();
        }

        public boolean isReached() {
            return course.lack().signum() == 0;
        }

        /** @return the day on which it was reached; empty until then */
        public Optional<LocalDate> reachedOn() {
            return course.points().stream().filter(point -> point.reached().compareTo(course.asked()) >= 0)
                    .map(TimeCourse.Point::day).findFirst();
        }

        /** @return first day of the drawing: the first that counts, or the first that counted where years are added up */
        public LocalDate from() {
            return course.minutes().keySet().stream().filter(day -> day.isBefore(course.from()))
                    .min(LocalDate::compareTo).orElse(course.from());
        }

        /** @return last day of the drawing: the last that counts, or the due day after it */
        public LocalDate to() {
            return due != null && due.isAfter(course.to()) ? due : course.to();
        }
    }

    static List<Minimum> of(Line line, Progress progress) {
        List<Minimum> found = new ArrayList<>();
        List<Part> quarters = new ArrayList<>();
        Evidence.Time asked = null;
        for (TimeCourse course : progress.courses()) {
            Part part = new Part(course, progress.due(course), progress.pace(course).orElse(null));
            if (course.part() == 0) {
                found.add(minimum(line, progress, course.law(), List.of(part)));
            } else {
                if (asked != course.law() && !quarters.isEmpty()) {
                    found.add(minimum(line, progress, asked, quarters));
                    quarters.clear();
                }
                asked = course.law();
                quarters.add(part);
            }
        }
        if (!quarters.isEmpty()) {
            found.add(minimum(line, progress, asked, quarters));
        }
        return found;
    }

    private static Minimum minimum(Line line, Progress progress, Evidence.Time law, List<Part> parts) {
        return new Minimum(line, progress.student(), name(line.asked().shows(), law), way(progress, law), List.copyOf(parts));
    }

    private static String name(Evidence tree, Evidence.Time law) {
        if (tree instanceof Evidence.Option option) {
            return option.part() == law ? option.as() : name(option.part(), law);
        }
        List<Evidence> parts = tree instanceof Evidence.AllOf all ? all.parts()
                : tree instanceof Evidence.AnyOf any ? any.parts() : List.of();
        return parts.stream().map(part -> name(part, law)).filter(Objects::nonNull).findFirst().orElse(null);
    }

    private static Way way(Progress progress, Evidence.Time law) {
        if (!progress.either()) {
            return Way.ASKED;
        }
        return progress.chosen().isEmpty() ? Way.ONE_OF_SEVERAL : progress.chosen().contains(law) ? Way.CHOSEN : Way.NOT_CHOSEN;
    }

    /** @return in words, for example {@code hours in the subjects that count} */
    public String unit() {
        return parts.get(0).course().unit();
    }

    public BigDecimal asked() {
        return parts.get(0).course().asked();
    }

    /** @return what the law asks */
    public Evidence.Time law() {
        return parts.get(0).course().law();
    }

    /** @return whether the amount is asked anew in each quarter, term, month or week */
    public boolean isInEach() {
        return law().per() != null && law().per() != Period.YEAR;
    }

    public LocalDate from() {
        return parts.get(0).from();
    }

    public LocalDate to() {
        return parts.get(parts.size() - 1).to();
    }
}
