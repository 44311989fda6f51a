package org.hearthrule.page.tables;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hearthrule.page.frame.Choices;
import org.hearthrule.page.frame.Form;
import org.hearthrule.records.Book;
import org.hearthrule.records.YearLabel;
import org.hearthrule.tables.ColumnPick;
import org.hearthrule.tables.DateForm;
import org.hearthrule.tables.ImportColumn;
import org.hearthrule.tables.ImportOptions;
import org.hearthrule.tables.ImportPreview;
import org.hearthrule.tables.ListKind;
import org.hearthrule.tables.Table;
import org.hearthrule.terms.Subjects;

/** Reads what a form says about a table. */
final class Said {

    static final String NOTHING = "none";
    static final String ALL = "all";
    static final String CHILD = "child";
    static final String SUBJECT = "subject";
    static final List<String> UNITS = List.of("minutes", "hours");
    private static final int MOST_NAMES = 1_000;

    private Said() { }

    /** @return the field in which it is said which column holds this */
    static String field(ImportColumn column) {
        return "column-" + column.key();
    }

    /** @return a form with the columns as they were guessed */
    static Form guessed(ImportPreview<?> guess) {
        Form form = Form.empty();
        guess.columns().forEach((column, position) -> form.fill(field(column), position));
        return form;
    }

    static ImportOptions read(Form form, ListKind<?> kind, Table table, Book book) {
        return ImportOptions.NONE.withColumns(columns(form, kind, table)).withDateForm(dateForm(form)).withHours(hours(form))
                .withStudents(form.ticked("students", Choices.childIds(book))).withChildren(children(form, book))
                .withSubjects(subjects(form)).withYear(year(form)).withLeaveOut(form.is("leave-out"));
    }

    private static Map<ImportColumn, ColumnPick> columns(Form form, ListKind<?> kind, Table table) {
        List<String> positions = IntStream.range(0, table.headers().size()).mapToObj(Integer::toString).toList();
        Map<ImportColumn, ColumnPick> columns = new EnumMap<>(ImportColumn.class);
        for (ImportColumn column : kind.columns()) {
            String position = form.oneOf(field(column), positions);
            if (position != null) {
                columns.put(column, new ColumnPick.Position(Integer.parseInt(position)));
            }
        }
        return columns;
    }

    private static DateForm dateForm(Form form) {
        String pattern = form.oneOf("dates", Stream.of(DateForm.values()).map(DateForm::pattern).toList());
        return pattern == null ? null : DateForm.of(pattern).orElseThrow();
    }

    private static Boolean hours(Form form) {
        String unit = form.oneOf("time", UNITS);
        return unit == null ? null : unit.equals("hours");
    }

    private static Map<String, List<String>> children(Form form, Book book) {
        Map<String, List<String>> children = new HashMap<>();
        List<String> ids = Choices.childIds(book);
        names(form, CHILD).forEach((name, said) -> {
            if (said.equals(ALL)) {
                children.put(name, ids);
            } else if (ids.contains(said)) {
                children.put(name, List.of(said));
            }
        });
        return children;
    }

    private static Map<String, List<String>> subjects(Form form) {
        Map<String, List<String>> subjects = new HashMap<>();
        names(form, SUBJECT).forEach((name, said) -> {
            if (said.equals(NOTHING)) {
                subjects.put(name, List.of());
            } else if (Subjects.ids().contains(said)) {
                subjects.put(name, List.of(said));
            }
        });
        return subjects;
    }

    /** Returns what was chosen for each name of the table: the name is sent beside the choice. */
    static Map<String, String> names(Form form, String kind) {
        Map<String, String> names = new HashMap<>();
        for (int i = 0; i < MOST_NAMES && form.is(kind + "-name-" + i); i++) {
            if (form.is(kind + '-' + i)) {
                names.put(form.raw(kind + "-name-" + i), form.raw(kind + '-' + i));
            }
        }
        return names;
    }

    private static String year(Form form) {
        String year = form.text("year");
        if (year != null && YearLabel.parse(year).isEmpty()) {
            form.complain("year", "Type the school year like 2025-26.");
            return null;
        }
        return year;
    }
}
