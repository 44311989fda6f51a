package org.hearthrule.page.frame;

import java.util.ArrayList;
import java.util.List;
import org.hearthrule.terms.Subjects;
import org.hearthrule.terms.Wording;

/** The subjects of the common vocabulary as forms offer them, in its order. */
public final class SubjectChoice {

    private SubjectChoice() { }

    /** An area, which can be chosen by itself, and its subjects. */
    public record Area(Option itself, List<Option> subjects) { }

    /** @return every subject, grouped by area */
    public static List<Area> areas() {
        return Subjects.areas().stream().map(area -> new Area(option(area, ""), Subjects.subjectsOf(area).stream()
                .filter(one -> !one.equals(area)).map(one -> option(one, "")).toList())).toList();
    }

    /** @return the same in one list, each area before its subjects */
    public static List<Option> all() {
        List<Option> all = new ArrayList<>();
        for (Area area : areas()) {
            all.add(area.itself());
            all.addAll(area.subjects());
        }
        return all;
    }

    /** @return the same where a subject names its area too */
    public static List<Option> withAreas() {
        return all().stream().map(one -> Subjects.isArea(one.value()) ? one
                : option(one.value(), Subjects.name(Subjects.areaOf(one.value())) + ": ")).toList();
    }

    private static Option option(String subject, String before) {
        return Option.of(subject, before + Subjects.name(subject));
    }

    public static String names(List<String> subjects) {
        return Wording.english().and(subjects.stream().map(Subjects::name).toList());
    }
}
