package org.hearthrule.rules;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hearthrule.law.Evidence;
import org.hearthrule.law.Evidence.Subjects.Interval;
import org.hearthrule.law.SubjectItem;
import org.hearthrule.terms.Grades;
import org.hearthrule.terms.Subjects;

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
        List<RecordRef> records = new ArrayList<>();
        for (SubjectItem item : subjects.items()) {
            List<RecordRef> shown = shown(item, subjects);
            counted.put(item.name(), shown.size());
            records.addAll(shown);
            if (!item.may() && !isShown(item, subjects)) {
                missing.add(item.name());
            }
        }
        List<RecordRef> unique = new ArrayList<>(new java.util.LinkedHashSet<>(records));
        String sum = Say.it("subjects.sum", subjects.items().size() - missing.size(), subjects.items().size());
        if (missing.isEmpty()) {
            return Shown.yes(null, counted, unique, sum);
        }
        String lack = Say.it("subjects.lack", String.join(", ", missing));
        if (subjects.interval() != Interval.EACH_YEAR && !bookReachesBack(subjects)) {
            return Shown.unknown(counted, unique, sum, lack, Say.it("subjects.earlier-years", String.join(", ", missing)));
        }
        return Shown.no(counted, unique, sum, lack);
    }

    private List<RecordRef> shown(SubjectItem item, Evidence.Subjects subjects) {
        List<RecordRef> shown = new ArrayList<>();
        for (RecordFact fact : facts) {
            if (inSpan(fact, subjects) && item.shownBy().stream().anyMatch(asked -> shows(fact, asked))) {
                shown.add(fact.ref());
            }
        }
        return shown;
    }

    private boolean isShown(SubjectItem item, Evidence.Subjects subjects) {
        return item.needsAll()
                ? item.shownBy().stream().allMatch(asked -> anyShows(asked, subjects))
                : item.shownBy().stream().anyMatch(asked -> anyShows(asked, subjects));
    }

    private boolean anyShows(String asked, Evidence.Subjects subjects) {
        for (RecordFact fact : facts) {
            if (shows(fact, asked) && inSpan(fact, subjects)) {
                return true;
            }
        }
        return false;
    }

    static boolean shows(RecordFact fact, String asked) {
        for (String logged : fact.subjects()) {
            if (Subjects.shows(logged, asked)) {
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
        return span(subjects).map(grades -> situation.gradeIn(year).filter(grades::holds).isPresent()).orElse(true);
    }

    private java.util.Optional<Grades> span(Evidence.Subjects subjects) {
        return java.util.Optional.ofNullable(subjects.span());
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
