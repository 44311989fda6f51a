package org.hearthrule.input;

/**
 * A place in a file.
 *
 * @param file the name of the file as it is shown to the reader
 * @param line the line, from 1; CR LF, CR and LF each end a line
 * @param column the column, from 1, counted in UTF-16 units as most editors do
 */
public record Place(String file, int line, int column) {

    /** Returns {@code file:line:column}. */
    @Override
    public String toString() {
        return file + ':' + line + ':' + column;
    }
}
