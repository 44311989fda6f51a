package org.hearthrule.rules;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hearthrule.law.AttendanceAge;
import org.hearthrule.law.AttendanceAge.Ends;
import org.hearthrule.law.AttendanceAge.MidYear;
import org.hearthrule.law.AttendanceAge.Starts;
import org.hearthrule.terms.EventKind;

/** From when to when the law binds a child. */
final class CompulsoryAge {

    /** No day: the duty does not end by this rule. */
    private static final LocalDate NEVER = LocalDate.of(9999, 12, 31);

    /**
     * A first day, and an earlier one from which it may bind.
     *
     * @param certain first day on which the law certainly binds
     * @param perhaps first day on which it may bind, or null
     */
    private record Start(LocalDate certain, LocalDate perhaps) {

        static Start between(LocalDate first, LocalDate certain) {
            return new Start(certain, first.isBefore(certain) ? first : null);
        }

        /** @return the first day on which it binds, perhaps or certainly */
        LocalDate first() {
            return perhaps == null ? certain : perhaps;
        }
    }

    private final Situation situation;
    private final LocalDate born;

    private CompulsoryAge(Situation situation) {
        this.situation = situation;
        this.born = situation.student().born();
    }

    /**
     * The entries that may be the one in force for the child: several when it hangs on what the book does not say.
     *
     * @param open what the book leaves open, or null when nothing is
     * @param sure whether one of them certainly holds; else there may be no rule for the child at all
     */
    private record InForce(List<AttendanceAge> ages, Truth open, boolean sure) { }

    /** @return the first day on which the law certainly binds the child; empty when that cannot be worked out */
    static Optional<LocalDate> begins(Situation situation) {
        if (situation.student().born() == null) {
            return Optional.empty();
        }
        CompulsoryAge child = new CompulsoryAge(situation);
        return inForce(situation).ages().stream().map(age -> child.start(age.starts()).certain()).max(LocalDate::compareTo);
    }

    /** @return whether the child is bound at some time of the situation's year, on the pathway */
    static Truth binds(Situation situation) {
        InForce inForce = inForce(situation);
        String name = situation.student().name();
        if (inForce.ages().isEmpty()) {
            return Truth.unknown(Say.it("age.no-rule", situation.profile().name()), Say.it("age.ask-rule"));
        }
        if (situation.student().born() == null) {
            return Truth.unknown(Say.it("age.no-birth-date", name), Say.it("age.ask-birth-date", name));
        }
        CompulsoryAge child = new CompulsoryAge(situation);
        List<Truth> readings = inForce.ages().stream().map(child::boundBy).toList();
        boolean agree = readings.stream().allMatch(reading -> reading.value() == readings.get(0).value());
        // where no rule may hold at all, only that the child is free is certain
        return agree && (inForce.sure() || readings.get(0).isNo()) ? readings.get(0) : inForce.open();
    }

    private Truth boundBy(AttendanceAge age) {
        String name = situation.student().name();
        LocalDate free = end(age.ends());
        if (!free.isAfter(situation.firstDay())) {
            return Truth.no(Say.it("age.past", name, free));
        }
        Start start = start(age.starts());
        if (!start.certain().isAfter(situation.lastDay())) {
            return Truth.yes(Say.it("age.bound", name, start.certain()));
        }
        if (age.early() != null && Conditions.holds(age.early(), situation, situation.thatDay()).isYes()) {
            return Truth.yes(Say.it("age.early", name));
        }
        if (start.perhaps() != null && !start.perhaps().isAfter(situation.lastDay())) {
            String note = age.note() == null ? "" : " " + age.note();
            return Truth.unknown(Say.it("age.perhaps", name, start.perhaps(), start.certain()) + note,
                    Say.it("age.ask-start", name, situation.profile().confirmWith()));
        }
        return Truth.no(Say.it("age.not-yet", name, start.certain()));
    }

    /** @return no when the child is free by that day; a child whose age cannot be told is not said to be free */
    static Truth notPast(Situation situation, LocalDate day) {
        List<AttendanceAge> ages = inForce(situation).ages();
        if (ages.isEmpty() || situation.student().born() == null) {
            return Truth.yes("");
        }
        CompulsoryAge child = new CompulsoryAge(situation);
        LocalDate free = ages.stream().map(age -> child.end(age.ends())).max(LocalDate::compareTo).orElseThrow();
        return day.isBefore(free) ? Truth.yes("") : Truth.no(Say.it("age.past", situation.student().name(), free));
    }

    /** The first entry that holds is the one. */
    private static InForce inForce(Situation situation) {
        List<AttendanceAge> perhaps = new ArrayList<>();
        Truth open = null;
        boolean sure = false;
        for (AttendanceAge age : situation.profile().attendanceOn(situation.pathway())) {
            if (!age.validity().inForceOn(situation.lastDay())) {
                continue;
            }
            Truth holds = Conditions.holds(age.when(), situation, situation.thatDay());
            if (!holds.isNo()) {
                perhaps.add(age);
            }
            if (holds.isYes()) {
                sure = true;
                break;
            }
            open = open == null && holds.isUnknown() ? holds : open;
        }
        return new InForce(perhaps, open, sure);
    }

    private Start start(Starts rule) {
        if (rule instanceof Starts.Birthday birthday) {
            return midYear(Ages.reached(born, birthday.age()), birthday.midYear());
        }
        if (rule instanceof Starts.ByDate byDate) {
            return byDate(byDate);
        }
        if (rule instanceof Starts.CalendarYear calendar) {
            LocalDate reached = Ages.reached(born, calendar.age());
            return new Start(calendar.from().atYear(reached.getYear()), null);
        }
        if (rule instanceof Starts.BySchoolFirstDay first) {
            return bySchoolFirstDay(Ages.reached(born, first.age()), first.inclusive());
        }
        if (rule instanceof Starts.EarlierOf earlier) {
            return earlier.parts().stream().map(this::start).reduce((one, other) ->
                    Start.between(earlier(one.first(), other.first()), earlier(one.certain(), other.certain()))).orElseThrow();
        }
        return ((Starts.LaterOf) rule).parts().stream().map(this::start).reduce((one, other) ->
                Start.between(later(one.first(), other.first()), later(one.certain(), other.certain()))).orElseThrow();
    }

    private static LocalDate earlier(LocalDate one, LocalDate other) {
        return one.isBefore(other) ? one : other;
    }

    private static LocalDate later(LocalDate one, LocalDate other) {
        return one.isBefore(other) ? other : one;
    }

    private Start byDate(Starts.ByDate rule) {
        LocalDate reached = Ages.reached(born, rule.age());
        ProgramYear year = yearOf(reached);
        LocalDate date = year.day(rule.date());
        boolean inTime = rule.inclusive() ? !reached.isAfter(date) : reached.isBefore(date);
        if (inTime) {
            LocalDate from = rule.bindsFrom() == null ? year.start() : year.day(rule.bindsFrom());
            return new Start(from, null);
        }
        if (rule.midYear() == MidYear.NEXT_YEAR) {
            ProgramYear next = year.plus(1);
            return new Start(rule.bindsFrom() == null ? next.start() : next.day(rule.bindsFrom()), null);
        }
        return midYear(reached, rule.midYear());
    }

    private Start bySchoolFirstDay(LocalDate reached, boolean inclusive) {
        ProgramYear year = yearOf(reached);
        LocalDate first = situation.year().equals(year) ? situation.calendar().schoolFirstDay() : null;
        if (first != null) {
            boolean inTime = inclusive ? !reached.isAfter(first) : reached.isBefore(first);
            return new Start(inTime ? first : year.plus(1).start(), null);
        }
        // without the district's day only birthdays outside of the season in which schools open are certain
        LocalDate earliest = java.time.MonthDay.of(8, 1).atYear(year.start().getYear());
        LocalDate latest = java.time.MonthDay.of(9, 15).atYear(year.start().getYear());
        if (reached.isBefore(earliest)) {
            return new Start(year.start(), null);
        }
        return reached.isAfter(latest) ? new Start(year.plus(1).start(), null) : new Start(year.plus(1).start(), reached);
    }

    private Start midYear(LocalDate reached, MidYear rule) {
        return switch (rule) {
            case OWED -> new Start(reached, null);
            case NEXT_YEAR -> new Start(yearOf(reached).start().equals(reached) ? reached : yearOf(reached).plus(1).start(), null);
            case UNCLEAR -> new Start(yearOf(reached).plus(1).start(), reached);
        };
    }

    private LocalDate end(Ends rule) {
        if (rule instanceof Ends.Birthday birthday) {
            return Ages.reached(born, birthday.age());
        }
        if (rule instanceof Ends.YearEnd yearEnd) {
            return yearOf(Ages.reached(born, yearEnd.age())).end().plusDays(1);
        }
        if (rule instanceof Ends.ByDate byDate) {
            LocalDate reached = Ages.reached(born, byDate.age());
            ProgramYear year = yearOf(reached);
            return reached.isAfter(year.day(byDate.date())) ? year.plus(1).start() : year.start();
        }
        if (rule instanceof Ends.OnEvent event) {
            return situation.happenings().day(event.event()).orElse(NEVER);
        }
        if (rule instanceof Ends.GradeCompleted grade) {
            Optional<LocalDate> noted = situation.happenings().day(EventKind.GRADE_COMPLETED);
            boolean beyond = situation.grade().filter(now -> now > grade.grade()).isPresent();
            return beyond ? situation.year().start() : noted.orElse(NEVER);
        }
        if (rule instanceof Ends.EarlierOf earlier) {
            return earlier.parts().stream().map(this::end).min(LocalDate::compareTo).orElseThrow();
        }
        return ((Ends.LaterOf) rule).parts().stream().map(this::end).max(LocalDate::compareTo).orElseThrow();
    }

    private ProgramYear yearOf(LocalDate day) {
        return ProgramYear.holding(situation.pathway().year(), day);
    }
}
