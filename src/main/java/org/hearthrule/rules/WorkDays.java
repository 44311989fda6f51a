package org.hearthrule.rules;

import de.focus_shift.jollyday.core.Holiday;
import de.focus_shift.jollyday.core.HolidayManager;
import de.focus_shift.jollyday.core.HolidayType;
import de.focus_shift.jollyday.core.ManagerParameters;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Collections;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Public holidays of a jurisdiction, taken from the library jollyday, and its business days: Monday to Friday without
 * them.
 *
 * <p>Laws that count business days rarely say which holidays they mean; the reader is told so. Safe for several
 * threads.
 */
public final class WorkDays {

    private static final Map<String, WorkDays> KNOWN = new ConcurrentHashMap<>();

    private final String country;
    private final String region;
    private final Map<Integer, SortedMap<LocalDate, String>> holidays = new ConcurrentHashMap<>();

    private WorkDays(String code) {
        String[] parts = code.toLowerCase(Locale.ROOT).split("-", 2);
        country = parts[0];
        region = parts.length > 1 ? parts[1] : "";
    }

    /** @param code jurisdiction code such as {@code US-XX}; an unknown region has the country's holidays */
    public static WorkDays of(String code) {
        return KNOWN.computeIfAbsent(code, WorkDays::new);
    }

    /** @return the holidays of a stretch of days, both ends included, with their names in English */
    public SortedMap<LocalDate, String> holidays(LocalDate from, LocalDate to) {
        SortedMap<LocalDate, String> found = new TreeMap<>();
        for (int year = from.getYear(); year <= to.getYear(); year++) {
            found.putAll(holidaysOf(year));
        }
        return found.subMap(from, to.plusDays(1));
    }

    boolean isBusinessDay(LocalDate day) {
        DayOfWeek weekday = day.getDayOfWeek();
        return weekday != DayOfWeek.SATURDAY && weekday != DayOfWeek.SUNDAY
                && !holidaysOf(day.getYear()).containsKey(day);
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

    private SortedMap<LocalDate, String> holidaysOf(int year) {
        return holidays.computeIfAbsent(year, this::read);
    }

    private SortedMap<LocalDate, String> read(int year) {
        HolidayManager manager = HolidayManager.getInstance(ManagerParameters.create(country));
        Set<Holiday> found = region.isEmpty() ? manager.getHolidays(java.time.Year.of(year))
                : manager.getHolidays(java.time.Year.of(year), region);
        SortedMap<LocalDate, String> days = new TreeMap<>();
        found.stream().filter(holiday -> holiday.getType() == HolidayType.PUBLIC_HOLIDAY).sorted()
                .forEach(holiday -> days.putIfAbsent(holiday.getDate(), name(holiday)));
        return Collections.unmodifiableSortedMap(days);
    }

    /** The library writes one of them as it is written overseas. */
    private static String name(Holiday holiday) {
        return holiday.getPropertiesKey().equals("LABOUR_DAY") ? Say.it("holiday.labor-day") : holiday.getDescription(Locale.US);
    }
}
