package org.hearthrule.page.log;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.hearthrule.page.frame.Answer;
import org.hearthrule.page.frame.Call;
import org.hearthrule.page.frame.Desk;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Part;
import org.hearthrule.page.frame.Routes;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookEdits;
import org.hearthrule.records.RecordKind;
import org.hearthrule.records.YearLabel;
import org.hearthrule.records.YearRecords.LogEntry;
import org.hearthrule.terms.Wording;

/** {@code /log/week}: seven days on one page, saved and taken back as one; and an earlier day repeated. */
public final class WeekPages {

    private static final int LINES = 3;
    private static final int LONGEST = 2_000;

    /** A day of the week: what is there, and lines to fill. */
    public record Day(LocalDate date, String words, List<LogEntry> there, List<String> lines) { }

    void addTo(Routes routes) {
        routes.get("/log/week", call -> week(call, Form.empty(), start(call.query("start"), call.desk().today()), 200));
        routes.post("/log/week", WeekPages::save);
        routes.post("/log/again", WeekPages::again);
    }

    private static LocalDate start(String typed, LocalDate today) {
        LocalDate day = Form.of(Map.of("start", List.of(typed))).day("start");
        return (day == null ? today : day).with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    }

    private static Answer week(Call call, Form form, LocalDate start, int status) {
        Book book = call.desk().book();
        List<Day> days = new ArrayList<>();
        for (int i = 0; i < 7; i++) {
            LocalDate day = start.plusDays(i);
            List<String> lines = new ArrayList<>();
            for (int line = 1; line <= LINES; line++) {
                lines.add(day + "-" + line);
            }
            String name = day.getDayOfWeek().getDisplayName(java.time.format.TextStyle.FULL, java.util.Locale.US);
            days.add(new Day(day, name + ", " + Wording.english().date(day), LogSearch.on(book, day), lines));
        }
        return new Answer.Shown("log/week.jte", "A week", Part.LOG, Map.of("days", days, "form", form, "children",
                EntryForm.children(book), "subjects", EntryForm.subjects(), "start", start.toString(), "before",
                start.minusDays(7).toString(), "after", start.plusDays(7).toString()), status);
    }

    private static Answer save(Call call) throws Exception {
        Desk desk = call.desk();
        Form form = call.form();
        LocalDate start = start(form.raw("start"), desk.today());
        List<String> ids = desk.book().students().stream().map(one -> one.id()).toList();
        List<String> subjects = EntryForm.subjects().stream().map(one -> one.value()).toList();
        List<LogEntry> entries = new ArrayList<>();
        for (int i = 0; i < 7 * LINES; i++) {
            LocalDate day = start.plusDays(i / LINES);
            String key = day + "-" + (i % LINES + 1);
            String did = form.text("did-" + key, LONGEST);
            if (did == null) {
                continue;
            }
            String typed = form.raw("minutes-" + key);
            OptionalInt minutes = typed.isEmpty() ? OptionalInt.of(0) : Minutes.of(typed);
            if (minutes.isEmpty()) {
                form.complain("minutes-" + key, "“" + typed + "” is no length of time within a day. Type minutes such as 45, or 1:30.");
            }
            String subject = form.oneOf("subject-" + key, subjects);
            entries.add(new LogEntry("new", day, minutes.orElse(0), form.mustTick("students-" + key, ids, "Tick who took part."),
                    subject == null ? List.of() : List.of(subject), did, List.of(), null, null, null, desk.now()));
        }
        if (!form.isFine()) {
            return week(call, form, start, 422);
        }
        if (entries.isEmpty()) {
            return Answer.done("Nothing was typed, so nothing was saved.", "/log/week?start=" + start);
        }
        desk.edit(entries.size() == 1 ? "One entry of a week" : entries.size() + " entries of a week", book -> all(book, entries));
        return Answer.done(entries.size() == 1 ? "Saved: one entry." : "Saved: " + entries.size() + " entries.", "/log/week?start=" + start);
    }

    static Book all(Book book, List<LogEntry> entries) {
        Book now = book;
        for (LogEntry entry : entries) {
            String label = YearLabel.of(entry.date()).toString();
            now = BookEdits.put(now, label, LogPages.withId(entry, BookEdits.newId(now, RecordKind.LOG, label)));
        }
        return now;
    }

    /** Only what was ticked comes again, on the day that was entered. */
    private static Answer again(Call call) throws Exception {
        Desk desk = call.desk();
        Form form = call.form();
        LocalDate day = form.mustDay("date", "Enter the day to repeat it on.");
        List<LogEntry> entries = new ArrayList<>();
        LogSearch.lastDay(desk.book(), desk.today()).ifPresent(last -> {
            for (LogEntry entry : LogSearch.on(desk.book(), last)) {
                if (form.is("again-" + entry.id())) {
                    entries.add(new LogEntry("new", day, entry.minutes(), entry.students(), entry.subjects(), entry.did(),
                            entry.materials(), entry.place(), entry.core(), entry.by(), desk.now()));
                }
            }
        });
        if (!form.isFine() || entries.isEmpty()) {
            return Answer.done(form.isFine() ? "Nothing was ticked, so nothing was saved." : "That is no day. Nothing was saved.", "/log/again");
        }
        desk.edit("A day repeated", book -> all(book, entries));
        return Answer.done("Saved: " + (entries.size() == 1 ? "one entry" : entries.size() + " entries") + " on "
                + Wording.english().date(day) + '.', "/log");
    }
}
