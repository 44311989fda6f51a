package org.hearthrule.tables;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.hearthrule.records.Book;
import org.hearthrule.records.RecordKind;
import org.hearthrule.records.YearRecord;
import org.hearthrule.records.YearRecords;
import org.hearthrule.records.YearRecords.Evaluation;
import org.hearthrule.records.YearRecords.Filing;
import org.hearthrule.records.YearRecords.HealthPaper;
import org.hearthrule.records.YearRecords.KeptDocument;
import org.hearthrule.records.YearRecords.LogEntry;
import org.hearthrule.records.YearRecords.Reading;
import org.hearthrule.records.YearRecords.Request;
import org.hearthrule.records.YearRecords.Sample;
import org.hearthrule.records.YearRecords.TestTaken;
import org.hearthrule.records.YearRecords.Visit;

/**
 * Every list of a book as a table, for people to read: names instead of ids, words instead of slugs. The lists of log
 * and readings are written as {@link TableImport} reads them. Lists with nothing in them are left out.
 */
final class BookLists {

    private final Book book;
    private final WrittenNames names;
    private final List<ListTable> lists = new ArrayList<>();

    private BookLists(Book book) {
        this.book = book;
        this.names = new WrittenNames(book);
    }

    static List<ListTable> of(Book book) {
        BookLists lists = new BookLists(book);
        lists.addRecords();
        new PeopleLists(book, lists.names, lists.lists).add();
        lists.lists.removeIf(ListTable::isEmpty);
        return List.copyOf(lists.lists);
    }

    private void addRecords() {
        add("log", RecordKind.LOG, LogEntry.class, List.of("date", "minutes", "children", "subjects", "did", "materials",
                "place", "core", "kept-by", "written"), one -> row(one.date(), orNull(one.minutes()),
                names.students(one.students()), names.subjects(one.subjects()), one.did(), CellList.join(one.materials()),
                one.place(), yesNo(one.core()), names.person(one.by()), one.written()));
        add("readings", RecordKind.READINGS, Reading.class, List.of("title", "author", "started", "finished", "children",
                "subjects", "idea", "isbn"), one -> row(one.title(), one.author(), one.started(), one.finished(),
                names.students(one.students()), names.subjects(one.subjects()), one.idea(), one.isbn()));
        add("samples", RecordKind.SAMPLES, Sample.class, List.of("date", "child", "title", "subjects", "kind", "idea",
                "files", "chosen"), one -> row(one.date(), names.student(one.student()), one.title(),
                names.subjects(one.subjects()), words(one.kind()), one.idea(), CellList.join(one.files()),
                one.chosen() ? "yes" : null));
        add("tests", RecordKind.TESTS, TestTaken.class, List.of("date", "child", "test", "method", "edition", "given-by",
                "place", "consent", "file"), one -> row(one.date(), names.student(one.student()), one.name(),
                words(one.method()), one.edition(), names.personOrRole(one.givenBy()), one.place(), one.consent(), one.file()));
        addParts("scores", RecordKind.TESTS, TestTaken.class, List.of("date", "child", "test", "area", "measure", "value"),
                one -> one.scores().stream().map(score -> row(one.date(), names.student(one.student()), one.label(),
                        words(score.area()), words(score.measure()), score.value())));
        add("evaluations", RecordKind.EVALUATIONS, Evaluation.class, List.of("date", "child", "method", "evaluator",
                "consent", "includes", "outcome", "note", "file"), one -> row(one.date(), names.student(one.student()),
                words(one.method()), names.personOrRole(one.by()), one.consent(), joinedWords(one.includes()),
                words(one.outcome()), one.note(), one.file()));
        add("filings", RecordKind.FILINGS, Filing.class, List.of("sent", "paper", "children", "how", "to", "for-year",
                "part", "states", "attached", "copy"), one -> row(one.sent(), words(one.paper()),
                names.students(one.students()), words(one.how()), one.to(), one.year(), one.part(),
                CellList.join(one.states()), CellList.join(one.attached()), one.copy()));
        addParts("answers", RecordKind.FILINGS, Filing.class, List.of("sent", "paper", "answer", "date", "note"),
                one -> one.answers().stream().map(answer -> row(one.sent(), words(one.paper()), words(answer.kind()),
                        answer.date(), answer.note())));
        add("requests", RecordKind.REQUESTS, Request.class, List.of("date", "children", "asked-by", "in-writing", "cause"),
                one -> row(one.date(), names.students(one.students()), one.by(), yesNo(one.written()), one.cause()));
        add("health", RecordKind.HEALTH, HealthPaper.class, List.of("date", "child", "paper", "file"),
                one -> row(one.date(), names.student(one.student()), words(one.kind()), one.file()));
        add("documents", RecordKind.DOCUMENTS, KeptDocument.class, List.of("date", "paper", "children", "file"),
                one -> row(one.date(), words(one.kind()), names.students(one.students()), one.file()));
        add("visits", RecordKind.VISITS, Visit.class, List.of("date", "children", "minutes", "visitor", "face-to-face"),
                one -> row(one.date(), names.students(one.students()), orNull(one.minutes()), names.personOrRole(one.by()),
                        one.faceToFace() ? "yes" : null));
    }

    /** Adds a list of the years' files; each row ends with the school year and the id of its record. */
    private <T extends YearRecord> void add(String name, RecordKind kind, Class<T> type, List<String> columns,
                                            Function<T, Object[]> row) {
        addParts(name, kind, type, columns, one -> Stream.<Object[]>of(row.apply(one)));
    }

    private <T extends YearRecord> void addParts(String name, RecordKind kind, Class<T> type, List<String> columns,
                                                 Function<T, Stream<Object[]>> rows) {
        List<String> all = new ArrayList<>(columns);
        all.addAll(List.of("school-year", "id"));
        lists.add(new ListTable(name, List.copyOf(all), () -> book.years().values().stream().flatMap(year ->
                kind.in(year).stream().map(type::cast).flatMap(one -> rows.apply(one).map(row -> ended(row, year, one))))));
    }

    private static Object[] ended(Object[] row, YearRecords year, YearRecord record) {
        Object[] ended = Arrays.copyOf(row, row.length + 2);
        ended[row.length] = year.label();
        ended[row.length + 1] = record.id();
        return ended;
    }

    static Object[] row(Object... values) {
        return values;
    }

    /** No minutes and minutes not said are one thing. */
    private static Integer orNull(int minutes) {
        return minutes == 0 ? null : minutes;
    }

    static String yesNo(Boolean is) {
        return is == null ? null : is ? "yes" : "no";
    }

    /** Returns a slug as words, or null. */
    static String words(String slug) {
        return slug == null ? null : slug.replace('-', ' ');
    }

    private static String joinedWords(List<String> slugs) {
        return CellList.join(slugs.stream().map(BookLists::words).toList());
    }

    static String days(List<LocalDate> days) {
        return CellList.join(days.stream().map(LocalDate::toString).toList());
    }
}
