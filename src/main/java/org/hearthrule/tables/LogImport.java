package org.hearthrule.tables;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.hearthrule.input.BadInputException;
import org.hearthrule.input.Place;
import org.hearthrule.input.Problems;
import org.hearthrule.records.Book;
import org.hearthrule.records.YearLabel;
import org.hearthrule.records.YearRecords;

/**
 * Takes log entries over from a table (CSV). First a preview, which writes nothing: one wrong cell, and nothing of the
 * table can be added. Then, if somebody agrees, the entries are added to the book, all or none.
 *
 * <p>Nothing comes in twice: a row with the same day, children, minutes and words as an entry of the book, or as a row
 * above it, is skipped and listed. When an entry was written is not guessed.
 */
public final class LogImport {

    private static final ImportPreview.Layout NO_LAYOUT = new ImportPreview.Layout('\0', false, false);

    private final Book before;
    private final ImportOptions options;
    private final Problems problems = new Problems();
    private final Map<Key, String> known = new HashMap<>();
    private final Map<String, Integer> lastNumber = new HashMap<>();

    private LogImport(Book before, ImportOptions options) {
        this.before = before;
        this.options = options;
    }

    /**
     * Says what importing a table would do.
     *
     * @param table   the file
     * @param before  the book as it was read
     * @param options what was said about the table
     * @return the preview, with every problem of the table
     * @throws IOException when the file cannot be read
     */
    public static ImportPreview preview(Path table, Book before, ImportOptions options) throws IOException {
        return preview(table.toString(), Files.readAllBytes(table), before, options);
    }

    /**
     * Says what importing a table would do.
     *
     * @param shownName name of the table as it is to be shown
     * @param content   the bytes of the table
     * @param before    the book as it was read
     * @param options   what was said about the table
     * @return the preview, with every problem of the table
     */
    public static ImportPreview preview(String shownName, byte[] content, Book before, ImportOptions options) {
        return new LogImport(before, options).preview(shownName, content);
    }

    /**
     * Adds the entries of a preview to the book it was made for. Nothing is written: that is for the caller, in one
     * step with one way back.
     *
     * @param preview without errors, and agreed to when something in it was guessed
     * @return the book as it is to be
     * @throws BadInputException        when the preview has errors
     * @throws IllegalArgumentException when something was guessed and nobody agreed to it
     */
    public static Book apply(ImportPreview preview) throws BadInputException {
        if (preview.hasErrors()) {
            throw new BadInputException(preview.problems());
        }
        if (preview.isGuess()) {
            throw new IllegalArgumentException("nobody agreed to what was guessed");
        }
        Book book = preview.before();
        TreeMap<String, YearRecords> years = new TreeMap<>(book.years());
        preview.toAdd().forEach((label, entries) -> {
            YearRecords year = years.getOrDefault(label, YearRecords.empty(label));
            years.put(label, year.withLog(joined(year.log(), entries)));
        });
        return new Book(book.folder(), book.familyName(), book.students(), book.persons(), book.placements(),
                book.events(), book.facts(), book.answers(), years);
    }

    /** A log in the order of its days stays so; any other order is the parent's own, and new entries come last. */
    private static List<YearRecords.LogEntry> joined(List<YearRecords.LogEntry> log,
                                                     List<YearRecords.LogEntry> entries) {
        Comparator<YearRecords.LogEntry> byDay = Comparator.comparing(YearRecords.LogEntry::date);
        boolean inOrder = true;
        for (int i = 1; i < log.size(); i++) {
            inOrder &= byDay.compare(log.get(i - 1), log.get(i)) <= 0;
        }
        List<YearRecords.LogEntry> all = new ArrayList<>(log);
        all.addAll(entries);
        if (inOrder) {
            all.sort(byDay);
        }
        return all;
    }

    private ImportPreview preview(String file, byte[] bytes) {
        Optional<String> text = CsvText.decode(file, bytes, problems);
        Optional<CsvTable> table = text.flatMap(read -> CsvTable.read(file, read, options.separator(), problems));
        if (table.isEmpty()) {
            return new ImportPreview(before, Collections.emptySortedMap(), List.of(), problems.all(), Map.of(), false,
                    List.of(), null, List.of(), false, NO_LAYOUT);
        }
        ImportPreview.Layout layout = new ImportPreview.Layout(table.get().separator(), CsvText.hasMark(bytes),
                text.get().contains("\r\n"));
        return preview(table.get(), layout);
    }

    private ImportPreview preview(CsvTable table, ImportPreview.Layout layout) {
        ImportMapping mapping = new ImportMapping(table, options.columns(), before.students().size() != 1, problems);
        ImportDates dates = new ImportDates(dateCells(table, mapping), options.dateForm(), problems);
        ImportRows rows = new ImportRows(before, mapping, problems);
        List<YearRecords.LogEntry> entries = new ArrayList<>();
        for (List<CsvTable.Cell> row : table.rows()) {
            CsvTable.Cell cell = mapping.cell(row, ImportColumn.DATE);
            LocalDate date = cell == null || dates.form() == null ? null : dates.form().parse(cell.text());
            entries.add(rows.read(row, date));
        }
        SortedMap<String, List<YearRecords.LogEntry>> toAdd = new TreeMap<>();
        List<ImportPreview.Skipped> skipped = new ArrayList<>();
        if (!problems.hasErrors()) {
            sort(table, entries, toAdd, skipped);
        }
        return new ImportPreview(before, Collections.unmodifiableSortedMap(toAdd), List.copyOf(skipped),
                problems.all(), mapping.columns(), options.columns().isEmpty(), mapping.unused(), dates.form(),
                dates.fitting(), options.dateForm() == null, layout);
    }

    private List<CsvTable.Cell> dateCells(CsvTable table, ImportMapping mapping) {
        List<CsvTable.Cell> cells = new ArrayList<>();
        if (mapping.header(ImportColumn.DATE) == null) {
            return cells;
        }
        for (List<CsvTable.Cell> row : table.rows()) {
            CsvTable.Cell cell = mapping.cell(row, ImportColumn.DATE);
            if (cell != null && !cell.isEmpty()) {
                cells.add(cell);
            } else {
                problems.error((cell == null ? row.get(0) : cell).place(), "MISSING-CELL", "no date",
                        "the day it is about", null);
            }
        }
        return cells;
    }

    /** Sorts what is new into its school year, and the rest among the skipped. */
    private void sort(CsvTable table, List<YearRecords.LogEntry> entries,
                      SortedMap<String, List<YearRecords.LogEntry>> toAdd, List<ImportPreview.Skipped> skipped) {
        Map<String, Set<String>> ids = new HashMap<>();
        before.years().forEach((label, year) -> {
            year.log().forEach(entry -> known.putIfAbsent(Key.of(entry), "already in the book as " + entry.id()));
            ids.put(label, new HashSet<>(year.ids()));
        });
        for (int i = 0; i < entries.size(); i++) {
            YearRecords.LogEntry entry = entries.get(i);
            Place place = table.rows().get(i).get(0).place();
            String because = known.putIfAbsent(Key.of(entry), "the same as line " + place.line());
            if (because != null) {
                skipped.add(new ImportPreview.Skipped(place, entry, because));
                continue;
            }
            String label = YearLabel.of(entry.date()).toString();
            List<YearRecords.LogEntry> year = toAdd.computeIfAbsent(label, key -> new ArrayList<>());
            String id = newId(ids.computeIfAbsent(label, key -> new HashSet<>()), label);
            year.add(new YearRecords.LogEntry(id, entry.date(), entry.minutes(), entry.students(), entry.subjects(),
                    entry.did(), entry.materials(), entry.place(), null, null, null));
        }
        toAdd.replaceAll((label, list) -> List.copyOf(list));
    }

    private String newId(Set<String> taken, String label) {
        YearRecords year = before.years().get(label);
        int number = lastNumber.getOrDefault(label, year == null ? 0 : year.log().size());
        do {
            number++;
        } while (!taken.add("log-" + number));
        lastNumber.put(label, number);
        return "log-" + number;
    }

    /** What makes two entries the same. */
    private record Key(LocalDate date, Set<String> students, int minutes, String words) {
        static Key of(YearRecords.LogEntry entry) {
            return new Key(entry.date(), Set.copyOf(entry.students()), entry.minutes(),
                    entry.did().strip().replaceAll("\\s+", " "));
        }
    }
}
