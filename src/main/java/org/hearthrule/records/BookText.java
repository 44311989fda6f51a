package org.hearthrule.records;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The text of a book's files, as the program writes them: always the same text for the same records. Keys stand in one
 * order; what was not entered is left out.
 */
public final class BookText {

    private BookText() { }

    /** @return the text of {@code family.json} */
    public static String family(Book book) {
        JsonObject root = new JsonObject().with(FormatVersion.KEY, Book.VERSION)
                .with("family", new JsonObject().with("name", book.familyName()).values())
                .with("students", JsonObject.each(book.students(), BookText::student))
                .with("persons", JsonObject.each(book.persons(), BookText::person))
                .with("placements", JsonObject.each(book.placements(), BookText::placement))
                .with("events", JsonObject.each(book.events(), BookText::event))
                .with("facts", JsonObject.each(book.facts(), BookText::fact))
                .with("answers", JsonObject.each(book.answers(), BookText::answer));
        return JsonPrinter.print(root.values());
    }

    /** @return the text of a year's file, such as {@code 2026-27.json} */
    public static String year(YearRecords year) {
        JsonObject root = new JsonObject().with(FormatVersion.KEY, Book.VERSION)
                .with("year", year.label())
                .with("grades", year.grades())
                .with("calendar", calendar(year.calendar()))
                .withEach("choices", year.choices(), BookText::choice);
        YearText.addLists(root, year);
        return JsonPrinter.print(root.values());
    }

    /** @return the text of every file of a book, by name */
    public static Map<String, String> files(Book book) {
        Map<String, String> files = new TreeMap<>();
        files.put(BookNames.FAMILY, family(book));
        book.years().forEach((label, year) -> files.put(fileName(label), year(year)));
        return files;
    }

    static String fileName(String label) {
        return YearLabel.parse(label).orElseThrow(() -> new IllegalArgumentException("not a school year: " + label))
                .fileName();
    }

    private static JsonObject student(Student student) {
        List<Student.FormerSchool> schools = student.schools();
        return new JsonObject().with("id", student.id()).with("name", student.name()).with("born", student.born())
                .withEvenEmpty("schools", schools == null ? null : JsonObject.each(schools, BookText::school));
    }

    private static JsonObject school(Student.FormerSchool school) {
        return new JsonObject().with("kind", school.kind()).with("state", school.state()).with("from", school.from())
                .with("to", school.to());
    }

    private static JsonObject person(Person person) {
        return new JsonObject().with("id", person.id()).with("name", person.name()).with("roles", person.roles())
                .withEach("credentials", person.credentials(), one -> new JsonObject().with("kind", one.kind())
                        .with("state", one.state()).with("date", one.date()));
    }

    private static JsonObject placement(Placement placement) {
        return new JsonObject().with("student", placement.student()).with("jurisdiction", placement.jurisdiction())
                .with("pathway", placement.pathway()).with("from", placement.from()).with("to", placement.to())
                .with("ended", placement.ended()).with("started", placement.started())
                .with("district", placement.district()).with("city", placement.city())
                .with("county", placement.county()).with("optIns", placement.optIns());
    }

    private static JsonObject event(BookEvent event) {
        return new JsonObject().with("kind", event.kind().slug()).with("date", event.date())
                .with("students", event.students()).with("note", event.note());
    }

    private static JsonObject fact(AnsweredFact fact) {
        return new JsonObject().with("fact", fact.fact()).with("about", fact.about()).with("is", fact.is())
                .with("date", fact.date());
    }

    private static JsonObject answer(AnsweredDoubt answer) {
        return new JsonObject().with("doubt", answer.doubt()).with("answer", answer.answer())
                .with("from", answer.from()).with("date", answer.date());
    }

    private static Map<String, Object> calendar(YearRecords.Calendar calendar) {
        return new JsonObject().with("firstDay", calendar.firstDay()).with("lastDay", calendar.lastDay())
                .with("schoolFirstDay", calendar.schoolFirstDay()).with("schoolLastDay", calendar.schoolLastDay())
                .withEach("quarters", calendar.quarters(), BookText::stretch)
                .withEach("terms", calendar.terms(), BookText::stretch)
                .with("schoolClosed", calendar.schoolClosed()).values();
    }

    private static JsonObject stretch(YearRecords.Stretch stretch) {
        return new JsonObject().with("from", stretch.from()).with("to", stretch.to());
    }

    private static JsonObject choice(YearRecords.ChoiceMade choice) {
        return new JsonObject().with("student", choice.student()).with("choice", choice.choice())
                .with("value", choice.value()).with("dates", choice.dates()).with("made", choice.made());
    }
}
