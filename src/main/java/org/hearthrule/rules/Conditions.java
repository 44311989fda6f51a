package org.hearthrule.rules;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hearthrule.law.Condition;
import org.hearthrule.records.Student;
import org.hearthrule.records.YearRecords;
import org.hearthrule.terms.EventKind;
import org.hearthrule.terms.Grades;

/** Whether a condition of a profile holds in a situation. Answers yes, no, or what is missing. */
final class Conditions {

    private final Situation situation;
    private final LocalDate thatDay;
    private final LocalDate testDay;

    private Conditions(Situation situation, LocalDate thatDay, LocalDate testDay) {
        this.situation = situation;
        this.thatDay = thatDay;
        this.testDay = testDay;
    }

    /** @param thatDay the day the duty is about */
    static Truth holds(Condition condition, Situation situation, LocalDate thatDay) {
        return holds(condition, situation, thatDay, null);
    }

    /**
     * @param thatDay the day the duty is about
     * @param testDay day of the test that brought the duty up, or null
     */
    static Truth holds(Condition condition, Situation situation, LocalDate thatDay, LocalDate testDay) {
        return new Conditions(situation, thatDay, testDay).holds(condition);
    }

    private Truth holds(Condition condition) {
        if (condition instanceof Condition.All all) {
            return Truth.all(all.parts().stream().map(this::holds).toList());
        }
        if (condition instanceof Condition.Any any) {
            return Truth.any(any.parts().stream().map(this::holds).toList());
        }
        if (condition instanceof Condition.Not not) {
            return holds(not.part()).negated();
        }
        if (condition instanceof Condition.Age age) {
            return age(age);
        }
        if (condition instanceof Condition.Grade grade) {
            return grade(grade.grades());
        }
        if (condition instanceof Condition.YearOfProgram year) {
            return yearOfProgram(year);
        }
        if (condition instanceof Condition.Event event) {
            return event(event);
        }
        if (condition instanceof Condition.CameFrom from) {
            return cameFrom(from);
        }
        if (condition instanceof Condition.Choice choice) {
            return choice(choice);
        }
        if (condition instanceof Condition.History history) {
            return History.was(history, situation);
        }
        if (condition instanceof Condition.Result result) {
            return Results.holds(result, situation, testDay);
        }
        if (condition instanceof Condition.Outcome outcome) {
            return Outcomes.holds(outcome, situation);
        }
        if (condition instanceof Condition.Attribute attribute) {
            Truth fact = situation.fact(attribute.fact());
            return attribute.is() ? fact : fact.negated();
        }
        if (condition instanceof Condition.Place place) {
            return place(place);
        }
        if (condition instanceof Condition.Asked asked) {
            return asked(asked.by());
        }
        Condition.OptIn optIn = (Condition.OptIn) condition;
        boolean takesPart = situation.placement().optIns().contains(optIn.program());
        return takesPart ? Truth.yes(Say.it("opt-in.yes", optIn.program())) : Truth.no(Say.it("opt-in.no", optIn.program()));
    }

    private Truth age(Condition.Age rule) {
        LocalDate born = situation.student().born();
        String name = situation.student().name();
        if (born == null) {
            return Truth.unknown(Say.it("age.no-birth-date", name), Say.it("age.ask-birth-date", name));
        }
        LocalDate day = switch (rule.on().anchor()) {
            case THAT_DAY -> thatDay;
            case YEAR_START -> situation.year().start();
            case YEAR_END -> situation.year().end();
            case ON -> situation.year().day(rule.on().date());
            case BEFORE -> situation.year().day(rule.on().date()).minusDays(1);
        };
        int age = Ages.on(born, day);
        String reason = Say.it("age.is", name, age, day);
        boolean holds = (rule.atLeast() == null || age >= rule.atLeast()) && (rule.below() == null || age < rule.below());
        return holds ? Truth.yes(reason) : Truth.no(reason);
    }

    private Truth grade(Grades grades) {
        String name = situation.student().name();
        Optional<Integer> grade = situation.grade();
        if (grade.isEmpty()) {
            return Truth.unknown(Say.it("grade.unknown", name, situation.year().label(), grades.words()),
                    Say.it("grade.ask", name, situation.year().label()));
        }
        String reason = Say.it("grade.is", name, Grades.name(grade.get()), grades.words());
        return grades.holds(grade.get()) ? Truth.yes(reason) : Truth.no(reason);
    }

    private Truth yearOfProgram(Condition.YearOfProgram rule) {
        int year = situation.yearOfProgram();
        boolean holds = year >= rule.atLeast() && (rule.atMost() == null || year <= rule.atMost())
                && (year - rule.atLeast()) % rule.every() == 0;
        String reason = Say.it("program-year.is", year);
        return holds ? Truth.yes(reason) : Truth.no(reason);
    }

    private Truth event(Condition.Event rule) {
        List<LocalDate> days = rule.thisYear() ? situation.happenings().daysInYear(rule.kind())
                : situation.happenings().days(rule.kind());
        if (rule.ago() != null) {
            days = days.stream().filter(day -> !day.isAfter(thatDay)).toList();
        }
        if (days.isEmpty() && rule.kind() == EventKind.LEFT_SCHOOL && situation.happenings().leftSchoolOnAnUnknownDay()) {
            return Truth.unknown(Say.it("event.missing", rule.kind().words()),
                    Say.it("event.ask", rule.kind().words(), rule.kind().slug()));
        }
        if (days.isEmpty()) {
            return Truth.no(Say.it("event.none", rule.kind().words()));
        }
        LocalDate day = days.get(days.size() - 1);
        String reason = Say.it("event.is", rule.kind().words(), day);
        if (rule.within() != null && day.isBefore(Spans.minus(thatDay, rule.within()))
                || rule.ago() != null && Spans.plus(day, rule.ago()).isAfter(thatDay)) {
            return Truth.no(reason);
        }
        if (rule.order() == null) {
            return Truth.yes(reason);
        }
        Optional<LocalDate> bound = rule.date() != null ? Optional.of(situation.year().day(rule.date()))
                : situation.happenings().day(rule.other());
        if (bound.isEmpty()) {
            return Truth.unknown(Say.it("event.missing", rule.other().words()),
                    Say.it("event.ask", rule.other().words(), rule.other().slug()));
        }
        int order = day.compareTo(bound.get());
        boolean holds = switch (rule.order()) {
            case BEFORE -> order < 0;
            case ON_OR_BEFORE -> order <= 0;
            case AFTER -> order > 0;
            case ON_OR_AFTER -> order >= 0;
        };
        return holds ? Truth.yes(reason) : Truth.no(reason);
    }

    private Truth cameFrom(Condition.CameFrom rule) {
        List<Student.FormerSchool> schools = situation.student().schools();
        String name = situation.student().name();
        if (schools == null) {
            return Truth.unknown(Say.it("school.unknown", name), Say.it("school.ask", name));
        }
        String here = situation.profile().slug();
        boolean stateMissing = false;
        for (Student.FormerSchool school : schools) {
            if (!rule.kinds().contains(school.kind())) {
                continue;
            }
            LocalDate earliest = rule.within() == null ? null : Spans.minus(situation.programStart(), rule.within());
            if (earliest != null && school.to() != null && school.to().isBefore(earliest)) {
                continue;
            }
            if (rule.inState() != null && school.state() == null) {
                stateMissing = true;
            } else if (rule.inState() == null || rule.inState() == school.state().equalsIgnoreCase(here)) {
                return Truth.yes(Say.it("school.was", name, school.kind().replace('-', ' ')));
            }
        }
        return stateMissing ? Truth.unknown(Say.it("school.unknown", name), Say.it("school.ask", name))
                : Truth.no(Say.it("school.was-not", name));
    }

    private Truth choice(Condition.Choice rule) {
        Optional<YearRecords.ChoiceMade> made = situation.choice(rule.name());
        if (made.isEmpty() || made.get().value() == null) {
            var offered = situation.pathway().choices().get(rule.name());
            String question = offered == null ? rule.name() : offered.question();
            return Truth.unknown(Say.it("choice.open", question), question);
        }
        String reason = Say.it("choice.made", made.get().value());
        return rule.values().contains(made.get().value()) ? Truth.yes(reason) : Truth.no(reason);
    }

    private Truth place(Condition.Place rule) {
        List<String> home = new ArrayList<>();
        var placement = situation.placement();
        for (String name : new String[] {placement.district(), placement.city(), placement.county()}) {
            if (name != null) {
                home.add(name.toLowerCase(Locale.ROOT));
            }
        }
        String names = String.join(", ", rule.names());
        if (home.isEmpty()) {
            return Truth.unknown(Say.it("place.unknown", names), Say.it("place.ask"));
        }
        boolean there = rule.names().stream().anyMatch(name -> home.contains(name.toLowerCase(Locale.ROOT)));
        return there ? Truth.yes(Say.it("place.there", names)) : Truth.no(Say.it("place.elsewhere", names));
    }

    private Truth asked(String by) {
        return situation.happenings().requestedInYear(by) ? Truth.yes(Say.it("asked.yes", by)) : Truth.no(Say.it("asked.no", by));
    }
}
