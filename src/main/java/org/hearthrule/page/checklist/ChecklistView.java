package org.hearthrule.page.checklist;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.hearthrule.checklist.Checklist;
import org.hearthrule.checklist.Line;
import org.hearthrule.checklist.LineGroup;
import org.hearthrule.checklist.LineWords;
import org.hearthrule.checklist.Section;
import org.hearthrule.checklist.Shape;
import org.hearthrule.page.frame.Option;
import org.hearthrule.page.records.NextStep;
import org.hearthrule.page.records.NextSteps;
import org.hearthrule.rules.Finding;
import org.hearthrule.terms.Prose;
import org.hearthrule.terms.Wording;

/**
 * A checklist as the template sets it.
 *
 * @param summary  what stands first
 * @param children all children of the book; fewer than two: nothing to choose
 * @param child    id of the one looked at, or empty for all
 * @param parts    in the order of reading; those with nothing in them are left out
 * @param more     parts that are told only on request
 */
public record ChecklistView(String summary, List<Option> children, String child, List<Part> parts, List<Part> more) {

    /** One part, such as what is late. */
    public record Part(String slug, String heading, List<Entry> entries) { }

    /**
     * One line, or several that say the same of several children.
     *
     * @param id     of the first of them
     * @param day    in words, or empty
     * @param iso    the same for machines, or null
     * @param away   such as {@code in 12 days}, or null
     * @param status word
     * @param shape  of the status
     * @param late   whether it is late
     * @param found  what was found
     * @param next   one next step, or null
     * @param source sources and whom to confirm with
     * @param steps  what can be done about it right there
     */
    public record Entry(String id, String title, String day, String iso, String away, String status, String shape,
                        boolean late, String found, String next, String source, List<NextStep> steps) { }

    static ChecklistView of(Checklist checklist, List<Option> children, String child, NextSteps steps) {
        Wording wording = Wording.english();
        LineWords words = new LineWords(checklist, wording);
        List<Part> parts = new ArrayList<>();
        List<Part> more = new ArrayList<>();
        for (Section section : Section.values()) {
            List<Entry> entries = LineGroup.of(checklist.lines(section)).stream()
                    .map(group -> entry(group, words, checklist.asOf(), wording, steps)).toList();
            if (!entries.isEmpty()) {
                (section.onlyOnRequest() ? more : parts).add(new Part(section.slug(), words.heading(section), entries));
            }
        }
        return new ChecklistView(words.summary(), children, child, parts, more);
    }

    private static Entry entry(LineGroup group, LineWords words, LocalDate asOf, Wording wording,
                               NextSteps steps) {
        Line line = group.line();
        Finding finding = line.finding();
        boolean tellsAway = finding.due() != null && line.section() != Section.DONE;
        return new Entry(line.id(), words.title(group), words.day(finding), finding.due() == null ? null
                : finding.due().toString(), tellsAway ? wording.distance(finding.due(), asOf) : null, words.status(line),
                Shape.of(finding.status(), true), line.section() == Section.LATE, words.found(line),
                finding.next() == null ? null : Prose.ended(finding.next()), words.source(line), steps.of(group));
    }
}
