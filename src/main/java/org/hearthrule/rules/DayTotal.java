package org.hearthrule.rules;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * All entries of one child on one day.
 *
 * @param minutes sum of the entries
 * @param twice   whether two of them say the same
 */
public record DayTotal(String student, LocalDate date, int minutes, List<RecordFact.Logged> entries, boolean twice) {

    /** @param logged entries of one child */
    static List<DayTotal> of(List<RecordFact.Logged> logged) {
        Map<LocalDate, List<RecordFact.Logged>> days = new LinkedHashMap<>();
        for (RecordFact.Logged entry : logged) {
            days.computeIfAbsent(entry.date(), day -> new ArrayList<>(4)).add(entry);
        }
        List<DayTotal> totals = new ArrayList<>(days.size());
        days.forEach((day, entries) -> {
            int minutes = 0;
            for (RecordFact.Logged entry : entries) {
                minutes += entry.entry().minutes();
            }
            totals.add(new DayTotal(entries.get(0).student(), day, minutes, entries, twice(entries)));
        });
        totals.sort(Comparator.comparing(DayTotal::date));
        return totals;
    }

    /** The day is enough, and the engine asks often. */
    @Override
    public int hashCode() {
        return date.hashCode();
    }

    private static boolean twice(List<RecordFact.Logged> entries) {
        for (int one = 0; one < entries.size(); one++) {
            for (int other = one + 1; other < entries.size(); other++) {
                if (entries.get(one).entry().did().equals(entries.get(other).entry().did())
                        && entries.get(one).entry().minutes() == entries.get(other).entry().minutes()) {
                    return true;
                }
            }
        }
        return false;
    }
}
