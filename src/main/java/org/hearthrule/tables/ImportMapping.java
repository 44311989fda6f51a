package org.hearthrule.tables;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.hearthrule.input.Nearest;
import org.hearthrule.input.Phrases;
import org.hearthrule.input.Place;
import org.hearthrule.input.Problems;

/** Finds out which column of a table holds what: as somebody said, or guessed from the headers. */
final class ImportMapping {

    private final List<CsvTable.Cell> headers;
    private final Problems problems;
    private final Map<ImportColumn, Integer> positions = new EnumMap<>(ImportColumn.class);

    ImportMapping(CsvTable table, Map<ImportColumn, String> said, boolean studentsNeeded, Problems problems) {
        this.headers = table.headers();
        this.problems = problems;
        for (ImportColumn column : ImportColumn.values()) {
            if (said.isEmpty()) {
                guess(column);
            } else if (said.containsKey(column)) {
                find(column, said.get(column));
            }
        }
        require(ImportColumn.DATE, said);
        if (studentsNeeded) {
            require(ImportColumn.STUDENTS, said);
        }
    }

    /** Returns the cell of a row in a column; null when the table has no such column or the row ends before it. */
    CsvTable.Cell cell(List<CsvTable.Cell> row, ImportColumn column) {
        Integer position = positions.get(column);
        return position == null || position >= row.size() ? null : row.get(position);
    }

    /** Returns the header of a column, or null. */
    String header(ImportColumn column) {
        Integer position = positions.get(column);
        return position == null ? null : headers.get(position).text();
    }

    Map<ImportColumn, String> columns() {
        Map<ImportColumn, String> columns = new EnumMap<>(ImportColumn.class);
        positions.forEach((column, position) -> columns.put(column, headers.get(position).text()));
        return Collections.unmodifiableMap(columns);
    }

    List<String> unused() {
        List<String> unused = new ArrayList<>();
        for (int i = 0; i < headers.size(); i++) {
            if (!positions.containsValue(i)) {
                unused.add(headers.get(i).text());
            }
        }
        return List.copyOf(unused);
    }

    private void guess(ImportColumn column) {
        List<Integer> meant = new ArrayList<>();
        for (int i = 0; i < headers.size(); i++) {
            if (column.isMeantBy(headers.get(i).text())) {
                meant.add(i);
            }
        }
        if (meant.size() == 1) {
            positions.put(column, meant.get(0));
        } else if (!meant.isEmpty()) {
            ambiguous(column, meant);
        }
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
            List<String> names = names();
            problems.error(headers.get(0).place(), "UNKNOWN-COLUMN", "no column " + Phrases.quoted(header) + " for "
                    + column.words(), Phrases.or(names, "columns"),
                    Nearest.of(header, names).map(near -> "you meant " + Phrases.quoted(near)).orElse(null));
        } else {
            ambiguous(column, found);
        }
    }

    private void ambiguous(ImportColumn column, List<Integer> positions) {
        List<String> names = positions.stream().map(i -> Phrases.quoted(headers.get(i).text()))
                .collect(Collectors.toList());
        boolean alike = names.stream().distinct().count() < names.size();
        Place second = headers.get(positions.get(1)).place();
        problems.error(second, "AMBIGUOUS-COLUMN",
                positions.size() + " columns that could hold " + column.words() + ": " + String.join(", ", names),
                "to be told which of them it is",
                alike ? "give the columns different headers" : "say " + column.key() + "="
                        + headers.get(positions.get(0)).text());
    }

    private void require(ImportColumn column, Map<ImportColumn, String> said) {
        boolean toldOfAlready = !said.isEmpty() && said.containsKey(column)
                || said.isEmpty() && headers.stream().anyMatch(header -> column.isMeantBy(header.text()));
        if (!positions.containsKey(column) && !toldOfAlready) {
            problems.error(headers.get(0).place(), "MISSING-COLUMN", "no column that surely holds " + column.words(),
                    "to be told which it is: " + Phrases.or(names(), "columns"),
                    "say " + column.key() + "= and the header");
        }
    }

    private List<String> names() {
        return headers.stream().map(CsvTable.Cell::text).filter(text -> !text.isEmpty())
                .collect(Collectors.toList());
    }
}
