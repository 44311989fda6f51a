package org.hearthrule.page.log;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthrule.page.frame.Answer;
import org.hearthrule.page.frame.Call;
import org.hearthrule.page.frame.Desk;
import org.hearthrule.page.frame.Feature;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Option;
import org.hearthrule.page.frame.Part;
import org.hearthrule.page.frame.Routes;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookEdits;
import org.hearthrule.records.RecordKind;
import org.hearthrule.records.YearLabel;
import org.hearthrule.records.YearRecords;
import org.hearthrule.records.YearRecords.LogEntry;
import org.hearthrule.suggest.Suggestion;
import org.hearthrule.terms.Subjects;
import org.hearthrule.terms.Wording;

/** {@code /log}: one day in one line, and everything that was logged, to be found and mended. */
public final class LogPages implements Feature {

    private static final String LOG = "log/log.jte";
    private static final String ENTRY = "log/entry.jte";

    private final Map<java.nio.file.Path, Learner> learners = new java.util.concurrent.ConcurrentHashMap<>();

    @Override
    public void addTo(Routes routes) {
        routes.get("/log", call -> log(call, fresh(call), List.of(), 200));
        routes.post("/log", this::add);
        routes.get("/log/subjects", this::offers);
        routes.get("/log/again", this::again);
        routes.get("/log/{year}/{id}", this::shown);
        routes.post("/log/{year}/{id}", this::change);
        routes.post("/log/{year}/{id}/delete", LogPages::delete);
        new WeekPages().addTo(routes);
    }

    /**
     * A subject that is offered.
     *
     * @param because the words that led to it, told to the parent
     */
    public record Offered(String subject, String name, String because) { }

    /** The form of an entry as its template sets it; {@code there} is what the book holds where that has changed. */
    public record EntryView(Form form, List<Option> children, List<Option> persons, List<Option> subjects, List<Offered> offered,
                            String action, String delete, String print, String there, String back) { }

    private static Form fresh(Call call) {
        Book book = call.desk().book();
        Form form = Form.empty().fill("date", call.desk().today());
        String child = call.query("child");
        List<String> all = book.students().stream().map(one -> one.id()).toList();
        LogEntry last = LogSearch.last(book, call.desk().today());
        return form.tick("students", all.contains(child) ? List.of(child) : last == null ? all : last.students());
    }

    private Learner learner(Desk desk) {
        return learners.computeIfAbsent(desk.folder(), folder -> new Learner());
    }

    private List<Offered> offered(Desk desk, String words) {
        return words.isBlank() ? List.of() : learner(desk).offer(desk.book(), words).stream().map(LogPages::offered).toList();
    }

    private static Offered offered(Suggestion one) {
        String words = Wording.english().and(one.because().stream().map(word -> "“" + word + "”").toList());
        return new Offered(one.subject(), Subjects.name(one.subject()), one.learned() ? words + ", as you said before" : words);
    }

    private Answer log(Call call, Form form, List<Offered> offered, int status) {
        Book book = call.desk().book();
        LogSearch search = LogSearch.of(call.queryForm(), book);
        LogSearch.Page page = search.page(book, call.query("before"));
        EntryView entry = new EntryView(form, EntryForm.children(book), EntryForm.persons(book), EntryForm.subjects(), offered,
                "/log", null, "", null, "");
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("entry", entry);
        values.put("page", page);
        values.put("search", search);
        values.put("yesterday", call.desk().today().minusDays(1).toString());
        values.put("again", LogSearch.lastDay(book, call.desk().today()).map(day -> Wording.english().date(day)).orElse(""));
        return new Answer.Shown(LOG, "Log", Part.LOG, values, status);
    }

    private Answer add(Call call) throws Exception {
        Desk desk = call.desk();
        Form form = call.form();
        Book book = desk.book();
        if (form.is("suggest")) {
            return log(call, form, offered(desk, form.raw("did")), 200);
        }
        LogEntry read = EntryForm.read(form, book, desk.today(), "new", null, desk.now());
        if (!form.isFine()) {
            return log(call, form, offered(desk, form.raw("did")), 422);
        }
        String label = YearLabel.of(read.date()).toString();
        desk.edit("The entry of " + Wording.english().date(read.date()), now -> BookEdits.put(now, label,
                withId(read, BookEdits.newId(now, RecordKind.LOG, label))));
        String full = LogSearch.tooFull(desk.book(), read, book);
        return Answer.done("Saved: " + Wording.english().date(read.date()) + ". " + full, call.back("/log"));
    }

    static LogEntry withId(LogEntry entry, String id) {
        return new LogEntry(id, entry.date(), entry.minutes(), entry.students(), entry.subjects(), entry.did(), entry.materials(),
                entry.place(), entry.core(), entry.by(), entry.written());
    }

    /** A piece of the page for the little script: the subjects that words suggest, none of them ticked. */
    private Answer offers(Call call) {
        return new Answer.Fragment("log/offers.jte", Map.of("offered", offered(call.desk(), call.query("did")),
                "ticked", call.queryForm().field("subjects", "").values()));
    }

    /** The last day logged before today, entry by entry, as a week form of one day: nothing is saved until it is confirmed. */
    private Answer again(Call call) {
        Book book = call.desk().book();
        LocalDate today = call.desk().today();
        Optional<LocalDate> last = LogSearch.lastDay(book, today);
        if (last.isEmpty()) {
            return Answer.done("There is no earlier day to repeat.", "/log");
        }
        List<LogEntry> entries = LogSearch.on(book, last.get());
        return Answer.page("log/again.jte", "Repeat a day", Part.LOG, Map.of("entries", entries, "day", Wording.english().date(last.get()),
                "today", today.toString(), "book", book));
    }

    private Answer shown(Call call) {
        Optional<LogEntry> found = find(call);
        return found.isEmpty() ? new Answer.Nothing() : entry(call, EntryForm.fill(found.get()), found.get(), null, 200);
    }

    private static Optional<LogEntry> find(Call call) {
        return BookEdits.find(call.desk().book(), call.path("year"), call.path("id")).map(BookEdits.Found::record)
                .filter(LogEntry.class::isInstance).map(LogEntry.class::cast);
    }

    private Answer entry(Call call, Form form, LogEntry before, String there, int status) {
        Book book = call.desk().book();
        String print = status == 200 || there != null ? BookEdits.fingerprint(before) : form.raw("print");
        EntryView view = new EntryView(form, EntryForm.children(book), EntryForm.persons(book), EntryForm.subjects(),
                offered(call.desk(), form.raw("did")), call.path(), call.path() + "/delete", print, there, call.query("back"));
        return new Answer.Shown(ENTRY, "An entry of the log", Part.LOG, Map.of("entry", view), status);
    }

    private Answer change(Call call) throws Exception {
        Optional<LogEntry> found = find(call);
        if (found.isEmpty()) {
            return new Answer.Nothing();
        }
        Form form = call.form();
        LogEntry before = found.get();
        if (form.is("suggest")) {
            return entry(call, form, before, null, 422);
        }
        LogEntry read = EntryForm.read(form, call.desk().book(), call.desk().today(), before.id(), before, null);
        boolean changed = !BookEdits.fingerprint(before).equals(form.raw("print"));
        if (!form.isFine() || changed) {
            String there = changed ? Wording.english().date(before.date()) + ": " + before.did() + " (" + Minutes.words(before.minutes()) + ")" : null;
            return entry(call, form, before, there, 422);
        }
        String from = call.path("year");
        String to = YearLabel.of(read.date()).toString();
        call.desk().edit("The entry of " + Wording.english().date(read.date()), book -> BookEdits.move(book, from, before.id(), to,
                from.equals(to) ? read : withId(read, BookEdits.newId(book, RecordKind.LOG, to))));
        return Answer.done("Saved: " + Wording.english().date(read.date()) + '.', call.back("/log"));
    }

    private static Answer delete(Call call) throws Exception {
        Optional<LogEntry> found = find(call);
        if (found.isEmpty()) {
            return new Answer.Nothing();
        }
        call.desk().edit("An entry of " + Wording.english().date(found.get().date()) + " taken out",
                book -> BookEdits.remove(book, call.path("year"), call.path("id")));
        return Answer.done("Taken out: the entry of " + Wording.english().date(found.get().date()) + ". It can be taken back below.", "/log");
    }
}
