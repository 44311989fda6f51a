package org.hearthrule.rules;

import java.io.ObjectInput;
import java.io.ObjectOutput;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Requirement;
import org.kie.api.runtime.rule.AccumulateFunction;

/**
 * What rule text calls: the same Java that the rule model calls. Public, since the classic compiler puts what it
 * compiles into a package of its own. Only for benchmarks.
 */
public final class DrlBridge {

    private static final Map<String, Requirement> REQUIREMENTS = new HashMap<>();
    private static final Map<String, FactsNeeded> NEEDED = new HashMap<>();
    private static final Map<String, List<Requirement>> TELLING = new HashMap<>();

    private DrlBridge() {
    }

    static void know(Profile profile) {
        profile.pathways().forEach(pathway -> pathway.asks().forEach(requirement -> {
            REQUIREMENTS.put(requirement.id(), requirement);
            NEEDED.put(requirement.id(), FactsNeeded.by(requirement));
            TELLING.put(requirement.id(), Telling.tellingOf(requirement, pathway));
        }));
    }

    /** The condition of a rule: {@link RequirementRule} asks the same. */
    public static boolean mayApply(String requirement, Situation situation) {
        return RequirementRule.mayApply(REQUIREMENTS.get(requirement), TELLING.get(requirement), situation);
    }

    public static List<?> needed(ChildRecords records) {
        return List.of(records);
    }

    /** The consequence of a rule: {@link RequirementRule} inserts the same. */
    @SuppressWarnings("unchecked") // what was gathered
    public static List<Claim> claims(String requirement, Situation situation, Object facts) {
        List<RecordFact> records = facts == null ? List.of()
                : new FactList((List<ChildRecords>) facts, NEEDED.get(requirement)).in(situation);
        List<Claim> claims = new ArrayList<>();
        for (Occasion occasion : situation.occasions(REQUIREMENTS.get(requirement))) {
            if (!occasion.applies().isNo()) {
                claims.add(Claim.of(REQUIREMENTS.get(requirement), situation, occasion, records));
            }
        }
        return claims;
    }

    /** The accumulate function of the rules, for lists of records. */
    public static final class Gather implements AccumulateFunction<Gather.Context> {

        public static final class Context implements Serializable {
            private final transient List<ChildRecords> children = new ArrayList<>();
        }

        @Override
        public Context createContext() {
            return new Context();
        }

        @Override
        public void init(Context context) {
            context.children.clear();
        }

        @Override
        public void accumulate(Context context, Object value) {
            for (Object fact : (List<?>) value) {
                context.children.add((ChildRecords) fact);
            }
        }

        @Override
        public void reverse(Context context, Object value) {
            context.children.removeAll((List<?>) value);
        }

        @Override
        public boolean supportsReverse() {
            return true;
        }

        @Override
        public Object getResult(Context context) {
            return List.copyOf(context.children);
        }

        @Override
        public Class<?> getResultType() {
            return Object.class;
        }

        @Override
        public void writeExternal(ObjectOutput out) {
            throw new UnsupportedOperationException();
        }

        @Override
        public void readExternal(ObjectInput in) {
            throw new UnsupportedOperationException();
        }
    }
}
