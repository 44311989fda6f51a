package org.hearthrule.rules;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.hearthrule.law.SubjectItem;
import org.hearthrule.terms.Subjects;

/** Records by the subject they are tagged with. A record with several subjects stands under each. */
final class SubjectIndex {

    private final Map<String, List<RecordFact>> bySubject = new LinkedHashMap<>();

    /** @param counts records that count */
    SubjectIndex(List<? extends RecordFact> facts, Predicate<RecordFact> counts) {
        for (RecordFact fact : facts) {
            List<String> subjects = fact.subjects();
            if (!subjects.isEmpty() && counts.test(fact)) {
                for (String subject : subjects) {
                    bySubject.computeIfAbsent(subject, id -> new ArrayList<>()).add(fact);
                }
            }
        }
    }

    boolean shows(String asked) {
        for (String logged : bySubject.keySet()) {
            if (Subjects.shows(logged, asked)) {
                return true;
            }
        }
        return false;
    }

    /** @return whether the item is shown, by one or by all of its subjects as it asks */
    boolean shows(SubjectItem item) {
        return item.needsAll() ? item.shownBy().stream().allMatch(this::shows) : item.shownBy().stream().anyMatch(this::shows);
    }

    /** @return the subjects with records that show one of the item's subjects */
    Set<String> subjects(SubjectItem item) {
        Set<String> found = new LinkedHashSet<>();
        for (String logged : bySubject.keySet()) {
            for (String asked : item.shownBy()) {
                if (Subjects.shows(logged, asked)) {
                    found.add(logged);
                    break;
                }
            }
        }
        return found;
    }

    /** @return every record tagged with one of the subjects, each once */
    List<RecordFact> facts(Set<String> subjects) {
        if (subjects.size() == 1) {
            return bySubject.get(subjects.iterator().next());
        }
        List<RecordFact> found = new ArrayList<>();
        for (String subject : subjects) {
            for (RecordFact fact : bySubject.get(subject)) {
                if (subject.equals(first(fact, subjects))) {
                    found.add(fact);
                }
            }
        }
        return found;
    }

    /** A record with several of the subjects stands under each: it is taken under the first. */
    private static String first(RecordFact fact, Set<String> subjects) {
        for (String subject : fact.subjects()) {
            if (subjects.contains(subject)) {
                return subject;
            }
        }
        return null;
    }

    /** @return every record that shows one of the item's subjects, each once */
    List<RecordFact> facts(SubjectItem item) {
        return facts(subjects(item));
    }
}
