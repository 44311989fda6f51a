package org.hearthrule.tables;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hearthrule.input.Nearest;
import org.hearthrule.input.Phrases;
import org.hearthrule.input.Problems;
import org.hearthrule.input.Scalar;
import org.hearthrule.input.Single;
import org.hearthrule.records.Book;
import org.hearthrule.records.Person;

/** Reads the cells of one row after the other as what their columns hold; whatever is wrong with a row is recorded. */
final class RowReader {

    private static final List<String> YES = List.of("yes", "y", "true", "x");
    private static final List<String> NO = List.of("no", "n", "false");

    private final Book book;
    private final ImportMapping mapping;
    private final ImportDates dates;
    private final ImportOptions options;
    private final CellNames students;
    private final CellNames subjects;
    private Table.Row row;
    private Problems problems;

    RowReader(Book book, ImportMapping mapping, ImportDates dates, ImportOptions options) {
        this.book = book;
        this.mapping = mapping;
        this.dates = dates;
        this.options = options;
        this.students = new CellNames(new Vocabularies.OfStudents(book), options.children());
        this.subjects = new CellNames(new Vocabularies.OfSubjects(), options.subjects());
    }

    /** Begins a row. */
    void next(Table.Row following, Problems ofRow) {
        row = following;
        problems = ofRow;
    }

    CellNames studentNames() {
        return students;
    }

    CellNames subjectNames() {
        return subjects;
    }

    /** Records that something is wrong with the cell of a column. */
    void error(ImportColumn column, String code, String found, String expected, String perhaps) {
        Integer position = mapping.position(column);
        problems.error(position == null ? row.place() : row.place(position), code, found, expected, perhaps);
    }

    /** Returns the cell of a column; null when there is nothing in it that can be used. */
    private Cell cell(ImportColumn column) {
        Integer position = mapping.position(column);
        Cell cell = position == null ? null : row.cell(position);
        if (cell != null && cell.value() instanceof CellValue.Fault fault) {
            error(column, "CELL-ERROR", fault.shown(), "a value", fault.advice());
            return null;
        }
        return cell;
    }

    private boolean isFaulty(ImportColumn column) {
        Integer position = mapping.position(column);
        Cell cell = position == null ? null : row.cell(position);
        return cell != null && cell.value() instanceof CellValue.Fault;
    }

    LocalDate day(ImportColumn column, boolean required) {
        Cell cell = cell(column);
        if (cell != null) {
            return dates.read(cell, problems);
        }
        if (required && mapping.position(column) != null && !isFaulty(column)) {
            error(column, "MISSING-CELL", "no date", "the day it is about", null);
        }
        return null;
    }

    int minutes() {
        Cell cell = cell(ImportColumn.MINUTES);
        return cell == null ? 0
                : ImportMinutes.read(cell, mapping.header(ImportColumn.MINUTES), options.hours(), problems);
    }

    /** Returns a text under the rules of the book, or null. Whatever sign it begins with, it stays text. */
    String text(ImportColumn column) {
        Cell cell = cell(column);
        return cell == null ? null : checked(cell, cell.text());
    }

    private String checked(Cell cell, String text) {
        return Single.of(new Scalar(cell.place(), text, Scalar.Form.QUOTED), problems).text(Single.KEY);
    }

    String requiredText(ImportColumn column) {
        String text = text(column);
        if (text == null && mapping.position(column) != null && row.cell(mapping.position(column)) == null) {
            error(column, "MISSING-CELL", "nothing", column.words(), null);
        }
        return text == null ? "" : text;
    }

    /** Returns the texts of a cell, parted by semicolons, each under the rules of the book. */
    List<String> texts(ImportColumn column) {
        Cell cell = cell(column);
        List<String> texts = cell == null ? List.of() : CellList.split(cell.text());
        texts.forEach(text -> checked(cell, text));
        return texts;
    }

    Boolean yesOrNo(ImportColumn column) {
        Cell cell = cell(column);
        String word = cell == null ? null : cell.text().toLowerCase(Locale.ROOT);
        if (word != null && !YES.contains(word) && !NO.contains(word)) {
            error(column, "NOT-YES-OR-NO", Phrases.quoted(cell.text()), "yes, no or nothing", null);
            return null;
        }
        return word == null ? null : YES.contains(word);
    }

    /** Returns the id of a person of the book, by id or by a name that only one has. */
    String person(ImportColumn column) {
        Cell cell = cell(column);
        if (cell == null) {
            return null;
        }
        List<String> named = book.persons().stream().filter(person -> person.name().equalsIgnoreCase(cell.text()))
                .map(Person::id).toList();
        Optional<String> id = book.persons().stream().map(Person::id).filter(cell.text()::equalsIgnoreCase).findFirst();
        if (id.isPresent() || named.size() == 1) {
            return id.orElseGet(() -> named.get(0));
        }
        List<String> names = book.persons().stream().map(Person::name).toList();
        error(column, "UNKNOWN-PERSON", Phrases.quoted(cell.text()), names.isEmpty()
                ? "a person of family.json, where there is none yet"
                : "a person of family.json: " + Phrases.or(names, "people"),
                Nearest.of(cell.text(), names).map(near -> "you meant " + Phrases.quoted(near)).orElse(null));
        return null;
    }

    LocalDateTime time(ImportColumn column) {
        Cell cell = cell(column);
        if (cell == null) {
            return null;
        }
        if (cell.value() instanceof CellValue.Moment moment) {
            return moment.at();
        }
        try {
            return LocalDateTime.parse(cell.text().replace(' ', 'T'));
        } catch (DateTimeParseException e) {
            error(column, "WRONG-TIME", Phrases.quoted(cell.text()), "a day and a time such as 2026-09-01 20:15", null);
            return null;
        }
    }

    List<String> subjects() {
        Cell cell = cell(ImportColumn.SUBJECTS);
        return cell == null ? List.of() : subjects.read(cell, problems);
    }

    /** Returns the children a row is about: those it names, those it is about when it names none, or the only child. */
    List<String> students() {
        Cell cell = cell(ImportColumn.STUDENTS);
        List<String> ids = cell == null ? List.of() : students.read(cell, problems);
        if (!ids.isEmpty() || isFaulty(ImportColumn.STUDENTS)) {
            return ids;
        }
        if (!options.students().isEmpty()) {
            return options.students();
        }
        if (book.students().size() == 1) {
            return List.of(book.students().get(0).id());
        }
        boolean told = cell != null && !problems.isEmpty();
        if (mapping.position(ImportColumn.STUDENTS) != null && !told) {
            error(ImportColumn.STUDENTS, "MISSING-CELL", "no child", "the child or children it is about", null);
        }
        return List.of();
    }
}
