package org.hearthrule.page.records;

import java.util.ArrayList;
import java.util.List;
import org.hearthrule.page.frame.Option;
import org.hearthrule.terms.Subjects;

/** The subjects of the common vocabulary as a form offers them. */
final class SubjectChoice {

    private SubjectChoice() { }

    /** @return areas and, after each, its subjects; a subject names its area */
    static List<Option> all() {
        List<Option> all = new ArrayList<>();
        for (String area : Subjects.areas()) {
            all.add(Option.of(area, Subjects.name(area)));
            Subjects.subjectsOf(area).stream().filter(subject -> !subject.equals(area))
                    .forEach(subject -> all.add(Option.of(subject, Subjects.name(area) + ": " + Subjects.name(subject))));
        }
        return List.copyOf(all);
    }

    static List<String> ids() {
        return all().stream().map(Option::value).toList();
    }

    static String names(List<String> subjects) {
        return org.hearthrule.terms.Wording.english().and(subjects.stream().map(Subjects::name).toList());
    }
}
