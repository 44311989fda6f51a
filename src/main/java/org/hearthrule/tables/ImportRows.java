package org.hearthrule.tables;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.hearthrule.input.Nearest;
import org.hearthrule.input.Phrases;
import org.hearthrule.input.Problems;
import org.hearthrule.input.Scalar;
import org.hearthrule.input.Single;
import org.hearthrule.records.Book;
import org.hearthrule.records.Student;
import org.hearthrule.records.YearRecords;
import org.hearthrule.terms.SubjectNames;

/** Turns the cells of a row into an entry of the log. */
final class ImportRows {

    private static final String STUDENT_SIGNS = "[;&,]";

    private final Book book;
    private final ImportMapping mapping;
    private final Problems problems;

    ImportRows(Book book, ImportMapping mapping, Problems problems) {
        this.book = book;
        this.mapping = mapping;
        this.problems = problems;
    }

    /**
     * Returns the entry of a row, without an id; what is wrong is recorded, and is missing in the entry.
     *
     * @param date the day, already read; null when it could not be
     */
    YearRecords.LogEntry read(List<CsvTable.Cell> row, LocalDate date) {
        CsvTable.Cell time = cell(row, ImportColumn.MINUTES);
        int minutes = time == null ? 0 : ImportMinutes.read(time, mapping.header(ImportColumn.MINUTES), problems);
        String did = text(cell(row, ImportColumn.DID));
        String place = text(cell(row, ImportColumn.PLACE));
        return new YearRecords.LogEntry("", date, minutes, students(row), subjects(cell(row, ImportColumn.SUBJECTS)),
                did == null ? "" : did, materials(cell(row, ImportColumn.MATERIALS)), place, null, null, null);
    }

    private CsvTable.Cell cell(List<CsvTable.Cell> row, ImportColumn column) {
        CsvTable.Cell cell = mapping.cell(row, column);
        return cell == null || cell.isEmpty() ? null : cell;
    }

    /** Returns a text under the rules of the book, or null. Whatever sign it begins with, it stays text. */
    private String text(CsvTable.Cell cell) {
        return cell == null ? null : Single.of(new Scalar(cell.place(), cell.text(), Scalar.Form.QUOTED), problems)
                .text(Single.KEY);
    }

    private List<String> materials(CsvTable.Cell cell) {
        return text(cell) == null ? List.of() : parts(cell.text(), ";");
    }

    private List<String> students(List<CsvTable.Cell> row) {
        CsvTable.Cell cell = cell(row, ImportColumn.STUDENTS);
        if (cell == null) {
            if (book.students().size() == 1) {
                return List.of(book.students().get(0).id());
            }
            CsvTable.Cell empty = mapping.cell(row, ImportColumn.STUDENTS);
            if (mapping.header(ImportColumn.STUDENTS) != null) {
                problems.error((empty == null ? row.get(0) : empty).place(), "MISSING-CELL", "no child",
                        "the child or children it is about", null);
            }
            return List.of();
        }
        Optional<String> whole = student(cell.text());
        if (whole.isPresent()) {
            return List.of(whole.get());
        }
        Set<String> ids = new LinkedHashSet<>();
        for (String part : parts(cell.text(), STUDENT_SIGNS)) {
            Optional<String> id = student(part);
            id.ifPresentOrElse(ids::add, () -> unknownStudent(cell, part));
        }
        return List.copyOf(ids);
    }

    /** Returns the student of this id or name; a first name will do when only one child has it. */
    private Optional<String> student(String text) {
        for (Student student : book.students()) {
            if (student.id().equalsIgnoreCase(text) || student.name().equalsIgnoreCase(text)) {
                return Optional.of(student.id());
            }
        }
        List<String> byFirstName = book.students().stream()
                .filter(student -> student.name().strip().split("\\s+")[0].equalsIgnoreCase(text))
                .map(Student::id).collect(Collectors.toList());
        return byFirstName.size() == 1 ? Optional.of(byFirstName.get(0)) : Optional.empty();
    }

    private void unknownStudent(CsvTable.Cell cell, String part) {
        List<String> known = new ArrayList<>();
        book.students().forEach(student -> known.add(student.name()));
        book.students().forEach(student -> known.add(student.id()));
        List<String> joined = parts(part, "(?i)\\s+and\\s+");
        boolean and = joined.size() > 1 && joined.stream().allMatch(one -> student(one).isPresent());
        String perhaps = and ? "write " + Phrases.quoted(String.join(" & ", joined))
                : Nearest.of(part, known).map(near -> "you meant " + Phrases.quoted(near)).orElse(null);
        List<String> ids = book.students().stream().map(Student::id).collect(Collectors.toList());
        problems.error(cell.place(), "UNKNOWN-STUDENT", Phrases.quoted(part),
                "a student of family.json by name or id: " + Phrases.or(ids, "students"), perhaps);
    }

    private List<String> subjects(CsvTable.Cell cell) {
        if (cell == null) {
            return List.of();
        }
        Set<String> ids = new LinkedHashSet<>();
        for (String part : parts(cell.text(), ";")) {
            Optional<String> id = SubjectNames.find(part);
            id.ifPresentOrElse(ids::add, () -> unknownSubject(cell, part));
        }
        return List.copyOf(ids);
    }

    private void unknownSubject(CsvTable.Cell cell, String part) {
        List<String> joined = parts(part, "[,&/]");
        boolean several = joined.size() > 1 && joined.stream().allMatch(one -> SubjectNames.find(one).isPresent());
        String perhaps = several ? "write " + Phrases.quoted(String.join("; ", joined))
                : SubjectNames.nearest(part).map(near -> "you meant " + Phrases.quoted(near)).orElse(null);
        problems.error(cell.place(), "UNKNOWN-SUBJECT", Phrases.quoted(part),
                "subjects of the common vocabulary, by id or name, parted by semicolons", perhaps);
    }

    private static List<String> parts(String text, String signs) {
        List<String> parts = new ArrayList<>();
        for (String part : text.split(signs)) {
            if (!part.isBlank()) {
                parts.add(part.strip());
            }
        }
        return List.copyOf(parts);
    }
}
