package org.hearthrule.rules;

import de.focus_shift.jollyday.core.Holiday;
import de.focus_shift.jollyday.core.HolidayManager;
import de.focus_shift.jollyday.core.HolidayType;
import de.focus_shift.jollyday.core.ManagerParameters;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Business days of a jurisdiction: Monday to Friday without its public holidays, taken from the library jollyday.
 *
 * <p>Laws that count business days rarely say which holidays they mean; the reader is told so. Safe for several
 * threads.
 */
final class WorkDays {

    private static final Map<String, WorkDays> KNOWN = new ConcurrentHashMap<>();

    private final String country;
    private final String region;
    private final Map<Integer, Set<LocalDate>> holidays = new ConcurrentHashMap<>();

    private WorkDays(String code) {
        String[] parts = code.toLowerCase(Locale.ROOT).split("-", 2);
        country = parts[0];
        region = parts.length > 1 ? parts[1] : "";
    }

    /** @param code jurisdiction code such as {@code US-XX}; an unknown region has the country's holidays */
    static WorkDays of(String code) {
        return KNOWN.computeIfAbsent(code, WorkDays::new);
    }

    boolean isBusinessDay(LocalDate day) {
        DayOfWeek weekday = day.getDayOfWeek();
        return weekday != DayOfWeek.SATURDAY && weekday != DayOfWeek.SUNDAY
                && !holidays.computeIfAbsent(day.getYear(), this::holidaysOf).contains(day);
    }

    /** @return the day itself when it is a business day, else the next one */
    LocalDate onOrAfter(LocalDate day) {
        return isBusinessDay(day) ? day : plus(day, 1);
    }

    /** @return the day {@code count} business days after (or, when negative, before) {@code day}, which is not counted */
    LocalDate plus(LocalDate day, int count) {
        LocalDate at = day;
        int step = count < 0 ? -1 : 1;
        for (int left = Math.abs(count); left > 0;) {
            at = at.plusDays(step);
            if (isBusinessDay(at)) {
                left--;
            }
        }
        return at;
    }

    private Set<LocalDate> holidaysOf(int year) {
        HolidayManager manager = HolidayManager.getInstance(ManagerParameters.create(country));
        Set<Holiday> found = region.isEmpty() ? manager.getHolidays(java.time.Year.of(year))
                : manager.getHolidays(java.time.Year.of(year), region);
        Set<LocalDate> days = new HashSet<>();
        for (Holiday holiday : found) {
            if (holiday.getType() == HolidayType.PUBLIC_HOLIDAY) {
                days.add(holiday.getDate());
            }
        }
        return days;
    }
}
