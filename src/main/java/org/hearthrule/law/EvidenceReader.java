package org.hearthrule.law;

import java.util.ArrayList;
import java.util.List;
import org.hearthrule.input.Fields;
import org.hearthrule.input.Node;

/** Reads what shows a requirement: any-of and all-of over leaves, each perhaps with a condition or a name. */
final class EvidenceReader {

    private static final List<String> FORMS = List.of("any-of", "all-of", "filing", "approval", "document", "log",
            "samples", "readings", "time", "test", "evaluation", "credential", "health-paper", "fact", "visits",
            "words");
    private static final List<String> BESIDES = List.of("when", "as", "name");

    private EvidenceReader() { }

    /** @return the evidence, or null after recording why there is none */
    static Evidence read(Node node, RequirementKind kind, Scope scope) {
        return read(node, kind, null, scope);
    }

    private static Evidence read(Node node, RequirementKind kind, String outerName, Scope scope) {
        Fields fields = Fields.of(node, scope.problems(), "the evidence");
        String form = Forms.only(node, fields, FORMS, BESIDES, ProfileFault.NO_EVIDENCE,
                ProfileFault.SEVERAL_EVIDENCE, scope);
        Condition when = ConditionReader.optional(fields, "when", scope);
        String as = fields.optionalText("as", Forms.LONGEST_TITLE).orElse(null);
        String name = Forms.optionalName(fields, "name", scope);
        String method = name == null ? outerName : name;
        Evidence part = null;
        if ("any-of".equals(form) || "all-of".equals(form)) {
            List<Evidence> parts = parts(fields, form, kind, method, scope);
            part = form.equals("any-of") ? new Evidence.AnyOf(parts) : new Evidence.AllOf(parts);
        } else if (form != null) {
            if (kind != null && !fits(kind, form)) {
                scope.error(fields.place(form), ProfileFault.EVIDENCE_OF_ANOTHER_KIND,
                        Say.code(form) + " in a requirement of kind " + kind.slug(), Say.oneOf(fitting(kind)),
                        null);
            }
            part = LeafReader.read(form, fields, method, scope);
        }
        fields.done();
        boolean bare = when == Condition.ALWAYS && as == null && name == null;
        return bare || part == null ? part : new Evidence.Option(when, as, name, part);
    }

    private static List<Evidence> parts(Fields fields, String key, RequirementKind kind, String name, Scope scope) {
        List<Node> items = Forms.items(fields, key, scope);
        List<Evidence> parts = new ArrayList<>(items.size());
        for (Node item : items) {
            Evidence part = read(item, kind, name, scope);
            if (part != null) {
                parts.add(part);
            }
        }
        return List.copyOf(parts);
    }

    private static boolean fits(RequirementKind kind, String form) {
        return fitting(kind).contains(form);
    }

    /** Leaves that can show a requirement of a kind. */
    static List<String> fitting(RequirementKind kind) {
        switch (kind) {
            case FILE:
                return List.of("filing", "approval", "document", "words");
            case APPROVAL:
                return List.of("approval", "filing", "document", "words");
            case RECORD:
                return List.of("log", "samples", "readings", "document", "test", "evaluation", "health-paper",
                        "filing", "words");
            case SHOW:
                return List.of("filing", "document", "words");
            case TIME:
                return List.of("time", "document", "words");
            case ASSESS:
                return List.of("test", "evaluation", "samples", "document", "filing", "approval", "words");
            case QUALIFY:
                return List.of("credential", "fact", "document", "approval", "evaluation", "test", "visits", "words");
            case HEALTH:
                return List.of("health-paper", "document", "filing", "fact", "words");
            case STANDING:
                return List.of("fact", "credential", "document", "words");
            case CONTACT:
                return List.of("visits", "words");
            case STEP:
                return List.of("filing", "approval", "document", "test", "evaluation", "visits", "fact", "words");
            case THEIRS:
                return List.of("filing", "approval", "document", "words");
            default:
                return List.of("words");
        }
    }
}
