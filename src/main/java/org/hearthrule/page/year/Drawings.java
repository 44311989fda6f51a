package org.hearthrule.page.year;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.hearthrule.checklist.year.CalendarDay;
import org.hearthrule.checklist.year.Minimum;
import org.hearthrule.checklist.year.SubjectRow;
import org.hearthrule.checklist.year.YearView;
import org.hearthrule.records.Book;
import org.hearthrule.records.Student;
import org.hearthrule.rules.Finding;

/**
 * Everything that is drawn of a year.
 *
 * @param months   twelve
 * @param discs    sizes of the discs for the key, the smallest first
 * @param minimums amounts of time that the law asks
 * @param others   amounts that would be enough as well, though the family counts by others
 * @param names    of the months, for the heads of tables
 * @param subjects by where they come from, those with nothing in them left out
 * @param sizes    sizes of the discs of subjects for the key
 */
public record Drawings(List<MonthDrawing> months, List<Disc> discs, List<CurveGroup> minimums, List<CurveGroup> others,
                       List<String> names, List<Group> subjects, List<Disc> sizes) {

    /** A disc of the key. */
    public record Disc(String radius, int tone, String words) { }

    /**
     * Subjects of one origin.
     *
     * @param slug such as {@code asked}
     */
    public record Group(String slug, List<SubjectDrawing> subjects) { }

    private static final int HOUR = 60;
    /** The largest disc of a day stands for at least so many minutes. */
    private static final int LONG_DAY = 360;
    private static final int LONG_MONTH = 600;

    static Drawings of(YearView view, Book book) {
        Names names = new Names(book.students().stream().map(Student::name).toList());
        String child = view.student() == null ? "" : view.student();
        int day = scale(LONG_DAY, view.months().stream().flatMap(month -> month.days().stream()).map(CalendarDay::minutes));
        MonthDrawer months = new MonthDrawer(view.asOf(), day, names, child);
        List<CurveGroup> minimums = curves(view, book, names, minimum -> minimum.way() != Minimum.Way.NOT_CHOSEN, "minimum-");
        List<CurveGroup> others = curves(view, book, names, minimum -> minimum.way() == Minimum.Way.NOT_CHOSEN, "other-");
        int month = scale(LONG_MONTH, view.subjects().stream().flatMap(row -> row.months().stream()).map(SubjectRow.Cell::minutes));
        return new Drawings(view.months().stream().map(months::draw).toList(), discs(day, HOUR, 3 * HOUR), minimums, others,
                view.months().stream().map(one -> YearWords.shortMonth(one.month().getMonthValue())).toList(),
                groups(view, month), discs(month, HOUR, 5 * HOUR));
    }

    /** The amounts of one line stand together. */
    private static List<CurveGroup> curves(YearView view, Book book, Names names, Predicate<Minimum> wanted, String prefix) {
        Map<String, List<Minimum>> lines = new LinkedHashMap<>();
        view.minimums().stream().filter(wanted)
                .forEach(minimum -> lines.computeIfAbsent(minimum.line().id(), id -> new ArrayList<>()).add(minimum));
        List<CurveGroup> groups = new ArrayList<>();
        for (List<Minimum> line : lines.values()) {
            Finding finding = line.get(0).line().finding();
            String whose = view.student() == null && finding.studentName() != null && book.students().size() > 1
                    ? names.of(finding.studentName()) : null;
            String id = prefix + (groups.size() + 1);
            List<CurveDrawing> drawn = new ArrayList<>();
            line.forEach(minimum -> drawn.add(new CurveDrawer(minimum, view.asOf()).draw(id + '-' + (drawn.size() + 1), whose)));
            groups.add(new CurveGroup(id, finding.title(), whose, finding.status(), YearWords.status(finding.status()),
                    finding.id(), finding.next(), drawn));
        }
        return groups;
    }

    private static List<Group> groups(YearView view, int scale) {
        YearMonth first = view.months().get(0).month();
        SubjectDrawer drawer = new SubjectDrawer(first, scale);
        List<Group> groups = new ArrayList<>();
        int number = 1;
        for (SubjectRow.Origin origin : SubjectRow.Origin.values()) {
            List<SubjectDrawing> drawn = new ArrayList<>();
            for (SubjectRow row : view.subjects()) {
                // what is only permitted is no gap
                if (row.origin() == origin && (origin == SubjectRow.Origin.ASKED || !row.total().isEmpty())) {
                    drawn.add(drawer.draw(row, number++));
                }
            }
            if (!drawn.isEmpty()) {
                groups.add(new Group(origin.name().toLowerCase(java.util.Locale.ROOT), drawn));
            }
        }
        return groups;
    }

    /**
     * Minutes of the largest disc, in whole hours: one in twenty may be longer and is drawn no larger, so that a single
     * day of twenty hours does not make dots of all others.
     */
    private static int scale(int least, Stream<Integer> amounts) {
        List<Integer> sorted = amounts.filter(minutes -> minutes > 0).sorted().toList();
        int usual = sorted.isEmpty() ? 0 : sorted.get((sorted.size() - 1) * 19 / 20);
        return (Math.max(least, usual) + HOUR - 1) / HOUR * HOUR;
    }

    private static List<Disc> discs(int scale, int small, int middle) {
        return List.of(disc(small, scale, 1), disc(middle, scale, 2),
                new Disc(MonthDrawer.radius(scale, scale), 3, YearWords.say("year.key.or-more", YearWords.time(scale))));
    }

    private static Disc disc(int minutes, int scale, int tone) {
        return new Disc(MonthDrawer.radius(minutes, scale), tone, YearWords.time(minutes));
    }
}
