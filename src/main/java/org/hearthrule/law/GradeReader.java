package org.hearthrule.law;

import java.util.Optional;
import org.hearthrule.input.Fields;
import org.hearthrule.input.Place;
import org.hearthrule.terms.Grades;

/** Reads grades and levels. */
final class GradeReader {

    private GradeReader() { }

    /** @return grades from a list such as {@code "3, 5, 8"}, or null */
    static Grades list(Fields fields, String key, Scope scope) {
        String text = fields.text(key, Forms.LONGEST_NAME);
        return text == null ? null : parse(fields.place(key), text, scope);
    }

    /** @return grades from a list or from the name of a level, or null */
    static Grades listOrLevel(Fields fields, String key, Scope scope) {
        String text = fields.text(key, Forms.LONGEST_NAME);
        if (text == null) {
            return null;
        }
        return text.charAt(0) >= 'a' && text.charAt(0) <= 'z'
                ? level(fields.place(key), text, scope)
                : parse(fields.place(key), text, scope);
    }

    /** @return grades of a level, or null after recording that there is none of that name */
    static Grades level(Place place, String name, Scope scope) {
        Grades grades = scope.levels.get(name);
        if (grades == null) {
            scope.unknown(place, ProfileFault.UNKNOWN_LEVEL, "level", name, scope.levels.keySet());
        }
        return grades;
    }

    static Grades parse(Place place, String text, Scope scope) {
        Optional<Grades> grades = Grades.parse(text);
        if (grades.isEmpty()) {
            scope.error(place, ProfileFault.WRONG_GRADES, Say.code(text),
                    "grades K and 1 to 12 such as \"K-6\" or \"3, 5, 8\"", null);
        }
        return grades.orElse(null);
    }

    /** @return one grade, kindergarten as 0; 0 after recording why there is none */
    static int one(Fields fields, String key, Scope scope) {
        String text = fields.text(key, Forms.LONGEST_NAME);
        if (text == null) {
            return 0;
        }
        Optional<Integer> grade = Grades.number(text);
        if (grade.isEmpty()) {
            scope.error(fields.place(key), ProfileFault.WRONG_GRADES, Say.code(text), "one grade, \"K\" or \"1\" to "
                    + "\"12\"", null);
        }
        return grade.orElse(0);
    }
}
