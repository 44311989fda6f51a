package org.hearthrule.checklist;

import biweekly.ICalendar;
import biweekly.ICalVersion;
import biweekly.component.VAlarm;
import biweekly.component.VEvent;
import biweekly.io.text.ICalWriter;
import biweekly.parameter.Related;
import biweekly.property.Classification;
import biweekly.property.Method;
import biweekly.property.ProductId;
import biweekly.property.Status;
import biweekly.property.Trigger;
import biweekly.util.DateTimeComponents;
import biweekly.util.Duration;
import biweekly.util.ICalDate;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.hearthrule.rules.Finding;
import org.hearthrule.terms.Wording;

/**
 * Writes what is open or late, and has a day, as an iCalendar file (RFC 5545): all-day events with alarms 30, 7 and 1
 * days before, counted from the midnight that begins the day where the reader is.
 *
 * <p>An event's UID is a name-based UUID over family and line, so that it stays when the day moves. With the file
 * written before, what has moved gets a higher SEQUENCE and what has gone is kept as CANCELLED. The day of the
 * checklist is the only clock: the same checklist gives the same file.
 */
public final class CalendarWriter {

    static final String PRODUCT = "-//Hearthrule//Checklist//EN";

    private static final int[] ALARM_DAYS = {30, 7, 1};
    /** A cancelled event is kept in the file so long after its day. */
    private static final int CANCELLED_KEPT_YEARS = 1;
    private static final int FOLD_OCTETS = 75;

    private final Wording wording;
    private final boolean names;

    /** @param names children's names may stand in the file, which others may see */
    public CalendarWriter(Wording wording, boolean names) {
        this.wording = wording;
        this.names = names;
    }

    /**
     * @param key      what tells this family from others, the same each time
     * @param previous events of the file written before, or {@link CalendarFile#NONE}
     * @return the file's text, lines ended with CR LF
     */
    public String write(Checklist checklist, String key, CalendarFile previous) {
        Map<String, VEvent> events = new LinkedHashMap<>();
        for (Line line : checklist.lines()) {
            if (line.finding().due() != null && isToDo(line)) {
                VEvent event = event(line, key, checklist);
                event.setSequence(previous.sequence(event.getUid().getValue(), line.finding().due()));
                events.put(event.getUid().getValue(), event);
            }
        }
        previous.gone(events.keySet(), checklist.asOf().minusYears(CANCELLED_KEPT_YEARS)).forEach(old -> events.put(
                old.uid(), cancelled(old, checklist.asOf())));
        return text(events);
    }

    private static boolean isToDo(Line line) {
        return switch (line.section()) {
            case LATE, SOON, LATER -> true;
            case DONE, THIN_OR_UNCLEAR, LAW_UNCLEAR, NOT_DUE, NOT_ASKED -> false;
        };
    }

    private VEvent event(Line line, String key, Checklist checklist) {
        Finding finding = line.finding();
        String summary = summary(finding, checklist);
        VEvent event = allDay(uid(key, finding.id()), finding.due(), summary, checklist.asOf());
        event.setDescription(description(line, checklist));
        event.setStatus(Status.confirmed());
        for (int days : ALARM_DAYS) {
            Trigger trigger = new Trigger(Duration.builder().prior(true).days(days).build(), Related.START);
            event.addAlarm(VAlarm.display(trigger, summary));
        }
        return event;
    }

    private VEvent cancelled(CalendarFile.Event old, LocalDate asOf) {
        VEvent event = allDay(old.uid(), old.day(), old.summary(), asOf);
        event.setStatus(Status.cancelled());
        event.setSequence(old.cancelled() ? old.sequence() : old.sequence() + 1);
        return event;
    }

    private VEvent allDay(String uid, LocalDate day, String summary, LocalDate asOf) {
        VEvent event = new VEvent();
        event.setUid(uid);
        event.setDateTimeStamp(new ICalDate(
                new DateTimeComponents(asOf.getYear(), asOf.getMonthValue(), asOf.getDayOfMonth(), 0, 0, 0, true), true));
        event.setDateStart(date(day), false);
        event.setDateEnd(date(day.plusDays(1)), false);
        event.setSummary(summary);
        event.setTransparency(true);
        event.setClassification(Classification.private_());
        return event;
    }

    private static ICalDate date(LocalDate day) {
        return new ICalDate(new DateTimeComponents(day.getYear(), day.getMonthValue(), day.getDayOfMonth()), false);
    }

    /** @return a name-based UUID, the same for the same family and line */
    static String uid(String key, String lineId) {
        return UUID.nameUUIDFromBytes((key + '\n' + lineId).getBytes(StandardCharsets.UTF_8)).toString();
    }

    private String summary(Finding finding, Checklist checklist) {
        String title = withoutNames(finding.theirs() ? wording.say("calendar.theirs", finding.title())
                : finding.title(), checklist);
        List<String> children = checklist.follows().stream().map(Checklist.Follows::student).distinct().toList();
        if (names && finding.studentName() != null) {
            return wording.say("line.title", title, finding.studentName());
        }
        int child = children.indexOf(finding.student());
        return children.size() < 2 || child < 0 ? title : wording.say("calendar.child", title, child + 1);
    }

    private String description(Line line, Checklist checklist) {
        Finding finding = line.finding();
        StringBuilder text = new StringBuilder();
        if (finding.next() != null) {
            text.append(withoutNames(finding.next(), checklist)).append("\n\n");
        }
        if (!finding.cites().isEmpty()) {
            String sentences = String.join(" ", new Sources(wording).sentences(finding.cites()));
            text.append(sentences).append('\n');
        }
        if (finding.confirmWith() != null) {
            text.append(wording.say("line.confirm", finding.confirmWith())).append('\n');
        }
        return text.append('\n').append(wording.say("caution")).toString();
    }

    /** The text with each child's whole and first name replaced, unless names may be shown. */
    private String withoutNames(String text, Checklist checklist) {
        if (names) {
            return text;
        }
        String clean = text;
        for (String name : checklist.lines().stream().map(line -> line.finding().studentName())
                .filter(name -> name != null).distinct().collect(Collectors.toList())) {
            clean = replaceWord(clean, name, wording.say("calendar.your-child"));
            int space = name.indexOf(' ');
            if (space > 0) {
                clean = replaceWord(clean, name.substring(0, space), wording.say("calendar.your-child"));
            }
        }
        return clean;
    }

    private static String replaceWord(String text, String word, String by) {
        StringBuilder out = new StringBuilder();
        int from = 0;
        for (int at = text.indexOf(word); at >= 0; at = text.indexOf(word, from)) {
            int end = at + word.length();
            boolean whole = (at == 0 || !Character.isLetterOrDigit(text.charAt(at - 1)))
                    && (end == text.length() || !Character.isLetterOrDigit(text.charAt(end)));
            out.append(text, from, at).append(whole ? by : word);
            from = end;
        }
        return out.append(text, from, text.length()).toString();
    }

    private String text(Map<String, VEvent> events) {
        ICalendar calendar = new ICalendar();
        calendar.setProductId(new ProductId(PRODUCT));
        calendar.setMethod(Method.publish());
        calendar.setName(wording.say("calendar.name"));
        calendar.setExperimentalProperty("X-WR-CALNAME", wording.say("calendar.name"));
        events.values().forEach(calendar::addEvent);
        StringWriter out = new StringWriter();
        try (ICalWriter writer = new ICalWriter(out, ICalVersion.V2_0)) {
            writer.getVObjectWriter().getFoldedLineWriter().setLineLength(null);
            writer.write(calendar);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return folded(out.toString());
    }

    /** Lines of at most 75 octets (RFC 5545, section 3.1); the library folds by characters instead. */
    static String folded(String text) {
        StringBuilder out = new StringBuilder(text.length() + 200);
        int octets = 0;
        for (int i = 0; i < text.length(); ) {
            int c = text.codePointAt(i);
            i += Character.charCount(c);
            if (c == '\r' || c == '\n') {
                octets = 0;
            } else {
                int more = c < 0x80 ? 1 : c < 0x800 ? 2 : c < 0x10000 ? 3 : 4;
                if (octets + more > FOLD_OCTETS) {
                    out.append("\r\n ");
                    octets = 1;
                }
                octets += more;
            }
            out.appendCodePoint(c);
        }
        return out.toString();
    }
}
