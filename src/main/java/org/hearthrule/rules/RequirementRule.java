package org.hearthrule.rules;

import static org.drools.model.DSL.accFunction;
import static org.drools.model.DSL.accumulate;
import static org.drools.model.DSL.declarationOf;
import static org.drools.model.DSL.on;
import static org.drools.model.PatternDSL.betaIndexedBy;
import static org.drools.model.PatternDSL.pattern;
import static org.drools.model.PatternDSL.rule;

import java.util.List;
import org.drools.model.Drools;
import org.drools.model.Index.ConstraintType;
import org.drools.model.PatternDSL.PatternDef;
import org.drools.model.Rule;
import org.drools.model.Variable;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Requirement;

/**
 * Turns a requirement into a Drools rule that carries its id.
 *
 * <p>The rule model is used, never rule text: nothing a profile says reaches a compiler.
 */
final class RequirementRule {

    private RequirementRule() {
    }

    static Rule of(Pathway pathway, Requirement requirement) {
        Variable<Situation> situation = declarationOf(Situation.class, "$situation");
        List<Requirement> telling = Telling.tellingOf(requirement, pathway);
        PatternDef<Situation> whom = pattern(situation)
                .expr("pathway " + pathway.id(), s -> s.pathwayId().equals(pathway.id()))
                .expr("applies " + requirement.id(), s -> mayApply(requirement, telling, s));
        FactsNeeded needed = FactsNeeded.by(requirement);
        if (needed.none()) {
            return rule(pathway.id(), requirement.id()).build(whom,
                    on(situation).execute((drools, s) -> claim(drools, requirement, s, List.of())));
        }
        Variable<ChildRecords> records = declarationOf(ChildRecords.class, "$child");
        Variable<FactList> facts = declarationOf(FactList.class, "$records");
        PatternDef<ChildRecords> own = pattern(records).expr("child", situation,
                (r, s) -> r.student().equals(s.studentId()),
                betaIndexedBy(String.class, ConstraintType.EQUAL, 0, ChildRecords::student, Situation::studentId, String.class));
        return rule(pathway.id(), requirement.id()).build(whom,
                accumulate(own, accFunction(() -> new Collect(needed), records).as(facts)),
                on(situation, facts).execute((drools, s, list) -> claim(drools, requirement, s, list.in(s))));
    }

    /** @param telling requirements of which one must be worth a line */
    static boolean mayApply(Requirement requirement, List<Requirement> telling, Situation situation) {
        boolean told = false;
        for (Requirement one : telling) {
            told = told || Telling.worth(one, situation);
        }
        if (!told) {
            return false;
        }
        for (Occasion occasion : situation.occasions(requirement)) {
            if (!occasion.applies().isNo()) {
                return true;
            }
        }
        return false;
    }

    private static void claim(Drools drools, Requirement requirement, Situation situation, List<RecordFact> facts) {
        for (Occasion occasion : situation.occasions(requirement)) {
            if (!occasion.applies().isNo()) {
                drools.insert(Claim.of(requirement, situation, occasion, facts));
            }
        }
    }
}
