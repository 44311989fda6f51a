package org.hearthrule.tables;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import org.hearthrule.input.BadInputException;
import org.hearthrule.input.Problem;
import org.hearthrule.input.Problems;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookEdits;
import org.hearthrule.records.RecordKind;
import org.hearthrule.records.YearRecord;
import org.hearthrule.records.YearRecords;

/**
 * Takes records over from a table. First a preview, which changes nothing: one wrong cell, and nothing of the table can
 * be added, unless somebody says that wrong rows are to be left out. Then, if somebody agrees, a new book with the
 * records in it.
 *
 * <p>Nothing comes in twice: a row that says the same as a record of the book, or as a row above it, is skipped and
 * listed.
 */
public final class TableImport<T extends YearRecord> {

    private static final Set<String> TOLD_ONCE = Set.of("UNKNOWN-STUDENT", "UNKNOWN-SUBJECT", "UNKNOWN-PERSON");

    private final TableFile file;
    private final ListKind<T> kind;
    private final Book before;
    private final ImportOptions options;
    private final Problems problems = new Problems();
    private final Map<Object, Repeat> known = new HashMap<>();
    private final Map<String, Set<String>> ids = new HashMap<>();
    private final Map<String, Integer> lastNumber = new HashMap<>();

    private TableImport(TableFile file, ListKind<T> kind, Book before, ImportOptions options) {
        this.file = file;
        this.kind = kind;
        this.before = before;
        this.options = options;
        problems.register(file.name(), file.text());
        problems.addAll(file.problems());
    }

    /**
     * Says what taking over a table would do.
     *
     * @param file    the table
     * @param kind    the list its rows belong to
     * @param before  the book
     * @param options what was said about the table
     * @return the preview, with every problem of the table
     */
    public static <T extends YearRecord> ImportPreview<T> preview(TableFile file, ListKind<T> kind, Book before,
                                                                  ImportOptions options) {
        TableImport<T> taking = new TableImport<>(file, kind, before, options);
        return file.table().map(taking::preview).orElseGet(taking::nothing);
    }

    /**
     * Adds the records of a preview to the book it was made for. Nothing is written: that is for the caller, in one
     * step with one way back.
     *
     * @param preview without errors, and agreed to when something in it was guessed
     * @return the book as it is to be
     * @throws BadInputException        when nothing can be added
     * @throws IllegalArgumentException when something was guessed and nobody agreed to it
     */
    public static <T extends YearRecord> Book apply(ImportPreview<T> preview) throws BadInputException {
        if (preview.hasErrors()) {
            throw new BadInputException(preview.problems());
        }
        if (preview.isGuess()) {
            throw new IllegalArgumentException("nobody agreed to what was guessed");
        }
        Book book = preview.before();
        RecordKind list = preview.kind().list();
        for (Map.Entry<String, List<T>> records : preview.toAdd().entrySet()) {
            book = BookEdits.inYear(book, records.getKey(),
                    year -> list.replaced(year, joined(list.in(year), records.getValue())));
        }
        return book;
    }

    /** A list in the order of its days stays so; any other order is the parent's own, and new records come last. */
    private static List<YearRecord> joined(List<? extends YearRecord> list, List<? extends YearRecord> records) {
        List<YearRecord> all = new ArrayList<>(list);
        all.addAll(records);
        if (all.stream().anyMatch(record -> record.day() == null)) {
            return all;
        }
        Comparator<YearRecord> byDay = Comparator.comparing(YearRecord::day);
        boolean inOrder = true;
        for (int i = 1; i < list.size(); i++) {
            inOrder &= byDay.compare(list.get(i - 1), list.get(i)) <= 0;
        }
        if (inOrder) {
            all.sort(byDay);
        }
        return all;
    }

    private ImportPreview<T> nothing() {
        return new ImportPreview<>(before, kind, file.sheets(), null, List.of(), Map.of(), false, null, List.of(), false,
                List.of(), Collections.emptySortedMap(), List.of(), List.of(), problems.all(), true);
    }

    private ImportPreview<T> preview(Table table) {
        boolean studentsNeeded = before.students().size() != 1 && options.students().isEmpty();
        ImportMapping mapping = new ImportMapping(table, kind, options.columns(), studentsNeeded, problems);
        ImportDates dates = new ImportDates(dateCells(table, mapping), options.dateForm(), problems);
        RowReader reader = new RowReader(before, mapping, dates, options);
        boolean blocked = problems.hasErrors() || dates.isUnclear();
        before.years().forEach((label, year) -> kind.in(year).forEach(record ->
                known.putIfAbsent(kind.key(record), new Repeat.OfBook(label, record.id()))));
        SortedMap<String, List<T>> toAdd = new TreeMap<>();
        List<ImportPreview.Row<T>> rows = new ArrayList<>(table.rows().size());
        for (Table.Row row : table.rows()) {
            rows.add(read(row, reader, table, blocked ? null : toAdd));
        }
        tell(rows);
        boolean stopped = blocked || !options.leaveOut() && problems.hasErrors();
        toAdd.replaceAll((label, list) -> List.copyOf(list));
        return new ImportPreview<>(before, kind, file.sheets(), table.layout(), table.names(), mapping.positions(),
                options.columns().isEmpty(), dates.form(), dates.fitting(),
                options.dateForm() == null && dates.form() != null, List.copyOf(rows),
                stopped ? Collections.emptySortedMap() : Collections.unmodifiableSortedMap(toAdd),
                reader.studentNames().uses(), reader.subjectNames().uses(), problems.all(), stopped);
    }

    private List<Cell> dateCells(Table table, ImportMapping mapping) {
        List<Cell> cells = new ArrayList<>();
        for (ImportColumn column : kind.days()) {
            Integer position = mapping.position(column);
            for (Table.Row row : position == null ? List.<Table.Row>of() : table.rows()) {
                if (row.cell(position) != null) {
                    cells.add(row.cell(position));
                }
            }
        }
        return cells;
    }

    /** Reads a row and puts what is new into its school year; null: there is a reason against the whole table. */
    private ImportPreview.Row<T> read(Table.Row row, RowReader reader, Table table, SortedMap<String, List<T>> toAdd) {
        Problems ofRow = new Problems();
        reader.next(row, ofRow);
        checkLength(row, table, ofRow);
        T record = kind.read(reader);
        String label = BookEdits.label(record.day(), options.year());
        if (label == null && toAdd != null && ofRow.isEmpty()) {
            ofRow.error(row.place(), "MISSING-DAY", "neither a day nor a school year", "one of the two", null);
        }
        Repeat skipped = null;
        if (ofRow.isEmpty() && toAdd != null) {
            skipped = known.putIfAbsent(kind.key(record), new Repeat.OfRow(row.place().row()));
            if (skipped == null) {
                toAdd.computeIfAbsent(label, key -> new ArrayList<>()).add(kind.withId(record, newId(label)));
            }
        }
        List<String> cells = new ArrayList<>(table.headers().size());
        for (int i = 0; i < table.headers().size(); i++) {
            cells.add(row.cell(i) == null ? "" : row.cell(i).text());
        }
        return new ImportPreview.Row<>(row.place(), cells, record, skipped, ofRow.all());
    }

    /** Text with a separator in it that should stand in quotes makes a row too long, and shifts its cells. */
    private static void checkLength(Table.Row row, Table table, Problems ofRow) {
        for (int i = table.headers().size(); i < row.cells().size(); i++) {
            if (row.cell(i) != null && table.layout() instanceof Layout.Text text) {
                ofRow.error(row.place(i), "ROW-TOO-LONG", "a cell without a header", table.headers().size()
                        + " cells, as the first row has", "text with a " + text.name()
                        + " in it needs double quotes round it");
                return;
            }
        }
    }

    private String newId(String label) {
        YearRecords year = before.years().get(label);
        Set<String> taken = ids.computeIfAbsent(label, key -> new HashSet<>(year == null ? Set.of() : year.ids()));
        int number = lastNumber.getOrDefault(label, year == null ? 0 : kind.in(year).size());
        String id;
        do {
            number++;
            id = kind.list().stem() + "-" + number;
        } while (!taken.add(id));
        lastNumber.put(label, number);
        return id;
    }

    /** Adds the problems of all rows. A name that is not known is told once, and how often it stands in the table. */
    private void tell(List<ImportPreview.Row<T>> rows) {
        List<Problem> all = rows.stream().flatMap(row -> row.problems().stream()).toList();
        Function<Problem, Object> key = problem -> List.of(problem.code(), problem.found());
        Map<Object, Integer> times = new LinkedHashMap<>();
        all.forEach(problem -> times.merge(key.apply(problem), 1, Integer::sum));
        Set<Object> told = new HashSet<>();
        for (Problem problem : all) {
            boolean once = TOLD_ONCE.contains(problem.code());
            if (!once || told.add(key.apply(problem))) {
                int rest = once ? times.get(key.apply(problem)) - 1 : 0;
                String found = problem.found() + (rest == 0 ? "" : ", here and in " + rest + " more "
                        + (rest == 1 ? "place" : "places"));
                problems.error(problem.place(), problem.code(), found, problem.expected(), problem.perhaps());
            }
        }
    }
}
