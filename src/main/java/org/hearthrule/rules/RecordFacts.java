package org.hearthrule.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.hearthrule.records.Book;
import org.hearthrule.records.Student;
import org.hearthrule.records.YearRecords;

/** A book's records as facts, one for each child a record is about. */
final class RecordFacts {

    private final List<String> everyone;
    private final List<RecordFact> facts = new ArrayList<>();

    private RecordFacts(Book book) {
        everyone = book.students().stream().map(Student::id).toList();
        for (Map.Entry<String, YearRecords> year : book.years().entrySet()) {
            add(year.getKey(), year.getValue());
        }
    }

    static List<RecordFact> of(Book book) {
        return new RecordFacts(book).facts;
    }

    private void add(String year, YearRecords records) {
        for (YearRecords.LogEntry entry : records.log()) {
            for (String student : entry.students()) {
                facts.add(new RecordFact.Logged(student, year, entry));
            }
        }
        for (YearRecords.Reading reading : records.readings()) {
            for (String student : all(reading.students())) {
                facts.add(new RecordFact.Read(student, year, reading));
            }
        }
        for (YearRecords.Sample sample : records.samples()) {
            facts.add(new RecordFact.Worked(sample.student(), year, sample));
        }
        for (YearRecords.TestTaken test : records.tests()) {
            facts.add(new RecordFact.Tested(test.student(), year, test));
        }
        for (YearRecords.Evaluation evaluation : records.evaluations()) {
            facts.add(new RecordFact.Evaluated(evaluation.student(), year, evaluation));
        }
        for (YearRecords.Filing filing : records.filings()) {
            for (String student : all(filing.students())) {
                facts.add(new RecordFact.Filed(student, filing.year() == null ? year : filing.year(), filing));
            }
        }
        for (YearRecords.HealthPaper paper : records.health()) {
            facts.add(new RecordFact.Healthy(paper.student(), year, paper));
        }
        for (YearRecords.KeptDocument document : records.documents()) {
            for (String student : all(document.students())) {
                facts.add(new RecordFact.Kept(student, year, document));
            }
        }
        for (YearRecords.Visit visit : records.visits()) {
            for (String student : all(visit.students())) {
                facts.add(new RecordFact.Visited(student, year, visit));
            }
        }
        for (YearRecords.Request request : records.requests()) {
            for (String student : all(request.students())) {
                facts.add(new RecordFact.Requested(student, year, request));
            }
        }
    }

    private List<String> all(List<String> named) {
        return named.isEmpty() ? everyone : named;
    }
}
