package org.hearthrule.rules;

import java.util.ArrayList;
import java.util.List;
import org.hearthrule.law.Evidence;
import org.hearthrule.law.Requirement;
import org.hearthrule.law.SubjectItem;

/** The subjects a pathway asks of a child in a year. */
public final class SubjectsOwed {

    private SubjectsOwed() {
    }

    /** @return items of every subject list that applies, without those the law only permits */
    public static List<SubjectItem> of(Situation situation) {
        List<SubjectItem> owed = new ArrayList<>();
        for (Requirement requirement : situation.pathway().asks()) {
            if (requirement.shows() instanceof Evidence.Subjects subjects
                    && situation.occasions(requirement).stream().anyMatch(occasion -> occasion.applies().isYes())) {
                for (SubjectItem item : subjects.items()) {
                    if (!item.may()) {
                        owed.add(item);
                    }
                }
            }
        }
        return owed;
    }
}
