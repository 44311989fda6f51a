package org.hearthrule.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Business days against the list of legal public holidays in 5 U.S.C. 6103(a), computed here from the statute. */
class WorkDaysTest {

    /** An invented region: jollyday knows no such state, so only the country's holidays count. */
    private static final WorkDays COUNTRY = WorkDays.of("US-XX");

    /** 5 U.S.C. 6103(a): six days by a rule on weekdays, five fixed dates. */
    private static List<LocalDate> statute(int year) {
        List<LocalDate> days = new ArrayList<>();
        days.add(LocalDate.of(year, Month.JANUARY, 1));
        days.add(nth(year, Month.JANUARY, 3, DayOfWeek.MONDAY));
        days.add(nth(year, Month.FEBRUARY, 3, DayOfWeek.MONDAY));
        days.add(LocalDate.of(year, Month.MAY, 1).with(TemporalAdjusters.lastInMonth(DayOfWeek.MONDAY)));
        days.add(LocalDate.of(year, Month.JUNE, 19));
        days.add(LocalDate.of(year, Month.JULY, 4));
        days.add(nth(year, Month.SEPTEMBER, 1, DayOfWeek.MONDAY));
        days.add(nth(year, Month.OCTOBER, 2, DayOfWeek.MONDAY));
        days.add(LocalDate.of(year, Month.NOVEMBER, 11));
        days.add(nth(year, Month.NOVEMBER, 4, DayOfWeek.THURSDAY));
        days.add(LocalDate.of(year, Month.DECEMBER, 25));
        return days;
    }

    private static LocalDate nth(int year, Month month, int number, DayOfWeek weekday) {
        return LocalDate.of(year, month, 1).with(TemporalAdjusters.dayOfWeekInMonth(number, weekday));
    }

    @ParameterizedTest
    @ValueSource(ints = {2022, 2023, 2024, 2025, 2026, 2027, 2028})
    void noHolidayOfTheStatuteIsABusinessDay(int year) {
        // the two states whose laws read so far count business days
        assertThat(statute(year)).noneMatch(WorkDays.of("US-NY")::isBusinessDay).noneMatch(WorkDays.of("US-VT")::isBusinessDay);
    }

    /** The library's list for the whole country leaves the second Monday of October to the states. */
    @ParameterizedTest
    @ValueSource(ints = {2022, 2026, 2028})
    void unknownRegionHasTheHolidaysOfTheCountry(int year) {
        LocalDate october = nth(year, Month.OCTOBER, 2, DayOfWeek.MONDAY);

        assertThat(statute(year)).filteredOn(COUNTRY::isBusinessDay).containsExactly(october);
    }

    /** A holiday that the statute does not list would silently push a deadline. */
    @ParameterizedTest
    @ValueSource(ints = {2024, 2025, 2026, 2027})
    void everyOtherWeekdayIsABusinessDayButForObservedOnes(int year) {
        List<LocalDate> holidays = statute(year);
        List<LocalDate> lost = new ArrayList<>();
        for (LocalDate day = LocalDate.of(year, 1, 1); day.getYear() == year; day = day.plusDays(1)) {
            boolean weekend = day.getDayOfWeek() == DayOfWeek.SATURDAY || day.getDayOfWeek() == DayOfWeek.SUNDAY;
            LocalDate that = day;
            // 6103(b): a holiday on a Saturday is kept on the Friday before, one on a Sunday (by executive order) after
            boolean observed = holidays.stream().anyMatch(holiday ->
                    holiday.getDayOfWeek() == DayOfWeek.SATURDAY && holiday.minusDays(1).equals(that)
                            || holiday.getDayOfWeek() == DayOfWeek.SUNDAY && holiday.plusDays(1).equals(that));
            boolean newYear = day.equals(LocalDate.of(year, 12, 31))
                    && LocalDate.of(year + 1, 1, 1).getDayOfWeek() == DayOfWeek.SATURDAY;
            if (!weekend && !holidays.contains(day) && !observed && !newYear && !COUNTRY.isBusinessDay(day)) {
                lost.add(day);
            }
        }

        assertThat(lost).isEmpty();
    }

    /** Counted by hand on a calendar with the days of the statute. */
    @ParameterizedTest
    @CsvSource({
        "2026-11-20, 10, 2026-12-07",   // Thanksgiving, November 26
        "2026-12-18, 5, 2026-12-28",    // Christmas on a Friday
        "2026-12-30, 2, 2027-01-04",    // New Year's Day on a Friday
        "2026-06-15, 5, 2026-06-23",    // Juneteenth on a Friday
        "2026-09-15, -10, 2026-08-31",  // Labor Day, September 7
        "2026-08-24, -10, 2026-08-10",  // none between
        "2026-01-20, -1, 2026-01-16",   // the third Monday of January
        "2026-11-21, 1, 2026-11-23",    // from a Saturday
    })
    void countsBusinessDays(LocalDate from, int count, LocalDate expected) {
        assertThat(COUNTRY.plus(from, count)).isEqualTo(expected);
    }
}
