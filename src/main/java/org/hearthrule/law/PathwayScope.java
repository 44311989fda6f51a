package org.hearthrule.law;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hearthrule.input.Place;

/** What is known while one pathway is being read; what can be checked only at its end is gathered here. */
final class PathwayScope {

    /** A mention of a name that is looked up when the whole pathway has been read. */
    record Mention(Place place, String in, String of, String name) { }

    final String slug;
    final SchoolYear year;
    final List<String> requirements;
    final Map<String, Pathway.ChoiceOffered> choices = new LinkedHashMap<>();
    /** Papers that show some requirement. */
    final Set<String> papers = new LinkedHashSet<>();
    final List<Mention> papersMentioned = new ArrayList<>();
    final List<Mention> methodsMentioned = new ArrayList<>();
    /** Methods of assessment, by requirement. */
    final Map<String, Set<String>> methods = new LinkedHashMap<>();
    final List<Mention> groups = new ArrayList<>();
    /** {@code in} comes after {@code name}. */
    final List<Mention> needs = new ArrayList<>();
    /** {@code in} is due together with {@code name}. */
    final List<Mention> dueWith = new ArrayList<>();
    /** Local id of the requirement that is being read. */
    String requirement = "";

    PathwayScope(String slug, SchoolYear year, List<String> requirements) {
        this.slug = slug;
        this.year = year;
        this.requirements = requirements;
    }

    void addMethod(String method) {
        Set<String> known = methods.get(requirement);
        if (known == null) {
            known = new LinkedHashSet<>();
            methods.put(requirement, known);
        }
        known.add(method);
    }

    Mention mention(Place place, String name) {
        return new Mention(place, requirement, "", name);
    }
}
