package org.hearthrule.tables;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.hearthrule.input.Nearest;
import org.hearthrule.input.Phrases;
import org.hearthrule.input.Place;
import org.hearthrule.input.Problems;

/** Finds out which column of a table holds what: as somebody said, or guessed from the headers. */
final class ImportMapping {

    private final List<Cell> headers;
    private final List<String> names;
    private final Problems problems;
    private final Map<ImportColumn, Integer> positions = new EnumMap<>(ImportColumn.class);

    ImportMapping(Table table, ListKind<?> kind, Map<ImportColumn, ColumnPick> said, boolean studentsNeeded,
                  Problems problems) {
        this.headers = table.headers();
        this.names = table.names();
        this.problems = problems;
        for (ImportColumn column : kind.columns()) {
            if (said.isEmpty()) {
                guess(column);
            } else if (said.get(column) instanceof ColumnPick.Header header) {
                find(column, header.text());
            } else if (said.get(column) instanceof ColumnPick.Position position) {
                take(column, position.index());
            }
        }
        require(kind.required(), said);
        if (studentsNeeded) {
            require(ImportColumn.STUDENTS, said);
        }
    }

    /** Returns the position of a column, from 0, or null when the table has none such. */
    Integer position(ImportColumn column) {
        return positions.get(column);
    }

    /** Returns the header of a column, or null. */
    String header(ImportColumn column) {
        Integer position = positions.get(column);
        return position == null ? null : headers.get(position).text();
    }

    Map<ImportColumn, Integer> positions() {
        return Collections.unmodifiableMap(new EnumMap<>(positions));
    }

    private void guess(ImportColumn column) {
        List<Integer> meant = meantBy(column);
        if (meant.size() == 1) {
            positions.put(column, meant.get(0));
        } else if (!meant.isEmpty()) {
            ambiguous(column, meant);
        }
    }

    private List<Integer> meantBy(ImportColumn column) {
        return column.meantBy(headers.stream().map(Cell::text).toList());
    }

    private void find(ImportColumn column, String header) {
        List<Integer> found = new ArrayList<>();
        for (int i = 0; i < headers.size(); i++) {
            if (headers.get(i).text().equalsIgnoreCase(header.strip())) {
                found.add(i);
            }
        }
        if (found.size() == 1) {
            positions.put(column, found.get(0));
        } else if (found.isEmpty()) {
            List<String> known = filled();
            problems.error(headers.get(0).place(), "UNKNOWN-COLUMN", "no column " + Phrases.quoted(header) + " for "
                    + column.words(), Phrases.or(known, "columns"),
                    Nearest.of(header, known).map(near -> "you meant " + Phrases.quoted(near)).orElse(null));
        } else {
            ambiguous(column, found);
        }
    }

    private void take(ImportColumn column, int position) {
        if (position < 0 || position >= headers.size()) {
            problems.error(headers.get(0).place(), "UNKNOWN-COLUMN", "no column " + (position + 1) + " for "
                    + column.words(), "one of " + headers.size() + " columns", null);
            return;
        }
        positions.put(column, position);
    }

    private void ambiguous(ImportColumn column, List<Integer> positions) {
        List<String> alike = positions.stream().map(i -> Phrases.quoted(headers.get(i).text())).toList();
        boolean same = alike.stream().distinct().count() < alike.size();
        Place second = headers.get(positions.get(1)).place();
        problems.error(second, "AMBIGUOUS-COLUMN",
                positions.size() + " columns that could hold " + column.words() + ": " + String.join(", ", alike),
                "to be told which of them it is",
                same ? "give the columns different headers" : "say " + column.key() + "="
                        + headers.get(positions.get(0)).text());
    }

    private void require(ImportColumn column, Map<ImportColumn, ColumnPick> said) {
        boolean toldOfAlready = !said.isEmpty() && said.containsKey(column)
                || said.isEmpty() && !meantBy(column).isEmpty();
        if (!positions.containsKey(column) && !toldOfAlready) {
            problems.error(headers.get(0).place(), "MISSING-COLUMN", "no column that surely holds " + column.words(),
                    "to be told which it is: " + Phrases.or(names, "columns"),
                    "say " + column.key() + "= and the header");
        }
    }

    private List<String> filled() {
        return headers.stream().map(Cell::text).filter(text -> !text.isEmpty()).toList();
    }
}
