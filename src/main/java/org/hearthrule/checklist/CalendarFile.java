package org.hearthrule.checklist;

import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.io.text.ICalReader;
import biweekly.property.DateOrDateTimeProperty;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The events of a calendar file that this program wrote before.
 *
 * @param events by UID, in the order of the file
 */
public record CalendarFile(Map<String, Event> events) {

    /** No file was written before. */
    public static final CalendarFile NONE = new CalendarFile(Map.of());

    /** One event: {@code cancelled} when it was called off already. */
    record Event(String uid, LocalDate day, String summary, int sequence, boolean cancelled) { }

    /**
     * Reads a calendar.
     *
     * @return its events, or empty when the text is no calendar that this program wrote
     */
    public static Optional<CalendarFile> read(String text) {
        try (ICalReader reader = new ICalReader(text)) {
            ICalendar calendar = reader.readNext();
            if (calendar == null || calendar.getProductId() == null
                    || !CalendarWriter.PRODUCT.equals(calendar.getProductId().getValue())) {
                return Optional.empty();
            }
            Map<String, Event> events = new LinkedHashMap<>();
            for (VEvent event : calendar.getEvents()) {
                if (event.getUid() != null && event.getDateStart() != null) {
                    events.put(event.getUid().getValue(), event(event));
                }
            }
            return Optional.of(new CalendarFile(events));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Event event(VEvent event) {
        boolean cancelled = event.getStatus() != null && event.getStatus().isCancelled();
        int sequence = event.getSequence() == null ? 0 : event.getSequence().getValue();
        String summary = event.getSummary() == null ? "" : event.getSummary().getValue();
        return new Event(event.getUid().getValue(), day(event.getDateStart()), summary, sequence, cancelled);
    }

    private static LocalDate day(DateOrDateTimeProperty property) {
        var parts = property.getValue().getRawComponents();
        return LocalDate.of(parts.getYear(), parts.getMonth(), parts.getDate());
    }

    /** @return the number for an event on a day: higher than before when it moved or comes back */
    int sequence(String uid, LocalDate day) {
        Event before = events.get(uid);
        if (before == null) {
            return 0;
        }
        return before.day.equals(day) && !before.cancelled ? before.sequence : before.sequence + 1;
    }

    /** @return events that are not among those that stand, from a day on */
    List<Event> gone(Set<String> standing, LocalDate from) {
        return events.values().stream().filter(event -> !standing.contains(event.uid) && !event.day.isBefore(from))
                .toList();
    }
}
