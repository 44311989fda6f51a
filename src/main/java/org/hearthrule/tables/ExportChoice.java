package org.hearthrule.tables;

import java.time.LocalDate;
import java.util.List;

/**
 * How much of a book is taken out.
 *
 * @param students ids of the children; empty: all
 * @param from     first day, or null
 * @param to       last day, or null
 */
public record ExportChoice(List<String> students, LocalDate from, LocalDate to) {

    /** All of it. */
    public static final ExportChoice ALL = new ExportChoice(List.of(), null, null);

    /** Takes a copy of the children. */
    public ExportChoice {
        students = List.copyOf(students);
    }
}
