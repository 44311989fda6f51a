package org.hearthrule.checklist.year;

import java.time.LocalDate;
import java.util.List;
import org.hearthrule.checklist.Line;

/**
 * One day of the calendar.
 *
 * @param entries  log entries; one for several children counts once
 * @param minutes  sum of the entries
 * @param subjects what they were tagged with, names of the common vocabulary, each once
 * @param due      lines of the checklist that fall due, in its order
 * @param holiday  name of a public holiday, or null
 * @param closed   whether the district's schools are noted as closed
 * @param marks    what begins, ends or happens on the day
 */
public record CalendarDay(LocalDate date, int entries, int minutes, List<String> subjects, List<Line> due, String holiday,
                          boolean closed, List<DayMark> marks) {

    /** @return whether there is anything to tell of the day */
    public boolean isPlain() {
        return entries == 0 && due.isEmpty() && holiday == null && !closed && marks.isEmpty();
    }

    /** @return whether no school is kept: a holiday or a closed day */
    public boolean isFree() {
        return holiday != null || closed;
    }

    /** @return whether a year, a quarter or a term begins or ends */
    public boolean isBound() {
        return marks.stream().anyMatch(mark -> mark.kind().isBound());
    }
}
