package org.hearthrule.records;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.UnaryOperator;

/** Changes of a book, each a new book. A record is named by its school year and its id in that year's file. */
public final class BookEdits {

    /** Leaves room for a number behind it. */
    private static final int LONGEST_STEM = 40;

    private BookEdits() { }

    /** A record and the label of the school year it lies in. */
    public record Found(String label, YearRecord record) { }

    /** @return the record of a year's file with this id */
    public static Optional<Found> find(Book book, String label, String id) {
        YearRecords year = book.years().get(label);
        if (year == null) {
            return Optional.empty();
        }
        for (RecordKind kind : RecordKind.values()) {
            for (YearRecord record : kind.in(year)) {
                if (record.id().equals(id)) {
                    return Optional.of(new Found(label, record));
                }
            }
        }
        return Optional.empty();
    }

    /** @return an id nobody has in that year's file */
    public static String newId(Book book, RecordKind kind, String label) {
        YearRecords year = book.years().get(label);
        Set<String> taken = year == null ? Set.of() : year.ids();
        int number = year == null ? 1 : kind.in(year).size() + 1;
        while (taken.contains(kind.stem() + '-' + number)) {
            number++;
        }
        return kind.stem() + '-' + number;
    }

    /** @return the school year a record belongs to: that of its day, or the other one while it has none */
    public static String label(LocalDate day, String otherwise) {
        return day == null ? otherwise : YearLabel.of(day).toString();
    }

    /**
     * Adds a record, or puts it in the place of the one with its id. A log in the order of its days stays so.
     *
     * @param label of the school year; its file is made when there is none
     */
    public static Book put(Book book, String label, YearRecord record) {
        RecordKind kind = RecordKind.of(record);
        YearRecords year = book.years().getOrDefault(label, YearRecords.empty(label));
        List<YearRecord> records = new ArrayList<>(kind.in(year));
        int at = indexOf(records, record.id());
        if (at >= 0 && java.util.Objects.equals(records.get(at).day(), record.day())) {
            records.set(at, record);
        } else {
            boolean inOrder = kind == RecordKind.LOG && isInOrder(records);
            if (at >= 0) {
                records.remove(at);
            }
            records.add(inOrder ? placeOf(records, record.day()) : at >= 0 ? at : records.size(), record);
        }
        return withYear(book, kind.replaced(year, records));
    }

    /** Takes a record out of one year's file and puts another version of it into another's. */
    public static Book move(Book book, String from, String id, String to, YearRecord record) {
        return from.equals(to) ? put(book, to, record) : put(remove(book, from, id), to, record);
    }

    private static int indexOf(List<YearRecord> records, String id) {
        for (int i = 0; i < records.size(); i++) {
            if (records.get(i).id().equals(id)) {
                return i;
            }
        }
        return -1;
    }

    private static boolean isInOrder(List<YearRecord> records) {
        for (int i = 1; i < records.size(); i++) {
            if (records.get(i).day().isBefore(records.get(i - 1).day())) {
                return false;
            }
        }
        return true;
    }

    /** After the last one of the same day. */
    private static int placeOf(List<YearRecord> records, LocalDate day) {
        int place = records.size();
        while (place > 0 && records.get(place - 1).day().isAfter(day)) {
            place--;
        }
        return place;
    }

    /** @return the book without a record; the same when there is none of that id */
    public static Book remove(Book book, String label, String id) {
        return find(book, label, id).map(found -> {
            RecordKind kind = RecordKind.of(found.record());
            YearRecords year = book.years().get(label);
            return withYear(book, kind.replaced(year, kind.in(year).stream().filter(r -> !r.id().equals(id)).toList()));
        }).orElse(book);
    }

    /** @return the book with another version of one school year */
    public static Book withYear(Book book, YearRecords year) {
        TreeMap<String, YearRecords> years = new TreeMap<>(book.years());
        years.put(year.label(), year);
        return new Book(book.folder(), book.familyName(), book.students(), book.persons(), book.placements(),
                book.events(), book.facts(), book.answers(), years);
    }

    /** Changes one school year, making its file when there is none. */
    public static Book inYear(Book book, String label, UnaryOperator<YearRecords> edit) {
        return withYear(book, edit.apply(book.years().getOrDefault(label, YearRecords.empty(label))));
    }

    public static Book withName(Book book, String name) {
        return new Book(book.folder(), name, book.students(), book.persons(), book.placements(), book.events(),
                book.facts(), book.answers(), book.years());
    }

    public static Book withStudents(Book book, List<Student> students) {
        return new Book(book.folder(), book.familyName(), List.copyOf(students), book.persons(), book.placements(),
                book.events(), book.facts(), book.answers(), book.years());
    }

    public static Book withPersons(Book book, List<Person> persons) {
        return new Book(book.folder(), book.familyName(), book.students(), List.copyOf(persons), book.placements(),
                book.events(), book.facts(), book.answers(), book.years());
    }

    public static Book withPlacements(Book book, List<Placement> placements) {
        return new Book(book.folder(), book.familyName(), book.students(), book.persons(), List.copyOf(placements),
                book.events(), book.facts(), book.answers(), book.years());
    }

    public static Book withEvents(Book book, List<BookEvent> events) {
        return new Book(book.folder(), book.familyName(), book.students(), book.persons(), book.placements(),
                List.copyOf(events), book.facts(), book.answers(), book.years());
    }

    public static Book withFacts(Book book, List<AnsweredFact> facts) {
        return new Book(book.folder(), book.familyName(), book.students(), book.persons(), book.placements(),
                book.events(), List.copyOf(facts), book.answers(), book.years());
    }

    /** Notes something that happened, after what was noted before. */
    public static Book withEvent(Book book, BookEvent event) {
        List<BookEvent> events = new ArrayList<>(book.events());
        events.add(event);
        return withEvents(book, events);
    }

    /** Notes the answer to a fact; it takes the place of an earlier one about the same. */
    public static Book answerFact(Book book, AnsweredFact answer) {
        List<AnsweredFact> facts = new ArrayList<>(book.facts().stream().filter(fact -> !fact.fact().equals(answer.fact())
                || !java.util.Objects.equals(fact.about(), answer.about())).toList());
        facts.add(answer);
        return new Book(book.folder(), book.familyName(), book.students(), book.persons(), book.placements(),
                book.events(), List.copyOf(facts), book.answers(), book.years());
    }

    /** Notes what was said about a doubt; it takes the place of what was said before. */
    public static Book answerDoubt(Book book, AnsweredDoubt answer) {
        List<AnsweredDoubt> answers = new ArrayList<>(book.answers().stream()
                .filter(one -> !one.doubt().equals(answer.doubt())).toList());
        answers.add(answer);
        return new Book(book.folder(), book.familyName(), book.students(), book.persons(), book.placements(),
                book.events(), book.facts(), List.copyOf(answers), book.years());
    }

    /** Notes a choice for a year; it takes the place of an earlier one of the same child. */
    public static YearRecords choose(YearRecords year, YearRecords.ChoiceMade choice) {
        List<YearRecords.ChoiceMade> choices = new ArrayList<>(unchosen(year, choice.choice(), choice.student()).choices());
        choices.add(choice);
        return withChoices(year, choices);
    }

    /** Takes a choice out of a year; {@code student} is null for one of the family. */
    public static YearRecords unchosen(YearRecords year, String choice, String student) {
        return withChoices(year, year.choices().stream().filter(one ->
                !one.choice().equals(choice) || !java.util.Objects.equals(one.student(), student)).toList());
    }

    private static YearRecords withChoices(YearRecords year, List<YearRecords.ChoiceMade> choices) {
        return new YearRecords(year.label(), year.grades(), year.calendar(), List.copyOf(choices), year.log(),
                year.readings(), year.samples(), year.tests(), year.evaluations(), year.filings(), year.requests(),
                year.health(), year.documents(), year.visits());
    }

    /** Sets a child's grade in a year; null takes it out. */
    public static YearRecords withGrade(YearRecords year, String student, String grade) {
        Map<String, String> grades = new HashMap<>(year.grades());
        if (grade == null) {
            grades.remove(student);
        } else {
            grades.put(student, grade);
        }
        return new YearRecords(year.label(), Map.copyOf(grades), year.calendar(), year.choices(), year.log(),
                year.readings(), year.samples(), year.tests(), year.evaluations(), year.filings(), year.requests(),
                year.health(), year.documents(), year.visits());
    }

    public static YearRecords withCalendar(YearRecords year, YearRecords.Calendar calendar) {
        return new YearRecords(year.label(), year.grades(), calendar, year.choices(), year.log(), year.readings(),
                year.samples(), year.tests(), year.evaluations(), year.filings(), year.requests(), year.health(),
                year.documents(), year.visits());
    }

    /** @return words as files spell a kind: {@code Physician visit} is {@code physician-visit}; empty when no letter is plain */
    public static String slug(String words) {
        return Ids.slug(words);
    }

    /** @return an id for a child or a person: the first name in plain letters, with a number where it is taken */
    public static String newPersonId(Book book, String name) {
        Set<String> taken = new HashSet<>();
        book.students().forEach(student -> taken.add(student.id()));
        book.persons().forEach(person -> taken.add(person.id()));
        String first = Ids.slug(name.strip().split("\\s+", 2)[0]);
        String wish = first.isEmpty() ? "child" : first.substring(0, Math.min(first.length(), LONGEST_STEM)).replaceAll("-$", "");
        String id = wish;
        for (int number = 2; taken.contains(id); number++) {
            id = wish + '-' + number;
        }
        return id;
    }
}
