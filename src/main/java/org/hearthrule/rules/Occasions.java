package org.hearthrule.rules;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.hearthrule.law.Due;
import org.hearthrule.law.Requirement;
import org.hearthrule.records.YearRecords;
import org.hearthrule.terms.EventKind;

/** The times a requirement comes up in a situation. */
final class Occasions {

    private static final int LONGEST_SUMMER = 4;

    private final Requirement requirement;
    private final Situation situation;

    private Occasions(Requirement requirement, Situation situation) {
        this.requirement = requirement;
        this.situation = situation;
    }

    /** @return at least one occasion: one that does not apply says why */
    static List<Occasion> of(Requirement requirement, Situation situation) {
        return new Occasions(requirement, situation).all();
    }

    private List<Occasion> all() {
        List<Occasion> found = new ArrayList<>();
        switch (requirement.recurs().each()) {
            case YEAR -> {
                int times = times(requirement.due(), situation);
                for (int part = 1; part <= times; part++) {
                    String key = times == 1 ? situation.year().label() : situation.year().label() + "." + part;
                    found.add(occasion(key, part, null, null));
                }
            }
            case ONCE -> found.add(occasion("once", 1, null, null));
            case EVENT -> {
                for (EventKind kind : requirement.recurs().events()) {
                    for (LocalDate day : situation.happenings().days(kind)) {
                        if (during(day) && toldHere(kind, day)) {
                            found.add(occasion(day.toString(), 1, kind, day));
                        }
                    }
                }
                if (found.isEmpty()) {
                    String kinds = String.join(", ", requirement.recurs().events().stream().map(EventKind::words).toList());
                    found.add(new Occasion(situation.year().label(), 1, null, null, DueDate.undated(Say.it("event.only-then", kinds)),
                            Truth.no(Say.it("event.only-then", kinds))));
                }
            }
        }
        return found;
    }

    /** The day a child left a school lies before the program; other events belong to the stay on the pathway. */
    private boolean during(LocalDate day) {
        return situation.placement().to() == null || !day.isAfter(situation.placement().to());
    }

    /**
     * An event is told in its own school year. One of a year that is no longer looked at is told in the year in which
     * its day comes, so that a day a year after the event is not lost sight of.
     */
    private boolean toldHere(EventKind kind, LocalDate day) {
        if (situation.year().holds(day)) {
            return true;
        }
        if (kind == EventKind.LEFT_SCHOOL && inTheSummerBefore(day)) {
            LocalDate due = DueDates.of(requirement.due(), situation, kind, day, 1).date();
            return due == null || !due.isBefore(situation.firstDay());
        }
        ProgramYear firstTold = ProgramYear.holding(situation.pathway().year(), situation.today()).plus(-1);
        if (!day.isBefore(firstTold.start())) {
            return false;
        }
        LocalDate due = DueDates.of(requirement.due(), situation, kind, day, 1).date();
        return due != null && situation.year().holds(due);
    }

    /**
     * A child who leaves a school in June and is taught at home from August left it in a year of which nothing else is
     * told. What is still to be done about it is told with the start.
     */
    private boolean inTheSummerBefore(LocalDate day) {
        LocalDate from = situation.placement().from();
        return situation.year().holds(from) && day.isBefore(situation.year().start())
                && !day.isBefore(from.minusMonths(LONGEST_SUMMER));
    }

    private Occasion occasion(String key, int part, EventKind kind, LocalDate eventDay) {
        DueDate due = DueDates.of(requirement.due(), situation, kind, eventDay, part);
        return new Occasion(key, part, kind, eventDay, due, applies(due, kind, eventDay));
    }

    private Truth applies(DueDate due, EventKind kind, LocalDate eventDay) {
        LocalDate about = aboutDay(due, eventDay);
        if (requirement.validity().announced()) {
            return Truth.no(requirement.validity().from() == null ? Say.it("validity.announced")
                    : Say.it("validity.announced-from", requirement.validity().from()));
        }
        if (!requirement.validity().inForceOn(about)) {
            LocalDate from = requirement.validity().from();
            return Truth.no(from != null && about.isBefore(from) ? Say.it("validity.not-yet", from)
                    : Say.it("validity.ended", requirement.validity().until()));
        }
        if (requirement.waivedIn().contains(situation.year().label())) {
            return Truth.no(Say.it("validity.waived", situation.year().label()));
        }
        if (requirement.recurs().each() == Requirement.Recurs.Each.YEAR && situation.endsEarly()
                && (due.date() == null ? situation.today().isAfter(situation.lastDay()) : due.date().isAfter(situation.lastDay()))) {
            return Truth.no(Say.it("placement.ended", situation.student().name(), situation.lastDay()));
        }
        List<Truth> parts = new ArrayList<>();
        boolean running = requirement.due() instanceof Due.YearEnd;
        // a count that runs through the year binds as long as its conditions hold on the day it is looked at
        parts.add(Conditions.holds(requirement.when(), situation, running && eventDay == null ? situation.thatDay() : about,
                kind == EventKind.TEST_GIVEN ? eventDay : null));
        if (requirement.ages() == Requirement.Ages.COMPULSORY) {
            parts.add(situation.bound());
            parts.add(CompulsoryAge.notPast(situation, running || due.date() == null ? situation.thatDay() : about));
        }
        if (requirement.validity().unclearOn(about)) {
            parts.add(Truth.unknown(Say.it("validity.unclear", requirement.validity().unclearFrom()),
                    Say.it("validity.ask", requirement.confirmWith())));
        }
        return Truth.all(parts);
    }

    /** A rule must be in force on the day the duty is about: its event, its date in the year, else the year's end. */
    private LocalDate aboutDay(DueDate due, LocalDate eventDay) {
        if (eventDay != null) {
            return eventDay;
        }
        if (due.date() == null) {
            return requirement.due() instanceof Due.YearEnd ? situation.lastDay() : situation.thatDay();
        }
        LocalDate last = situation.year().end();
        return due.date().isAfter(last) ? last : due.date();
    }

    /** @return how many dates a due form has in a year */
    static int times(Due due, Situation situation) {
        if (due instanceof Due.By by) {
            return by.dates().size();
        }
        if (due instanceof Due.Chosen chosen) {
            int known = situation.choice(chosen.what()).map(YearRecords.ChoiceMade::dates).map(List::size).orElse(0);
            return known == 0 ? 1 : Math.min(known, chosen.times());
        }
        if (due instanceof Due.Remarked remarked) {
            return times(remarked.due(), situation);
        }
        if (due instanceof Due.Cases cases) {
            for (Due.Case each : cases.cases()) {
                if (Conditions.holds(each.when(), situation, situation.thatDay()).isYes()) {
                    return times(each.due(), situation);
                }
            }
        }
        return 1;
    }
}
