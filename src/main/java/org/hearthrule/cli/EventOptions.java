package org.hearthrule.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.hearthrule.input.Nearest;
import org.hearthrule.records.BookEvent;
import org.hearthrule.terms.EventKind;

/** Reads {@code --event KIND=DATE}. */
final class EventOptions {

    private EventOptions() { }

    /** @return the events, in the order of typing; what is wrong becomes a problem */
    static List<BookEvent> read(Given given) {
        List<BookEvent> events = new ArrayList<>();
        for (String typed : given.texts("--event")) {
            event(typed, given).ifPresent(events::add);
        }
        return events;
    }

    private static Optional<BookEvent> event(String typed, Given given) {
        int equals = typed.indexOf('=');
        if (equals < 0) {
            given.problem(typed, "NOT-AN-EVENT", '"' + typed + '"', "an event and its day, such as left-school=2026-10-02",
                    null);
            return Optional.empty();
        }
        String kind = typed.substring(0, equals);
        Optional<EventKind> known = EventKind.of(kind);
        if (known.isEmpty()) {
            List<String> slugs = Arrays.stream(EventKind.values()).map(EventKind::slug).toList();
            given.problem(typed, "UNKNOWN-EVENT", "the event \"" + kind + '"', "one of " + String.join(", ", slugs),
                    Nearest.of(kind, slugs).map(near -> "you meant " + near).orElse(null));
        }
        LocalDate day = given.date(typed, typed.substring(equals + 1));
        return known.isEmpty() || day == null ? Optional.empty()
                : Optional.of(new BookEvent(known.get(), day, List.of(), null));
    }
}
