package org.hearthrule.tables;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.hearthrule.input.Phrases;
import org.hearthrule.input.Problems;

/**
 * Reads all dates of a table in one form: the one that was said, the only one that fits them all, or the one that fits
 * most of them when no other fits as many. Days that a spreadsheet knows as days have no form.
 */
final class ImportDates {

    private final List<Cell> cells;
    private final Map<DateForm, Long> fits = new EnumMap<>(DateForm.class);
    private final List<DateForm> fitting = new ArrayList<>();
    private final DateForm form;
    private final DateForm nearest;
    private boolean ambiguous;

    /**
     * @param cells the cells with dates, none empty
     * @param said  the form, or null
     */
    ImportDates(List<Cell> cells, DateForm said, Problems problems) {
        this.cells = cells.stream().filter(cell -> cell.value() instanceof CellValue.Text).toList();
        for (DateForm one : DateForm.values()) {
            fits.put(one, this.cells.stream().filter(cell -> one.parse(cell.text()) != null).count());
            if (!this.cells.isEmpty() && fits.get(one) == this.cells.size()) {
                fitting.add(one);
            }
        }
        nearest = said == null ? nearest() : said;
        form = said != null ? said : fitting.isEmpty() ? clearest() : first(problems);
    }

    /** Returns the form of all dates, or null when it is not clear or when there is no date as text. */
    DateForm form() {
        return cells.isEmpty() ? null : form;
    }

    /** Returns every form that fits all dates. */
    List<DateForm> fitting() {
        return List.copyOf(fitting);
    }

    /** Returns whether no date as text can be read, since the form is not clear. */
    boolean isUnclear() {
        return !cells.isEmpty() && form == null;
    }

    /** Returns the day of a cell, or null after recording why there is none, unless the form of all is not clear. */
    LocalDate read(Cell cell, Problems problems) {
        if (cell.value() instanceof CellValue.Moment moment) {
            return moment.at().toLocalDate();
        }
        if (!(cell.value() instanceof CellValue.Text)) {
            problems.error(cell.place(), "WRONG-DATE", "the number " + cell.text(), "a date",
                    "format the column as dates in the spreadsheet program");
            return null;
        }
        LocalDate day = nearest.parse(cell.text());
        if (day == null && !ambiguous) {
            refuse(cell, problems);
        }
        return form == null ? null : day;
    }

    /** Several forms may fit; that matters only when they mean different days. */
    private DateForm first(Problems problems) {
        DateForm first = fitting.get(0);
        for (Cell cell : cells) {
            for (DateForm other : fitting) {
                LocalDate one = first.parse(cell.text());
                LocalDate two = other.parse(cell.text());
                if (!one.equals(two)) {
                    problems.error(cell.place(), "AMBIGUOUS-DATES", Phrases.quoted(cell.text()) + ", which is " + one
                            + " in the form " + first + " and " + two + " in the form " + other,
                            "to be told the form of the dates", "say " + first + " or " + other);
                    ambiguous = true;
                    return null;
                }
            }
        }
        return first;
    }

    /** Returns the form that fits most dates, the earlier of equals. */
    private DateForm nearest() {
        DateForm best = DateForm.ISO;
        for (DateForm one : DateForm.values()) {
            best = fits.get(one) > fits.get(best) ? one : best;
        }
        return best;
    }

    /** Returns the nearest form if it fits at least half of the dates and no other that fits as many reads one otherwise. */
    private DateForm clearest() {
        long most = fits.get(nearest);
        if (most * 2 < cells.size()) {
            return null;
        }
        for (DateForm other : DateForm.values()) {
            if (fits.get(other) == most && !cells.stream().allMatch(cell -> same(cell, other))) {
                return null;
            }
        }
        return nearest;
    }

    private boolean same(Cell cell, DateForm other) {
        return Objects.equals(nearest.parse(cell.text()), other.parse(cell.text()));
    }

    private void refuse(Cell cell, Problems problems) {
        List<String> meant = new ArrayList<>();
        for (DateForm other : DateForm.values()) {
            LocalDate date = other.parse(cell.text());
            if (date != null && !meant.contains(nearest.format(date))) {
                meant.add(nearest.format(date));
            }
        }
        String example = nearest.format(LocalDate.of(2026, 9, 30));
        problems.error(cell.place(), meant.isEmpty() ? "WRONG-DATE" : "MIXED-DATES", Phrases.quoted(cell.text()),
                "a date like \"" + example + '"',
                meant.isEmpty() ? null : "write \"" + String.join("\" or \"", meant) + '"');
    }
}
