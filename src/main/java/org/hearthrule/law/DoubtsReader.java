package org.hearthrule.law;

import java.util.ArrayList;
import java.util.List;
import org.hearthrule.input.Fields;
import org.hearthrule.input.Mapping;

/** Reads the doubts: what could not be settled about a law, and whom to ask. */
final class DoubtsReader {

    /** Key of the doubts, and their part in an id: no pathway may bear it. */
    static final String DOUBTS = "doubts";

    private final Scope scope;

    DoubtsReader(Scope scope) {
        this.scope = scope;
    }

    /** @return the doubts, possibly none */
    List<Profile.Doubt> read(Fields top, List<Pathway> pathways) {
        Fields doubts = top.optionalFields("doubts", "the doubts").orElse(null);
        if (doubts == null) {
            return List.of();
        }
        List<String> known = localIds(pathways);
        List<Profile.Doubt> list = new ArrayList<>();
        for (Mapping.Entry entry : Forms.named(doubts, scope)) {
            Fields doubt = Fields.of(entry.value(), scope.problems(), "the doubt");
            String about = doubt.text("about", Forms.LONGEST_TEXT);
            String ask = doubt.text("ask", Forms.LONGEST_TITLE);
            List<String> on = new ArrayList<>();
            List<String> ids = Forms.texts(doubt, "on", scope);
            for (int i = 0; i < ids.size(); i++) {
                if (!known.contains(ids.get(i))) {
                    scope.unknown(Forms.place(doubt.optionalNode("on").orElse(null), i),
                            ProfileFault.UNKNOWN_REQUIREMENT, "requirement", ids.get(i), known);
                }
                on.add(id(ids.get(i)));
            }
            Condition when = doubtCondition(doubt, ids, scope);
            Validity validity = ValidityReader.read(doubt, false, scope);
            List<Cite> differing = CiteReader.between(doubt, "the doubt", scope);
            List<Cite> cites = differing.isEmpty() && doubt.has("cite") ? CiteReader.required(doubt, "the doubt", scope)
                    : differing;
            if (doubt.has("between") && doubt.has("cite")) {
                scope.error(doubt.place("cite"), ProfileFault.MISPLACED_KEY, "`cite` beside `between`",
                        "only one of the two", null);
            }
            doubt.done();
            list.add(new Profile.Doubt(id(DOUBTS).concat("/").concat(entry.key().text()), about, ask,
                    List.copyOf(on), when, cites, !differing.isEmpty(), validity));
        }
        return List.copyOf(list);
    }

    /** Conditions speak of the names of one pathway: that of the first duty the doubt touches. */
    private static Condition doubtCondition(Fields doubt, List<String> on, Scope scope) {
        if (!doubt.has("when")) {
            return Condition.ALWAYS;
        }
        if (on.isEmpty()) {
            scope.error(doubt.place("when"), ProfileFault.MISPLACED_KEY, "`when` without `on`",
                    "the requirements it is about, under `on`", null);
        }
        scope.pathway = on.isEmpty() ? null : scope.readPathways.get(on.get(0).substring(0, Math.max(0, on.get(0).indexOf('/'))));
        Condition when = ConditionReader.optional(doubt, "when", scope);
        scope.pathway = null;
        return when;
    }

    private String id(String rest) {
        return scope.prefix.concat("/").concat(rest);
    }

    /** Ids of all requirements without the code of the jurisdiction. */
    private List<String> localIds(List<Pathway> pathways) {
        List<String> ids = new ArrayList<>();
        for (Pathway pathway : pathways) {
            for (Requirement requirement : pathway.asks()) {
                ids.add(requirement.id().substring(scope.prefix.length() + 1));
            }
        }
        return ids;
    }
}
