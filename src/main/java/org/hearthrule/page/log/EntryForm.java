package org.hearthrule.page.log;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.OptionalInt;
import org.hearthrule.page.frame.Choices;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Minutes;
import org.hearthrule.page.frame.Option;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookEdits;
import org.hearthrule.records.RecordKind;
import org.hearthrule.records.YearRecords.LogEntry;
import org.hearthrule.terms.Subjects;

/** Reads one entry of the log from a form, and lays one out in a form. */
public final class EntryForm {

    private static final int LONGEST = 2_000;

    private EntryForm() { }

    /** @return today and the day before, to be chosen without typing */
    static List<Option> days(LocalDate today) {
        LocalDate yesterday = today.minusDays(1);
        return List.of(Option.of(today.toString(), LogWords.say("log.today", LogWords.date(today))),
                Option.of(yesterday.toString(), LogWords.say("log.yesterday", LogWords.date(yesterday))));
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
            form.complain("did", LogWords.say("log.did"));
        }
        LocalDate day = day(form);
        notAhead(form, day, today);
        int minutes = minutes(form);
        List<String> students = form.mustTick("students", Choices.childIds(book), LogWords.say("log.who"));
        List<String> subjects = form.ticked("subjects", Subjects.ids());
        String materials = form.text("materials", LONGEST);
        List<String> list = materials == null ? List.of() : List.of(materials.split("\\s*[,;\\n]\\s*")).stream()
                .filter(one -> !one.isBlank()).toList();
        String by = form.oneOf("by", Choices.values(Choices.persons(book)));
        Boolean core = form.is("core") ? Boolean.TRUE : before == null ? null : before.core() == null ? null : Boolean.FALSE;
        return new LogEntry(id, day, minutes, students, subjects, did == null ? "" : did, list, form.text("place"), core, by,
                before == null ? written : before.written());
    }

    /** A day that was typed goes before one of the two that are offered. */
    private static LocalDate day(Form form) {
        if (form.is("date")) {
            return form.day("date");
        }
        LocalDate offered = form.day("when");
        if (offered == null && form.complaint("when") == null) {
            form.complain("date", LogWords.say("log.day"));
        }
        return offered;
    }

    /** A day to come may be meant, such as one of a journey; it is asked for once. */
    static void notAhead(Form form, LocalDate day, LocalDate today) {
        if (day != null && day.isAfter(today) && !form.is("ahead")) {
            form.complain("ahead", LogWords.say("log.ahead", LogWords.date(day)));
        }
    }

    private static int minutes(Form form) {
        String typed = form.is("minutes") ? form.raw("minutes") : form.raw("length");
        return minutes(form, "minutes", typed);
    }

    /** @return minutes; 0 when nothing was typed, and with a complaint when it is no length of a day */
    static int minutes(Form form, String name, String typed) {
        OptionalInt minutes = typed.isEmpty() ? OptionalInt.of(0) : Minutes.of(typed);
        if (minutes.isEmpty()) {
            form.complain(name, LogWords.say("log.length", typed));
        }
        return minutes.orElse(0);
    }

    /** @return the same entry under another id */
    static LogEntry withId(LogEntry entry, String id) {
        return new LogEntry(id, entry.date(), entry.minutes(), entry.students(), entry.subjects(), entry.did(), entry.materials(),
                entry.place(), entry.core(), entry.by(), entry.written());
    }

    /** @return what was done then, done again on another day */
    static LogEntry again(LogEntry entry, LocalDate day, LocalDateTime written) {
        return new LogEntry("new", day, entry.minutes(), entry.students(), entry.subjects(), entry.did(), entry.materials(),
                entry.place(), entry.core(), entry.by(), written);
    }

    /** @return the book with new entries, each under an id of its own */
    static Book put(Book book, List<LogEntry> entries) {
        Book now = book;
        for (LogEntry entry : entries) {
            String label = BookEdits.label(entry.date(), null);
            now = BookEdits.put(now, label, withId(entry, BookEdits.newId(now, RecordKind.LOG, label)));
        }
        return now;
    }
}
