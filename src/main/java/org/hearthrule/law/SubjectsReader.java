package org.hearthrule.law;

import java.util.ArrayList;
import java.util.List;
import org.hearthrule.input.Fields;
import org.hearthrule.input.Listing;
import org.hearthrule.input.Node;
import org.hearthrule.terms.Grades;

/** Reads a list of subjects with its interval. */
final class SubjectsReader {

    /** Keys of a requirement that belong to subjects. */
    static final List<String> KEYS = List.of("list", "interval", "span");

    private SubjectsReader() { }

    /**
     * Reads the list of a requirement.
     *
     * @param when condition of the requirement; subjects owed over a level take its grades from here
     */
    static Evidence read(Fields fields, Condition when, Scope scope) {
        List<SubjectItem> items = items(fields, scope);
        Evidence.Subjects.Interval interval = fields.optionalOneOf("interval", Evidence.Subjects.Interval.class)
                .orElse(Evidence.Subjects.Interval.EACH_YEAR);
        boolean spread = interval == Evidence.Subjects.Interval.OVER_LEVEL
                || interval == Evidence.Subjects.Interval.ONCE_IN_SPAN;
        Grades span = fields.has("span") ? GradeReader.listOrLevel(fields, "span", scope) : null;
        if (fields.has("span") && !spread) {
            scope.error(fields.place("span"), ProfileFault.SPAN_UNUSED, "`span` beside an interval that has none",
                    "`interval: once-in-span` or `interval: over-level`", null);
        }
        if (interval == Evidence.Subjects.Interval.OVER_LEVEL && !fields.has("span")) {
            span = gradesOf(when);
        }
        if (spread && span == null && !fields.has("span")) {
            scope.error(fields.place("interval"), ProfileFault.SPAN_MISSING,
                    interval == Evidence.Subjects.Interval.OVER_LEVEL
                            ? "`over-level` without grades" : "`once-in-span` without `span`",
                    "`span` with a level or grades such as \"1-8\"", null);
        }
        return new Evidence.Subjects(items, interval, span);
    }

    private static Grades gradesOf(Condition when) {
        if (when instanceof Condition.Grade) {
            return ((Condition.Grade) when).grades();
        }
        if (when instanceof Condition.All) {
            for (Condition part : ((Condition.All) when).parts()) {
                if (part instanceof Condition.Grade) {
                    return ((Condition.Grade) part).grades();
                }
            }
        }
        return null;
    }

    private static List<SubjectItem> items(Fields fields, Scope scope) {
        if (!fields.has("list")) {
            fields.node("list");
            return List.of();
        }
        Forms.items(fields, "list", scope);
        List<SubjectItem> items = new ArrayList<>();
        List<String> names = new ArrayList<>();
        for (Fields item : fields.optionalNode("list").orElse(null) instanceof Listing
                ? fields.listOfFields("list", "the subject") : List.<Fields>of()) {
            String name = item.text("name", Forms.LONGEST_TITLE);
            if (name != null && names.contains(name)) {
                scope.error(item.place("name"), ProfileFault.REPEATED_ITEM, "a second " + Say.code(name),
                        "each subject once", null);
            }
            names.add(name);
            List<String> shownBy = Forms.requiredTexts(item, "shown-by", scope);
            Node node = item.optionalNode("shown-by").orElse(null);
            for (int i = 0; i < shownBy.size(); i++) {
                scope.checkSubject(Forms.place(node, i), shownBy.get(i));
            }
            boolean needsAll = item.optionalYesNo("needs-all").orElse(false);
            boolean may = item.optionalYesNo("may").orElse(false);
            item.done();
            items.add(new SubjectItem(name, shownBy, needsAll, may));
        }
        return List.copyOf(items);
    }
}
