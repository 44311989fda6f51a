package org.hearthrule.rules;

import java.util.ArrayList;
import java.util.List;

/**
 * The records accumulated for a requirement.
 *
 * @param children of one child, or of none when it has no records
 */
record FactList(List<ChildRecords> children, FactsNeeded needed) {

    /** @return those that the requirement looks at in a situation, in the order of the book */
    List<RecordFact> in(Situation situation) {
        List<RecordFact> facts = new ArrayList<>();
        children.forEach(child -> facts.addAll(needed.of(child, situation)));
        return facts;
    }
}
