package org.hearthrule.page.year;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import org.hearthrule.checklist.year.SubjectRow;
import org.hearthrule.checklist.year.SubjectRow.Cell;
import org.hearthrule.page.year.SubjectDrawing.Month;
import org.hearthrule.terms.Prose;

/** Works out the drawings of subjects by month. */
final class SubjectDrawer {

    private static final int STEP = 24;
    private static final int LITTLE = 120;
    private static final int MUCH = 480;

    private final YearMonth first;
    private final int scale;

    /**
     * @param first first month of the year
     * @param scale minutes of the largest disc
     */
    SubjectDrawer(YearMonth first, int scale) {
        this.first = first;
        this.scale = scale;
    }

    /** @param number which of the page's drawings it is */
    SubjectDrawing draw(SubjectRow row, int number) {
        String name = row.name() == null ? YearWords.say("year.subject.none") : Prose.upperFirst(row.name());
        Cell total = row.total();
        List<Month> months = new ArrayList<>(row.months().size());
        StringBuilder desc = new StringBuilder();
        List<List<String>> cells = new ArrayList<>();
        for (int i = 0; i < row.months().size(); i++) {
            Cell cell = row.months().get(i);
            YearMonth month = first.plusMonths(i);
            months.add(month(cell, month, i));
            if (!cell.isEmpty()) {
                desc.append(YearWords.say("year.subject.month", YearWords.month(month), words(cell))).append(' ');
            }
            cells.add(lines(cell));
        }
        cells.add(lines(row.undated()));
        cells.add(lines(total));
        if (!row.undated().isEmpty()) {
            desc.append(YearWords.say("year.subject.undated", words(row.undated())));
        }
        String summed = words(total);
        return new SubjectDrawing("subject-" + number, name, summed, YearWords.say("year.subject.title", name, summed),
                desc.isEmpty() ? YearWords.say("year.nothing") + '.' : desc.toString().strip(), months,
                row.months().stream().anyMatch(cell -> cell.samples() > 0), row.months().stream().anyMatch(cell -> cell.books() > 0),
                cells);
    }

    private Month month(Cell cell, YearMonth month, int place) {
        int tone = cell.entries() == 0 ? 0 : cell.minutes() <= LITTLE ? 1 : cell.minutes() <= MUCH ? 2 : 3;
        return new Month(place * STEP + STEP / 2, YearWords.shortMonth(month.getMonthValue()).substring(0, 1),
                cell.minutes() == 0 ? null : MonthDrawer.radius(cell.minutes(), scale), tone, YearWords.hours(cell.minutes()),
                number(cell.samples()), number(cell.books()));
    }

    private static String number(int number) {
        return number == 0 ? "" : Integer.toString(number);
    }

    private static String words(Cell cell) {
        return YearWords.amounts(cell.minutes(), cell.entries(), cell.samples(), cell.books());
    }

    /** Hours as under the disc, then what else there is. */
    private static List<String> lines(Cell cell) {
        List<String> lines = new ArrayList<>();
        if (cell.minutes() > 0) {
            lines.add(YearWords.say("year.hours", YearWords.hours(cell.minutes())));
        }
        if (cell.entries() > 0) {
            lines.add(YearWords.count("year.entries", cell.entries()));
        }
        if (cell.samples() > 0) {
            lines.add(YearWords.count("year.pieces", cell.samples()));
        }
        if (cell.books() > 0) {
            lines.add(YearWords.count("year.books", cell.books()));
        }
        return lines;
    }
}
