package org.hearthrule.rules;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.WeekFields;
import java.util.ArrayList;
import java.util.List;
import org.hearthrule.law.Period;
import org.hearthrule.records.YearRecords.Stretch;

/** The parts of a school year that counts are taken over. */
final class Stretches {

    private Stretches() {
    }

    /** @return the stretches in order; empty when the book does not hold the days that divide the year */
    static List<Stretch> of(Period period, Situation situation) {
        return switch (period) {
            case YEAR -> List.of(new Stretch(situation.firstDay(), situation.lastDay()));
            case QUARTER -> situation.calendar().quarters();
            case SEMESTER, TRIMESTER -> situation.calendar().terms().size() == (period == Period.SEMESTER ? 2 : 3)
                    ? situation.calendar().terms() : List.of();
            case MONTH -> months(situation);
            case WEEK -> weeks(situation);
        };
    }

    /** Whole calendar months that the stay on the pathway touches, up to today. */
    private static List<Stretch> months(Situation situation) {
        List<Stretch> months = new ArrayList<>();
        LocalDate last = last(situation);
        for (YearMonth month = YearMonth.from(first(situation)); !month.atDay(1).isAfter(last); month = month.plusMonths(1)) {
            months.add(new Stretch(month.atDay(1), month.atEndOfMonth()));
        }
        return months;
    }

    private static List<Stretch> weeks(Situation situation) {
        List<Stretch> weeks = new ArrayList<>();
        LocalDate last = last(situation);
        for (LocalDate day = first(situation).with(WeekFields.ISO.dayOfWeek(), 1); !day.isAfter(last); day = day.plusWeeks(1)) {
            weeks.add(new Stretch(day, day.plusDays(6)));
        }
        return weeks;
    }

    /** @return first day taught: the family's own first day of the year where it is in the book */
    static LocalDate first(Situation situation) {
        LocalDate own = situation.calendar().firstDay();
        return own != null && own.isAfter(situation.firstDay()) ? own : situation.firstDay();
    }

    private static LocalDate last(Situation situation) {
        LocalDate end = end(situation);
        return situation.today().isBefore(end) ? situation.today() : end;
    }

    /** @return last day taught: the family's own last day of the year where it is in the book */
    static LocalDate end(Situation situation) {
        LocalDate own = situation.calendar().lastDay();
        return own != null && own.isBefore(situation.lastDay()) ? own : situation.lastDay();
    }
}
