package org.hearthrule.page.year;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hearthrule.checklist.Line;
import org.hearthrule.checklist.year.CalendarDay;
import org.hearthrule.checklist.year.CalendarMonth;
import org.hearthrule.checklist.year.DayMark;
import org.hearthrule.page.year.MonthDrawing.Cell;
import org.hearthrule.page.year.MonthDrawing.Item;
import org.hearthrule.page.year.MonthDrawing.Row;
import org.hearthrule.page.year.MonthDrawing.Told;
import org.hearthrule.rules.Status;

/** Works out where a month's days and marks stand. */
final class MonthDrawer {

    private static final int DAYS = 7;
    private static final double LARGEST = 11.5;
    private static final double SMALLEST = 2;
    private static final int LITTLE = 60;
    private static final int MUCH = 180;
    /** The most pressing first: at most so many shapes fit into a day. */
    private static final List<Status> PRESSING =
            List.of(Status.LATE, Status.OPEN, Status.THIN, Status.UNCLEAR, Status.MET, Status.NOT_DUE);
    private static final int SHAPES = 2;

    private final LocalDate today;
    private final int scale;
    private final Names names;
    private final String child;

    /**
     * @param scale minutes of the largest disc
     * @param child id of the child looked at, or empty for all
     */
    MonthDrawer(LocalDate today, int scale, Names names, String child) {
        this.today = today;
        this.scale = scale;
        this.names = names;
        this.child = child;
    }

    /** @return radius of the disc of so many minutes: its area grows with them */
    static String radius(int minutes, int scale) {
        return Num.of(Math.max(SMALLEST, LARGEST * Math.sqrt(Math.min(1.0, minutes / (double) scale))));
    }

    MonthDrawing draw(CalendarMonth month) {
        int before = column(month.days().get(0).date()) - 1;
        List<Cell> cells = new ArrayList<>(month.days().size());
        List<Told> told = new ArrayList<>();
        List<Row> rows = new ArrayList<>();
        for (CalendarDay day : month.days()) {
            cells.add(cell(day, before));
            List<Item> items = items(day);
            if (!items.isEmpty()) {
                told.add(new Told(day.date().getDayOfMonth(), day.date().toString(), items));
            }
            if (!day.isPlain()) {
                rows.add(new Row(YearWords.dayOfMonth(day.date()), log(day), YearWords.amounts(day),
                        String.join("; ", items.stream().map(Item::words).toList())));
            }
        }
        String name = YearWords.month(month.month());
        String summed = summed(month);
        return new MonthDrawing("month-" + month.month(), name, summed, YearWords.say("year.month.title", name, summed),
                description(summed, told), (before + month.days().size() + DAYS - 1) / DAYS, cells, told, rows);
    }

    private static String summed(CalendarMonth month) {
        return month.entries() == 0 ? YearWords.say("year.month.empty")
                : YearWords.say("year.month.logged", YearWords.count("year.entries", month.entries()),
                YearWords.count("year.days", month.daysLogged()), YearWords.time(month.minutes()));
    }

    private static String description(String summed, List<Told> told) {
        StringBuilder words = new StringBuilder(summed);
        for (Told day : told) {
            words.append(' ').append(YearWords.say("year.month.day", YearWords.dayOfMonth(LocalDate.parse(day.iso())),
                    String.join("; ", day.items().stream().map(Item::words).toList())));
        }
        return words.toString();
    }

    private Cell cell(CalendarDay day, int before) {
        int place = before + day.date().getDayOfMonth() - 1;
        Set<Status> due = EnumSet.noneOf(Status.class);
        day.due().forEach(line -> due.add(line.finding().status()));
        return new Cell(place % DAYS * Cell.WIDTH, Cell.HEAD + place / DAYS * Cell.HEIGHT, place % DAYS + 1,
                day.date().getDayOfMonth(), day.minutes() == 0 ? null : radius(day.minutes(), scale), tone(day),
                PRESSING.stream().filter(due::contains).limit(SHAPES).toList(), day.isFree(),
                isBound(day, "BEGINS"), isBound(day, "ENDS"), day.date().equals(today), log(day), YearWords.logged(day));
    }

    private static int tone(CalendarDay day) {
        return day.entries() == 0 ? 0 : day.minutes() <= LITTLE ? 1 : day.minutes() <= MUCH ? 2 : 3;
    }

    private static boolean isBound(CalendarDay day, String end) {
        return day.marks().stream().map(DayMark::kind).anyMatch(kind -> kind.isBound() && kind.name().endsWith(end));
    }

    private String log(CalendarDay day) {
        return "/log?day=" + day.date() + (child.isEmpty() ? "" : "&child=" + child);
    }

    /** Due dates first, then what begins, ends or happens, then that no school is kept. */
    private List<Item> items(CalendarDay day) {
        List<Item> items = new ArrayList<>(due(day));
        day.marks().forEach(mark -> items.add(new Item(YearWords.mark(mark, names), null, null, false)));
        if (day.holiday() != null) {
            items.add(new Item(day.holiday(), null, null, true));
        }
        if (day.closed()) {
            items.add(new Item(YearWords.say("year.closed"), null, null, true));
        }
        return items;
    }

    /** The same duty of several children, as far as it stands alike, is one item. */
    private List<Item> due(CalendarDay day) {
        Map<List<Object>, List<Line>> groups = new LinkedHashMap<>();
        day.due().forEach(line -> groups.computeIfAbsent(List.of(line.finding().title(), line.finding().status(),
                line.finding().studentName() == null), key -> new ArrayList<>()).add(line));
        List<Item> items = new ArrayList<>();
        for (Status status : PRESSING) {
            groups.forEach((key, lines) -> {
                if (lines.get(0).finding().status() == status) {
                    items.add(item(lines));
                }
            });
        }
        return items;
    }

    private Item item(List<Line> lines) {
        Line line = lines.get(0);
        List<String> whose = lines.stream().map(one -> one.finding().studentName()).filter(name -> name != null)
                .map(names::of).distinct().toList();
        String status = YearWords.status(line.finding().status()).toLowerCase(java.util.Locale.ROOT);
        String words = whose.isEmpty() || !child.isEmpty() ? YearWords.say("year.due", line.finding().title(), status)
                : YearWords.say("year.due.of", line.finding().title(), YearWords.and(whose), status);
        return new Item(words, line.finding().status(), line.id(), false);
    }

    /** @return 1 for Sunday to 7 for Saturday */
    private static int column(LocalDate day) {
        return day.getDayOfWeek() == DayOfWeek.SUNDAY ? 1 : day.getDayOfWeek().getValue() + 1;
    }
}
