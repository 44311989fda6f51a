package org.hearthrule.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hearthrule.input.Place;
import org.hearthrule.input.Problems;

/**
 * A table: a row of headers and the rows below it. Rows without any value are left out, and so are rows of one cell
 * above the headers, which are titles.
 *
 * @param headers the cells of the first row, by column; an empty one has an empty text
 * @param rows    each further row
 * @param layout  how the table is written
 */
public record Table(List<Cell> headers, List<Row> rows, Layout layout) {

    /** So many rows are looked at for the headers. */
    private static final int TITLES = 10;

    /**
     * A row.
     *
     * @param place where it begins
     * @param cells by column; may be shorter than the headers, and hold null for an empty cell
     */
    public record Row(Place place, List<Cell> cells) {

        /** @return the cell of a column, from 0; null when nothing stands there */
        public Cell cell(int column) {
            Cell cell = column < cells.size() ? cells.get(column) : null;
            return cell == null || cell.isEmpty() ? null : cell;
        }

        /** @return where the cell of a column, from 0, stands or would stand */
        public Place place(int column) {
            if (column < cells.size() && cells.get(column) != null) {
                return cells.get(column).place();
            }
            return place.sheet() == null ? place : new Place(place.file(), place.line(), column + 1, place.sheet());
        }

        boolean isBlank() {
            return filled() == 0;
        }

        private long filled() {
            return cells.stream().filter(cell -> cell != null && !cell.isEmpty()).count();
        }
    }

    /**
     * Makes a table of rows of which none is blank.
     *
     * @return the table, or empty after recording that there are no headers with rows below
     */
    static Optional<Table> of(List<Row> rows, Layout layout, Place top, Problems problems) {
        int first = headerOf(rows);
        if (rows.size() < first + 2) {
            problems.error(top, "EMPTY-TABLE", rows.isEmpty() ? "nothing" : "no row below the headers",
                    "a row of headers and rows below it", null);
            return Optional.empty();
        }
        Row row = rows.get(first);
        int columns = row.cells().size();
        if (top.sheet() != null) {
            for (Row below : rows.subList(first + 1, rows.size())) {
                columns = Math.max(columns, below.cells().size());
            }
        }
        List<Cell> headers = new ArrayList<>(columns);
        for (int i = 0; i < columns; i++) {
            Cell cell = row.cell(i);
            headers.add(cell == null ? new Cell(row.place(i), new CellValue.Text("")) : cell);
        }
        return Optional.of(new Table(List.copyOf(headers), List.copyOf(rows.subList(first + 1, rows.size())), layout));
    }

    /** Returns the position of the first row with two values, or 0. */
    private static int headerOf(List<Row> rows) {
        for (int i = 0; i < Math.min(TITLES, rows.size()); i++) {
            if (rows.get(i).filled() > 1) {
                return i;
            }
        }
        return 0;
    }

    /** @return what each column is called: its header, or {@code column F} where it has none */
    public List<String> names() {
        List<String> names = new ArrayList<>(headers.size());
        for (int i = 0; i < headers.size(); i++) {
            names.add(headers.get(i).isEmpty() ? "column " + Place.letters(i + 1) : headers.get(i).text());
        }
        return List.copyOf(names);
    }
}
