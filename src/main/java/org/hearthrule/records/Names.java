package org.hearthrule.records;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.hearthrule.input.Nearest;
import org.hearthrule.input.Phrases;
import org.hearthrule.input.Place;
import org.hearthrule.input.Problems;
import org.hearthrule.terms.SubjectNames;
import org.hearthrule.terms.Subjects;

/** Whom and what the lists may refer to: students, persons and subjects, by id. */
final class Names {

    private final Map<String, String> students = new LinkedHashMap<>();
    private final Map<String, String> persons = new LinkedHashMap<>();
    private final Map<String, Optional<String>> subjectGuesses = new HashMap<>();
    private boolean incomplete;

    void addStudent(String id, String name) {
        students.put(id, name);
    }

    void addPerson(String id, String name) {
        persons.put(id, name);
    }

    /** Somebody could not be read: from now on nobody is called unknown, since it would only be a second complaint. */
    void isIncomplete() {
        incomplete = true;
    }

    void checkStudent(String id, Place place, Problems problems) {
        check(id, students, "UNKNOWN-STUDENT", "a student of family.json", "students", place, problems);
    }

    void checkPerson(String id, Place place, Problems problems) {
        check(id, persons, "UNKNOWN-PERSON", "a person of family.json", "persons", place, problems);
    }

    void checkAnybody(String id, Place place, Problems problems) {
        Map<String, String> all = new LinkedHashMap<>(students);
        all.putAll(persons);
        check(id, all, "UNKNOWN-PERSON", "a student or person of family.json", "people", place, problems);
    }

    private void check(String id, Map<String, String> known, String code, String what, String many, Place place,
                       Problems problems) {
        if (known.containsKey(id) || incomplete) {
            return;
        }
        String expected = what
                + (known.isEmpty() ? ", where there is none yet" : ": " + Phrases.or(known.keySet(), many));
        problems.error(place, code, Phrases.quoted(id), expected,
                nearest(id, known).map(near -> "you meant \"" + near + '"').orElse(null));
    }

    /** Returns the id meant, also by somebody's printed name. */
    private static Optional<String> nearest(String text, Map<String, String> known) {
        for (Map.Entry<String, String> one : known.entrySet()) {
            if (one.getValue().equalsIgnoreCase(text)) {
                return Optional.of(one.getKey());
            }
        }
        return Nearest.of(text, known.keySet());
    }

    void checkSubject(String id, Place place, Problems problems) {
        if (Subjects.known(id)) {
            return;
        }
        if (id.equals(Subjects.CORE)) {
            problems.error(place, "UNKNOWN-SUBJECT", "\"core\", which is not a subject",
                    "a subject of the common vocabulary", "mark the entry with \"core\": true instead");
            return;
        }
        Optional<String> near = subjectGuesses.computeIfAbsent(id, SubjectNames::nearest);
        problems.error(place, "UNKNOWN-SUBJECT", Phrases.quoted(id), "a subject of the common vocabulary",
                near.map(subject -> "you meant \"" + subject + '"').orElse(null));
    }
}
