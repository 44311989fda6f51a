package org.hearthrule.page.log;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthrule.page.frame.Answer;
import org.hearthrule.page.frame.Call;
import org.hearthrule.page.frame.Desk;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Option;
import org.hearthrule.page.frame.Part;
import org.hearthrule.page.frame.Routes;
import org.hearthrule.records.YearRecords.LogEntry;

/** {@code /log/again}: yesterday, or another day, done again as far as it is ticked. */
final class RepeatPages {

    private final Shelf shelf;

    RepeatPages(Shelf shelf) {
        this.shelf = shelf;
    }

    void addTo(Routes routes) {
        routes.get("/log/again", call -> page(call, call.queryForm(), Form.empty().fill("date", call.desk().today()), 200));
        routes.post("/log/again", this::save);
    }

    /** The day a form names, or the last one before today on which something was logged. */
    private Optional<LocalDate> source(Call call, Form form) {
        LocalDate day = form.day("day");
        return day != null ? Optional.of(day) : shelf.index(call).lastDay(call.desk().today().minusDays(1));
    }

    private static String key(LogIndex.Place place) {
        return place.label() + '/' + place.entry().id();
    }

    private Answer page(Call call, Form asked, Form form, int status) {
        Optional<LocalDate> day = source(call, asked);
        List<LogIndex.Place> places = day.map(shelf.index(call)::on).orElse(List.of());
        if (places.isEmpty()) {
            return Answer.done(LogWords.say("log.nothing.earlier"), "/log");
        }
        Map<String, String> children = LogWords.firstNames(call.desk().book());
        List<Option> entries = places.stream().map(place -> new Option(key(place), LogWords.row(place, children).did(),
                LogWords.line(place.entry(), children))).toList();
        return new Answer.Shown("log/again.jte", "Repeat a day", Part.LOG, Map.of("entries", entries, "form", form,
                "words", LogWords.date(day.get()), "day", day.get().toString()), status);
    }

    private Answer save(Call call) throws Exception {
        Desk desk = call.desk();
        Form form = call.form();
        LocalDate to = form.mustDay("date", LogWords.say("log.day"));
        EntryForm.notAhead(form, to, desk.today());
        List<LogIndex.Place> places = source(call, form).map(shelf.index(call)::on).orElse(List.of());
        List<String> ticked = form.mustTick("again", places.stream().map(RepeatPages::key).toList(), LogWords.say("log.nothing.ticked"));
        if (!form.isFine()) {
            return page(call, form, form, 422);
        }
        List<LogEntry> entries = new ArrayList<>();
        places.stream().filter(place -> ticked.contains(key(place)))
                .forEach(place -> entries.add(EntryForm.again(place.entry(), to, desk.now())));
        desk.edit(LogWords.say("log.edit.again"), book -> EntryForm.put(book, entries));
        return Answer.done(LogWords.say("log.saved.on", LogWords.count("log.entries", entries.size()), LogWords.date(to))
                + shelf.tooFull(call, entries), "/log");
    }
}
