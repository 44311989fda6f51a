package org.hearthrule.rules;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.hearthrule.law.Due;
import org.hearthrule.law.Evidence;
import org.hearthrule.law.Requirement;
import org.hearthrule.law.RequirementKind;
import org.hearthrule.records.AnsweredDoubt;
import org.hearthrule.terms.Grades;

/**
 * What a requirement's rule says of one occasion, before time is looked at. Rules in {@code rules/} make a
 * {@link Verdict} of it.
 *
 * @param requirement the duty
 * @param situation   child, pathway and year
 * @param occasion    the time it comes up
 * @param outcome     what the records show
 * @param due         the day, or null
 * @param shown       details; null when it cannot even be told whether the duty applies
 */
public record Claim(Requirement requirement, Situation situation, Occasion occasion, Outcome outcome, LocalDate due,
                    Shown shown) {

    /** So many days after any day a business day has come. */
    private static final int LONGEST_HOLIDAY = 7;

    public enum Outcome { SHOWN, NOT_SHOWN, CANNOT_TELL, IN_WORDS }

    /** Works out the claim for an occasion that applies or may apply. */
    static Claim of(Requirement requirement, Situation situation, Occasion occasion, List<RecordFact> facts) {
        LocalDate due = day(requirement, situation, occasion);
        if (occasion.applies().isUnknown()) {
            return new Claim(requirement, situation, occasion, Outcome.CANNOT_TELL, due, null);
        }
        Shown shown = doubted(requirement, situation, EvidenceCheck.of(requirement, situation, occasion, facts), due);
        Outcome outcome = outcome(requirement, situation, occasion, shown);
        boolean openInLaw = outcome == Outcome.CANNOT_TELL && shown.value() == Truth.Value.UNKNOWN
                && shown.questions().isEmpty() && !occasion.due().isMissing();
        Shown answer = requirement.question() == null ? null : answer(requirement, situation);
        if (openInLaw && answer != null) {
            return new Claim(requirement, situation, occasion, Outcome.SHOWN, due, answer);
        }
        Claim claim = new Claim(requirement, situation, occasion, outcome, due, shown);
        boolean doubtful = requirement.question() != null && answer == null && outcome == Outcome.NOT_SHOWN
                && claim.missedOn(situation.today());
        // a day that the law may not mean has not been missed before somebody has said so
        return doubtful ? new Claim(requirement, situation, occasion, Outcome.CANNOT_TELL, due, shown) : claim;
    }

    /** What was answered to a requirement's open question, or null; the answer names the requirement's id. */
    private static Shown answer(Requirement requirement, Situation situation) {
        for (AnsweredDoubt answer : situation.book().answers()) {
            if (answer.doubt().equals(requirement.id())) {
                return Shown.yes(answer.date(), Map.of(), List.of(),
                        Say.it("doubt.answered", answer.from(), answer.date(), answer.answer()));
            }
        }
        return null;
    }

    /** What has no day and was not done while the rule certainly stood may not be asked any more: that is unclear. */
    private static Shown doubted(Requirement requirement, Situation situation, Shown shown, LocalDate due) {
        if (due != null || shown.isYes() || !requirement.validity().unclearOn(situation.today())) {
            return shown;
        }
        return Shown.unknown(shown.counted(), shown.records(), null,
                Say.it("validity.unclear", requirement.validity().unclearFrom()),
                Say.it("validity.ask", requirement.confirmWith())).along(shown.courses());
    }

    private static Outcome outcome(Requirement requirement, Situation situation, Occasion occasion, Shown shown) {
        if (requirement.shows() instanceof Evidence.Words) {
            return requirement.question() == null ? Outcome.IN_WORDS : Outcome.CANNOT_TELL;
        }
        if (shown.isYes()) {
            return Outcome.SHOWN;
        }
        boolean toCome = occasion.due().date() != null && !occasion.due().date().isBefore(situation.today());
        boolean longAgo = !toCome && !theirs(requirement) && requirement.recurs().each() == Requirement.Recurs.Each.ONCE
                && situation.yearOfProgram() > 1
                && !situation.book().years().containsKey(
                ProgramYear.holding(situation.pathway().year(), situation.programStart()).fileLabel());
        if (occasion.due().isMissing() || longAgo) {
            return Outcome.CANNOT_TELL;
        }
        return shown.value() == Truth.Value.UNKNOWN ? Outcome.CANNOT_TELL : Outcome.NOT_SHOWN;
    }

    /** A subject owed, or an amount added up, over several years is due in the last of them, not in each. */
    private static LocalDate day(Requirement requirement, Situation situation, Occasion occasion) {
        if (requirement.shows() instanceof Evidence.Subjects subjects
                && subjects.interval() != Evidence.Subjects.Interval.EACH_YEAR) {
            boolean lastYear = subjects.interval() != Evidence.Subjects.Interval.AS_FITS && subjects.span() != null
                    && situation.grade().filter(grade -> grade.equals(subjects.span().numbers().last())).isPresent();
            return lastYear ? occasion.due().date() : null;
        }
        Optional<Grades> over = over(requirement.shows());
        boolean yearsToCome = over.isPresent()
                && situation.grade().filter(grade -> grade >= over.get().numbers().last()).isEmpty();
        return yearsToCome ? null : occasion.due().date();
    }

    /** The grades over which time is added up, when it is. */
    private static Optional<Grades> over(Evidence evidence) {
        return Evidence.leaves(evidence, Evidence.Time.class).stream().map(Evidence.Time::over).filter(Objects::nonNull)
                .findFirst();
    }

    /** Each claim is one of its own; the engine compares them, and by what they hold that would take long. */
    @Override
    public boolean equals(Object other) {
        return this == other;
    }

    @Override
    public int hashCode() {
        return System.identityHashCode(this);
    }

    public boolean kindIs(String slug) {
        return requirement.kind().slug().equals(slug);
    }

    public String getGroup() {
        return requirement.group();
    }

    /**
     * @return true when the due day has passed, and when that is no business day the next one too. Laws differ on whether
     *     such a day moves, and most were not read on it; the day is printed unmoved, and nobody is called late for the
     *     weekend
     */
    public boolean missedOn(LocalDate today) {
        return due != null && due.isBefore(today)
                && (ChronoUnit.DAYS.between(due, today) > LONGEST_HOLIDAY || graceDay().isBefore(today));
    }

    /** @return the due day, or the next business day when it is none */
    LocalDate graceDay() {
        return WorkDays.of(situation.profile().code()).onOrAfter(due);
    }

    /** @return true when somebody else owes it: it is shown, never laid to the family */
    public boolean isTheirs() {
        return theirs(requirement);
    }

    static boolean theirs(Requirement requirement) {
        return requirement.kind() == RequirementKind.THEIRS || switch (requirement.by()) {
            case "authority", "association", "evaluator" -> true;
            case "school" -> requirement.owedFor() != Requirement.OwedFor.SCHOOL;
            default -> false;
        };
    }

    /** @return true when the family may do it and nobody asks it */
    public boolean isVoluntary() {
        return requirement.binding() == org.hearthrule.terms.Binding.VOLUNTARY;
    }

    /**
     * @return true when the day is one that a statute, regulation or decision sets: only such a day can be missed. Where
     *     a list of subjects or a record has no day of its own, the year's end is only the usual one; so it is where no
     *     law says when the year ends and the family has not noted its own last day
     */
    public boolean isLaw() {
        return requirement.binding().law() && !isUsualDay();
    }

    /** @return true when the day is no more than the usual end of the year */
    boolean isUsualDay() {
        return requirement.due() instanceof Due.YearEnd && (requirement.kind() == RequirementKind.SUBJECTS
                || requirement.kind() == RequirementKind.RECORD || !situation.yearEndIsKnown());
    }

    /** @return true when the pathway asks for something else of its own first that the records do not show */
    public boolean comesAfter(Claim other) {
        return situation == other.situation && requirement.needs().contains(other.requirement.localId());
    }
}
