package org.hearthrule.tables;

import static org.hearthrule.tables.BookLists.row;
import static org.hearthrule.tables.BookLists.words;
import static org.hearthrule.tables.BookLists.yesNo;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.hearthrule.records.Book;
import org.hearthrule.records.YearRecords;
import org.hearthrule.records.YearRecords.Calendar;
import org.hearthrule.records.YearRecords.Stretch;

/** The lists of a book about its people and its years as a whole. */
final class PeopleLists {

    private final Book book;
    private final WrittenNames names;
    private final List<ListTable> lists;

    PeopleLists(Book book, WrittenNames names, List<ListTable> lists) {
        this.book = book;
        this.names = names;
        this.lists = lists;
    }

    void add() {
        add("children", List.of("name", "born", "id"), () -> book.students().stream()
                .map(one -> row(one.name(), one.born(), one.id())));
        add("grades", List.of("school-year", "child", "grade"), () -> years().flatMap(year -> book.students().stream()
                .filter(child -> year.grades().containsKey(child.id()))
                .map(child -> row(year.label(), names.student(child.id()), year.grades().get(child.id())))));
        add("earlier-schools", List.of("child", "kind", "state", "from", "to-day"), () -> book.students().stream()
                .filter(child -> child.schools() != null).flatMap(child -> child.schools().stream().map(school ->
                        row(names.student(child.id()), words(school.kind()), school.state(), school.from(), school.to()))));
        add("people", List.of("name", "roles", "id"), () -> book.persons().stream().map(one -> row(one.name(),
                CellList.join(one.roles().stream().map(BookLists::words).toList()), one.id())));
        add("credentials", List.of("name", "kind", "state", "date"), () -> book.persons().stream().flatMap(person ->
                person.credentials().stream().map(one -> row(person.name(), words(one.kind()), one.state(), one.date()))));
        add("placements", List.of("child", "state", "pathway", "from", "to-day", "ended", "started-before", "district",
                "city", "county", "opt-ins"), () -> book.placements().stream().map(one -> row(names.student(one.student()),
                one.jurisdiction(), words(one.pathway()), one.from(), one.to(), words(one.ended()), one.started(),
                one.district(), one.city(), one.county(),
                CellList.join(one.optIns().stream().map(BookLists::words).toList()))));
        add("events", List.of("date", "event", "children", "note"), () -> book.events().stream().map(one ->
                row(one.date(), words(one.kind().slug()), names.students(one.students()), one.note())));
        add("choices", List.of("school-year", "child", "choice", "value", "dates", "made"), () -> years().flatMap(year ->
                year.choices().stream().map(one -> row(year.label(), names.student(one.student()), words(one.choice()),
                        words(one.value()), BookLists.days(one.dates()), one.made()))));
        add("facts", List.of("fact", "about", "answer", "date"), () -> book.facts().stream().map(one ->
                row(words(one.fact()), names.anybody(one.about()), yesNo(one.is()), one.date())));
        add("doubts", List.of("doubt", "answer", "answered-by", "date"), () -> book.answers().stream().map(one ->
                row(one.doubt(), one.answer(), one.from(), one.date())));
        add("calendar", List.of("school-year", "what", "from", "to-day"), () -> years().flatMap(year ->
                days(year.label(), year.calendar()).stream()));
    }

    private void add(String name, List<String> columns, Supplier<Stream<Object[]>> rows) {
        lists.add(new ListTable(name, columns, rows));
    }

    private Stream<YearRecords> years() {
        return book.years().values().stream();
    }

    private static List<Object[]> days(String year, Calendar calendar) {
        List<Object[]> rows = new ArrayList<>();
        addDay(rows, year, "first day", calendar.firstDay());
        addDay(rows, year, "last day", calendar.lastDay());
        addDay(rows, year, "first day of school in the district", calendar.schoolFirstDay());
        addDay(rows, year, "last day of school in the district", calendar.schoolLastDay());
        addStretches(rows, year, "quarter", calendar.quarters());
        addStretches(rows, year, "term", calendar.terms());
        calendar.schoolClosed().forEach(day -> addDay(rows, year, "school closed", day));
        return rows;
    }

    private static void addDay(List<Object[]> rows, String year, String what, LocalDate day) {
        if (day != null) {
            rows.add(row(year, what, day, null));
        }
    }

    private static void addStretches(List<Object[]> rows, String year, String what, List<Stretch> stretches) {
        for (int i = 0; i < stretches.size(); i++) {
            rows.add(row(year, what + ' ' + (i + 1), stretches.get(i).from(), stretches.get(i).to()));
        }
    }
}
