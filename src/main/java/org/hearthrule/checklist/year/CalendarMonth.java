package org.hearthrule.checklist.year;

import java.time.YearMonth;
import java.util.List;

/** One month of the calendar, with all its days. */
public record CalendarMonth(YearMonth month, List<CalendarDay> days) {

    public int entries() {
        return days.stream().mapToInt(CalendarDay::entries).sum();
    }

    public int minutes() {
        return days.stream().mapToInt(CalendarDay::minutes).sum();
    }

    /** @return days with an entry */
    public int daysLogged() {
        return (int) days.stream().filter(day -> day.entries() > 0).count();
    }
}
