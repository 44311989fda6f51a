package org.hearthrule.checklist.year;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hearthrule.input.Problems;
import org.hearthrule.law.Packaged;
import org.hearthrule.law.Profile;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookReader;
import org.hearthrule.records.YearLabel;
import org.hearthrule.rules.BookPlacements;
import org.hearthrule.rules.Judge;
import org.hearthrule.rules.Judgement;

/** Years of the demo family and of small books made for one test. */
final class Years {

    static final LocalDate MAY = LocalDate.of(2026, 5, 20);
    static final Path DEMO = Path.of("test-fixtures", "books", "tennick-landing");

    private Years() { }

    static Book demo() throws Exception {
        return BookReader.read(DEMO, new Problems()).orElseThrow();
    }

    /** @param files texts by name */
    static Book book(Map<String, String> files) {
        Problems problems = new Problems();
        Book book = BookReader.read(new LinkedHashMap<>(files), problems).orElseThrow(() -> new AssertionError(problems.all()));
        if (problems.hasErrors()) {
            throw new AssertionError(problems.all());
        }
        return book;
    }

    static Judgement judged(Book book, LocalDate asOf) throws Exception {
        List<Profile> laws = new ArrayList<>();
        for (String code : BookPlacements.jurisdictions(book)) {
            laws.add(Packaged.profiles().find(code));
        }
        return new Judge(laws).judge(book, asOf);
    }

    static YearView view(Book book, LocalDate asOf, String student, String label) throws Exception {
        YearLabel year = YearLabel.parse(label).orElseThrow();
        return YearView.of(book, judged(book, YearView.seenFrom(year, asOf)), student, year);
    }
}
