package org.hearthrule.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthrule.input.Nearest;
import org.hearthrule.records.Book;
import org.hearthrule.records.YearLabel;
import org.hearthrule.tables.ColumnPick;
import org.hearthrule.tables.DateForm;
import org.hearthrule.tables.ImportColumn;
import org.hearthrule.tables.ImportOptions;
import org.hearthrule.tables.ListKind;
import org.hearthrule.tables.TableFile;
import org.hearthrule.terms.SubjectNames;

/** Reads what a command line says about a table. */
final class ImportGiven {

    private static final String NONE = "none";

    private final Given given;
    private final ListKind<?> kind;

    ImportGiven(Given given, ListKind<?> kind) {
        this.given = given;
        this.kind = kind;
    }

    TableFile.Choice choice() {
        return TableFile.Choice.ofSheet(given.text("--sheet"));
    }

    ImportOptions options(Book book) {
        return ImportOptions.NONE.withColumns(columns()).withDateForm(dateForm()).withHours(hours())
                .withStudents(students(book)).withSubjects(subjects()).withYear(year()).withLeaveOut(given.is("--leave-out"));
    }

    private Map<ImportColumn, ColumnPick> columns() {
        Map<ImportColumn, ColumnPick> columns = new EnumMap<>(ImportColumn.class);
        List<String> keys = kind.columns().stream().map(ImportColumn::key).toList();
        for (String[] pair : pairs("--columns", "NO-HEADER", "a column and its header, such as date=Day")) {
            int known = keys.indexOf(pair[0]);
            if (known < 0) {
                given.problem(given.text("--columns"), "UNKNOWN-COLUMN", "the column \"" + pair[0] + '"',
                        "one of " + String.join(", ", keys),
                        Nearest.of(pair[0], keys).map(near -> "you meant " + near).orElse(null));
            } else {
                columns.put(kind.columns().get(known), new ColumnPick.Header(pair[1]));
            }
        }
        return columns;
    }

    private Map<String, List<String>> subjects() {
        Map<String, List<String>> subjects = new HashMap<>();
        String option = "--subjects";
        for (String[] pair : pairs(option, "NO-SUBJECT", "a name of the table and a subject, such as Math=mathematics")) {
            Optional<String> id = SubjectNames.find(pair[1]);
            if (id.isPresent() || pair[1].equals(NONE)) {
                subjects.put(pair[0], id.map(List::of).orElse(List.of()));
            } else {
                given.problem(given.text(option), "UNKNOWN-SUBJECT", "the subject \"" + pair[1] + '"',
                        "a subject of the common vocabulary by id or name, or none",
                        SubjectNames.nearest(pair[1]).map(near -> "you meant " + near).orElse(null));
            }
        }
        return subjects;
    }

    /** Returns the two sides of each pair of an option. */
    private List<String[]> pairs(String option, String code, String expected) {
        List<String[]> pairs = new ArrayList<>();
        String typed = given.text(option);
        for (String pair : typed == null ? new String[0] : typed.split(",")) {
            int equals = pair.indexOf('=');
            if (equals < 0 || pair.substring(equals + 1).isBlank()) {
                given.problem(typed, code, '"' + pair.strip() + '"', expected, null);
            } else {
                pairs.add(new String[] {pair.substring(0, equals).strip(), pair.substring(equals + 1).strip()});
            }
        }
        return pairs;
    }

    private List<String> students(Book book) {
        String typed = given.text("--children");
        List<String> ids = new ArrayList<>();
        for (String name : typed == null ? new String[0] : typed.split(",")) {
            Books.student(book, name.strip(), typed, given).ifPresent(student -> ids.add(student.id()));
        }
        return ids;
    }

    private Boolean hours() {
        return given.text("--time") == null ? null
                : given.oneOf("--time", List.of("minutes", "hours")).equals("hours");
    }

    private String year() {
        String typed = given.text("--year");
        if (typed != null && YearLabel.parse(typed).isEmpty()) {
            given.problem(typed, "WRONG-YEAR", '"' + typed + '"', "a school year such as 2026-27", null);
        }
        return typed;
    }

    private DateForm dateForm() {
        String typed = given.text("--dates");
        if (typed == null) {
            return null;
        }
        Optional<DateForm> form = DateForm.of(typed);
        if (form.isEmpty()) {
            List<String> known = Arrays.stream(DateForm.values()).map(DateForm::pattern).toList();
            given.problem(typed, "UNKNOWN-DATE-FORM", '"' + typed + '"', "one of " + String.join(", ", known),
                    Nearest.of(typed, known).map(near -> "you meant " + near).orElse(null));
        }
        return form.orElse(null);
    }
}
