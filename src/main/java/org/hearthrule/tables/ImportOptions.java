package org.hearthrule.tables;

import java.util.Map;

/**
 * What somebody said about a table before it is read.
 *
 * @param columns   header of the table by column; empty: guess from the headers, and only offer the guess
 * @param dateForm  form of all dates, or null: say which fits
 * @param separator what parts the cells, or null: find out
 */
public record ImportOptions(Map<ImportColumn, String> columns, DateForm dateForm, Character separator) {

    /** Nothing was said. */
    public static final ImportOptions NONE = new ImportOptions(Map.of(), null, null);

    /** Takes a copy of the columns. */
    public ImportOptions {
        columns = Map.copyOf(columns);
    }
}
