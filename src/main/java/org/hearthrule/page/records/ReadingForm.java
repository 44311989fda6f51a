package org.hearthrule.page.records;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.hearthrule.page.frame.Field;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Option;
import org.hearthrule.page.frame.SubjectChoice;
import org.hearthrule.records.Isbn;
import org.hearthrule.records.RecordKind;
import org.hearthrule.records.YearRecords.Reading;
import org.hearthrule.terms.Subjects;

/** A book that was read, or is being read. */
final class ReadingForm extends RecordForm<Reading> {

    @Override
    RecordKind kind() {
        return RecordKind.READINGS;
    }

    @Override
    String path() {
        return "/books";
    }

    @Override
    String one() {
        return "a book";
    }

    @Override
    String many() {
        return "Books";
    }

    @Override
    String about() {
        return "What was read, by whom and when, and the idea it served. Some laws ask for a list of the materials used.";
    }

    @Override
    List<Field> fields(Form form, Offered offered) {
        List<Field> fields = new ArrayList<>();
        fields.add(form.field("title", "Title").must().offering("earlier-titles"));
        fields.add(form.field("author", "Author").offering("earlier-authors"));
        fields.add(form.field("isbn", "ISBN").hint("The number on its back, with or without hyphens.").longest(24));
        fields.add(form.field("students", "Who read it or heard it").options(offered.children()).type("several").must());
        fields.add(form.field("started", "Begun on").type("date"));
        fields.add(form.field("finished", "Finished on").type("date").hint("Leave it empty while it goes on."));
        fields.add(form.field("subjects", "Subjects").options(SubjectChoice.withAreas()).type("subjects"));
        fields.add(form.field("idea", "The idea it served").hint("For example: why tides come twice a day."));
        return fields;
    }

    @Override
    Form fill(Reading one) {
        return Form.empty().fill("title", one.title()).fill("author", one.author()).fill("isbn", one.isbn())
                .tick("students", one.students()).fill("started", one.started()).fill("finished", one.finished())
                .tick("subjects", one.subjects()).fill("idea", one.idea());
    }

    @Override
    Reading read(Form form, Offered offered, String id, Reading before) {
        LocalDate started = form.day("started");
        LocalDate finished = form.day("finished");
        if (started == null && finished == null && form.complaint("started") == null && form.complaint("finished") == null) {
            form.complain("started", "Enter the day it was begun, or the day it was finished: it says which school year it belongs to.");
        } else if (started != null && finished != null && finished.isBefore(started)) {
            form.complain("finished", "This lies before the day it was begun.");
        }
        String isbn = form.text("isbn");
        if (isbn != null && Isbn.complaint(isbn) != null) {
            form.complain("isbn", Isbn.complaint(isbn));
        }
        return new Reading(id, form.mustTick("students", offered.childIds(), "Tick who read it."),
                form.must("title", "Type the title."), form.text("author"), started, finished,
                form.ticked("subjects", Subjects.ids()), form.text("idea"), isbn == null ? null : Isbn.digits(isbn));
    }

    @Override
    List<String> students(Reading one) {
        return one.students();
    }

    @Override
    List<String> subjects(Reading one) {
        return one.subjects();
    }

    @Override
    List<Option> states() {
        return List.of(Option.of("going-on", "Going on"), Option.of("finished", "Finished"));
    }

    @Override
    String state(Reading one) {
        return one.finished() == null ? "going-on" : "finished";
    }

    @Override
    Map<String, List<String>> before(Offered offered) {
        TreeSet<String> titles = new TreeSet<>();
        TreeSet<String> authors = new TreeSet<>();
        offered.book().years().values().forEach(year -> year.readings().forEach(one -> {
            titles.add(one.title());
            if (one.author() != null) {
                authors.add(one.author());
            }
        }));
        return Map.of("earlier-titles", List.copyOf(titles), "earlier-authors", List.copyOf(authors));
    }

    @Override
    String title(Reading one, Offered offered) {
        return one.title();
    }

    @Override
    List<String> words(Reading one, Offered offered) {
        List<String> words = new ArrayList<>();
        if (one.author() != null) {
            words.add("By " + one.author() + '.');
        }
        words.add(one.finished() != null ? "Finished " + when(one.finished()) + '.'
                : one.started() != null ? "Begun " + when(one.started()) + ", going on." : "Without a day.");
        if (!one.subjects().isEmpty()) {
            words.add(SubjectChoice.names(one.subjects()) + '.');
        }
        if (one.idea() != null) {
            words.add("The idea: " + one.idea() + '.');
        }
        return words;
    }
}
