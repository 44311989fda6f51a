package org.hearthrule.law;

import java.time.MonthDay;
import java.util.List;
import org.hearthrule.terms.EventKind;

/**
 * When something is due. Twelve forms, and {@link Cases} that choose among them.
 *
 * <p>Days are as the law names them: none is moved for a weekend.
 */
public sealed interface Due {

    /** The school year a fixed date lies in, seen from the year the duty is about. */
    enum YearOf { THIS_YEAR, NEXT_YEAR, PREVIOUS_YEAR }

    /** No day at all: recorded when it happens, never late. {@code note} may be null. */
    record None(String note) implements Due { }

    /**
     * The last day of the school year: taken for time, subjects, records and assessments whose law names no day. Not
     * written in files, so that a day the law does name can be told from it.
     */
    record YearEnd() implements Due { }

    /** On one or several fixed dates. */
    record By(List<MonthDay> dates, YearOf year) implements Due { }

    /** From one date to another. */
    record Window(MonthDay opens, MonthDay closes, YearOf year) implements Due { }

    /**
     * An event and then so long.
     *
     * @param event     the event, or null for the birthday on which the child turns {@code age}
     * @param age       the age of that birthday, or null with an event
     * @param paper     only the sending of this paper, or answers of the other side to it; null: of the notice where
     *                  the event is about the notice, else of any paper
     * @param around    of several such days, the one whose time holds this event; or null
     * @param notBefore never earlier than this form, or null
     */
    record After(EventKind event, Integer age, Span span, String paper, EventKind around, Due notBefore)
            implements Due { }

    /** So long before an event; {@code strict}: the day itself is too late (only with a span of 0). */
    record Before(EventKind event, Span span, boolean strict) implements Due { }

    /** With an event, without a number of days: at once, promptly. Never late. */
    record At(EventKind event) implements Due { }

    /**
     * So many times in a stretch of time.
     *
     * @param least   at least so many times
     * @param most    at most, or null
     * @param of      the stretch
     * @param every   1, or every so many school years
     */
    record InPeriod(int least, Integer most, Period of, int every) implements Due { }

    /** When somebody asks; {@code span} is null when the law gives no number. */
    record OnRequest(Span span) implements Due { }

    /** On a day somebody else sets; {@code value} names the entered date, {@code fallback} may be null. */
    record SetBy(String who, String value, Due fallback) implements Due { }

    /** On dates the parent chose, {@code times} of them, under this name in the record book. */
    record Chosen(String what, int times) implements Due { }

    /** Together with another requirement of the pathway. */
    record With(String requirement) implements Due { }

    record LaterOf(List<Due> parts) implements Due { }

    /** The earliest of those whose event has happened. */
    record EarlierOf(List<Due> parts) implements Due { }

    /** The first case whose condition holds. */
    record Cases(List<Case> cases) implements Due { }

    record Case(Condition when, Due due) { }

    /**
     * A form with a remark of its own.
     *
     * @param due      the law's date
     * @param opens    first day on which it can be done, or null
     * @param advisory a sensible date where the law has none, or null; never late
     * @param practice an agency's or district's own date beside the law's, or null; never late
     * @param note     words for the reader, or null
     */
    record Remarked(Due due, Due opens, Due advisory, Due practice, String note) implements Due { }
}
