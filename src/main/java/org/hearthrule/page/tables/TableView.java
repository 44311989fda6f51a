package org.hearthrule.page.tables;

import java.util.List;
import java.util.Map;
import org.hearthrule.page.frame.Field;
import org.hearthrule.page.frame.Form;

/**
 * What the page shows of a table that is to be taken over.
 *
 * @param action   address that the form is sent to
 * @param print    of what is shown: what is taken over must be what was shown
 * @param count    how many rows would be added
 * @param ready    whether they can be taken over now
 * @param form     with what is still to be said
 * @param sheet    the sheets to choose from; null when there is one
 * @param columns  what is in which column
 * @param further  what else can be said of all rows
 * @param names    names of the table that the book does not know, each with the field that explains it
 * @param leaveOut offered where rows are wrong; else null
 * @param headings of what would be added
 * @param rows     what would be added first, by heading
 * @param again    rows that say the same as others, in words
 * @param wrong    rows that cannot be read, in words
 * @param notes    how the table was read, and what is not taken over
 */
public record TableView(String name, String action, String print, int count, boolean ready, Form form, Field sheet,
                        List<Field> columns, List<Field> further, List<Named> names, Field leaveOut, List<String> headings,
                        List<Map<String, String>> rows, List<String> again, List<String> wrong, List<String> notes) {

    /** Lists of rows are shown up to here. */
    public static final int SHOWN = 20;

    /** @param hidden name of the hidden field that says which name the choice is for */
    public record Named(String hidden, String written, Field field) { }
}
