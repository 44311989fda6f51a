package org.hearthrule.rules;

import org.hearthrule.law.Evidence;
import org.hearthrule.law.Requirement;

/**
 * A child in the school year of the day, for rules about the records.
 *
 * @param id               student id
 * @param year             label of the record book's file of this year
 * @param testAsked        a test is among what the law asks this year
 * @param samplesKept      work samples are among what the law asks to keep
 * @param logMadeAtTheTime a log is among what the law asks to keep
 */
public record Child(String id, String year, boolean testAsked, boolean samplesKept, boolean logMadeAtTheTime) {

    static Child of(Situation situation) {
        boolean test = false;
        boolean samples = false;
        boolean log = false;
        for (Requirement requirement : situation.pathway().asks()) {
            boolean applies = situation.occasions(requirement).stream().anyMatch(occasion -> !occasion.applies().isNo());
            if (applies) {
                test |= holds(requirement.shows(), Evidence.Test.class, situation);
                samples |= holds(requirement.shows(), Evidence.Samples.class, situation);
                log |= holds(requirement.shows(), Evidence.Log.class, situation);
            }
        }
        return new Child(situation.studentId(), situation.year().fileLabel(), test, samples, log);
    }

    private static boolean holds(Evidence evidence, Class<? extends Evidence> leaf, Situation situation) {
        if (evidence instanceof Evidence.AnyOf any) {
            return any.parts().stream().anyMatch(part -> holds(part, leaf, situation));
        }
        if (evidence instanceof Evidence.AllOf all) {
            return all.parts().stream().anyMatch(part -> holds(part, leaf, situation));
        }
        if (evidence instanceof Evidence.Option option) {
            return !Conditions.holds(option.when(), situation, situation.thatDay()).isNo()
                    && holds(option.part(), leaf, situation);
        }
        return leaf.isInstance(evidence);
    }
}
