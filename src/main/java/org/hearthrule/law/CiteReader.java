package org.hearthrule.law;

import java.util.ArrayList;
import java.util.List;
import org.hearthrule.input.Fields;
import org.hearthrule.input.Listing;
import org.hearthrule.input.Node;
import org.hearthrule.input.Place;
import org.hearthrule.input.Scalar;
import org.hearthrule.terms.Basis;

/** Reads citations: a key of the sources, then the part of it. */
final class CiteReader {

    private CiteReader() { }

    /** @return one or several citations under {@code cite}; empty after recording why there is none */
    static List<Cite> required(Fields fields, String what, Scope scope) {
        return required(fields, "cite", what, scope);
    }

    /** @return citations under {@code between}: texts that say different things; empty when there are none */
    static List<Cite> between(Fields fields, String what, Scope scope) {
        if (!fields.has("between")) {
            return List.of();
        }
        List<Cite> cites = required(fields, "between", what, scope);
        if (cites.size() == 1) {
            scope.error(fields.place("between"), ProfileFault.DIFFERS_FROM_NOTHING, "one source",
                    "two sources that say different things", null);
        }
        return cites;
    }

    private static List<Cite> required(Fields fields, String key, String what, Scope scope) {
        Node node = fields.optionalNode(key).orElse(null);
        if (node == null) {
            if (fields.isMapping()) {
                scope.error(fields.place(), ProfileFault.UNCITED, "no `cite` in " + what,
                        "a source from the list of sources, such as \"code-22-5 (B)\"", null);
            }
            return List.of();
        }
        List<String> texts = Forms.texts(fields, key, scope);
        List<Cite> cites = new ArrayList<>(texts.size());
        if (node instanceof Listing) {
            for (Node item : ((Listing) node).items()) {
                if (item instanceof Scalar && texts.contains(((Scalar) item).text())) {
                    add(item.place(), ((Scalar) item).text(), cites, scope);
                }
            }
        } else if (!texts.isEmpty()) {
            add(node.place(), texts.get(0), cites, scope);
        }
        return List.copyOf(cites);
    }

    /** @return the one citation under {@code cite}, or null after recording why there is none */
    static Cite one(Fields fields, String what, Scope scope) {
        if (!fields.has("cite")) {
            required(fields, what, scope);
            return null;
        }
        return optional(fields, scope);
    }

    /** @return the one citation under {@code cite}, or null */
    static Cite optional(Fields fields, Scope scope) {
        String text = fields.optionalText("cite", Forms.LONGEST_LINE).orElse(null);
        return text == null ? null : cite(fields.place("cite"), text, scope);
    }

    private static void add(Place place, String text, List<Cite> cites, Scope scope) {
        Cite cite = cite(place, text, scope);
        if (cite != null) {
            cites.add(cite);
        }
    }

    private static Cite cite(Place place, String text, Scope scope) {
        int space = text.indexOf(' ');
        String key = space < 0 ? text : text.substring(0, space);
        scope.citedSources.add(key);
        Source source = scope.sources.get(key);
        if (source == null) {
            scope.unknown(place, ProfileFault.UNKNOWN_SOURCE, "source", key, scope.sources.keySet());
            return null;
        }
        return new Cite(source, space < 0 ? "" : text.substring(space + 1).strip(), source.basis());
    }

    /** @return the weakest reading among the citations */
    static Basis weakest(List<Cite> cites) {
        Basis weakest = Basis.TEXT;
        for (Cite cite : cites) {
            if (cite.basis().weakerThan(weakest)) {
                weakest = cite.basis();
            }
        }
        return weakest;
    }
}
