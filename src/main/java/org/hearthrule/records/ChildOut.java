package org.hearthrule.records;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A child that was entered by mistake leaves the book: what is about it alone goes with it, what is about other
 * children too stays and names it no longer, and what is about the whole family stays as it is.
 *
 * @param without    the book without the child
 * @param gone       records about it alone, by kind; a kind without any is left out
 * @param shared     records about other children too, by kind; a kind without any is left out
 * @param placements its story
 * @param events     days noted for it alone
 * @param sharedEvents days noted for other children too
 * @param facts      answers about it
 * @param grades     school years that hold a grade of it
 * @param choices    choices made for it alone, in all school years
 */
public record ChildOut(Student child, Book without, Map<RecordKind, List<YearRecord>> gone,
                       Map<RecordKind, List<YearRecord>> shared, List<Placement> placements, List<BookEvent> events,
                       List<BookEvent> sharedEvents, List<AnsweredFact> facts, List<String> grades,
                       List<YearRecords.ChoiceMade> choices) {

    /** Collects while the book is gone through. */
    private static final class Way {
        private final String id;
        private final Map<RecordKind, List<YearRecord>> gone = new EnumMap<>(RecordKind.class);
        private final Map<RecordKind, List<YearRecord>> shared = new EnumMap<>(RecordKind.class);
        private final List<BookEvent> events = new ArrayList<>();
        private final List<BookEvent> sharedEvents = new ArrayList<>();
        private final List<String> grades = new ArrayList<>();
        private final List<YearRecords.ChoiceMade> choices = new ArrayList<>();

        Way(String id) {
            this.id = id;
        }

        YearRecords year(YearRecords year) {
            if (year.grades().containsKey(id)) {
                grades.add(year.label());
            }
            YearRecords left = BookEdits.withGrade(year, id, null);
            for (YearRecords.ChoiceMade choice : year.choices()) {
                if (id.equals(choice.student())) {
                    choices.add(choice);
                    left = BookEdits.unchosen(left, choice.choice(), id);
                }
            }
            for (RecordKind kind : RecordKind.values()) {
                List<YearRecord> records = new ArrayList<>();
                kind.in(year).forEach(record -> left(kind, record).ifPresent(records::add));
                left = kind.replaced(left, records);
            }
            return left;
        }

        private Optional<YearRecord> left(RecordKind kind, YearRecord record) {
            List<String> students = RecordChildren.of(record);
            if (!students.contains(id)) {
                return Optional.of(record);
            }
            (students.size() == 1 ? gone : shared).computeIfAbsent(kind, one -> new ArrayList<>()).add(record);
            return students.size() == 1 ? Optional.empty() : Optional.of(RecordChildren.with(record, others(students)));
        }

        Optional<BookEvent> left(BookEvent event) {
            if (!event.students().contains(id)) {
                return Optional.of(event);
            }
            boolean alone = event.students().size() == 1;
            (alone ? events : sharedEvents).add(event);
            return alone ? Optional.empty()
                    : Optional.of(new BookEvent(event.kind(), event.date(), others(event.students()), event.note()));
        }

        private List<String> others(List<String> students) {
            return students.stream().filter(one -> !one.equals(id)).toList();
        }
    }

    /** @return what would happen; empty when the book has no such child */
    public static Optional<ChildOut> of(Book book, String id) {
        return book.student(id).map(child -> out(book, child));
    }

    private static ChildOut out(Book book, Student child) {
        String id = child.id();
        Way way = new Way(id);
        List<AnsweredFact> facts = book.facts().stream().filter(fact -> id.equals(fact.about())).toList();
        Book left = BookEdits.withStudents(book, book.students().stream().filter(one -> !one.id().equals(id)).toList());
        left = BookEdits.withPlacements(left, book.placements().stream().filter(one -> !one.student().equals(id))
                .toList());
        left = BookEdits.withEvents(left, book.events().stream().flatMap(event -> way.left(event).stream()).toList());
        left = BookEdits.withFacts(left, book.facts().stream().filter(fact -> !facts.contains(fact)).toList());
        for (YearRecords year : book.years().values()) {
            left = BookEdits.withYear(left, way.year(year));
        }
        return new ChildOut(child, left, way.gone, way.shared, Placements.of(book, id), way.events, way.sharedEvents,
                facts, way.grades, way.choices);
    }

    /** @return paths of the files of records that go; the files themselves stay where they are */
    public List<String> files() {
        return gone.values().stream().flatMap(List::stream).flatMap(record -> RecordFiles.of(record).stream())
                .distinct().toList();
    }
}
