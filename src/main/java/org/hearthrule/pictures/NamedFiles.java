package org.hearthrule.pictures;

import java.util.Set;
import java.util.TreeSet;
import org.hearthrule.records.Book;
import org.hearthrule.records.YearRecords;

/** The files that the records of a book name. */
final class NamedFiles {

    private NamedFiles() { }

    /** Returns each path once, as the records write it. */
    static Set<String> of(Book book) {
        Set<String> paths = new TreeSet<>();
        for (YearRecords year : book.years().values()) {
            year.samples().forEach(sample -> paths.addAll(sample.files()));
            year.tests().forEach(test -> add(test.file(), paths));
            year.evaluations().forEach(evaluation -> add(evaluation.file(), paths));
            year.filings().forEach(filing -> add(filing.copy(), paths));
            year.health().forEach(paper -> add(paper.file(), paths));
            year.documents().forEach(document -> add(document.file(), paths));
        }
        return paths;
    }

    private static void add(String path, Set<String> paths) {
        if (path != null) {
            paths.add(path);
        }
    }
}
