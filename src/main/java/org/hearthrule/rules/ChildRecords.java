package org.hearthrule.rules;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.concurrent.ConcurrentHashMap;
import org.hearthrule.records.Book;
import org.hearthrule.records.Student;
import org.hearthrule.records.YearRecords;

/**
 * All records of one child, by kind. One fact for each child, not one for each entry: the engine keeps a tuple for
 * every fact and rule, and a year has hundreds of entries. Safe for several threads.
 */
public final class ChildRecords {

    private static final Kept KEPT = new Kept();

    private final String student;
    private final Map<Class<? extends RecordFact>, List<RecordFact>> byKind = new LinkedHashMap<>();
    private final Map<ProgramYear, List<RecordFact.Logged>> about = new ConcurrentHashMap<>();
    private final List<DayTotal> days;
    private int longestDay;
    private long longestWait;
    private LocalDate lastDay = LocalDate.MIN;
    private boolean twice;

    private ChildRecords(String student, List<RecordFact> facts) {
        this.student = student;
        for (RecordFact fact : facts) {
            byKind.computeIfAbsent(fact.getClass(), kind -> new ArrayList<>()).add(fact);
        }
        this.days = DayTotal.of(getLogged());
        for (DayTotal day : days) {
            longestDay = Math.max(longestDay, day.minutes());
            lastDay = day.date();
            twice |= day.twice();
        }
        for (RecordFact.Logged entry : getLogged()) {
            longestWait = Math.max(longestWait, entry.getWrittenDaysLater());
        }
    }

    /**
     * The records of the book that was asked for last are kept: whoever turns from year to year, or looks at what a
     * move would bring, asks for the same ones again and again.
     *
     * @return one for each child that has records, by id, in the order met
     */
    static Map<String, ChildRecords> of(Book book) {
        return KEPT.of(book);
    }

    /** Safe for several threads. */
    private static final class Kept {

        private SortedMap<String, YearRecords> years;
        private List<Student> students;
        private Map<String, ChildRecords> records;

        synchronized Map<String, ChildRecords> of(Book book) {
            if (years != book.years() || !book.students().equals(students)) {
                records = all(RecordFacts.of(book));
                years = book.years();
                students = book.students();
            }
            return records;
        }
    }

    private static Map<String, ChildRecords> all(List<RecordFact> facts) {
        Map<String, List<RecordFact>> byChild = new LinkedHashMap<>();
        for (RecordFact fact : facts) {
            byChild.computeIfAbsent(fact.student(), child -> new ArrayList<>()).add(fact);
        }
        Map<String, ChildRecords> records = new LinkedHashMap<>();
        byChild.forEach((child, own) -> records.put(child, new ChildRecords(child, own)));
        return Collections.unmodifiableMap(records);
    }

    public String student() {
        return student;
    }

    /** @return records of one kind, in the order of the book */
    @SuppressWarnings("unchecked")
    <F extends RecordFact> List<F> of(Class<F> kind) {
        return (List<F>) byKind.getOrDefault(kind, List.of());
    }

    /** @return log entries of a year and of a month on both sides of it, in the order of the book */
    List<RecordFact.Logged> loggedAbout(ProgramYear year) {
        return about.computeIfAbsent(year, asked -> {
            LocalDate from = asked.start().minusMonths(1);
            LocalDate to = asked.end().plusMonths(1);
            return getLogged().stream().filter(entry -> !entry.date().isBefore(from) && !entry.date().isAfter(to))
                    .toList();
        });
    }

    public List<RecordFact.Logged> getLogged() {
        return of(RecordFact.Logged.class);
    }

    public List<RecordFact.Worked> getSamples() {
        return of(RecordFact.Worked.class);
    }

    public List<RecordFact.Read> getReadings() {
        return of(RecordFact.Read.class);
    }

    public List<RecordFact.Tested> getTests() {
        return of(RecordFact.Tested.class);
    }

    // A log of many years is searched here: the engine keeps a tuple for every entry that a rule goes through.

    /** @return log entries of later days, day after day */
    public List<RecordFact.Logged> loggedAfter(LocalDate day) {
        int first = days.size();
        while (first > 0 && days.get(first - 1).date().isAfter(day)) {
            first--;
        }
        List<RecordFact.Logged> found = new ArrayList<>();
        days.subList(first, days.size()).forEach(total -> found.addAll(total.entries()));
        return found;
    }

    /** @return log entries written more than so many days after their day, in the order of the book */
    public List<RecordFact.Logged> writtenLater(long days) {
        return getLogged().stream().filter(entry -> entry.getWrittenDaysLater() > days).toList();
    }

    /** @return one for each day with entries */
    public List<DayTotal> getDays() {
        return days;
    }

    // What follows says at one look whether there is anything for a rule to find in the days or in the log.

    /** @return minutes of the day that has most */
    public int getLongestDay() {
        return longestDay;
    }

    /** @return day of the last log entry; {@link LocalDate#MIN} without entries */
    public LocalDate getLastDay() {
        return lastDay;
    }

    /** @return the most days that an entry was written after its day */
    public long getLongestWait() {
        return longestWait;
    }

    /** @return true when two entries of a day say the same */
    public boolean isTwice() {
        return twice;
    }
}
