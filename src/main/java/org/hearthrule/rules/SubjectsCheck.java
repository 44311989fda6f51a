package org.hearthrule.rules;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hearthrule.law.Evidence;
import org.hearthrule.law.Evidence.Subjects.Interval;
import org.hearthrule.law.SubjectItem;
import org.hearthrule.terms.Grades;

/** Looks for something in the records for each subject of a law's list. */
final class SubjectsCheck {

    private final Situation situation;
    private final List<RecordFact> facts;

    SubjectsCheck(Situation situation, List<RecordFact> facts) {
        this.situation = situation;
        this.facts = facts;
    }

    Shown check(Evidence.Subjects subjects) {
        Map<String, Object> counted = new LinkedHashMap<>();
        List<String> missing = new ArrayList<>();
        Set<String> used = new HashSet<>();
        List<RecordFact> counting = facts.stream().filter(fact -> !fact.subjects().isEmpty() && inSpan(fact, subjects))
                .toList();
        SubjectIndex index = new SubjectIndex(counting, fact -> true);
        for (SubjectItem item : subjects.items()) {
            Set<String> shown = index.subjects(item);
            counted.put(item.name(), index.facts(shown).size());
            used.addAll(shown);
            if (!item.may() && !index.shows(item)) {
                missing.add(item.name());
            }
        }
        List<RecordRef> records = new ArrayList<>();
        for (RecordFact fact : counting) {
            if (isTagged(fact, used)) {
                records.add(fact.ref());
            }
        }
        long asked = subjects.items().stream().filter(item -> !item.may()).count();
        String sum = Say.it("subjects.sum", asked - missing.size(), asked);
        if (missing.isEmpty()) {
            return Shown.yes(null, counted, records, sum);
        }
        String lack = Say.it("subjects.lack", String.join("; ", missing));
        if (subjects.interval() != Interval.EACH_YEAR && !bookReachesBack(subjects)) {
            return Shown.unknown(counted, records, sum, lack, Say.it("subjects.earlier-years", String.join("; ", missing)));
        }
        return Shown.no(counted, records, sum, lack);
    }

    private static boolean isTagged(RecordFact fact, Set<String> subjects) {
        for (String subject : fact.subjects()) {
            if (subjects.contains(subject)) {
                return true;
            }
        }
        return false;
    }

    /** A piece without a date counts in the school year whose file it lies in. */
    private boolean inSpan(RecordFact fact, Evidence.Subjects subjects) {
        LocalDate day = fact.date();
        if (day != null && day.isAfter(situation.today())) {
            return false;
        }
        boolean thisYear = day == null ? fact.year().equals(situation.year().fileLabel())
                : !day.isBefore(situation.firstDay()) && !day.isAfter(situation.lastDay());
        if (thisYear || subjects.interval() == Interval.EACH_YEAR || subjects.interval() == Interval.AS_FITS) {
            return thisYear;
        }
        if (day == null || day.isAfter(situation.lastDay())) {
            return false;
        }
        ProgramYear year = ProgramYear.holding(situation.pathway().year(), day);
        Grades span = subjects.span();
        return span == null || situation.gradeIn(year).filter(span::holds).isPresent();
    }

    /** Without the earlier years of the span nobody can say that a subject was not covered in them. */
    private boolean bookReachesBack(Evidence.Subjects subjects) {
        if (subjects.span() == null || situation.grade().isEmpty()) {
            return true;
        }
        int yearsBefore = situation.grade().get() - subjects.span().numbers().first();
        for (int back = 1; back <= yearsBefore; back++) {
            if (!situation.book().years().containsKey(situation.year().plus(-back).fileLabel())) {
                return false;
            }
        }
        return true;
    }
}
