package org.hearthrule.checklist.year;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.hearthrule.checklist.Line;
import org.hearthrule.checklist.Section;
import org.hearthrule.law.Profile;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookEvent;
import org.hearthrule.records.Placement;
import org.hearthrule.records.Placements;
import org.hearthrule.records.Student;
import org.hearthrule.records.YearLabel;
import org.hearthrule.records.YearRecords;
import org.hearthrule.records.YearRecords.LogEntry;
import org.hearthrule.records.YearRecords.Stretch;
import org.hearthrule.rules.WorkDays;
import org.hearthrule.terms.Subjects;

/** Lays a school year's days out, month by month. */
final class YearCalendar {

    private final Book book;
    private final Set<String> children;
    private final YearLabel label;
    private final Map<LocalDate, Logged> logged = new HashMap<>();
    private final Map<LocalDate, List<Line>> due = new HashMap<>();
    private final Map<LocalDate, List<DayMark>> marks = new HashMap<>();

    /** What was logged on a day. */
    private static final class Logged {
        private int entries;
        private int minutes;
        private final Set<String> subjects = new LinkedHashSet<>();
    }

    /** @param children ids of those looked at */
    YearCalendar(Book book, Set<String> children, YearLabel label) {
        this.book = book;
        this.children = children;
        this.label = label;
    }

    List<CalendarMonth> months(Collection<Line> lines, Collection<Profile> profiles) {
        book.years().values().forEach(year -> year.log().forEach(this::add));
        lines.stream().filter(YearCalendar::isTold).forEach(line ->
                due.computeIfAbsent(line.finding().due(), day -> new ArrayList<>()).add(line));
        YearRecords year = book.years().get(label.toString());
        YearRecords.Calendar own = year == null ? YearRecords.Calendar.EMPTY : year.calendar();
        addBounds(own);
        addPlacements(profiles);
        book.events().forEach(this::add);
        SortedMap<LocalDate, String> holidays = holidays();
        Set<LocalDate> closed = new HashSet<>(own.schoolClosed());
        List<CalendarMonth> months = new ArrayList<>();
        for (YearMonth month = YearMonth.from(label.first()); !month.atDay(1).isAfter(label.last()); month = month.plusMonths(1)) {
            List<CalendarDay> days = new ArrayList<>(31);
            for (int day = 1; day <= month.lengthOfMonth(); day++) {
                LocalDate date = month.atDay(day);
                days.add(day(date, holidays.get(date), closed.contains(date)));
            }
            months.add(new CalendarMonth(month, List.copyOf(days)));
        }
        return List.copyOf(months);
    }

    private CalendarDay day(LocalDate date, String holiday, boolean closed) {
        Logged own = logged.get(date);
        return new CalendarDay(date, own == null ? 0 : own.entries, own == null ? 0 : own.minutes,
                own == null ? List.of() : own.subjects.stream().map(Subjects::name).toList(),
                List.copyOf(due.getOrDefault(date, List.of())), holiday, closed,
                List.copyOf(marks.getOrDefault(date, List.of())));
    }

    private static boolean isTold(Line line) {
        return line.finding().due() != null && !line.section().onlyOnRequest() && line.section() != Section.LAW_UNCLEAR;
    }

    private void add(LogEntry entry) {
        if (label.holds(entry.date()) && entry.students().stream().anyMatch(children::contains)) {
            Logged day = logged.computeIfAbsent(entry.date(), date -> new Logged());
            day.entries++;
            day.minutes += entry.minutes();
            day.subjects.addAll(entry.subjects());
        }
    }

    private void addBounds(YearRecords.Calendar own) {
        mark(own.firstDay(), DayMark.bound(DayMark.Kind.YEAR_BEGINS, 0));
        mark(own.lastDay(), DayMark.bound(DayMark.Kind.YEAR_ENDS, 0));
        mark(own.schoolFirstDay(), DayMark.bound(DayMark.Kind.SCHOOL_BEGINS, 0));
        mark(own.schoolLastDay(), DayMark.bound(DayMark.Kind.SCHOOL_ENDS, 0));
        addStretches(own.quarters(), DayMark.Kind.QUARTER_BEGINS, DayMark.Kind.QUARTER_ENDS);
        addStretches(own.terms(), DayMark.Kind.TERM_BEGINS, DayMark.Kind.TERM_ENDS);
    }

    private void addStretches(List<Stretch> stretches, DayMark.Kind begins, DayMark.Kind ends) {
        for (int number = 1; number <= stretches.size(); number++) {
            mark(stretches.get(number - 1).from(), DayMark.bound(begins, number));
            mark(stretches.get(number - 1).to(), DayMark.bound(ends, number));
        }
    }

    private void mark(LocalDate day, DayMark mark) {
        if (day != null && label.holds(day)) {
            marks.computeIfAbsent(day, date -> new ArrayList<>()).add(mark);
        }
    }

    private void addPlacements(Collection<Profile> profiles) {
        for (Placement placement : book.placements()) {
            if (children.contains(placement.student())) {
                String law = law(placement, profiles);
                join(placement.from(), DayMark.Kind.FOLLOWS, law, null, placement.student());
                join(placement.to(), DayMark.Kind.LEAVES, law, placement.ended(), placement.student());
            }
        }
    }

    private static String law(Placement placement, Collection<Profile> profiles) {
        Optional<Profile> profile = profiles.stream()
                .filter(one -> one.slug().equals(placement.jurisdiction())).findFirst();
        return profile.flatMap(one -> one.pathway(placement.pathway()).map(pathway -> pathway.name() + ", " + one.name()))
                .orElse(placement.pathway());
    }

    /** Brothers and sisters who begin the same on the same day share one mark. */
    private void join(LocalDate day, DayMark.Kind kind, String what, String why, String student) {
        if (day == null || !label.holds(day)) {
            return;
        }
        List<DayMark> known = marks.computeIfAbsent(day, date -> new ArrayList<>());
        for (int i = 0; i < known.size(); i++) {
            DayMark mark = known.get(i);
            if (mark.kind() == kind && mark.what().equals(what)) {
                List<String> both = new ArrayList<>(mark.children());
                both.addAll(names(List.of(student)));
                known.set(i, new DayMark(kind, 0, what, mark.note() == null ? why : mark.note(), both));
                return;
            }
        }
        known.add(new DayMark(kind, 0, what, why, names(List.of(student))));
    }

    private void add(BookEvent event) {
        if (event.students().isEmpty() || event.students().stream().anyMatch(children::contains)) {
            List<String> own = event.students().stream().filter(children::contains).toList();
            mark(event.date(), new DayMark(DayMark.Kind.EVENT, 0, event.kind().words(), event.note(), names(own)));
        }
    }

    /** Nobody is named where only one child is looked at. */
    private List<String> names(List<String> students) {
        return children.size() == 1 ? List.of()
                : students.stream().map(id -> book.student(id).map(Student::name).orElse(id)).toList();
    }

    /** Of every state that one of the children lives in on the day. */
    private SortedMap<LocalDate, String> holidays() {
        SortedMap<LocalDate, String> found = new TreeMap<>();
        for (String child : children) {
            List<Placement> own = Placements.of(book, child);
            own.stream().map(Placement::jurisdiction).distinct().forEach(code ->
                    WorkDays.of(code.toUpperCase(Locale.ROOT)).holidays(label.first(), label.last()).forEach((day, name) -> {
                        if (code.equals(stateOn(own, day))) {
                            found.putIfAbsent(day, name);
                        }
                    }));
        }
        return found;
    }

    /** @return where the child is taught on the day; before and between, where it will be; after, where it was */
    private static String stateOn(List<Placement> own, LocalDate day) {
        for (Placement placement : own) {
            if (placement.to() == null || !placement.to().isBefore(day)) {
                return placement.jurisdiction();
            }
        }
        return own.get(own.size() - 1).jurisdiction();
    }
}
