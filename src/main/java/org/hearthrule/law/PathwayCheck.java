package org.hearthrule.law;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.hearthrule.input.Nearest;

/** Checks what can be known only when a whole pathway has been read. */
final class PathwayCheck {

    /** What an earlier year may hold of a requirement, besides a method. */
    static final List<String> STANDINGS = List.of("met", "missing", "owed");

    /** What this very year may hold of a paper. */
    static final List<String> PAPERS = List.of("met", "missing");

    private PathwayCheck() { }

    static void check(Scope scope) {
        PathwayScope pathway = scope.pathway;
        for (PathwayScope.Mention paper : pathway.papersMentioned) {
            if (!pathway.papers.contains(paper.name())) {
                scope.unknown(paper.place(), ProfileFault.UNKNOWN_PAPER, "paper", paper.name(), pathway.papers);
            }
        }
        for (PathwayScope.Mention method : pathway.methodsMentioned) {
            Set<String> known = pathway.methods.get(method.of());
            List<String> words = new ArrayList<>(known == null ? Set.of() : known);
            words.addAll(STANDINGS);
            if (!words.contains(method.name())) {
                scope.unknown(method.place(), ProfileFault.UNKNOWN_METHOD, "method", method.name(), words);
            }
        }
        checkGroups(scope);
        // one may be due with another and yet be needed by it: the two orders are apart
        checkCycles(pathway.needs, " after ", scope);
        checkCycles(pathway.dueWith, " with ", scope);
    }

    private static void checkGroups(Scope scope) {
        List<PathwayScope.Mention> groups = scope.pathway.groups;
        for (PathwayScope.Mention member : groups) {
            int members = 0;
            List<String> others = new ArrayList<>();
            for (PathwayScope.Mention other : groups) {
                if (other.name().equals(member.name())) {
                    members++;
                } else {
                    others.add(other.name());
                }
            }
            if (members == 1) {
                scope.error(member.place(), ProfileFault.GROUP_OF_ONE, "a group " + Say.code(member.name())
                        + " of one requirement", "two requirements or more in a group",
                        Nearest.of(member.name(), others).isPresent()
                                ? "you meant " + Say.code(Nearest.of(member.name(), others).get()) : null);
            }
        }
    }

    /** Follows the mentions from each requirement; a circle is reported once, where it closes. */
    private static void checkCycles(List<PathwayScope.Mention> links, String word, Scope scope) {
        List<String> finished = new ArrayList<>();
        for (PathwayScope.Mention link : links) {
            follow(link.in(), links, word, new ArrayList<>(), finished, scope);
        }
    }

    private static void follow(String id, List<PathwayScope.Mention> links, String word, List<String> path,
                               List<String> finished, Scope scope) {
        if (finished.contains(id)) {
            return;
        }
        path.add(id);
        for (PathwayScope.Mention link : links) {
            if (!link.in().equals(id)) {
                continue;
            }
            int start = path.indexOf(link.name());
            if (start >= 0) {
                List<String> circle = new ArrayList<>(path.subList(start, path.size()));
                circle.add(link.name());
                scope.error(link.place(), ProfileFault.CYCLE, "a circle, " + String.join(word, circle),
                        "an order in which each can be done", null);
            } else {
                follow(link.name(), links, word, path, finished, scope);
            }
        }
        path.remove(path.size() - 1);
        finished.add(id);
    }
}
