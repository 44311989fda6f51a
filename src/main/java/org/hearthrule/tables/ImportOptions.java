package org.hearthrule.tables;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * What somebody said about a table before it is taken over.
 *
 * @param columns  which column holds what; empty: guess from the headers, and only offer the guess
 * @param dateForm form of all dates written as text, or null: say which fits
 * @param hours    true when a bare number in the column of time is hours, false when it is minutes, or null: minutes,
 *                 unless the header speaks of hours
 * @param students ids of the children that a row is about which names none; may be empty
 * @param children what names of children stand for that the book does not know, as ids
 * @param subjects what names of subjects stand for, as ids of the common vocabulary; for no subject, an empty list. The
 *                 names the family's law uses may stand here as well as what the parent chose for this table
 * @param year     label of the school year, such as {@code 2026-27}, of what has no day; or null
 * @param leaveOut true to leave out the rows with a problem and take the others; otherwise one problem stops all
 */
public record ImportOptions(Map<ImportColumn, ColumnPick> columns, DateForm dateForm, Boolean hours,
                            List<String> students, Map<String, List<String>> children,
                            Map<String, List<String>> subjects, String year, boolean leaveOut) {

    private static final Pattern SPACES = Pattern.compile("[\\s\\u00A0]+");

    /** Nothing was said. */
    public static final ImportOptions NONE =
            new ImportOptions(Map.of(), null, null, List.of(), Map.of(), Map.of(), null, false);

    /** Takes copies. Capitals and spaces in names do not count. */
    public ImportOptions {
        columns = Map.copyOf(columns);
        students = List.copyOf(students);
        children = plain(children);
        subjects = plain(subjects);
    }

    private static Map<String, List<String>> plain(Map<String, List<String>> names) {
        Map<String, List<String>> plain = new LinkedHashMap<>();
        names.forEach((name, ids) -> plain.put(plain(name), List.copyOf(ids)));
        return Map.copyOf(plain);
    }

    /** Returns a name as it is compared with others. */
    static String plain(String name) {
        return SPACES.matcher(Cells.clean(name)).replaceAll(" ").toLowerCase(Locale.ROOT);
    }

    /** @return the same with columns */
    public ImportOptions withColumns(Map<ImportColumn, ColumnPick> picked) {
        return new ImportOptions(picked, dateForm, hours, students, children, subjects, year, leaveOut);
    }

    /** @return the same with a form of dates */
    public ImportOptions withDateForm(DateForm form) {
        return new ImportOptions(columns, form, hours, students, children, subjects, year, leaveOut);
    }

    /** @return the same with what a bare number in the column of time is */
    public ImportOptions withHours(Boolean areHours) {
        return new ImportOptions(columns, dateForm, areHours, students, children, subjects, year, leaveOut);
    }

    /** @return the same with the children of rows that name none */
    public ImportOptions withStudents(List<String> ids) {
        return new ImportOptions(columns, dateForm, hours, ids, children, subjects, year, leaveOut);
    }

    /** @return the same with names of children */
    public ImportOptions withChildren(Map<String, List<String>> names) {
        return new ImportOptions(columns, dateForm, hours, students, names, subjects, year, leaveOut);
    }

    /** @return the same with names of subjects */
    public ImportOptions withSubjects(Map<String, List<String>> names) {
        return new ImportOptions(columns, dateForm, hours, students, children, names, year, leaveOut);
    }

    /** @return the same with names that the family's laws use for subjects; what was said before goes before them */
    public ImportOptions withNamesOfLaws(Map<String, List<String>> names) {
        Map<String, List<String>> all = new LinkedHashMap<>(names);
        all.putAll(subjects);
        return withSubjects(all);
    }

    /** @return the same with a school year for what has no day */
    public ImportOptions withYear(String label) {
        return new ImportOptions(columns, dateForm, hours, students, children, subjects, label, leaveOut);
    }

    /** @return the same, with or without the rows that have a problem */
    public ImportOptions withLeaveOut(boolean wrongRows) {
        return new ImportOptions(columns, dateForm, hours, students, children, subjects, year, wrongRows);
    }
}
