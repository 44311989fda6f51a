package org.hearthrule.tables;

import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import org.hearthrule.input.Place;
import org.hearthrule.input.Problem;
import org.hearthrule.input.Severity;
import org.hearthrule.records.Book;
import org.hearthrule.records.YearRecords;

/**
 * What importing a table would do. Nothing is written yet.
 *
 * @param before         the book as it was read
 * @param toAdd          entries to be added, by school year; empty when there is an error
 * @param skipped        rows that hold nothing new
 * @param problems       everything wrong with the table; with one error nothing can be added
 * @param columns        header by column
 * @param columnsGuessed whether the columns are only a guess from their headers
 * @param unused         headers of columns that are not taken over
 * @param dateForm       form of the dates, or null when it is not clear
 * @param dateFormsThatFit every form that fits all dates
 * @param dateFormGuessed whether the form was found out and not said
 * @param layout         how the table is written
 */
public record ImportPreview(Book before, SortedMap<String, List<YearRecords.LogEntry>> toAdd,
                            List<Skipped> skipped, List<Problem> problems, Map<ImportColumn, String> columns,
                            boolean columnsGuessed, List<String> unused, DateForm dateForm,
                            List<DateForm> dateFormsThatFit, boolean dateFormGuessed, Layout layout) {

    /**
     * A row that is not added.
     *
     * @param place   where it stands in the table
     * @param entry   what it says
     * @param because why, such as {@code already in the book as log-12}
     */
    public record Skipped(Place place, YearRecords.LogEntry entry, String because) { }

    /**
     * How a table is written.
     *
     * @param separator     what parts the cells; 0 when the table could not be read
     * @param byteOrderMark whether it begins with a byte-order mark
     * @param crLf          whether its lines end with CR LF
     */
    public record Layout(char separator, boolean byteOrderMark, boolean crLf) {

        /** @return the same in plain words */
        public String words() {
            String parted = switch (separator) {
                case ',' -> "cells parted by commas";
                case ';' -> "cells parted by semicolons";
                case '\t' -> "cells parted by tabs";
                default -> "no cells";
            };
            return parted + (crLf ? ", lines ended by CR LF" : "") + (byteOrderMark ? ", a byte-order mark first" : "");
        }
    }

    /** @return true when the table must be mended first */
    public boolean hasErrors() {
        return problems.stream().anyMatch(problem -> problem.severity() == Severity.ERROR);
    }

    /** @return how many entries would be added */
    public int count() {
        return toAdd.values().stream().mapToInt(List::size).sum();
    }

    /** @return true while somebody must still agree to what was guessed: {@link LogImport#apply} asks for it */
    public boolean isGuess() {
        return columnsGuessed || dateFormGuessed;
    }

    /** @return the same, agreed to */
    public ImportPreview accept() {
        return new ImportPreview(before, toAdd, skipped, problems, columns, false, unused, dateForm, dateFormsThatFit,
                false, layout);
    }
}
