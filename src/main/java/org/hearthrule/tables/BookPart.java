package org.hearthrule.tables;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import org.hearthrule.records.AnsweredFact;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookEvent;
import org.hearthrule.records.Placement;
import org.hearthrule.records.RecordChildren;
import org.hearthrule.records.RecordKind;
import org.hearthrule.records.Student;
import org.hearthrule.records.YearLabel;
import org.hearthrule.records.YearRecord;
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
        YearRecords part = new YearRecords(year.label(), grades, year.calendar(),
                year.choices().stream().filter(one -> one.student() == null || isChosen(one.student())).toList(),
                year.log(), year.readings(), year.samples(), year.tests(), year.evaluations(), year.filings(),
                year.requests(), year.health(), year.documents(), year.visits());
        for (RecordKind kind : RecordKind.values()) {
            part = kind.replaced(part, kept(List.<YearRecord>copyOf(kind.in(year)), this::record));
        }
        return part;
    }

    private Optional<YearRecord> record(YearRecord record) {
        List<String> students = RecordChildren.of(record);
        return !within(record) ? Optional.empty() : ofChildren(students)
                .map(ids -> ids.equals(students) ? record : RecordChildren.with(record, ids));
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

    /** A book that is read for weeks belongs to each of its days. */
    private boolean within(YearRecord record) {
        return record instanceof YearRecords.Reading reading ? overlaps(reading.started(), reading.finished())
                : within(record.day());
    }

    private boolean within(LocalDate day) {
        return overlaps(day, day);
    }

    /** Returns whether some day of a stretch is chosen; a side that is not known is open. */
    private boolean overlaps(LocalDate first, LocalDate last) {
        return (choice.from() == null || last == null || !last.isBefore(choice.from()))
                && (choice.to() == null || first == null || !first.isAfter(choice.to()));
    }
}
