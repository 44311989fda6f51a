package org.hearthrule.rules;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hearthrule.input.Node;
import org.hearthrule.law.Condition;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Requirement;

/** Which requirements of a state's file its cases reach: each has to apply in one case and not apply in another. */
final class RuleCoverage {

    private RuleCoverage() {
    }

    /** @return a line for each requirement that no case shows to apply, or none to stay away; in the file's order */
    static List<String> gaps(Profile profile, List<LawCase> cases) {
        Set<String> applies = new HashSet<>();
        Set<String> staysAway = new HashSet<>();
        for (LawCase lawCase : cases) {
            String pathway = LawCase.text(lawCase.given().get("pathway"));
            for (Map<String, Node> expected : lawCase.expected()) {
                String id = pathway + "/" + LawCase.text(expected.get("requirement"));
                (LawCaseCheck.applies(expected, lawCase, profile) ? applies : staysAway).add(id);
            }
        }
        List<String> gaps = new ArrayList<>();
        for (Pathway pathway : profile.pathways()) {
            for (Requirement requirement : pathway.asks()) {
                String id = pathway.slug() + "/" + requirement.localId();
                if (!requirement.validity().announced() && !applies.contains(id)) {
                    gaps.add(id + " applies in no case");
                }
                if (!alwaysApplies(requirement) && !staysAway.contains(id)) {
                    gaps.add(id + " stays away in no case");
                }
            }
        }
        return gaps;
    }

    /** A rule for every child on the pathway, at every age and on every day, has nothing that could keep it away. */
    private static boolean alwaysApplies(Requirement requirement) {
        return requirement.ages() == Requirement.Ages.ANY && requirement.when().equals(Condition.ALWAYS)
                && requirement.recurs().each() == Requirement.Recurs.Each.YEAR && requirement.validity().from() == null
                && requirement.validity().until() == null && !requirement.validity().announced()
                && requirement.waivedIn().isEmpty();
    }
}
