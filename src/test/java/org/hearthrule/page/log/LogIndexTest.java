package org.hearthrule.page.log;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.hearthrule.records.Book;
import org.hearthrule.records.YearRecords;
import org.hearthrule.records.YearRecords.LogEntry;
import org.junit.jupiter.api.Test;

class LogIndexTest {

    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    private static LogEntry entry(String id, LocalDate day, int minutes) {
        return new LogEntry(id, day, minutes, List.of("ida"), List.of(), id, List.of(), null, null, null, null);
    }

    private static Book book(YearRecords... years) {
        TreeMap<String, YearRecords> all = new TreeMap<>();
        for (YearRecords year : years) {
            all.put(year.label(), year);
        }
        return new Book(null, null, List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), all);
    }

    private static List<String> ids(List<LogIndex.Place> places) {
        return places.stream().map(place -> place.entry().id()).toList();
    }

    @Test
    void daysStandLatestFirstAndEntriesOfADayInTheOrderOfTheFile() {
        LogIndex index = LogIndex.of(book(
                YearRecords.empty("2025-26").withLog(List.of(entry("b", DAY.plusDays(1), 0), entry("a", DAY, 0), entry("c", DAY.plusDays(1), 0))),
                YearRecords.empty("2024-25").withLog(List.of(entry("old", DAY.minusYears(1), 0)))));

        assertThat(ids(index.latestFirst())).containsExactly("b", "c", "a", "old");
    }

    /** An entry that lies in another year's file than its day is still found by its day. */
    @Test
    void aDayIsFoundInWhateverFileItsEntriesLie() {
        LogIndex index = LogIndex.of(book(YearRecords.empty("2025-26").withLog(List.of(entry("a", DAY, 20))),
                YearRecords.empty("2024-25").withLog(List.of(entry("astray", DAY, 30), entry("old", DAY.minusYears(1), 0)))));

        assertThat(ids(index.on(DAY))).containsExactly("a", "astray");
        assertThat(index.minutes("ida", DAY)).isEqualTo(50);
        assertThat(index.minutes("ben", DAY)).isZero();
    }

    @Test
    void theLastDayUpToADayIsThatDayOrOneBefore() {
        List<LogEntry> log = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            log.add(entry("log-" + i, DAY.plusDays(3L * i), 0));
        }
        LogIndex index = LogIndex.of(book(YearRecords.empty("2025-26").withLog(log)));

        for (int i = 0; i < 30; i++) {
            assertThat(index.lastDay(DAY.plusDays(i))).contains(DAY.plusDays(i - i % 3));
            assertThat(index.on(DAY.plusDays(i))).hasSize(i % 3 == 0 ? 1 : 0);
        }
        assertThat(index.lastDay(DAY.minusDays(1))).isEmpty();
        assertThat(LogIndex.of(book()).last(DAY)).isEmpty();
    }
}
