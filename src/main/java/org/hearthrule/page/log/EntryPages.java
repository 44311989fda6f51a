package org.hearthrule.page.log;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthrule.page.frame.Answer;
import org.hearthrule.page.frame.Call;
import org.hearthrule.page.frame.Choices;
import org.hearthrule.page.frame.Desk;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Part;
import org.hearthrule.page.frame.Print;
import org.hearthrule.page.frame.Routes;
import org.hearthrule.page.frame.SubjectChoice;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookEdits;
import org.hearthrule.records.RecordKind;
import org.hearthrule.records.YearRecords.LogEntry;

/** {@code /log/{year}/{id}}: one entry, to be mended, logged again or taken out. */
final class EntryPages {

    private final Shelf shelf;

    EntryPages(Shelf shelf) {
        this.shelf = shelf;
    }

    void addTo(Routes routes) {
        routes.get("/log/{year}/{id}", this::shown);
        routes.post("/log/{year}/{id}", this::change);
        routes.post("/log/{year}/{id}/again", this::again);
        routes.post("/log/{year}/{id}/delete", EntryPages::delete);
    }

    private static Optional<LogEntry> find(Call call) {
        return BookEdits.find(call.desk().book(), call.path("year"), call.path("id")).map(BookEdits.Found::record)
                .filter(LogEntry.class::isInstance).map(LogEntry.class::cast);
    }

    private Answer shown(Call call) {
        return find(call).<Answer>map(entry -> page(call, EntryForm.fill(entry), 200, call.path(), Print.of(entry), null))
                .orElseGet(Answer.Nothing::new);
    }

    /** @param there what the book holds now, where that is another version than the form was opened with; else null */
    private Answer page(Call call, Form form, int status, String action, String print, Map<String, String> there) {
        Book book = call.desk().book();
        boolean gone = !action.equals(call.path());
        EntryView view = new EntryView(form, Choices.children(book), Choices.persons(book), SubjectChoice.areas(), List.of(),
                shelf.offered(call.desk(), form), action, print, there, gone, false, form.is("back") ? form.raw("back") : call.query("back"));
        return new Answer.Shown("log/entry.jte", "An entry of the log", Part.LOG, Map.of("entry", view, "address", call.path()), status);
    }

    private Answer change(Call call) throws Exception {
        Desk desk = call.desk();
        Form form = call.form();
        Optional<LogEntry> found = find(call);
        if (found.isEmpty()) {
            // what was typed is kept: saving it makes an entry anew
            return form.is("print") ? page(call, form, 422, "/log", "", null) : new Answer.Nothing();
        }
        LogEntry before = found.get();
        if (form.is("suggest")) {
            return page(call, form, 200, call.path(), form.raw("print"), null);
        }
        LogEntry read = EntryForm.read(form, desk.book(), desk.today(), before.id(), before, null);
        String print = Print.of(before);
        if (!print.equals(form.raw("print"))) {
            return page(call, form, 422, call.path(), print, LogWords.facts(before, desk.book()));
        }
        if (!form.isFine()) {
            return page(call, form, 422, call.path(), print, null);
        }
        String from = call.path("year");
        String to = read.date().equals(before.date()) ? from : BookEdits.label(read.date(), from);
        desk.edit(LogWords.say("log.edit", LogWords.date(read.date())), book -> BookEdits.move(book, from, before.id(), to,
                from.equals(to) ? read : EntryForm.withId(read, BookEdits.newId(book, RecordKind.LOG, to))));
        return Answer.done(LogWords.say("log.saved", LogWords.date(read.date())) + shelf.tooFull(call, List.of(read)), call.back("/log"));
    }

    private Answer again(Call call) throws Exception {
        Optional<LogEntry> found = find(call);
        if (found.isEmpty()) {
            return new Answer.Nothing();
        }
        LocalDate today = call.desk().today();
        LogEntry copy = EntryForm.again(found.get(), today, call.desk().now());
        call.desk().edit(LogWords.say("log.edit", LogWords.date(today)), book -> EntryForm.put(book, List.of(copy)));
        return Answer.done(LogWords.say("log.again", copy.did()) + shelf.tooFull(call, List.of(copy)), call.back("/log"));
    }

    private static Answer delete(Call call) throws Exception {
        Optional<LogEntry> found = find(call);
        if (found.isEmpty()) {
            return new Answer.Nothing();
        }
        String day = LogWords.date(found.get().date());
        call.desk().edit(LogWords.say("log.edit.out", day), book -> BookEdits.remove(book, call.path("year"), call.path("id")));
        return Answer.done(LogWords.say("log.out", day), call.back("/log"));
    }
}
