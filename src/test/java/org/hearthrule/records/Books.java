package org.hearthrule.records;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/** Changes books. */
final class Books {

    private Books() { }

    static Book withStudent(Book book, String id) {
        List<Student> students = new ArrayList<>(book.students());
        students.add(new Student(id, id, null, null));
        return new Book(book.folder(), book.familyName(), students, book.persons(), book.placements(), book.events(),
                book.facts(), book.answers(), book.years());
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
}
