package org.hearthrule.checklist;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hearthrule.rules.Finding;

/**
 * Lines that say the same of several children or school years, set as one.
 *
 * @param line  the first of them
 * @param names the children's names, each once, in order; empty for the family
 * @param ids   the lines' ids
 */
public record LineGroup(Line line, List<String> names, List<String> ids) {

    /** @return the lines of one section, those that differ only in the child or the year put together where the first stood */
    public static List<LineGroup> of(List<Line> lines) {
        Map<List<Object>, LineGroup> groups = new LinkedHashMap<>();
        for (Line line : lines) {
            LineGroup group = groups.computeIfAbsent(key(line.finding()),
                    key -> new LineGroup(line, new ArrayList<>(), new ArrayList<>()));
            if (line.finding().studentName() != null && !group.names.contains(line.finding().studentName())) {
                group.names.add(line.finding().studentName());
            }
            group.ids.add(line.id());
        }
        return List.copyOf(groups.values());
    }

    /** Everything a reader sees but the name. */
    private static List<Object> key(Finding finding) {
        return Arrays.asList(finding.requirement(), finding.studentName() == null, finding.title(), finding.status(),
                finding.due(), finding.dueNote(), finding.opens(), finding.why(), finding.next(), finding.cites(),
                finding.confirmWith());
    }
}
