package org.hearthrule.rules;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hearthrule.law.Due;
import org.hearthrule.law.Requirement;
import org.hearthrule.law.Span;
import org.hearthrule.records.YearRecords;
import org.hearthrule.terms.EventKind;

/** Works out the day of a due form in a situation. Days are those of the law: none is moved for a weekend (see {@link Claim#missedOn}). */
final class DueDates {

    private final Situation situation;
    private final EventKind hangsOn;
    private final LocalDate eventDay;
    private final int part;
    private int depth;

    private DueDates(Situation situation, EventKind hangsOn, LocalDate eventDay, int part) {
        this.situation = situation;
        this.hangsOn = hangsOn;
        this.eventDay = eventDay;
        this.part = part;
    }

    /**
     * @param hangsOn  kind of the event of this occasion, or null
     * @param eventDay its day, or null
     * @param part     1 for the first of several dates in the year
     */
    static DueDate of(Due due, Situation situation, EventKind hangsOn, LocalDate eventDay, int part) {
        return new DueDates(situation, hangsOn, eventDay, part).of(due);
    }

    private DueDate of(Due due) {
        if (due instanceof Due.None none) {
            return DueDate.undated(none.note() == null ? Say.it("due.none") : none.note());
        }
        if (due instanceof Due.YearEnd) {
            return DueDate.on(situation.yearEnd(), null);
        }
        if (due instanceof Due.By by) {
            return DueDate.on(date(by.dates().get(Math.min(part, by.dates().size()) - 1), by.year()), null);
        }
        if (due instanceof Due.Window window) {
            return DueDate.on(date(window.closes(), window.year()), null).opening(date(window.opens(), window.year()));
        }
        if (due instanceof Due.After after) {
            return after(after);
        }
        if (due instanceof Due.Before before) {
            return before(before);
        }
        if (due instanceof Due.At at) {
            Optional<LocalDate> day = eventDay(at.event());
            String note = day.map(d -> Say.it("due.at-day", at.event().words(), d))
                    .orElseGet(() -> Say.it("due.at", at.event().words()));
            return DueDate.undated(note);
        }
        if (due instanceof Due.InPeriod in) {
            return inPeriod(in);
        }
        if (due instanceof Due.OnRequest request) {
            return onRequest(request);
        }
        if (due instanceof Due.SetBy set) {
            return setBy(set);
        }
        if (due instanceof Due.Chosen chosen) {
            return chosen(chosen);
        }
        if (due instanceof Due.With with) {
            return with(with);
        }
        if (due instanceof Due.LaterOf later) {
            return laterOf(later);
        }
        if (due instanceof Due.EarlierOf earlier) {
            return earlierOf(earlier);
        }
        if (due instanceof Due.Cases cases) {
            return cases(cases);
        }
        return remarked((Due.Remarked) due);
    }

    private LocalDate date(MonthDay date, Due.YearOf which) {
        ProgramYear year = switch (which) {
            case THIS_YEAR -> situation.year();
            case NEXT_YEAR -> situation.year().plus(1);
            case PREVIOUS_YEAR -> situation.year().plus(-1);
        };
        return year.day(date);
    }

    private Optional<LocalDate> eventDay(EventKind kind) {
        if (eventDay == null) {
            return situation.happenings().day(kind);
        }
        // a paper that follows an event is the first one sent or received since then
        return kind == hangsOn ? Optional.of(eventDay) : situation.happenings().daySince(kind, eventDay);
    }

    private DueDate after(Due.After after) {
        Optional<LocalDate> from;
        if (after.age() != null) {
            LocalDate born = situation.student().born();
            if (born == null) {
                return DueDate.missing(Say.it("age.no-birth-date", situation.student().name()),
                        Say.it("age.ask-birth-date", situation.student().name()));
            }
            from = Optional.of(Ages.reached(born, after.age()));
        } else if (after.around() != null) {
            return around(after);
        } else {
            from = after.paper() == null ? eventDay(after.event()) : answerDay(after.event(), after.paper());
        }
        if (from.isEmpty()) {
            return eventMissing(after.event());
        }
        Optional<LocalDate> day = plus(from.get(), after.span(), 1);
        if (day.isEmpty()) {
            return schoolCalendarMissing();
        }
        String what = after.event() == null ? Say.it("due.birthday", after.age()) : after.event().words();
        DueDate found = DueDate.on(day.get(), (after.span().amount() == 0 ? Say.it("due.on-event", what, from.get())
                : Say.it("due.after", Spans.words(after.span()), what, from.get()))
                + countedNote(after.span()));
        if (after.notBefore() == null) {
            return found;
        }
        DueDate floor = of(after.notBefore());
        if (floor.isMissing() || floor.date() == null || !floor.date().isAfter(found.date())) {
            return found;
        }
        return DueDate.on(floor.date(), Say.it("due.not-before", floor.date()));
    }

    /** The last answer to this paper up to the year's end; on an occasion of its own, the first one since. */
    private Optional<LocalDate> answerDay(EventKind kind, String paper) {
        List<LocalDate> days = situation.happenings().days(kind, paper);
        return eventDay != null ? days.stream().filter(day -> !day.isBefore(eventDay)).findFirst()
                : days.stream().filter(day -> !day.isAfter(situation.year().end())).reduce((first, second) -> second);
    }

    /** Of several days (the terms of a district) the one whose time holds the other event; between two nobody can tell. */
    private DueDate around(Due.After after) {
        Optional<LocalDate> held = eventDay(after.around());
        if (held.isEmpty()) {
            return eventMissing(after.around());
        }
        for (LocalDate day : situation.happenings().daysInYear(after.event())) {
            Optional<LocalDate> last = plus(day, after.span(), 1);
            if (last.isEmpty()) {
                return schoolCalendarMissing();
            }
            if (!last.get().isBefore(held.get())) {
                return day.isAfter(held.get())
                        ? DueDate.missing(Say.it("due.between", after.around().words(), held.get(), Spans.words(after.span()),
                        after.event().words(), day, last.get()), Say.it("due.ask-between", situation.profile().confirmWith()))
                        : DueDate.on(last.get(), Say.it("due.after", Spans.words(after.span()), after.event().words(), day)
                        + countedNote(after.span()));
            }
        }
        return eventMissing(after.event());
    }

    private DueDate before(Due.Before before) {
        Optional<LocalDate> of = eventDay(before.event());
        if (of.isEmpty()) {
            return eventMissing(before.event());
        }
        if (before.span().amount() == 0) {
            LocalDate day = before.strict() ? of.get().minusDays(1) : of.get();
            return DueDate.on(day, Say.it(before.strict() ? "due.before" : "due.by-event", before.event().words(), of.get()));
        }
        Optional<LocalDate> day = plus(of.get(), before.span(), -1);
        return day.map(d -> DueDate.on(d, Say.it("due.span-before", Spans.words(before.span()), before.event().words(), of.get())
                + countedNote(before.span()))).orElseGet(this::schoolCalendarMissing);
    }

    private static String countedNote(Span span) {
        return span.unit() == Span.Unit.BUSINESS_DAYS ? " " + Say.it("due.business-days") : "";
    }

    private Optional<LocalDate> plus(LocalDate day, Span span, int sign) {
        return switch (span.unit()) {
            case BUSINESS_DAYS -> Optional.of(WorkDays.of(situation.profile().code()).plus(day, sign * span.amount()));
            case SCHOOL_DAYS -> schoolDays(day, sign * span.amount());
            default -> Optional.of(sign > 0 ? Spans.plus(day, span) : Spans.minus(day, span));
        };
    }

    /** School days need the district's calendar: weekdays from its first to its last day, without the days it names. */
    private Optional<LocalDate> schoolDays(LocalDate day, int count) {
        YearRecords.Calendar calendar = situation.calendar();
        if (calendar.schoolFirstDay() == null || calendar.schoolLastDay() == null) {
            return Optional.empty();
        }
        LocalDate at = day;
        int step = count < 0 ? -1 : 1;
        for (int left = Math.abs(count); left > 0;) {
            at = at.plusDays(step);
            if (at.isBefore(calendar.schoolFirstDay().minusYears(1)) || at.isAfter(calendar.schoolLastDay().plusYears(1))) {
                return Optional.empty();
            }
            boolean inSession = !at.isBefore(calendar.schoolFirstDay()) && !at.isAfter(calendar.schoolLastDay());
            if (inSession && !calendar.schoolClosed().contains(at)
                    && WorkDays.of(situation.profile().code()).isBusinessDay(at)) {
                left--;
            }
        }
        return Optional.of(at);
    }

    private DueDate eventMissing(EventKind event) {
        return DueDate.missing(Say.it("event.missing", event.words()), Say.it("event.ask", event.words(), event.slug()));
    }

    private DueDate schoolCalendarMissing() {
        return DueDate.missing(Say.it("due.no-school-calendar"), Say.it("due.ask-school-calendar"));
    }

    private DueDate inPeriod(Due.InPeriod in) {
        String of = in.of().name().toLowerCase(Locale.ROOT);
        String note = in.every() > 1 ? Say.it("due.every", in.every()) : in.least() == 1 ? Say.it("due.once-a", of)
                : Say.it("due.times-a", in.least(), of);
        return DueDate.undated(note);
    }

    private DueDate onRequest(Due.OnRequest request) {
        Optional<LocalDate> asked = eventDay(EventKind.REQUEST_RECEIVED);
        if (asked.isEmpty()) {
            return DueDate.undated(Say.it("due.on-request"));
        }
        if (request.span() == null) {
            return DueDate.undated(Say.it("due.requested", asked.get()));
        }
        return plus(asked.get(), request.span(), 1).map(day -> DueDate.on(day, Say.it("due.after",
                Spans.words(request.span()), EventKind.REQUEST_RECEIVED.words(), asked.get())))
                .orElseGet(this::schoolCalendarMissing);
    }

    private DueDate setBy(Due.SetBy set) {
        Optional<YearRecords.ChoiceMade> entered = situation.choice(set.value());
        if (entered.isPresent() && !entered.get().dates().isEmpty()) {
            List<LocalDate> dates = entered.get().dates();
            return DueDate.on(dates.get(Math.min(part, dates.size()) - 1), Say.it("due.set-by", set.who()));
        }
        if (set.fallback() != null) {
            return of(set.fallback()).withNote(Say.it("due.set-by-ask", set.who()));
        }
        return DueDate.missing(Say.it("due.set-by-missing", set.who()), Say.it("due.set-by-question", set.who(), set.value()));
    }

    private DueDate chosen(Due.Chosen chosen) {
        List<LocalDate> dates = situation.choice(chosen.what()).map(YearRecords.ChoiceMade::dates).orElse(List.of());
        if (dates.size() >= part) {
            return DueDate.on(dates.get(part - 1), Say.it("due.chosen"));
        }
        var offered = situation.pathway().choices().get(chosen.what());
        String question = offered == null ? chosen.what() : offered.question();
        return DueDate.missing(Say.it("due.not-chosen", chosen.times(), chosen.what()), question);
    }

    private DueDate with(Due.With with) {
        Optional<Requirement> other = situation.requirement(with.requirement());
        if (other.isEmpty() || depth++ > 8) {
            return DueDate.undated(null);
        }
        Due due = other.get().due();
        int times = Occasions.times(due, situation);
        DueDate found = times > 1 ? DueDates.of(due, situation, null, null, times) : of(due);
        return found.withNote(Say.it("due.with", other.get().title()));
    }

    private DueDate laterOf(Due.LaterOf later) {
        List<DueDate> parts = later.parts().stream().map(this::of).toList();
        Optional<DueDate> missing = parts.stream().filter(DueDate::isMissing).findFirst();
        Optional<DueDate> last = parts.stream().filter(p -> p.date() != null).max(Comparator.comparing(DueDate::date));
        if (missing.isPresent()) {
            DueDate gap = missing.get();
            return last.map(l -> gap.withNote(Say.it("due.not-earlier-than", l.date()))).orElse(gap);
        }
        return last.orElse(parts.get(0)).withNote(Say.it("due.later-of", dates(parts)));
    }

    private DueDate earlierOf(Due.EarlierOf earlier) {
        List<DueDate> parts = earlier.parts().stream().map(this::of).toList();
        Optional<DueDate> first = parts.stream().filter(p -> p.date() != null).min(Comparator.comparing(DueDate::date));
        return first.map(f -> parts.stream().filter(p -> p.date() != null).count() > 1
                ? f.withNote(Say.it("due.earlier-of", dates(parts))) : f).orElse(parts.get(0));
    }

    private static String dates(List<DueDate> parts) {
        List<String> dates = new ArrayList<>();
        for (DueDate part : parts) {
            if (part.date() != null) {
                dates.add(Say.day(part.date()));
            }
        }
        return String.join(" and ", dates);
    }

    private DueDate cases(Due.Cases cases) {
        for (Due.Case each : cases.cases()) {
            Truth holds = Conditions.holds(each.when(), situation, situation.thatDay(),
                    hangsOn == EventKind.TEST_GIVEN ? eventDay : null);
            if (holds.isYes()) {
                return of(each.due());
            }
            if (holds.isUnknown()) {
                return DueDate.missing(holds.reason(), holds.questions().get(0));
            }
        }
        return DueDate.undated(null);
    }

    private DueDate remarked(Due.Remarked remarked) {
        DueDate found = of(remarked.due());
        if (remarked.note() != null) {
            found = found.withNote(remarked.note());
        }
        if (remarked.advisory() != null) {
            DueDate advice = of(remarked.advisory());
            if (advice.date() != null) {
                found = found.withNote(Say.it("due.advisory", advice.date()));
            }
        }
        if (remarked.practice() != null) {
            DueDate practice = of(remarked.practice());
            if (practice.date() != null) {
                found = found.withNote(Say.it("due.practice", practice.date()));
            }
        }
        if (remarked.opens() != null) {
            found = found.opening(of(remarked.opens()).date());
        }
        return found;
    }
}
