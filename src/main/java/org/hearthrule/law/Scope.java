package org.hearthrule.law;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.hearthrule.input.Nearest;
import org.hearthrule.input.Place;
import org.hearthrule.input.Problems;
import org.hearthrule.terms.Grades;

/** What is known while one profile is being read: names that rules may refer to, and where problems go. */
final class Scope {

    private final Problems problems;
    private final Predicate<String> subjectKnown;
    private final Collection<String> subjects;

    final Map<String, Source> sources = new LinkedHashMap<>();
    final Map<String, Grades> levels = new LinkedHashMap<>();
    final Map<String, Profile.FactAsked> facts = new LinkedHashMap<>();
    final List<String> optIns = new ArrayList<>();
    final List<String> pathways = new ArrayList<>();
    /** What was known of each pathway that has been read. */
    final Map<String, PathwayScope> readPathways = new LinkedHashMap<>();
    final Set<String> citedSources = new HashSet<>();
    final Set<String> usedFacts = new HashSet<>();

    /** First part of every id, for example {@code us-xx}. */
    String prefix = "";
    String confirmWith;
    SchoolYear year;
    /** The pathway that is being read, or null outside of one. */
    PathwayScope pathway;

    Scope(Problems problems, Predicate<String> subjectKnown, Collection<String> subjects) {
        this.problems = problems;
        this.subjectKnown = subjectKnown;
        this.subjects = subjects;
    }

    Problems problems() {
        return problems;
    }

    void error(Place place, ProfileFault fault, String found, String expected, String perhaps) {
        problems.error(place, fault.code(), found, expected, perhaps);
    }

    void warning(Place place, ProfileFault fault, String found, String expected, String perhaps) {
        problems.warning(place, fault.code(), found, expected, perhaps);
    }

    /** Records a name that stands for nothing, with the nearest that does. */
    void unknown(Place place, ProfileFault fault, String what, String name, Collection<String> known) {
        Optional<String> nearest = Nearest.of(name, known);
        error(place, fault, "unknown " + what + ' ' + Say.code(name), Say.oneOf(known, "none, as there is no " + what),
                nearest.isPresent() ? "you meant " + Say.code(nearest.get()) : null);
    }

    boolean checkSubject(Place place, String id) {
        if (subjectKnown.test(id)) {
            return true;
        }
        unknown(place, ProfileFault.UNKNOWN_SUBJECT, "subject", id, subjects);
        return false;
    }

    boolean checkFact(Place place, String name) {
        usedFacts.add(name);
        if (facts.containsKey(name)) {
            return true;
        }
        unknown(place, ProfileFault.UNKNOWN_FACT, "fact", name, facts.keySet());
        return false;
    }

    /** Checks a local id of the pathway that is being read. */
    boolean checkRequirement(Place place, String localId) {
        List<String> known = pathway == null ? List.of() : pathway.requirements;
        if (known.contains(localId)) {
            return true;
        }
        unknown(place, ProfileFault.UNKNOWN_REQUIREMENT, "requirement", localId, known);
        return false;
    }

    /** @return the choice, or null after recording that there is none */
    Pathway.ChoiceOffered choice(Place place, String name) {
        Map<String, Pathway.ChoiceOffered> known = pathway == null ? Map.of() : pathway.choices;
        Pathway.ChoiceOffered choice = known.get(name);
        if (choice == null) {
            unknown(place, ProfileFault.UNKNOWN_CHOICE, "choice", name, known.keySet());
        }
        return choice;
    }
}
