package org.hearthrule.rules;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.hearthrule.law.SubjectItem;

/**
 * What this year's records hold of one subject that the law names.
 *
 * @param subject the law's name
 * @param entries log entries
 * @param last    day of the last of them, or null
 * @param samples dated work samples
 */
public record SubjectTrace(String student, String subject, int entries, LocalDate last, int samples) {

    /** @param records of the situation's child */
    static List<SubjectTrace> of(Situation situation, ChildRecords records) {
        List<SubjectTrace> traces = new ArrayList<>();
        List<RecordFact> facts = new ArrayList<>(records.loggedAbout(situation.year()));
        facts.addAll(records.getSamples());
        SubjectIndex index = new SubjectIndex(facts,
                fact -> fact.date() != null && !fact.date().isBefore(situation.firstDay())
                        && !fact.date().isAfter(situation.thatDay()));
        for (SubjectItem item : SubjectsOwed.of(situation)) {
            int entries = 0;
            int samples = 0;
            LocalDate last = null;
            for (RecordFact fact : index.facts(item)) {
                if (fact instanceof RecordFact.Logged) {
                    entries++;
                    last = last == null || fact.date().isAfter(last) ? fact.date() : last;
                } else if (fact instanceof RecordFact.Worked) {
                    samples++;
                }
            }
            traces.add(new SubjectTrace(situation.studentId(), item.name(), entries, last, samples));
        }
        return traces;
    }

    /** @return a subject that was logged and then no more */
    public static RecordDoubt silent(SubjectTrace trace, String rule) {
        return new RecordDoubt(rule, trace.student, trace.subject, Status.THIN,
                Say.it("thin.silent", trace.subject, trace.last, trace.entries), Say.it("thin.silent.next", trace.subject),
                List.of());
    }

    /** @param traces {@link SubjectTrace}s; a list without a type since rules collect it so */
    public static RecordDoubt withoutSample(String student, List<?> traces, String rule) {
        String names = String.join(", ", traces.stream().map(trace -> ((SubjectTrace) trace).subject).distinct().sorted().toList());
        return new RecordDoubt(rule, student, "", Status.THIN, Say.it("thin.no-sample", names), Say.it("thin.no-sample.next"),
                List.of());
    }
}
