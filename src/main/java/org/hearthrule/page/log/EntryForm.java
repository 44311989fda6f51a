package org.hearthrule.page.log;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Option;
import org.hearthrule.records.Book;
import org.hearthrule.records.YearRecords.LogEntry;
import org.hearthrule.terms.Subjects;

/** Reads one entry of the log from a form, and lays one out in a form. */
final class EntryForm {

    private static final int LONGEST = 2_000;

    private EntryForm() { }

    static List<Option> children(Book book) {
        return book.students().stream().map(one -> Option.of(one.id(), one.name())).toList();
    }

    static List<Option> persons(Book book) {
        return book.persons().stream().map(one -> Option.of(one.id(), one.name())).toList();
    }

    /** @return every subject, grouped by area in the order of the vocabulary */
    static List<Option> subjects() {
        List<Option> all = new ArrayList<>();
        for (String area : Subjects.areas()) {
            all.add(Option.of(area, Subjects.name(area)));
            Subjects.subjectsOf(area).stream().filter(one -> !one.equals(area)).forEach(one -> all.add(Option.of(one, Subjects.name(one))));
        }
        return all;
    }

    static Form fill(LogEntry entry) {
        Form form = Form.empty().fill("did", entry.did()).fill("date", entry.date())
                .fill("minutes", entry.minutes() == 0 ? null : entry.minutes()).tick("students", entry.students())
                .tick("subjects", entry.subjects()).fill("materials", String.join(", ", entry.materials()))
                .fill("place", entry.place()).fill("by", entry.by());
        return Boolean.TRUE.equals(entry.core()) ? form.fill("core", "yes") : form;
    }

    /**
     * @param before  the entry that is mended, or null
     * @param written when a new one is written; one that is mended keeps its own time
     * @return the entry; whatever when the form has complaints
     */
    static LogEntry read(Form form, Book book, LocalDate today, String id, LogEntry before, LocalDateTime written) {
        String did = form.text("did", LONGEST);
        if (did == null && form.complaint("did") == null) {
            form.complain("did", "Type what was done, in one line.");
        }
        LocalDate day = form.mustDay("date", "Enter the day it was done.");
        if (day != null && day.isAfter(today) && !form.is("ahead")) {
            form.complain("date", "This day has not come yet. If you mean it, tick “a day to come” below and save again.");
        }
        int minutes = minutes(form);
        List<String> students = form.mustTick("students", book.students().stream().map(one -> one.id()).toList(), "Tick who took part.");
        List<String> subjects = form.ticked("subjects", subjects().stream().map(Option::value).toList());
        String materials = form.text("materials", LONGEST);
        List<String> list = materials == null ? List.of() : List.of(materials.split("\\s*[,;\\n]\\s*")).stream()
                .filter(one -> !one.isBlank()).toList();
        String by = form.oneOf("by", book.persons().stream().map(one -> one.id()).toList());
        Boolean core = form.is("core") ? Boolean.TRUE : before == null ? null : before.core() == null ? null : Boolean.FALSE;
        return new LogEntry(id, day, minutes, students, subjects, did == null ? "" : did, list, form.text("place"), core, by,
                before == null ? written : before.written());
    }

    private static int minutes(Form form) {
        String typed = form.raw("minutes");
        String chosen = form.raw("length");
        if (typed.isEmpty() && chosen.isEmpty()) {
            return 0;
        }
        OptionalInt minutes = Minutes.of(typed.isEmpty() ? chosen : typed);
        if (minutes.isEmpty()) {
            form.complain("minutes", "“" + typed + "” is no length of time within a day. Type minutes such as 45, or 1:30, or 1h 30.");
        }
        return minutes.orElse(0);
    }
}
