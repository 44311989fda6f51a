package org.hearthrule.rules;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Locale;
import org.hearthrule.law.Evidence;
import org.hearthrule.records.YearRecords;

/** The pace needed to reach a minimum of time. A day of the week here is Monday to Friday. */
final class Pace {

    private Pace() {
    }

    /** @return a sentence, or an empty text when there is nothing to go by */
    static String of(Claim claim) {
        for (Evidence.Time time : Evidence.leaves(claim.requirement().shows(), Evidence.Time.class)) {
            String key = time.measure().name().toLowerCase(Locale.ROOT);
            if (claim.shown().counted().get(key) instanceof BigDecimal reached
                    && claim.shown().counted().get(key + "-asked") instanceof BigDecimal asked
                    && reached.compareTo(asked) < 0 && reached.signum() > 0) {
                return sentence(claim, key, reached, asked);
            }
        }
        return "";
    }

    private static String sentence(Claim claim, String unit, BigDecimal reached, BigDecimal asked) {
        LocalDate today = claim.situation().today();
        BigDecimal lack = asked.subtract(reached);
        int past = weekdays(begun(claim.situation()), today);
        int left = weekdays(today.plusDays(1), claim.due());
        if (past == 0) {
            return "";
        }
        int needed = lack.multiply(BigDecimal.valueOf(past)).divide(reached, 0, RoundingMode.UP).intValue();
        if (needed <= left) {
            return Say.it("pace.reached", lack.toPlainString(), unit, claim.due(), weekdayAfter(today, needed));
        }
        if (left == 0) {
            return Say.it("pace.none-left", lack.toPlainString(), unit);
        }
        BigDecimal perWeek = lack.multiply(BigDecimal.valueOf(5)).divide(BigDecimal.valueOf(left), 1, RoundingMode.UP);
        return Say.it("pace.faster", lack.toPlainString(), unit, claim.due(), perWeek.toPlainString());
    }

    /** Before the first noted work of the year, or the day the family's own year began, nobody fell behind. */
    private static LocalDate begun(Situation situation) {
        LocalDate first = situation.firstDay();
        LocalDate own = situation.calendar().firstDay();
        if (own == null) {
            own = situation.records().stream().flatMap(records -> records.log().stream()).map(YearRecords.LogEntry::date)
                    .filter(day -> day != null && !day.isBefore(first)).min(LocalDate::compareTo).orElse(first);
        }
        return own.isAfter(first) ? own : first;
    }

    private static int weekdays(LocalDate from, LocalDate to) {
        int count = 0;
        for (LocalDate day = from; !day.isAfter(to); day = day.plusDays(1)) {
            if (isWeekday(day)) {
                count++;
            }
        }
        return count;
    }

    private static LocalDate weekdayAfter(LocalDate day, int count) {
        LocalDate at = day;
        for (int left = count; left > 0;) {
            at = at.plusDays(1);
            if (isWeekday(at)) {
                left--;
            }
        }
        return at;
    }

    private static boolean isWeekday(LocalDate day) {
        return day.getDayOfWeek() != DayOfWeek.SATURDAY && day.getDayOfWeek() != DayOfWeek.SUNDAY;
    }
}
