package org.hearthrule.input;

/**
 * A place in a file: in a text by line and column, in a spreadsheet by sheet, row and column.
 *
 * @param file the name of the file as it is shown to the reader
 * @param line the line, from 1; CR LF, CR and LF each end a line; in a spreadsheet the row
 * @param column the column, from 1, counted in UTF-16 units as most editors do; in a spreadsheet 1 is column A
 * @param sheet the name of the sheet, or null in a text
 */
public record Place(String file, int line, int column, String sheet) {

    private static final int LETTERS = 26;

    /** Makes a place in a text. */
    public Place(String file, int line, int column) {
        this(file, line, column, null);
    }

    /** Returns the letters by which spreadsheets name a column: 1 is {@code A}, 27 is {@code AA}. */
    public static String letters(int column) {
        StringBuilder letters = new StringBuilder();
        for (int rest = column; rest > 0; rest = (rest - 1) / LETTERS) {
            letters.insert(0, (char) ('A' + (rest - 1) % LETTERS));
        }
        return letters.toString();
    }

    /** @return which line of a text or row of a sheet this is, such as {@code line 7} */
    public String row() {
        return (sheet == null ? "line " : "row ") + line;
    }

    /** Returns {@code file:line:column}; for a cell {@code file:Sheet1!C7} or {@code file:'My log'!C7}. */
    @Override
    public String toString() {
        if (sheet == null) {
            return file + ':' + line + ':' + column;
        }
        boolean plain = !sheet.isEmpty() && sheet.chars().allMatch(c -> Character.isLetterOrDigit(c) || c == '_');
        return file + ':' + (plain ? sheet : "'" + sheet.replace("'", "''") + "'") + '!' + letters(column) + line;
    }
}
