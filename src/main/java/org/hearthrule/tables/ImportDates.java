package org.hearthrule.tables;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.hearthrule.input.Phrases;
import org.hearthrule.input.Problems;

/** Reads all dates of a table in one form: the one that was said, or the only one that fits them all. */
final class ImportDates {

    private final List<CsvTable.Cell> cells;
    private final Problems problems;
    private final List<DateForm> fitting = new ArrayList<>();
    private DateForm form;

    /**
     * @param cells the cells with the dates, none empty
     * @param said  the form, or null
     */
    ImportDates(List<CsvTable.Cell> cells, DateForm said, Problems problems) {
        this.cells = cells;
        this.problems = problems;
        for (DateForm one : DateForm.values()) {
            if (!cells.isEmpty() && misfits(one) == 0) {
                fitting.add(one);
            }
        }
        if (said != null) {
            form = said;
            refuseMisfits();
        } else if (!fitting.isEmpty()) {
            choose();
        } else if (!cells.isEmpty()) {
            form = nearest();
            refuseMisfits();
            form = null;
        }
    }

    /** Returns the form of all dates, or null when it is not clear. */
    DateForm form() {
        return form;
    }

    /** Returns every form that fits all dates. */
    List<DateForm> fitting() {
        return List.copyOf(fitting);
    }

    /** Several forms may fit; that matters only when they mean different days. */
    private void choose() {
        DateForm first = fitting.get(0);
        for (CsvTable.Cell cell : cells) {
            for (DateForm other : fitting) {
                LocalDate one = first.parse(cell.text());
                LocalDate two = other.parse(cell.text());
                if (!one.equals(two)) {
                    problems.error(cell.place(), "AMBIGUOUS-DATES", Phrases.quoted(cell.text()) + ", which is " + one
                            + " in the form " + first + " and " + two + " in the form " + other,
                            "to be told the form of the dates", "say " + first + " or " + other);
                    return;
                }
            }
        }
        form = first;
    }

    /** Returns the form that fits most dates, the earlier of equals. */
    private DateForm nearest() {
        DateForm best = DateForm.ISO;
        for (DateForm one : DateForm.values()) {
            best = misfits(one) < misfits(best) ? one : best;
        }
        return best;
    }

    private long misfits(DateForm one) {
        return cells.stream().filter(cell -> one.parse(cell.text()) == null).count();
    }

    private void refuseMisfits() {
        for (CsvTable.Cell cell : cells) {
            if (form.parse(cell.text()) == null) {
                refuse(cell);
            }
        }
    }

    private void refuse(CsvTable.Cell cell) {
        List<String> meant = new ArrayList<>();
        for (DateForm other : DateForm.values()) {
            LocalDate date = other.parse(cell.text());
            if (date != null && !meant.contains(form.format(date))) {
                meant.add(form.format(date));
            }
        }
        String example = form.format(LocalDate.of(2026, 9, 30));
        problems.error(cell.place(), meant.isEmpty() ? "WRONG-DATE" : "MIXED-DATES", Phrases.quoted(cell.text()),
                "a date in the form " + form + ", such as \"" + example + '"',
                meant.isEmpty() ? null : "write \"" + String.join("\" or \"", meant) + '"');
    }
}
