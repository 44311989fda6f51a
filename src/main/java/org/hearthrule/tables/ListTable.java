package org.hearthrule.tables;

import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * A list of a book as a table: a sheet of a spreadsheet, or a file of text.
 *
 * @param name    names the list in the fixed sentences, and is the name of its file
 * @param columns names the headers in the fixed sentences
 * @param rows    the rows, made anew each time; as many values as columns, each a text, a day ({@code LocalDate}), a
 *                time ({@code LocalDateTime}), a number or null
 */
record ListTable(String name, List<String> columns, Supplier<Stream<Object[]>> rows) {

    boolean isEmpty() {
        return rows.get().findAny().isEmpty();
    }
}
