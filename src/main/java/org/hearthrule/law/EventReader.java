package org.hearthrule.law;

import java.util.ArrayList;
import java.util.List;
import org.hearthrule.input.Fields;
import org.hearthrule.input.Node;
import org.hearthrule.input.Place;
import org.hearthrule.terms.EventKind;

/** Reads kinds of events by the spelling they have in files. */
final class EventReader {

    /** Stands where an event is named and means the birthday of a given age. */
    static final String BIRTHDAY = "birthday";

    private EventReader() { }

    /** @return the event under a key that must be there, or null */
    static EventKind required(Fields fields, String key, Scope scope) {
        String text = fields.text(key, Forms.LONGEST_NAME);
        return text == null ? null : find(fields.place(key), text, scope);
    }

    /** @return the events of a list that must be there */
    static List<EventKind> list(Fields fields, String key, Scope scope) {
        List<String> names = Forms.requiredTexts(fields, key, scope);
        Node node = fields.optionalNode(key).orElse(null);
        List<EventKind> events = new ArrayList<>(names.size());
        for (int i = 0; i < names.size(); i++) {
            EventKind event = find(Forms.place(node, i), names.get(i), scope);
            if (event != null) {
                events.add(event);
            }
        }
        return List.copyOf(events);
    }

    static EventKind find(Place place, String text, Scope scope) {
        for (EventKind kind : EventKind.values()) {
            if (isSlug(kind.name(), text)) {
                return kind;
            }
        }
        List<String> known = new ArrayList<>();
        for (EventKind kind : EventKind.values()) {
            known.add(kind.slug());
        }
        scope.unknown(place, ProfileFault.UNKNOWN_EVENT, "event", text, known);
        return null;
    }

    private static boolean isSlug(String name, String text) {
        if (name.length() != text.length()) {
            return false;
        }
        for (int i = 0; i < name.length(); i++) {
            char c = name.charAt(i);
            if (text.charAt(i) != (c == '_' ? '-' : (char) (c + ('a' - 'A')))) {
                return false;
            }
        }
        return true;
    }
}
