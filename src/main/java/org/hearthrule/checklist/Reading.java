package org.hearthrule.checklist;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Requirement;
import org.hearthrule.terms.Basis;

/**
 * How much there is of a law and how it was read.
 *
 * @param pathways     how many ways to teach
 * @param requirements how many duties on all of them
 * @param byBasis      how many of them were read in each way; a duty counts by its weakest source
 * @param doubts       open questions: doubts, and duties that carry a question of their own
 */
public record Reading(int pathways, int requirements, Map<Basis, Integer> byBasis, int doubts) {

    static Reading of(List<Profile> profiles) {
        Map<Basis, Integer> counts = new EnumMap<>(Basis.class);
        for (Basis basis : Basis.values()) {
            counts.put(basis, 0);
        }
        int pathways = 0;
        int requirements = 0;
        int doubts = 0;
        for (Profile profile : profiles) {
            doubts += profile.doubts().size();
            for (Pathway pathway : profile.pathways()) {
                pathways++;
                for (Requirement asked : pathway.asks()) {
                    requirements++;
                    doubts += asked.question() == null ? 0 : 1;
                    counts.merge(asked.basis(), 1, Integer::sum);
                }
            }
        }
        return new Reading(pathways, requirements, counts, doubts);
    }

    public static Reading of(Profile profile) {
        return of(List.of(profile));
    }

    /** @return the share read so, in whole percent cut down: 99.9 is not 100 */
    int percent(Basis basis) {
        return requirements == 0 ? 0 : 100 * byBasis.get(basis) / requirements;
    }

    /** @return the share read in the law or at its agency, in whole percent cut down */
    int percentAtSource() {
        return requirements == 0 ? 0 : 100 * (byBasis.get(Basis.TEXT) + byBasis.get(Basis.AGENCY)) / requirements;
    }
}
