package org.hearthrule.tables;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import org.hearthrule.records.AnsweredFact;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookEvent;
import org.hearthrule.records.Placement;
import org.hearthrule.records.Student;
import org.hearthrule.records.YearLabel;
import org.hearthrule.records.YearRecords;

/**
 * The part of a book about some of its children and some of its days, itself a whole book. Other children are named
 * nowhere in it. A record without a day belongs to all days of its school year; people, and what was answered about
 * the family, belong to every part.
 */
final class BookPart {

    private final Book book;
    private final ExportChoice choice;

    private BookPart(Book book, ExportChoice choice) {
        this.book = book;
        this.choice = choice;
    }

    static Book of(Book book, ExportChoice choice) {
        return choice.equals(ExportChoice.ALL) ? book : new BookPart(book, choice).take();
    }

    private Book take() {
        List<Student> students = book.students().stream().filter(student -> isChosen(student.id())).toList();
        List<Placement> placements = book.placements().stream().filter(one -> isChosen(one.student()))
                .filter(one -> overlaps(one.from(), one.to())).toList();
        List<BookEvent> events = kept(book.events(), event -> within(event.date()) ? ofChildren(event.students())
                .map(ids -> new BookEvent(event.kind(), event.date(), ids, event.note())) : Optional.empty());
        List<AnsweredFact> facts = book.facts().stream().filter(fact -> fact.about() == null || isChosen(fact.about())
                || book.student(fact.about()).isEmpty()).toList();
        TreeMap<String, YearRecords> years = new TreeMap<>();
        book.years().forEach((label, year) -> {
            YearLabel named = YearLabel.parse(label).orElseThrow();
            if (overlaps(named.first(), named.last())) {
                years.put(label, year(year));
            }
        });
        return new Book(book.folder(), book.familyName(), students, book.persons(), placements, events, facts,
                book.answers(), years);
    }

    private YearRecords year(YearRecords year) {
        Map<String, String> grades = new LinkedHashMap<>(year.grades());
        grades.keySet().removeIf(id -> !isChosen(id));
        return new YearRecords(year.label(), grades, year.calendar(),
                year.choices().stream().filter(one -> one.student() == null || isChosen(one.student())).toList(),
                ofSeveral(year.log(), YearRecords.LogEntry::students, (entry, ids) -> new YearRecords.LogEntry(entry.id(),
                        entry.date(), entry.minutes(), ids, entry.subjects(), entry.did(), entry.materials(),
                        entry.place(), entry.core(), entry.by(), entry.written()), entry -> within(entry.date())),
                ofSeveral(year.readings(), YearRecords.Reading::students, (reading, ids) -> new YearRecords.Reading(
                        reading.id(), ids, reading.title(), reading.author(), reading.started(), reading.finished(),
                        reading.subjects(), reading.idea(), reading.isbn()), reading -> overlaps(reading.started(), reading.finished())),
                ofOne(year.samples(), YearRecords.Sample::student, YearRecords.Sample::date),
                ofOne(year.tests(), YearRecords.TestTaken::student, YearRecords.TestTaken::date),
                ofOne(year.evaluations(), YearRecords.Evaluation::student, YearRecords.Evaluation::date),
                ofSeveral(year.filings(), YearRecords.Filing::students, (filing, ids) -> new YearRecords.Filing(
                        filing.id(), ids, filing.paper(), filing.sent(), filing.how(), filing.to(), filing.year(),
                        filing.part(), filing.states(), filing.attached(), filing.copy(), filing.answers()),
                        filing -> within(filing.sent())),
                ofSeveral(year.requests(), YearRecords.Request::students, (request, ids) -> new YearRecords.Request(
                        request.id(), ids, request.by(), request.written(), request.date(), request.cause()),
                        request -> within(request.date())),
                ofOne(year.health(), YearRecords.HealthPaper::student, YearRecords.HealthPaper::date),
                ofSeveral(year.documents(), YearRecords.KeptDocument::students, (document, ids) ->
                        new YearRecords.KeptDocument(document.id(), ids, document.kind(), document.date(),
                                document.file()), document -> within(document.date())),
                ofSeveral(year.visits(), YearRecords.Visit::students, (visit, ids) -> new YearRecords.Visit(visit.id(),
                        ids, visit.date(), visit.minutes(), visit.by(), visit.faceToFace()),
                        visit -> within(visit.date())));
    }

    private <T> List<T> ofOne(List<T> records, Function<T, String> student, Function<T, LocalDate> day) {
        return records.stream().filter(one -> isChosen(student.apply(one)) && within(day.apply(one))).toList();
    }

    private <T> List<T> ofSeveral(List<T> records, Function<T, List<String>> students, With<T> with,
                                  Predicate<T> within) {
        return kept(records, one -> within.test(one) ? ofChildren(students.apply(one)).map(ids ->
                ids.equals(students.apply(one)) ? one : with.with(one, ids)) : Optional.empty());
    }

    private static <T> List<T> kept(List<T> records, Function<T, Optional<T>> keep) {
        List<T> kept = new ArrayList<>();
        records.forEach(one -> keep.apply(one).ifPresent(kept::add));
        return List.copyOf(kept);
    }

    /** Returns the chosen ones of a record's children; empty when it is about none of them. No child at all means all. */
    private Optional<List<String>> ofChildren(List<String> students) {
        List<String> ids = students.stream().filter(this::isChosen).toList();
        return ids.isEmpty() && !students.isEmpty() ? Optional.empty() : Optional.of(ids);
    }

    private boolean isChosen(String student) {
        return choice.students().isEmpty() || choice.students().contains(student);
    }

    private boolean within(LocalDate day) {
        return overlaps(day, day);
    }

    /** Returns whether some day of a stretch is chosen; a side that is not known is open. */
    private boolean overlaps(LocalDate first, LocalDate last) {
        return (choice.from() == null || last == null || !last.isBefore(choice.from()))
                && (choice.to() == null || first == null || !first.isAfter(choice.to()));
    }

    /** Makes a record with other children. */
    private interface With<T> {
        T with(T record, List<String> students);
    }
}
