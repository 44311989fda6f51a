package org.hearthrule.rules;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.WeekFields;
import java.util.Map;
import org.hearthrule.law.Evidence;

/** Amounts of time from the minutes of days. */
final class TimeSums {

    private static final BigDecimal HOUR = BigDecimal.valueOf(60);

    private TimeSums() {
    }

    /** @param minutes by day, of the days that count */
    static BigDecimal reached(Evidence.Time.Measure measure, Map<LocalDate, Integer> minutes) {
        return switch (measure) {
            case DAYS -> BigDecimal.valueOf(minutes.size());
            case HOURS -> {
                int sum = 0;
                for (int day : minutes.values()) {
                    sum += day;
                }
                yield hours(sum);
            }
            case WEEKS -> BigDecimal.valueOf(minutes.keySet().stream().map(TimeSums::monday).distinct().count());
            case MONTHS -> BigDecimal.valueOf(minutes.keySet().stream().map(YearMonth::from).distinct().count());
        };
    }

    /** Hours cut, not rounded, to a tenth: a figure shown must never be more than what was done. */
    static BigDecimal hours(int minutes) {
        BigDecimal hours = BigDecimal.valueOf(minutes).divide(HOUR, 1, RoundingMode.DOWN).stripTrailingZeros();
        return hours.scale() < 0 ? hours.setScale(0) : hours;
    }

    static LocalDate monday(LocalDate day) {
        return day.with(WeekFields.ISO.dayOfWeek(), 1);
    }
}
