package org.hearthrule.page.log;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hearthrule.page.frame.Answer;
import org.hearthrule.page.frame.Call;
import org.hearthrule.page.frame.Choices;
import org.hearthrule.page.frame.Desk;
import org.hearthrule.page.frame.Feature;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Part;
import org.hearthrule.page.frame.Routes;
import org.hearthrule.page.frame.SubjectChoice;
import org.hearthrule.records.Book;
import org.hearthrule.records.YearRecords.LogEntry;

/** {@code /log}: one day in one line, and everything that was logged, to be found. */
public final class LogPages implements Feature {

    private final Shelf shelf = new Shelf();

    @Override
    public void addTo(Routes routes) {
        routes.get("/log", call -> log(call, fresh(call), List.of(), 200));
        routes.post("/log", this::add);
        routes.get("/log/subjects", this::offers);
        new RepeatPages(shelf).addTo(routes);
        new WeekPages(shelf).addTo(routes);
        new EntryPages(shelf).addTo(routes);
    }

    private Form fresh(Call call) {
        shelf.prepare(call.desk());
        Book book = call.desk().book();
        LocalDate today = call.desk().today();
        LocalDate day = call.queryForm().day("day");
        boolean offered = day == null || EntryForm.days(today).stream().anyMatch(one -> one.value().equals(day.toString()));
        Form form = Form.empty().fill(offered ? "when" : "date", day == null ? today : day);
        String child = call.query("child");
        List<String> all = Choices.childIds(book);
        return form.tick("students", all.contains(child) ? List.of(child) : shelf.index(call).last(today).map(LogEntry::students).orElse(all));
    }

    private Answer log(Call call, Form form, List<EntryView.Offered> offered, int status) {
        Book book = call.desk().book();
        LocalDate today = call.desk().today();
        LogIndex index = shelf.index(call);
        LogSearch search = LogSearch.of(call.queryForm(), book);
        LogSearch.Page page = search.page(index, book);
        boolean plain = status == 200 && call.here().equals("/log");
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("entry", new EntryView(form, Choices.children(book), Choices.persons(book), SubjectChoice.areas(), EntryForm.days(today),
                offered, "/log", "", null, false, plain, ""));
        values.put("page", page);
        values.put("search", search);
        values.put("subjects", SubjectChoice.all());
        values.put("again", index.lastDay(today.minusDays(1)).map(LogWords::date).orElse(""));
        return new Answer.Shown("log/log.jte", "Log", Part.LOG, values, status);
    }

    private Answer add(Call call) throws Exception {
        Desk desk = call.desk();
        Form form = call.form();
        if (form.is("suggest")) {
            return log(call, form, shelf.offered(desk, form), 200);
        }
        LogEntry read = EntryForm.read(form, desk.book(), desk.today(), "new", null, desk.now());
        if (!form.isFine()) {
            return log(call, form, shelf.offered(desk, form), 422);
        }
        String day = LogWords.date(read.date());
        desk.edit(LogWords.say("log.edit", day), book -> EntryForm.put(book, List.of(read)));
        return Answer.done(LogWords.say("log.saved", day) + shelf.tooFull(call, List.of(read)), call.back("/log"));
    }

    /** A piece of the page for the little script. */
    private Answer offers(Call call) {
        return new Answer.Fragment("log/offers.jte", Map.of("offered", shelf.offered(call.desk(), call.query("did")),
                "ticked", call.queryForm().field("subjects", "").values()));
    }
}
