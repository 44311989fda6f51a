package org.hearthrule.records;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** The photos and scans that records name, by their paths within the book's folder as the records write them. */
public final class RecordFiles {

    private RecordFiles() { }

    /** @return those of every record of a book, each once */
    public static Set<String> of(Book book) {
        Set<String> paths = new TreeSet<>();
        for (YearRecords year : book.years().values()) {
            for (RecordKind kind : RecordKind.values()) {
                kind.in(year).forEach(record -> paths.addAll(of(record)));
            }
        }
        return paths;
    }

    /** @return those of a record */
    public static List<String> of(YearRecord record) {
        if (record instanceof YearRecords.Sample sample) {
            return sample.files();
        }
        String file = record instanceof YearRecords.Filing filing ? filing.copy()
                : record instanceof YearRecords.KeptDocument document ? document.file()
                : record instanceof YearRecords.TestTaken test ? test.file()
                : record instanceof YearRecords.Evaluation evaluation ? evaluation.file()
                : record instanceof YearRecords.HealthPaper paper ? paper.file() : null;
        return file == null ? List.of() : List.of(file);
    }
}
