package org.hearthrule.rules;

import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.ArrayList;
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
    SubjectIndex(List<RecordFact> facts, Predicate<RecordFact> counts) {
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

    /** @return every record that shows one of the item's subjects, each once */
    Set<RecordFact> facts(SubjectItem item) {
        Set<RecordFact> found = Collections.newSetFromMap(new IdentityHashMap<>());
        bySubject.forEach((logged, facts) -> {
            for (String asked : item.shownBy()) {
                if (Subjects.shows(logged, asked)) {
                    found.addAll(facts);
                    break;
                }
            }
        });
        return found;
    }
}
