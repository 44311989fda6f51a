package org.hearthrule.page.log;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hearthrule.records.Book;
import org.hearthrule.records.YearRecords;
import org.hearthrule.records.YearRecords.LogEntry;
import org.hearthrule.suggest.Confirmed;
import org.hearthrule.suggest.Suggester;
import org.hearthrule.suggest.Suggestion;

/**
 * Offers subjects from words, and knows what this family confirmed: the subjects that stand in its log. When the book
 * changes, only what changed is learned and forgotten. Safe for several threads.
 */
final class Learner {

    private final Suggester suggester = Suggester.packaged();
    private Book learned;
    private Map<String, List<LogEntry>> lines = Map.of();

    /** Learns aside, so that the first words typed need not wait for the log of many years. */
    void prepare(Book book) {
        Thread aside = new Thread(() -> offer(book, ""), "words of the log");
        aside.setDaemon(true);
        aside.start();
    }

    synchronized List<Suggestion> offer(Book book, String words) {
        if (learned != book) {
            follow(book);
        }
        return suggester.of(words);
    }

    private void follow(Book book) {
        Map<String, List<LogEntry>> now = new HashMap<>();
        // in the order of the years, so that what was confirmed last is learned last
        for (YearRecords year : book.years().values()) {
            now.put(year.label(), year.log());
            change(lines.getOrDefault(year.label(), List.of()), year.log());
        }
        lines.forEach((label, log) -> {
            if (!now.containsKey(label)) {
                change(log, List.of());
            }
        });
        lines = now;
        learned = book;
    }

    private void change(List<LogEntry> before, List<LogEntry> after) {
        if (before == after) {
            return;
        }
        Map<String, LogEntry> gone = new HashMap<>();
        before.forEach(entry -> gone.put(entry.id(), entry));
        List<LogEntry> come = new ArrayList<>();
        for (LogEntry entry : after) {
            if (entry.equals(gone.get(entry.id()))) {
                gone.remove(entry.id());
            } else {
                come.add(entry);
            }
        }
        gone.values().stream().filter(Learner::isConfirmed).forEach(entry -> suggester.forget(confirmed(entry)));
        come.stream().filter(Learner::isConfirmed).forEach(entry -> suggester.learn(confirmed(entry)));
    }

    private static boolean isConfirmed(LogEntry entry) {
        return !entry.subjects().isEmpty() && !entry.did().isEmpty();
    }

    private static Confirmed confirmed(LogEntry entry) {
        return new Confirmed(entry.did(), Set.copyOf(entry.subjects()));
    }
}
