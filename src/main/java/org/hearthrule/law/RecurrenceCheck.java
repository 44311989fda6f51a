package org.hearthrule.law;

import java.util.List;
import java.util.Set;
import org.hearthrule.input.Place;
import org.hearthrule.terms.EventKind;

/** Warns of a paper asked anew each year whose day comes only once: from the second year on it would be late. */
final class RecurrenceCheck {

    private static final Set<EventKind> ONCE = Set.of(EventKind.PROGRAM_START, EventKind.DUTY_BEGINS, EventKind.FIRST_LESSON);

    private RecurrenceCheck() { }

    static void check(Requirement asked, Place place, Scope scope) {
        boolean paper = asked.kind() == RequirementKind.FILE || asked.kind() == RequirementKind.APPROVAL;
        // what is wrong with the file comes first: a warning may be no more than its echo
        if (!scope.problems().hasErrors() && paper && asked.recurs().each() == Requirement.Recurs.Each.YEAR && comesOnce(asked.due())
                && !turnsOnTheYear(asked.when())) {
            scope.warning(place, ProfileFault.DAY_COMES_ONCE, "a paper of each year that is due on a day which comes once",
                    "`recurs: once`, or a case for later years", null);
        }
    }

    private static boolean comesOnce(Due due) {
        if (due instanceof Due.Remarked remarked) {
            return comesOnce(remarked.due());
        }
        if (due instanceof Due.After after) {
            return after.event() != null && ONCE.contains(after.event());
        }
        if (due instanceof Due.Before before) {
            return ONCE.contains(before.event());
        }
        if (due instanceof Due.At at) {
            return ONCE.contains(at.event());
        }
        if (due instanceof Due.Cases cases && !cases.cases().isEmpty()) {
            Due.Case last = cases.cases().get(cases.cases().size() - 1);
            return comesOnce(last.due()) && !turnsOnTheYear(last.when());
        }
        return false;
    }

    private static boolean turnsOnTheYear(Condition condition) {
        if (condition instanceof Condition.All all) {
            return any(all.parts());
        }
        if (condition instanceof Condition.Any any) {
            return any(any.parts());
        }
        if (condition instanceof Condition.Not not) {
            return turnsOnTheYear(not.part());
        }
        return condition instanceof Condition.YearOfProgram || condition instanceof Condition.Event;
    }

    private static boolean any(List<Condition> parts) {
        return parts.stream().anyMatch(RecurrenceCheck::turnsOnTheYear);
    }
}
