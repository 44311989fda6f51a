package org.hearthrule.records;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * Brings two changes of one book together, record by record: what only one side changed is taken from that side; what
 * both changed in different ways is a conflict. Lists of the family's file are taken as a whole.
 */
public final class BookMerge {

    private final Book base;
    private final Book ours;
    private final Book theirs;
    private boolean conflict;

    private BookMerge(Book base, Book ours, Book theirs) {
        this.base = base;
        this.ours = ours;
        this.theirs = theirs;
    }

    /** @return the book with both changes; empty when both changed the same in different ways */
    public static Optional<Book> merge(Book base, Book ours, Book theirs) {
        BookMerge merge = new BookMerge(base, ours, theirs);
        Book merged = merge.merged();
        return merge.conflict ? Optional.empty() : Optional.of(merged);
    }

    private Book merged() {
        TreeMap<String, YearRecords> years = new TreeMap<>();
        Set<String> labels = new TreeSet<>(ours.years().keySet());
        labels.addAll(theirs.years().keySet());
        for (String label : labels) {
            years.put(label, year(label));
        }
        return new Book(theirs.folder(), whole(Book::familyName), whole(Book::students), whole(Book::persons),
                whole(Book::placements), whole(Book::events), whole(Book::facts), whole(Book::answers), years);
    }

    private <T> T whole(Function<Book, T> part) {
        return whole(part.apply(base), part.apply(ours), part.apply(theirs));
    }

    private <T> T whole(T before, T mine, T other) {
        if (Objects.equals(mine, other) || Objects.equals(before, mine)) {
            return other;
        }
        conflict |= !Objects.equals(before, other);
        return mine;
    }

    private YearRecords year(String label) {
        YearRecords before = base.years().getOrDefault(label, YearRecords.empty(label));
        YearRecords mine = ours.years().getOrDefault(label, YearRecords.empty(label));
        YearRecords other = theirs.years().getOrDefault(label, YearRecords.empty(label));
        YearRecords merged = new YearRecords(label, whole(before.grades(), mine.grades(), other.grades()),
                whole(before.calendar(), mine.calendar(), other.calendar()),
                whole(before.choices(), mine.choices(), other.choices()), other.log(), other.readings(), other.samples(),
                other.tests(), other.evaluations(), other.filings(), other.requests(), other.health(),
                other.documents(), other.visits());
        for (RecordKind kind : RecordKind.values()) {
            merged = kind.replaced(merged, records(kind.in(before), kind.in(mine), kind.in(other)));
        }
        return merged;
    }

    /** The other side's order; what is new on ours comes where it stands there. */
    private List<YearRecord> records(List<? extends YearRecord> before, List<? extends YearRecord> mine,
                                     List<? extends YearRecord> other) {
        if (before.equals(mine)) {
            return List.copyOf(other);
        }
        Map<String, YearRecord> was = byId(before);
        Map<String, YearRecord> here = byId(mine);
        Map<String, YearRecord> there = byId(other);
        Set<String> ids = new HashSet<>(was.keySet());
        ids.addAll(here.keySet());
        ids.addAll(there.keySet());
        Map<String, YearRecord> chosen = new LinkedHashMap<>();
        for (String id : ids) {
            YearRecord record = whole(was.get(id), here.get(id), there.get(id));
            if (record != null) {
                chosen.put(id, record);
            }
        }
        List<YearRecord> merged = new ArrayList<>();
        List<? extends YearRecord> order = before.equals(other) ? mine : other;
        List<? extends YearRecord> rest = order == mine ? other : mine;
        order.forEach(record -> take(record, chosen, merged));
        for (YearRecord record : rest) {
            if (chosen.containsKey(record.id())) {
                YearRecord left = chosen.remove(record.id());
                merged.add(placeOf(merged, left), left);
            }
        }
        return merged;
    }

    private static void take(YearRecord record, Map<String, YearRecord> chosen, List<YearRecord> merged) {
        YearRecord found = chosen.remove(record.id());
        if (found != null) {
            merged.add(found);
        }
    }

    private static int placeOf(List<YearRecord> records, YearRecord record) {
        int place = records.size();
        if (record instanceof YearRecords.LogEntry) {
            while (place > 0 && records.get(place - 1).day().isAfter(record.day())) {
                place--;
            }
        }
        return place;
    }

    private static Map<String, YearRecord> byId(List<? extends YearRecord> records) {
        Map<String, YearRecord> byId = new LinkedHashMap<>();
        records.forEach(record -> byId.put(record.id(), record));
        return byId;
    }
}
