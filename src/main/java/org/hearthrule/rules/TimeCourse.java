package org.hearthrule.rules;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.hearthrule.law.Evidence;

/**
 * How one amount of time that a line counts came together over a stretch of days.
 *
 * @param key     name of the same number in the finding's {@code counted}, for example {@code core-hours}
 * @param law     what the law asks
 * @param measure what is counted here: the law's own, or the hours beside days that are asked with an average
 * @param unit    in words, for example {@code hours in the subjects that count}
 * @param asked   so much
 * @param part    1 for the first quarter of the year and so on; 0 where the number is asked once
 * @param from    first day on which time counts; days before it count only where several years are added up
 * @param to      last day on which it counts
 * @param minutes by day, of the days that count, up to the day of the judgement
 */
public record TimeCourse(String key, Evidence.Time law, Evidence.Time.Measure measure, String unit, BigDecimal asked, int part,
                         LocalDate from, LocalDate to, Map<LocalDate, Integer> minutes) {

    /**
     * The amount at the end of a day.
     *
     * @param day     a day that counts
     * @param reached everything up to it and with it
     */
    public record Point(LocalDate day, BigDecimal reached) { }

    TimeCourse as(String name) {
        return name.equals(key) ? this : new TimeCourse(name, law, measure, unit, asked, part, from, to, minutes);
    }

    /** @return true where the years of several grades are added up */
    public boolean overYears() {
        return law.over() != null;
    }

    /** @return one point for each day that counts, in order; empty while nothing counts */
    public List<Point> points() {
        SortedMap<LocalDate, Integer> days = new TreeMap<>(minutes);
        List<Point> points = new ArrayList<>(days.size());
        long sum = 0;
        Object last = null;
        for (Map.Entry<LocalDate, Integer> day : days.entrySet()) {
            Object unit = switch (measure) {
                case DAYS, HOURS -> day.getKey();
                case WEEKS -> TimeSums.monday(day.getKey());
                case MONTHS -> YearMonth.from(day.getKey());
            };
            if (measure == Evidence.Time.Measure.HOURS) {
                sum += day.getValue();
            } else if (!unit.equals(last)) {
                sum++;
            }
            last = unit;
            points.add(new Point(day.getKey(), measure == Evidence.Time.Measure.HOURS
                    ? TimeSums.hours(Math.toIntExact(sum)) : BigDecimal.valueOf(sum)));
        }
        return points;
    }

    /** @return everything that counted */
    public BigDecimal reached() {
        return TimeSums.reached(measure, minutes);
    }

    /** @return what is missing; 0 when nothing is */
    public BigDecimal lack() {
        return asked.subtract(reached()).max(BigDecimal.ZERO);
    }
}
