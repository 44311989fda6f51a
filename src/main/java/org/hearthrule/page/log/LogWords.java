package org.hearthrule.page.log;

import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.hearthrule.page.frame.Minutes;
import org.hearthrule.page.frame.PageWords;
import org.hearthrule.records.Book;
import org.hearthrule.records.YearRecords.LogEntry;
import org.hearthrule.terms.Subjects;

/** What the log's pages say, in words. Safe for several threads. */
final class LogWords {

    private LogWords() { }

    static String say(String key, Object... arguments) {
        return PageWords.say(key, arguments);
    }

    static String count(String key, long number, Object... more) {
        return PageWords.count(key, number, more);
    }

    static String date(LocalDate day) {
        return PageWords.date(day);
    }

    static String weekday(LocalDate day) {
        return day.getDayOfWeek().getDisplayName(TextStyle.FULL, Locale.US);
    }

    static String and(List<String> words) {
        return PageWords.and(words);
    }

    /** @return for example {@code 12 entries on 9 days fit.} */
    static String found(int entries, int days) {
        return entries == 0 ? say("log.found.none") : count("log.found", entries, count("log.days", days));
    }

    static Map<String, String> firstNames(Book book) {
        Map<String, String> names = new LinkedHashMap<>();
        book.students().forEach(one -> names.put(one.id(), one.name().split(" ", 2)[0]));
        return names;
    }

    static LogSearch.Row row(LogIndex.Place place, Map<String, String> children) {
        LogEntry entry = place.entry();
        return new LogSearch.Row(place.address(), did(entry), who(entry, children), minutes(entry), subjects(entry), entry.subjects().isEmpty());
    }

    private static String did(LogEntry entry) {
        return entry.did().isEmpty() ? say("log.no-words") : entry.did();
    }

    private static String who(LogEntry entry, Map<String, String> children) {
        return children.size() > 1 && entry.students().size() == children.size() ? say("log.all")
                : and(entry.students().stream().map(id -> children.getOrDefault(id, id)).toList());
    }

    private static String minutes(LogEntry entry) {
        return entry.minutes() == 0 ? say("log.no-time") : Minutes.words(entry.minutes());
    }

    private static String subjects(LogEntry entry) {
        return entry.subjects().isEmpty() ? say("log.no-subject") : and(entry.subjects().stream().map(Subjects::name).toList());
    }

    /** @return an entry in a line: who, how long, subjects */
    static String line(LogEntry entry, Map<String, String> children) {
        return who(entry, children) + ", " + minutes(entry) + " · " + subjects(entry);
    }

    /** @return everything an entry says, by what it is called in the form */
    static Map<String, String> facts(LogEntry entry, Book book) {
        Map<String, String> facts = new LinkedHashMap<>();
        facts.put("What was done", did(entry));
        facts.put("Day", date(entry.date()));
        facts.put("How long", minutes(entry));
        facts.put("Who", who(entry, firstNames(book)));
        facts.put("Subjects", subjects(entry));
        if (!entry.materials().isEmpty()) {
            facts.put("Books and materials", String.join(", ", entry.materials()));
        }
        if (entry.place() != null) {
            facts.put("Where", entry.place());
        }
        if (entry.by() != null) {
            facts.put("Who taught", book.person(entry.by()).map(one -> one.name()).orElse(entry.by()));
        }
        if (Boolean.TRUE.equals(entry.core())) {
            facts.put("Core", "yes");
        }
        return facts;
    }

    /**
     * @param logged entries that were just logged or mended
     * @return a sentence for each child and day of them that has more hours than a day has; empty when none has
     */
    static String tooFull(List<LogEntry> logged, LogIndex index, Book book) {
        List<String> sentences = new ArrayList<>();
        for (LogEntry entry : logged) {
            for (String child : entry.students()) {
                int minutes = index.minutes(child, entry.date());
                String name = firstNames(book).getOrDefault(child, child);
                String sentence = say("log.too-full", name, Minutes.words(minutes), date(entry.date()));
                if (minutes > Minutes.LONGEST_DAY && !sentences.contains(sentence)) {
                    sentences.add(sentence);
                }
            }
        }
        return sentences.isEmpty() ? "" : ' ' + String.join(" ", sentences);
    }
}
