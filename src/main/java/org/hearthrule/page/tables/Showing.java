package org.hearthrule.page.tables;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hearthrule.page.frame.Choices;
import org.hearthrule.page.frame.Field;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Minutes;
import org.hearthrule.page.frame.Option;
import org.hearthrule.page.frame.SubjectChoice;
import org.hearthrule.records.YearRecords.LogEntry;
import org.hearthrule.records.YearRecords.Reading;
import org.hearthrule.tables.DateForm;
import org.hearthrule.tables.ImportColumn;
import org.hearthrule.tables.ImportPreview;
import org.hearthrule.tables.Layout;
import org.hearthrule.tables.NameUse;
import org.hearthrule.tables.Table;
import org.hearthrule.terms.Prose;
import org.hearthrule.terms.Subjects;
import org.hearthrule.terms.Wording;

/** Sets for the page what a look at a table gave. */
final class Showing {

    private static final int EXAMPLE = 30;
    private static final LocalDate EXAMPLE_DAY = LocalDate.of(2026, 5, 14);

    private final Table table;
    private final ImportPreview<?> preview;
    private final Form form;

    /** @param table null when it could not be read */
    Showing(Table table, ImportPreview<?> preview, Form form) {
        this.table = table;
        this.preview = preview;
        this.form = form;
    }

    TableView view(TableAtHand at, String print, boolean ready) {
        List<Map<String, String>> rows = preview.toAdd().values().stream().flatMap(List::stream).limit(TableView.SHOWN)
                .map(this::cells).toList();
        return new TableView(at.name(), at.path(), print, preview.count(), ready, form, sheet(), columns(), further(), names(),
                leaveOut(), rows.isEmpty() ? List.of() : List.copyOf(rows.get(0).keySet()), rows, again(), wrong(), notes());
    }

    private Field sheet() {
        if (preview.sheets().size() < 2) {
            return null;
        }
        return form.field("sheet", "Which sheet").must().type("select").options(preview.sheets().stream()
                .map(one -> Option.of(one.name(), one.name() + (one.hidden() ? " (hidden)" : ""))).toList());
    }

    private List<Field> columns() {
        if (table == null) {
            return List.of();
        }
        List<Option> offered = offered();
        return preview.kind().columns().stream().map(column -> form.field(Said.field(column), Prose.upperFirst(column.words()))
                .must().type("select").options(offered)).toList();
    }

    /** Returns the columns of the table, each with the first thing that stands in it. */
    private List<Option> offered() {
        List<String> names = table.names();
        return IntStream.range(0, names.size()).mapToObj(i -> {
            String example = table.rows().stream().map(row -> row.cell(i)).filter(cell -> cell != null).findFirst()
                    .map(cell -> cell.text()).orElse("");
            return Option.of(Integer.toString(i), names.get(i) + (example.isEmpty() ? ", which is empty" : ": " + shortened(example)));
        }).toList();
    }

    private static String shortened(String text) {
        return text.length() <= EXAMPLE ? text : text.substring(0, text.offsetByCodePoints(0, text.codePointCount(0, EXAMPLE))) + " …";
    }

    private List<Field> further() {
        if (table == null) {
            return List.of();
        }
        List<Field> further = new ArrayList<>();
        further.add(form.field("dates", "How the dates are written").must().type("select")
                .options(Stream.of(DateForm.values()).map(one -> Option.of(one.pattern(), one.format(EXAMPLE_DAY)
                        + " is " + Wording.english().date(EXAMPLE_DAY))).toList()));
        if (preview.kind().columns().contains(ImportColumn.MINUTES)) {
            further.add(form.field("time", "A number without a unit is").must().type("select")
                    .options(Said.UNITS.stream().map(unit -> Option.of(unit, unit)).toList()));
        } else {
            further.add(form.field("year", "School year of what has no day").hint("Like 2025-26."));
        }
        if (preview.before().students().size() > 1) {
            further.add(form.field("students", "Whom rows are about that name no child").type("several")
                    .options(Choices.children(preview.before())));
        }
        return further;
    }

    private List<TableView.Named> names() {
        List<Option> children = new ArrayList<>(Choices.children(preview.before()));
        if (children.size() > 1) {
            children.add(Option.of(Said.ALL, "All children"));
        }
        List<Option> subjects = new ArrayList<>();
        subjects.add(Option.of(Said.NOTHING, "No subject"));
        subjects.addAll(SubjectChoice.withAreas());
        List<TableView.Named> names = new ArrayList<>();
        names.addAll(names(Said.CHILD, preview.students(), children));
        names.addAll(names(Said.SUBJECT, preview.subjects(), subjects));
        return names;
    }

    private List<TableView.Named> names(String of, List<NameUse> uses, List<Option> options) {
        Map<String, String> said = Said.names(form, of);
        List<NameUse> unknown = Complaints.unknown(form, of, uses);
        List<TableView.Named> names = new ArrayList<>();
        for (int i = 0; i < unknown.size(); i++) {
            NameUse use = unknown.get(i);
            String field = of + '-' + i;
            form.fill(field, said.getOrDefault(use.written(), ""));
            String often = use.rows() == 1 ? "In one row." : "In " + use.rows() + " rows.";
            String perhaps = use.perhaps().isEmpty() ? "" : " Perhaps " + Wording.english().and(use.perhaps().stream()
                    .map(id -> called(of, id)).toList()) + '.';
            names.add(new TableView.Named(of + "-name-" + i, use.written(), form.field(field, '“' + use.written() + "” is")
                    .must().type("select").hint(often + perhaps).options(options)));
        }
        return names;
    }

    private String called(String of, String id) {
        return of.equals(Said.SUBJECT) ? Subjects.name(id) : preview.before().student(id).map(one -> one.name()).orElse(id);
    }

    private Field leaveOut() {
        boolean offered = form.is("leave-out") || !preview.wrong().isEmpty();
        return !offered ? null : form.field("leave-out", "Rows that cannot be read").must().type("several")
                .options(List.of(Option.of("yes", "Leave them out and take the others")));
    }

    private Map<String, String> cells(Object record) {
        Map<String, String> cells = new LinkedHashMap<>();
        if (record instanceof LogEntry entry) {
            cells.put("Day", Wording.english().date(entry.date()));
            cells.put("What was done", entry.did().isEmpty() ? "nothing said" : entry.did());
            cells.put("Who", children(entry.students()));
            cells.put("How long", entry.minutes() == 0 ? "not said" : Minutes.words(entry.minutes()));
            cells.put("Subjects", entry.subjects().isEmpty() ? "none yet" : SubjectChoice.names(entry.subjects()));
        } else if (record instanceof Reading reading) {
            cells.put("Title", reading.title());
            cells.put("Author", reading.author() == null ? "not said" : reading.author());
            cells.put("Who", children(reading.students()));
            cells.put("When", reading.day() == null ? "not said" : Wording.english().date(reading.day()));
            cells.put("Subjects", reading.subjects().isEmpty() ? "none yet" : SubjectChoice.names(reading.subjects()));
        }
        return cells;
    }

    private String children(List<String> ids) {
        return Wording.english().and(ids.stream().map(id -> called(Said.CHILD, id)).toList());
    }

    private List<String> again() {
        return preview.skipped().stream().limit(TableView.SHOWN).map(row -> Prose.upperFirst(row.place().row()) + ": "
                + row.skipped().words() + '.').toList();
    }

    private List<String> wrong() {
        return preview.rows().stream().flatMap(row -> Complaints.ofRow(row).stream().map(problem -> Prose.upperFirst(row.place().row())
                + ": " + problem.words())).limit(TableView.SHOWN).toList();
    }

    private List<String> notes() {
        List<String> notes = new ArrayList<>();
        if (preview.layout() instanceof Layout.Sheet sheet && sheet.hiddenRows() > 0) {
            notes.add(sheet.hiddenRows() == 1 ? "One row of this sheet is hidden there; it is read like the others."
                    : sheet.hiddenRows() + " rows of this sheet are hidden there; they are read like the others.");
        }
        if (preview.dateForm() != null) {
            notes.add("The dates are read like " + preview.dateForm().format(EXAMPLE_DAY) + " for "
                    + Wording.english().date(EXAMPLE_DAY) + '.');
        }
        if (!preview.unused().isEmpty()) {
            notes.add("Not taken over: the column" + (preview.unused().size() == 1 ? " " : "s ")
                    + Wording.english().and(preview.unused().stream().map(name -> '“' + name + '”').toList()) + '.');
        }
        return notes;
    }
}
