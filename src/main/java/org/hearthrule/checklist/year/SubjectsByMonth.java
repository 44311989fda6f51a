package org.hearthrule.checklist.year;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hearthrule.checklist.Line;
import org.hearthrule.checklist.year.SubjectRow.Cell;
import org.hearthrule.checklist.year.SubjectRow.Origin;
import org.hearthrule.law.Evidence;
import org.hearthrule.law.SubjectItem;
import org.hearthrule.records.Book;
import org.hearthrule.records.YearLabel;
import org.hearthrule.records.YearRecords;
import org.hearthrule.records.YearRecords.LogEntry;
import org.hearthrule.records.YearRecords.Reading;
import org.hearthrule.records.YearRecords.Sample;
import org.hearthrule.rules.Status;
import org.hearthrule.terms.Subjects;

/** Sums a year's records by subject and month: the law's subjects in the law's words, then the family's others. */
final class SubjectsByMonth {

    private static final int MONTHS = 12;

    private final Set<String> children;
    private final YearLabel label;
    private final Map<String, SubjectItem> items = new LinkedHashMap<>();
    private final Map<String, Cell[]> sums = new LinkedHashMap<>();
    private final Map<List<String>, List<String>> rowsOf = new HashMap<>();

    /** @param children ids of those looked at */
    SubjectsByMonth(Set<String> children, YearLabel label) {
        this.children = children;
        this.label = label;
    }

    List<SubjectRow> rows(Book book, Collection<Line> lines) {
        lines.stream().filter(this::isOwedThisYear).forEach(line ->
                Evidence.leaves(line.asked().shows(), Evidence.Subjects.class).forEach(subjects ->
                        subjects.items().forEach(item -> items.merge(item.name(), item, SubjectsByMonth::asked))));
        book.years().values().forEach(this::add);
        List<SubjectRow> rows = new ArrayList<>();
        items.values().forEach(item -> rows.add(row(item.name(), "law " + item.name(),
                item.may() ? Origin.PERMITTED : Origin.ASKED)));
        Subjects.ids().stream().filter(sums::containsKey).forEach(id -> rows.add(row(Subjects.name(id), id, Origin.OTHER)));
        if (sums.containsKey("")) {
            rows.add(row(null, "", Origin.NONE));
        }
        return List.copyOf(rows);
    }

    private boolean isOwedThisYear(Line line) {
        return line.asked() != null && line.finding().status() != Status.NOT_DUE && line.finding().year() != null
                && isOf(line.finding().year());
    }

    /** A year in law that is a calendar year lies in two years of the book. */
    private boolean isOf(String year) {
        return year.indexOf('-') > 0 ? year.equals(label.toString())
                : Integer.parseInt(year) == label.start() || Integer.parseInt(year) == label.start() + 1;
    }

    /** What is asked of one child is asked, though it be only permitted for another. */
    private static SubjectItem asked(SubjectItem one, SubjectItem other) {
        return one.may() ? other : one;
    }

    private void add(YearRecords year) {
        boolean ofYear = year.label().equals(label.toString());
        for (LogEntry entry : year.log()) {
            if (label.holds(entry.date()) && isLookedAt(entry.students())) {
                add(entry.date(), entry.subjects(), new Cell(entry.minutes(), 1, 0, 0));
            }
        }
        for (Sample sample : year.samples()) {
            if (children.contains(sample.student()) && (sample.date() == null ? ofYear : label.holds(sample.date()))) {
                add(sample.date(), sample.subjects(), new Cell(0, 0, 1, 0));
            }
        }
        for (Reading reading : year.readings()) {
            LocalDate day = day(reading);
            if (isLookedAt(reading.students()) && (day == null ? ofYear : label.holds(day))) {
                add(day, reading.subjects(), new Cell(0, 0, 0, 1));
            }
        }
    }

    private boolean isLookedAt(List<String> students) {
        return students.stream().anyMatch(children::contains);
    }

    private static LocalDate day(Reading reading) {
        return reading.finished() != null ? reading.finished() : reading.started();
    }

    private void add(LocalDate day, List<String> subjects, Cell cell) {
        int month = day == null ? MONTHS : (day.getMonthValue() + 5) % MONTHS;
        for (String row : rowsOf.computeIfAbsent(subjects, this::rowsOf)) {
            Cell[] sum = sums.computeIfAbsent(row, key -> empty());
            sum[month] = sum[month].plus(cell);
        }
    }

    /** The law's subjects that one of the tags shows; and each tag that shows none of them, for itself. */
    private List<String> rowsOf(List<String> subjects) {
        List<String> rows = new ArrayList<>();
        for (SubjectItem item : items.values()) {
            if (subjects.stream().anyMatch(subject -> shows(subject, item))) {
                rows.add("law " + item.name());
            }
        }
        subjects.stream().filter(subject -> items.values().stream().noneMatch(item -> shows(subject, item)))
                .forEach(rows::add);
        return subjects.isEmpty() ? List.of("") : rows;
    }

    private static boolean shows(String subject, SubjectItem item) {
        return item.shownBy().stream().anyMatch(asked -> Subjects.shows(subject, asked));
    }

    private SubjectRow row(String name, String key, Origin origin) {
        Cell[] sum = sums.getOrDefault(key, empty());
        return new SubjectRow(name, origin, List.of(Arrays.copyOf(sum, MONTHS)), sum[MONTHS]);
    }

    /** One cell for each month from July on, and one for what has no day. */
    private static Cell[] empty() {
        Cell[] cells = new Cell[MONTHS + 1];
        Arrays.fill(cells, Cell.EMPTY);
        return cells;
    }
}
