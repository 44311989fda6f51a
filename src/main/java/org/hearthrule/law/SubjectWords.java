package org.hearthrule.law;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.hearthrule.terms.SubjectNames;

/**
 * Names of subjects that laws use beside those of the common vocabulary, for reading what a family wrote. Only a name
 * that stands for one subject is among them: where a law counts any of several, to take them all would be to claim
 * more than was written.
 */
public final class SubjectWords {

    private SubjectWords() { }

    /** @return id by name in small letters, in a list of one; without the names the vocabulary has itself */
    public static Map<String, List<String>> of(Collection<Profile> profiles) {
        Map<String, List<String>> words = new TreeMap<>();
        Set<String> several = new HashSet<>();
        profiles.stream().flatMap(profile -> profile.pathways().stream()).flatMap(pathway -> pathway.asks().stream())
                .flatMap(asked -> Evidence.leaves(asked.shows(), Evidence.Subjects.class).stream())
                .flatMap(list -> list.items().stream())
                .filter(item -> SubjectNames.find(item.name()).isEmpty()).forEach(item -> {
                    String name = item.name().toLowerCase(Locale.ROOT);
                    List<String> before = words.putIfAbsent(name, item.shownBy());
                    if (item.shownBy().size() != 1 || before != null && !before.equals(item.shownBy())) {
                        several.add(name);
                    }
                });
        words.keySet().removeAll(several);
        return words;
    }
}
