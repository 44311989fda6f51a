package org.hearthrule.rules;

import java.time.LocalDate;
import java.util.List;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Requirement;

/** Which duties are worth a line in a situation. What is not told is not worked out either. */
final class Telling {

    /** Next year's papers are told so long before their day. */
    private static final int MONTHS_AHEAD = 6;
    /** All of last year's duties are told for a quarter of a year. */
    private static final int DAYS_BACK = 92;

    private Telling() {
    }

    /**
     * A one-time duty is told once, in the first year looked at. Of last year only papers, tests and the like are still
     * told once a quarter of a year has passed, and whatever falls due after its end; of next year only what already
     * has its day.
     */
    static boolean worth(Requirement requirement, Situation situation) {
        if (requirement.recurs().each() == Requirement.Recurs.Each.ONCE) {
            return situation.tellsOnce();
        }
        LocalDate today = situation.today();
        if (situation.year().end().isBefore(today)) {
            return worthLater(requirement, situation);
        }
        return situation.year().holds(today) || comesNext(requirement) && situation.occasions(requirement).stream()
                .anyMatch(occasion -> occasion.due().date() != null && !occasion.applies().isNo()
                        && !occasion.due().date().isAfter(today.plusMonths(MONTHS_AHEAD)));
    }

    private static boolean worthLater(Requirement requirement, Situation situation) {
        LocalDate end = situation.year().end();
        boolean dueLater = situation.occasions(requirement).stream()
                .anyMatch(occasion -> occasion.due().date() != null && occasion.due().date().isAfter(end));
        // when nothing of that year was ever entered, only what falls due after its end is worth a line
        if (dueLater || situation.records().isEmpty()) {
            return dueLater;
        }
        boolean recent = !situation.today().isAfter(end.plusDays(DAYS_BACK));
        return switch (requirement.kind()) {
            case FILE, APPROVAL, ASSESS, HEALTH, STEP -> true;
            // what is so all the time is told for the year that runs
            case QUALIFY, STANDING, STANDARD, THEIRS -> false;
            default -> recent;
        };
    }

    private static boolean comesNext(Requirement requirement) {
        return switch (requirement.kind()) {
            case FILE, APPROVAL, HEALTH, STEP -> true;
            default -> false;
        };
    }

    /** @return the requirement and those whose line may hang on it: its alternatives, and what comes after it */
    static List<Requirement> tellingOf(Requirement requirement, Pathway pathway) {
        return pathway.asks().stream().filter(other -> other == requirement || other.needs().contains(requirement.localId())
                || requirement.group() != null && requirement.group().equals(other.group())).toList();
    }
}
