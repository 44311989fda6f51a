package org.hearthrule.checklist;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hearthrule.law.Condition;
import org.hearthrule.law.Due;
import org.hearthrule.law.Evidence;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Requirement;
import org.hearthrule.law.RequirementKind;
import org.hearthrule.terms.Prose;
import org.hearthrule.terms.Wording;

/** Says in one or two sentences what a duty is for most families; that there is more to it is said, not what. */
final class DutyInShort {

    private static final int LONG_CONDITION = 60;
    private static final int LONG_DUE = 100;

    private final Wording wording;
    private final Pathway pathway;
    private final Duty duty;
    private final DueWords dues;
    private final ConditionWords conditions;

    DutyInShort(Wording wording, Profile profile, Pathway pathway) {
        this.wording = wording;
        this.pathway = pathway;
        this.duty = new Duty(wording, profile);
        this.dues = new DueWords(wording, profile, pathway);
        this.conditions = new ConditionWords(wording, profile, pathway);
    }

    /**
     * Steps after a finding, duties of the other side and most rules in words concern few, or ask nothing to be done. A
     * rule in words that holds for everybody and leaves a question open may be the whole of what a state asks.
     */
    static boolean isSpecial(Requirement asked) {
        return switch (asked.kind()) {
            case STEP, THEIRS -> true;
            case STANDARD -> asked.question() == null || !asked.when().equals(Condition.ALWAYS);
            default -> asked.recurs().each() == Requirement.Recurs.Each.EVENT && asked.kind() != RequirementKind.FILE;
        };
    }

    /** @return with its title in front */
    String of(Requirement asked) {
        return of(asked, what(asked).orElseGet(() -> isAlways(asked) ? "" : due(asked.due()) + '.'));
    }

    /** @param what in place of the time, subjects or day asked */
    String of(Requirement asked, String what) {
        List<String> said = new ArrayList<>(List.of(asked.title() + (what.isEmpty() ? '.' : ':'), what, whose(asked)));
        said.addAll(doubts(asked));
        said.removeIf(String::isEmpty);
        return String.join(" ", said);
    }

    /** @return the time, the subjects or the words that are asked; empty where a day says more */
    Optional<String> what(Requirement asked) {
        Optional<String> amount = duty.amount(asked, pathway);
        return amount.isEmpty() && asked.kind() == RequirementKind.STANDARD && asked.shows() instanceof Evidence.Words inWords
                ? Optional.of(Prose.ended(inWords.words())) : amount;
    }

    /** @return whether it is so from the first day on, and no day says more */
    static boolean isAlways(Requirement asked) {
        return asked.due() instanceof Due.None && Topic.of(asked.kind()) == Topic.TEACHER;
    }

    private String whose(Requirement asked) {
        String when = conditions.of(asked.when());
        return when.isEmpty() ? "" : when.length() > LONG_CONDITION ? wording.say("law.guide.some") : wording.say("law.asks.if", when);
    }

    /** @return that something about it is open, and how it was read where that is little; possibly nothing */
    List<String> doubts(Requirement asked) {
        boolean open = asked.question() != null || asked.validity().unclearFrom() != null;
        return Stream.concat(open ? Stream.of(wording.say("law.guide.open")) : Stream.empty(), duty.weakReading(asked).stream()).toList();
    }

    /** The day of most families and years. */
    private String due(Due due) {
        Due plain = due instanceof Due.Remarked remarked && dues.of(due).length() > LONG_DUE ? remarked.due() : due;
        if (plain instanceof Due.Cases cases && dues.of(plain).length() > LONG_DUE) {
            return due(cases.cases().get(cases.cases().size() - 1).due()) + wording.say("law.guide.other-days");
        }
        return dues.of(plain);
    }
}
