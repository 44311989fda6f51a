package org.hearthrule.checklist;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import org.hearthrule.law.Cite;
import org.hearthrule.law.Requirement;
import org.hearthrule.rules.Finding;
import org.hearthrule.terms.Basis;
import org.hearthrule.terms.Binding;

/**
 * One line of a checklist.
 *
 * @param section where it stands
 * @param finding what it says
 * @param asked   the requirement it speaks of; null for a check of the records, a doubt, what is not asked
 */
public record Line(Section section, Finding finding, Requirement asked) {

    /** By section, day (lines without one last), child (the family first), title and id. */
    static final Comparator<Line> ORDER = Comparator.comparing(Line::section)
            .thenComparing(line -> line.finding.due(), Comparator.nullsLast(Comparator.naturalOrder()))
            .thenComparing(line -> line.finding.studentName(), Comparator.nullsFirst(Comparator.naturalOrder()))
            .thenComparing(line -> line.finding.title())
            .thenComparing(line -> line.finding.id());

    static Line of(Finding finding, Requirement asked, LocalDate asOf) {
        return new Line(Section.of(finding, asOf), finding, asked);
    }

    /** @return how binding the rule is: the requirement's own, else that of the first source, else null */
    public Binding binding() {
        if (asked != null) {
            return asked.binding();
        }
        return finding.cites().isEmpty() ? null : finding.cites().get(0).source().binding();
    }

    /** @return true when it speaks of this requirement */
    boolean isOf(Requirement requirement) {
        return finding.requirement().equals(requirement.id());
    }

    public String id() {
        return finding.id();
    }

    /** @return how the rule was read: the requirement's own word, else the weakest among the sources; null without any */
    public Basis basis() {
        return asked != null ? asked.basis() : finding.cites().stream().map(Cite::basis).max(Comparator.naturalOrder()).orElse(null);
    }

    /** @return the day the source longest unread was read, or null when the line has none */
    public LocalDate read() {
        return finding.cites().stream().map(Cite::read).min(Comparator.naturalOrder()).orElse(null);
    }

    /** @return the sources as lawyers write them, each once */
    public List<String> citations() {
        return finding.cites().stream().map(Cite::words).distinct().toList();
    }
}
