package org.hearthrule.page.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.hearthrule.records.Book;
import org.hearthrule.records.YearRecords;
import org.hearthrule.records.YearRecords.LogEntry;
import org.hearthrule.suggest.Confirmed;
import org.hearthrule.suggest.Suggester;
import org.hearthrule.suggest.Suggestion;

/**
 * Offers subjects from words, and knows what this family confirmed: the subjects that stand in its log. What was learned
 * is kept while the book grows by single entries, and learned anew otherwise. Safe for several threads.
 */
final class Learner {

    private Suggester suggester;
    private Book learned;

    synchronized List<Suggestion> offer(Book book, String words) {
        if (learned != book && !grewByOne(book)) {
            List<Confirmed> lines = new ArrayList<>();
            for (YearRecords year : book.years().values()) {
                year.log().stream().filter(Learner::isConfirmed).forEach(entry -> lines.add(confirmed(entry)));
            }
            suggester = Suggester.learning(lines);
        }
        learned = book;
        return suggester.of(words);
    }

    private static boolean isConfirmed(LogEntry entry) {
        return !entry.subjects().isEmpty() && !entry.did().isEmpty();
    }

    private static Confirmed confirmed(LogEntry entry) {
        return new Confirmed(entry.did(), Set.copyOf(entry.subjects()));
    }

    /** The usual case: one entry more than before, in one year. */
    private boolean grewByOne(Book book) {
        if (learned == null || !book.years().keySet().equals(learned.years().keySet())) {
            return false;
        }
        LogEntry added = null;
        for (YearRecords year : book.years().values()) {
            List<LogEntry> before = learned.years().get(year.label()).log();
            if (before == year.log() || before.equals(year.log())) {
                continue;
            }
            if (added != null || year.log().size() != before.size() + 1) {
                return false;
            }
            Set<String> known = new java.util.HashSet<>(before.stream().map(LogEntry::id).toList());
            List<LogEntry> fresh = year.log().stream().filter(entry -> !known.contains(entry.id())).toList();
            if (fresh.size() != 1) {
                return false;
            }
            added = fresh.get(0);
        }
        if (added != null && isConfirmed(added)) {
            suggester.learn(confirmed(added));
        }
        return true;
    }
}
