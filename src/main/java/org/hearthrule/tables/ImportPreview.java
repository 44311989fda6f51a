package org.hearthrule.tables;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import org.hearthrule.input.Place;
import org.hearthrule.input.Problem;
import org.hearthrule.records.Book;
import org.hearthrule.records.YearRecord;

/**
 * What taking over a table would do. Nothing is written yet.
 *
 * @param before         the book it would be added to
 * @param kind           the list it would be added to
 * @param sheets         sheets of a spreadsheet; none for a table as text
 * @param layout         how the table is written; null when it could not be read
 * @param headers        what each column is called, by position
 * @param columns        position of a column by what it holds
 * @param columnsGuessed whether the columns are only a guess from their headers
 * @param dateForm       form of the dates as text; null when it is not clear or there are none
 * @param dateFormsThatFit every form that fits all of them
 * @param dateFormGuessed whether the form was found out and not said
 * @param rows           every row, as read and as understood
 * @param toAdd          records to be added, by school year; empty when nothing can be added
 * @param students       names of children in the table
 * @param subjects       names of subjects in the table
 * @param problems       everything wrong with the table, what is wrong in many rows only once
 * @param hasErrors      true when nothing can be added: the table must be mended, or more be said about it
 */
public record ImportPreview<T extends YearRecord>(Book before, ListKind<T> kind, List<TableSheet> sheets, Layout layout,
                               List<String> headers, Map<ImportColumn, Integer> columns, boolean columnsGuessed,
                               DateForm dateForm, List<DateForm> dateFormsThatFit, boolean dateFormGuessed,
                               List<Row<T>> rows, SortedMap<String, List<T>> toAdd, List<NameUse> students,
                               List<NameUse> subjects, List<Problem> problems, boolean hasErrors) {

    /**
     * A row of the table.
     *
     * @param place    where it begins
     * @param cells    as read, by position; an empty text where nothing stands
     * @param record   as understood, without an id; what could not be understood is missing in it
     * @param skipped  what it says once more, so that it holds nothing new; or null
     * @param problems what is wrong with it; then it is not added
     */
    public record Row<T>(Place place, List<String> cells, T record, Repeat skipped, List<Problem> problems) {

        /** @return whether it would be added */
        public boolean isNew() {
            return skipped == null && problems.isEmpty();
        }
    }

    /** @return how many rows hold something new that was understood */
    public int count() {
        return (int) rows.stream().filter(Row::isNew).count();
    }

    /** @return the rows that hold nothing new */
    public List<Row<T>> skipped() {
        return rows.stream().filter(row -> row.skipped() != null).toList();
    }

    /** @return the rows with a problem */
    public List<Row<T>> wrong() {
        return rows.stream().filter(row -> !row.problems().isEmpty()).toList();
    }

    /** @return header by what the column holds, in the order in which one asks about columns */
    public Map<ImportColumn, String> columnNames() {
        Map<ImportColumn, String> names = new EnumMap<>(ImportColumn.class);
        columns.forEach((column, position) -> names.put(column, headers.get(position)));
        return names;
    }

    /** @return the columns that are not taken over */
    public List<String> unused() {
        List<String> unused = new ArrayList<>();
        for (int i = 0; i < headers.size(); i++) {
            if (!columns.containsValue(i)) {
                unused.add(headers.get(i));
            }
        }
        return List.copyOf(unused);
    }

    /** @return true while somebody must still agree to what was guessed: {@link TableImport#apply} asks for it */
    public boolean isGuess() {
        return columnsGuessed || dateFormGuessed;
    }

    /** @return the same, agreed to */
    public ImportPreview<T> accept() {
        return new ImportPreview<>(before, kind, sheets, layout, headers, columns, false, dateForm, dateFormsThatFit,
                false, rows, toAdd, students, subjects, problems, hasErrors);
    }
}
