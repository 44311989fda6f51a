package org.hearthrule.rules;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Requirement;

/** One line for a duty that the family or its school owes once, whatever the number of children. */
final class FamilyDuties {

    /**
     * The child whose standing decides: what is pressing comes before what is settled, and the child for whom it is
     * certain before one for whom it is not, since one bound child is enough to owe it.
     */
    private static final Map<Status, Integer> WEIGHT = new EnumMap<>(Map.of(Status.LATE, 0, Status.OPEN, 1,
            Status.THIN, 2, Status.MET, 3, Status.UNCLEAR, 4, Status.NOT_DUE, 5));

    private FamilyDuties() {
    }

    static List<Finding> merged(List<Finding> findings, Map<String, Profile> profiles) {
        Map<String, Requirement> shared = new HashMap<>();
        for (Profile profile : profiles.values()) {
            profile.pathways().forEach(pathway -> pathway.asks().stream()
                    .filter(requirement -> requirement.owedFor() != Requirement.OwedFor.CHILD)
                    .forEach(requirement -> shared.put(requirement.id(), requirement)));
        }
        Map<String, Finding> once = new LinkedHashMap<>();
        for (Finding finding : findings) {
            if (!shared.containsKey(finding.requirement())) {
                once.put(finding.id(), finding);
                continue;
            }
            Finding family = forFamily(finding);
            once.merge(family.id(), family, (one, other) ->
                    WEIGHT.get(other.status()) < WEIGHT.get(one.status()) ? other : one);
        }
        return new ArrayList<>(once.values());
    }

    /** @return id of the family's one line, from that of a child */
    static String id(String requirement, String id) {
        return requirement + "/family" + id.substring(id.lastIndexOf('/'));
    }

    private static Finding forFamily(Finding f) {
        return new Finding(id(f.requirement(), f.id()), f.requirement(), f.jurisdiction(), f.pathway(), null, null, f.kind(), f.title(), f.year(),
                f.status(), f.due(), f.dueNote(), f.opens(), f.theirs(), f.why(), f.next(), f.counted(), f.records(),
                f.arithmetic(), f.wouldChange(), f.rules(), f.cites(), f.confirmWith());
    }
}
