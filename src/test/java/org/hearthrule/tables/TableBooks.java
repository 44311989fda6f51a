package org.hearthrule.tables;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.hearthrule.input.Place;
import org.hearthrule.input.Problem;
import org.hearthrule.input.Problems;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookReader;
import org.hearthrule.records.YearLabel;
import org.hearthrule.records.YearRecords;
import org.hearthrule.records.YearRecords.LogEntry;

/** Books that tables are read into. */
final class TableBooks {

    /** The family file of Ada and Ben Rowe. */
    static final String FAMILY = "{\"hearthrule\": 1, \"students\": [{\"id\": \"ada\", \"name\": \"Ada Rowe\"},"
            + " {\"id\": \"ben\", \"name\": \"Ben Rowe\"}]}";

    private TableBooks() { }

    /** Returns the book of Ada and Ben Rowe, without a year. */
    static Book ofTwo() {
        return of(FAMILY);
    }

    /** Returns a book without a year. */
    static Book of(String family) {
        return BookReader.read(Map.of("family.json", family), new Problems()).orElseThrow();
    }

    /** Says what taking over a log would do. */
    static ImportPreview<LogEntry> preview(String name, byte[] table, Book book, ImportOptions options) {
        return TableImport.preview(TableFile.read(name, table, TableFile.Choice.NONE), ListKind.LOG, book, options);
    }

    static ImportPreview<LogEntry> preview(String name, String table, Book book, ImportOptions options) {
        return preview(name, table.getBytes(StandardCharsets.UTF_8), book, options);
    }

    static Cell cell(Place place, String text) {
        return new Cell(place, new CellValue.Text(text));
    }

    static Book withEntry(Book book, String id, LocalDate day) {
        String label = YearLabel.of(day).toString();
        TreeMap<String, YearRecords> years = new TreeMap<>(book.years());
        YearRecords year = years.getOrDefault(label, YearRecords.empty(label));
        List<YearRecords.LogEntry> log = new ArrayList<>(year.log());
        log.add(new YearRecords.LogEntry(id, day, 30, List.of("ada"), List.of(), "Built a kite.", List.of(), null, null,
                null, null));
        years.put(label, year.withLog(log));
        return new Book(book.folder(), book.familyName(), book.students(), book.persons(), book.placements(),
                book.events(), book.facts(), book.answers(), years);
    }

    static List<String> codes(Problems problems) {
        return problems.all().stream().map(Problem::code).toList();
    }
}
