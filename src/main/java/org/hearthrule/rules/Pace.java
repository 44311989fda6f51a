package org.hearthrule.rules;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Optional;
import org.hearthrule.law.Evidence;
import org.hearthrule.records.YearRecords;

/**
 * The pace of an amount of time that is not reached yet. A day of the week here is Monday to Friday.
 *
 * @param reached so much is there
 * @param asked   so much is asked, more than is there
 * @param past    weekdays from the first day of the work to today
 * @param left    weekdays after today up to the day it is due
 * @param today   the day it is looked at
 */
public record Pace(BigDecimal reached, BigDecimal asked, int past, int left, LocalDate today) {

    private static final BigDecimal WEEK = BigDecimal.valueOf(5);
    /** Beyond so many weekdays, some ten years, a day worked out from a pace says nothing. */
    private static final int FARTHEST = 2_600;

    /** @param begun day the work began */
    static Pace of(BigDecimal reached, BigDecimal asked, LocalDate begun, LocalDate today, LocalDate due) {
        LocalDate next = today.plusDays(1);
        return new Pace(reached, asked, weekdays(begun, today), weekdays(begun.isAfter(next) ? begun : next, due), today);
    }

    /** @return what is missing */
    public BigDecimal lack() {
        return asked.subtract(reached);
    }

    /** @return so much a week up to now, a little less rather than more; empty before the first weekday */
    public Optional<BigDecimal> soFar() {
        return past == 0 ? Optional.empty()
                : Optional.of(reached.multiply(WEEK).divide(BigDecimal.valueOf(past), 1, RoundingMode.DOWN));
    }

    /** @return so much a week from tomorrow on would do it by the day, a little more rather than less; empty when no weekday is left */
    public Optional<BigDecimal> needed() {
        return left == 0 ? Optional.empty()
                : Optional.of(lack().multiply(WEEK).divide(BigDecimal.valueOf(left), 1, RoundingMode.UP));
    }

    /** @return the day everything is there if it goes on as up to now; empty when there is nothing to go by */
    public Optional<LocalDate> reachedOn() {
        int days = days();
        return days > FARTHEST ? Optional.empty() : Optional.of(weekdayAfter(today, days));
    }

    /** @return whether it is reached in time if it goes on as up to now */
    public boolean isEnough() {
        return days() <= left;
    }

    /** Weekdays from tomorrow on that it takes at the pace up to now. */
    private int days() {
        if (past == 0 || reached.signum() == 0) {
            return Integer.MAX_VALUE;
        }
        return lack().multiply(BigDecimal.valueOf(past)).divide(reached, 0, RoundingMode.UP)
                .min(BigDecimal.valueOf(Integer.MAX_VALUE)).intValue();
    }

    /** @return a sentence, or an empty text when there is nothing to go by */
    static String of(Claim claim) {
        for (Evidence.Time time : Evidence.leaves(claim.requirement().shows(), Evidence.Time.class)) {
            String key = time.measure().slug();
            if (claim.shown().counted().get(key) instanceof BigDecimal reached
                    && claim.shown().counted().get(key + "-asked") instanceof BigDecimal asked
                    && reached.compareTo(asked) < 0 && reached.signum() > 0) {
                Situation situation = claim.situation();
                return sentence(of(reached, asked, begun(situation), situation.today(), claim.due()), key, claim.due());
            }
        }
        return "";
    }

    private static String sentence(Pace pace, String unit, LocalDate due) {
        String lack = pace.lack().toPlainString();
        if (pace.past == 0) {
            return "";
        }
        if (pace.isEnough()) {
            return Say.it("pace.reached", lack, unit, due, weekdayAfter(pace.today, pace.days()));
        }
        return pace.needed().map(week -> Say.it("pace.faster", lack, unit, due, week.toPlainString()))
                .orElse(Say.it("pace.none-left", lack, unit));
    }

    /** Before the first noted work of the year, or the day the family's own year began, nobody fell behind. */
    static LocalDate begun(Situation situation) {
        LocalDate first = situation.firstDay();
        LocalDate own = situation.calendar().firstDay();
        if (own == null) {
            own = situation.records().stream().flatMap(records -> records.log().stream()).map(YearRecords.LogEntry::date)
                    .filter(day -> day != null && !day.isBefore(first)).min(LocalDate::compareTo).orElse(first);
        }
        return own.isAfter(first) ? own : first;
    }

    /** @return weekdays from a day to a day, both included */
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
