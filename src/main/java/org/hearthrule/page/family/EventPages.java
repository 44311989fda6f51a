package org.hearthrule.page.family;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthrule.page.frame.Answer;
import org.hearthrule.page.frame.Call;
import org.hearthrule.page.frame.Choices;
import org.hearthrule.page.frame.Feature;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Option;
import org.hearthrule.page.frame.Print;
import org.hearthrule.page.frame.Routes;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookEdits;
import org.hearthrule.records.BookEvent;
import org.hearthrule.terms.EventKind;
import org.hearthrule.terms.Prose;
import org.hearthrule.terms.Wording;

/** {@code /family/event}: something that happened on a day; noted, mended, taken out. An event is named by its print. */
public final class EventPages implements Feature {

    @Override
    public void addTo(Routes routes) {
        routes.get("/family/event", EventPages::open);
        routes.post("/family/event", EventPages::save);
        routes.post("/family/event/delete", EventPages::delete);
    }

    /** An event in words. */
    public record EventView(String words, String address) { }

    /** @return the events of a book, the latest first */
    static List<EventView> views(Household house) {
        return house.book().events().stream().sorted(Comparator.comparing(BookEvent::date).reversed())
                .map(event -> new EventView(words(house, event), "/family/event?event=" + Print.of(event))).toList();
    }

    private static String words(Household house, BookEvent event) {
        String who = event.students().isEmpty() ? "" : " (" + house.names(event.students()) + ')';
        return Wording.english().date(event.date()) + ": " + event.kind().words() + who
                + (event.note() == null ? "" : ", " + event.note());
    }

    private static Optional<BookEvent> find(Book book, String print) {
        return book.events().stream().filter(event -> Print.of(event).equals(print)).findFirst();
    }

    private static Answer open(Call call) {
        String print = call.query("event");
        if (print.isEmpty()) {
            return form(call, Form.empty(), 200, List.of());
        }
        return find(call.desk().book(), print).map(event -> form(call, Form.empty().fill("event", print)
                .fill("kind", event.kind().slug()).fill("date", event.date()).tick("students", event.students())
                .fill("note", event.note()), 200, List.of())).orElse(new Answer.Nothing());
    }

    private static Answer form(Call call, Form form, int status, List<String> there) {
        return Household.shown("event", "Something that happened", form, status,
                Map.of("children", Household.of(call).children(), "kinds", kinds(), "there", there));
    }

    private static List<Option> kinds() {
        List<Option> kinds = new ArrayList<>();
        for (EventKind kind : EventKind.values()) {
            kinds.add(Option.of(kind.slug(), Prose.upperFirst(kind.words())));
        }
        return kinds;
    }

    private static Answer save(Call call) throws Exception {
        Form form = call.form();
        Household house = Household.of(call);
        String kind = form.mustOneOf("kind", Choices.values(kinds()), "Choose what happened.");
        LocalDate day = form.mustDay("date", "Enter its day.");
        List<String> students = form.ticked("students", house.ids());
        String note = form.text("note");
        String print = form.raw("event");
        boolean gone = !print.isEmpty() && find(house.book(), print).isEmpty();
        if (!form.isFine() || gone) {
            // saved once more it is a new one: what is there now stays beside it
            return form(call, gone ? form.fill("event", "") : form, 422, gone ? there(house) : List.of());
        }
        EventKind chosen = EventKind.of(kind).orElseThrow();
        BookEvent event = new BookEvent(chosen, day, students, note);
        call.desk().edit("The note of a day", book -> {
            List<BookEvent> events = new ArrayList<>(book.events());
            Optional<BookEvent> before = find(book, print);
            if (before.isPresent()) {
                events.set(events.indexOf(before.get()), event);
            } else {
                events.add(event);
            }
            return BookEdits.withEvents(book, events);
        });
        return Answer.done("Saved: " + chosen.words() + ", " + Wording.english().date(day) + '.', "/family");
    }

    private static List<String> there(Household house) {
        List<String> now = house.book().events().stream().map(event -> words(house, event)).toList();
        return now.isEmpty() ? List.of("nothing that happened on a day") : now;
    }

    private static Answer delete(Call call) throws Exception {
        String print = call.form().raw("event");
        Optional<BookEvent> found = find(call.desk().book(), print);
        if (found.isEmpty()) {
            return new Answer.Nothing();
        }
        call.desk().edit("The note of a day taken out", book -> BookEdits.withEvents(book,
                book.events().stream().filter(event -> !Print.of(event).equals(print)).toList()));
        return Answer.done("Taken out: " + found.get().kind().words() + ". It can be taken back below.", "/family");
    }
}
