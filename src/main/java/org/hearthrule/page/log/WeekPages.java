package org.hearthrule.page.log;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hearthrule.page.frame.Answer;
import org.hearthrule.page.frame.Call;
import org.hearthrule.page.frame.Choices;
import org.hearthrule.page.frame.Desk;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Part;
import org.hearthrule.page.frame.Routes;
import org.hearthrule.page.frame.SubjectChoice;
import org.hearthrule.records.Book;
import org.hearthrule.records.YearRecords.LogEntry;
import org.hearthrule.terms.Subjects;

/** {@code /log/week}: seven days on one page, saved and taken back as one. */
public final class WeekPages {

    private static final int DAYS = 7;
    private static final int LINES = 3;
    private static final int LONGEST = 2_000;

    private final Shelf shelf;

    WeekPages(Shelf shelf) {
        this.shelf = shelf;
    }

    /**
     * A day of the week: what is there, and lines to fill.
     *
     * @param lines what the names of the fields of a line end with
     */
    public record Day(String words, List<LogSearch.Row> there, List<String> lines) { }

    void addTo(Routes routes) {
        routes.get("/log/week", call -> {
            LocalDate start = start(call.query("start"), call.desk().today());
            return week(call, fresh(call, start), start, 200);
        });
        routes.post("/log/week", this::save);
    }

    private static LocalDate start(String typed, LocalDate today) {
        LocalDate day = Form.of(Map.of("start", List.of(typed))).day("start");
        return (day == null ? today : day).with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    }

    private static List<String> lines(LocalDate day) {
        List<String> lines = new ArrayList<>();
        for (int line = 1; line <= LINES; line++) {
            lines.add(day + "-" + line);
        }
        return lines;
    }

    private static List<LocalDate> days(LocalDate start) {
        return start.datesUntil(start.plusDays(DAYS)).toList();
    }

    /** Those who took part last are ticked in each line; a line without words says nothing. */
    private Form fresh(Call call, LocalDate start) {
        List<String> students = shelf.index(call).last(call.desk().today()).map(LogEntry::students)
                .orElse(Choices.childIds(call.desk().book()));
        Form form = Form.empty();
        days(start).forEach(day -> lines(day).forEach(line -> form.tick("students-" + line, students)));
        return form;
    }

    private Answer week(Call call, Form form, LocalDate start, int status) {
        Book book = call.desk().book();
        Map<String, String> children = LogWords.firstNames(book);
        List<Day> days = new ArrayList<>();
        for (LocalDate day : days(start)) {
            List<LogSearch.Row> there = shelf.index(call).on(day).stream().map(place -> LogWords.row(place, children)).toList();
            days.add(new Day(LogWords.weekday(day) + ", " + LogWords.date(day), there, lines(day)));
        }
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("days", days);
        values.put("form", form);
        values.put("children", Choices.children(book));
        values.put("subjects", SubjectChoice.all());
        values.put("start", start.toString());
        values.put("before", start.minusDays(DAYS).toString());
        values.put("after", start.plusDays(DAYS).toString());
        return new Answer.Shown("log/week.jte", "A week", Part.LOG, values, status);
    }

    private Answer save(Call call) throws Exception {
        Desk desk = call.desk();
        Form form = call.form();
        LocalDate start = start(form.raw("start"), desk.today());
        List<LogEntry> entries = new ArrayList<>();
        for (LocalDate day : days(start)) {
            for (String line : lines(day)) {
                read(form, desk, day, line, entries);
            }
        }
        if (!form.isFine()) {
            return week(call, form, start, 422);
        }
        String again = "/log/week?start=" + start;
        if (entries.isEmpty()) {
            return Answer.done(LogWords.say("log.nothing.typed"), again);
        }
        desk.edit(LogWords.count("log.edit.week", entries.size()), book -> EntryForm.put(book, entries));
        return Answer.done(LogWords.say("log.saved", LogWords.count("log.entries", entries.size())) + shelf.tooFull(call, entries), again);
    }

    private static void read(Form form, Desk desk, LocalDate day, String line, List<LogEntry> entries) {
        String did = form.text("did-" + line, LONGEST);
        String typed = form.raw("minutes-" + line);
        String subject = form.oneOf("subject-" + line, Subjects.ids());
        if (did == null) {
            if (!typed.isEmpty() || subject != null) {
                form.complain("did-" + line, LogWords.say("log.did"));
            }
            return;
        }
        EntryForm.notAhead(form, day, desk.today());
        int minutes = EntryForm.minutes(form, "minutes-" + line, typed);
        List<String> students = form.mustTick("students-" + line, Choices.childIds(desk.book()),
                LogWords.say("log.who"));
        entries.add(new LogEntry("new", day, minutes, students, subject == null ? List.of() : List.of(subject), did, List.of(), null,
                null, null, desk.now()));
    }
}
