package org.hearthrule.page.log;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.hearthrule.page.frame.Form;
import org.hearthrule.records.Book;
import org.hearthrule.records.YearRecords;
import org.hearthrule.records.YearRecords.LogEntry;
import org.junit.jupiter.api.Test;

class LogSearchTest {

    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
    private static final int DAYS = 40;

    /** @param each entries of each of forty days */
    private static Book book(int each) {
        List<LogEntry> log = new ArrayList<>();
        for (int i = 0; i < DAYS * each; i++) {
            log.add(new LogEntry("log-" + i, DAY.plusDays(i / each), 10, List.of("ida"), List.of(), "Piece " + i,
                    List.of("Mortar"), null, null, null, null));
        }
        YearRecords year = YearRecords.empty("2025-26").withLog(log);
        TreeMap<String, YearRecords> years = new TreeMap<>(Map.of(year.label(), year));
        return new Book(null, null, List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), years);
    }

    private static LogSearch.Page page(Book book, String address) {
        Map<String, List<String>> query = new LinkedHashMap<>();
        for (String one : address.replaceAll("^[^?]*\\??|#.*$", "").split("&")) {
            String[] halves = one.split("=", 2);
            query.put(halves[0], halves.length == 1 ? List.of()
                    : List.of(URLDecoder.decode(halves[1], StandardCharsets.UTF_8)));
        }
        return LogSearch.of(Form.of(query), book).page(LogIndex.of(book), book);
    }

    private static int entries(LogSearch.Page page) {
        return page.days().stream().mapToInt(day -> day.rows().size()).sum();
    }

    /** Four children fill fifty days with a thousand entries, which nobody reads as one page. */
    @Test
    void aPageHoldsAsManyWholeDaysAsItHasRoomFor() {
        Book book = book(20);
        LogSearch.Page first = page(book, "/log");

        assertThat(first.days()).hasSize(15);
        assertThat(entries(first)).isEqualTo(300);
        assertThat(first.later()).isNull();

        LogSearch.Page second = page(book, first.older());
        LogSearch.Page third = page(book, second.older());

        assertThat(entries(first) + entries(second) + entries(third)).isEqualTo(DAYS * 20);
        assertThat(third.older()).isNull();
        assertThat(page(book, second.later()).days()).isEqualTo(first.days());
        assertThat(page(book, third.later()).days()).isEqualTo(second.days());
    }

    @Test
    void aDayWithMoreThanAPageHoldsIsAPageOfItsOwn() {
        Book book = book(301);
        LogSearch.Page first = page(book, "/log");
        LogSearch.Page second = page(book, first.older());

        assertThat(first.days()).hasSize(1);
        assertThat(second.days()).hasSize(1);
        assertThat(page(book, second.later()).days()).isEqualTo(first.days());
    }

    @Test
    void wordsAreFoundInWhatWasDoneAndInMaterialsButNotAcrossTheTwo() {
        Book book = book(1);

        assertThat(entries(page(book, "/log?words=PIECE+12"))).isEqualTo(1);
        assertThat(entries(page(book, "/log?words=mortar"))).isEqualTo(DAYS);
        assertThat(entries(page(book, "/log?words=12+mortar"))).isZero();
    }
}
