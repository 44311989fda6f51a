package org.hearthrule.rules;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hearthrule.law.Condition;
import org.hearthrule.law.Due;
import org.hearthrule.law.Evidence;
import org.hearthrule.law.Requirement;
import org.hearthrule.law.RequirementKind;
import org.hearthrule.records.YearRecords;

/** Looks for papers: sent, approved, kept; log entries, samples, readings and health papers as such. */
final class PaperCheck {

    /** A paper sent so long before an event may still be the one that was due after it. */
    private static final int DAYS_BEFORE_AN_EVENT = 14;
    /** The same for a paper that is due before it. */
    private static final int DAYS_BEFORE_A_PLAN = 180;

    /** A health paper for a grade may be from the months before it: common practice, no source. */
    private static final int MONTHS_BEFORE_A_GRADE = 6;

    private final Requirement requirement;
    private final Situation situation;
    private final Occasion occasion;
    private final List<RecordFact> facts;

    PaperCheck(Requirement requirement, Situation situation, Occasion occasion, List<RecordFact> facts) {
        this.requirement = requirement;
        this.situation = situation;
        this.occasion = occasion;
        this.facts = facts;
    }

    Shown check(Evidence evidence) {
        if (evidence instanceof Evidence.Filing filing) {
            return filing(filing.paper());
        }
        if (evidence instanceof Evidence.Approval approval) {
            return approval(approval.paper());
        }
        if (evidence instanceof Evidence.Document document) {
            return document(document.kind());
        }
        if (evidence instanceof Evidence.Log log) {
            return log(log);
        }
        if (evidence instanceof Evidence.Samples samples) {
            return samples(samples);
        }
        if (evidence instanceof Evidence.Readings readings) {
            return readings(readings.least());
        }
        return health((Evidence.HealthPaper) evidence);
    }

    private Shown filing(String paper) {
        if (requirement.kind() == RequirementKind.THEIRS) {
            return theirs();
        }
        List<RecordFact.Filed> sent = matching(paper);
        int needed = Math.max(occasion.part(), least());
        Map<String, Object> counted = new LinkedHashMap<>();
        if (sent.size() >= needed) {
            RecordFact.Filed filed = sent.get(needed - 1);
            counted.put("sent", filed.date().toString());
            LocalDate due = occasion.due().date();
            String sum = due != null && filed.date().isAfter(due)
                    ? Say.it("paper.sent-after", filed.date(), ChronoUnit.DAYS.between(due, filed.date()))
                    : Say.it("paper.sent", filed.date());
            return Shown.yes(filed.date(), counted, List.of(filed.ref()), sum);
        }
        if (least() > 1) {
            counted.put("sent", sent.size());
            counted.put("sent-asked", needed);
        }
        return Shown.no(counted, sent.stream().map(RecordFact::ref).toList(), Say.it("paper.none"), Say.it("paper.lack"));
    }

    private int least() {
        return requirement.due() instanceof Due.InPeriod in
                && in.of() == org.hearthrule.law.Period.YEAR ? in.least() : 1;
    }

    /** The other side's answer: any answer noted on a paper of this year. */
    private Shown theirs() {
        for (RecordFact fact : facts) {
            if (fact instanceof RecordFact.Filed filed && filed.year().equals(situation.year().fileLabel())) {
                for (YearRecords.Answer answer : filed.filing().answers()) {
                    if (!answer.kind().equals("received")) {
                        return Shown.yes(answer.date(), Map.of(), List.of(filed.ref()),
                                Say.it("paper.answered", answer.kind(), answer.date()));
                    }
                }
            }
        }
        return Shown.no(Map.of(), List.of(), null, Say.it("paper.no-answer"));
    }

    /** Papers of this name for this occasion, in the order of their parts and days. */
    private List<RecordFact.Filed> matching(String paper) {
        List<RecordFact.Filed> found = new ArrayList<>();
        for (RecordFact fact : facts) {
            if (fact instanceof RecordFact.Filed filed && filed.filing().paper().equals(paper) && filed.date() != null
                    && !filed.date().isAfter(situation.today()) && forThisOccasion(filed)) {
                found.add(filed);
            }
        }
        found.sort(Comparator.comparing((RecordFact.Filed filed) -> filed.filing().part() == null ? 0 : filed.filing().part())
                .thenComparing(RecordFact.Filed::date));
        return found;
    }

    private boolean forThisOccasion(RecordFact.Filed filed) {
        return switch (requirement.recurs().each()) {
            case YEAR -> filed.year().equals(situation.year().fileLabel()) || filed.year().equals(situation.year().label())
                    || isEarly(filed);
            case ONCE -> true;
            case EVENT -> occasion.eventDay() != null
                    && !filed.date().isBefore(occasion.eventDay().minusDays(isBefore(requirement.due())
                    ? DAYS_BEFORE_A_PLAN : DAYS_BEFORE_AN_EVENT))
                    && !filed.date().isAfter(occasion.eventDay().plusYears(1));
        };
    }

    /** A paper that may go in before its school year begins is kept in the file of the year in which it was sent. */
    private boolean isEarly(RecordFact.Filed filed) {
        LocalDate opens = occasion.due().opens();
        return opens != null && filed.filing().year() == null && filed.date().isBefore(situation.year().start())
                && !filed.date().isBefore(opens);
    }

    /** Whether a paper is sent before its event, in one case at least. */
    private static boolean isBefore(Due due) {
        if (due instanceof Due.Cases cases) {
            return cases.cases().stream().anyMatch(each -> isBefore(each.due()));
        }
        return due instanceof Due.Before || due instanceof Due.Remarked remarked && isBefore(remarked.due());
    }

    private Shown approval(String paper) {
        for (RecordFact.Filed filed : matching(paper)) {
            for (YearRecords.Answer answer : filed.filing().answers()) {
                if (answer.kind().equals("approved")) {
                    Map<String, Object> counted = new LinkedHashMap<>();
                    counted.put("approved", answer.date() == null ? "yes" : answer.date().toString());
                    return Shown.yes(answer.date(), counted, List.of(filed.ref()), Say.it("paper.approved"));
                }
            }
        }
        List<RecordRef> asked = matching(paper).stream().map(RecordFact::ref).toList();
        return Shown.no(Map.of(), asked, null, Say.it(asked.isEmpty() ? "paper.not-asked" : "paper.waiting"));
    }

    private Shown document(String kind) {
        List<RecordRef> kept = new ArrayList<>();
        for (RecordFact fact : facts) {
            if (fact instanceof RecordFact.Kept document && document.document().kind().equals(kind)
                    && (requirement.recurs().each() != Requirement.Recurs.Each.YEAR
                    || document.year().equals(situation.year().fileLabel()))) {
                kept.add(fact.ref());
            }
        }
        String name = kind.replace('-', ' ');
        Map<String, Object> counted = new LinkedHashMap<>();
        counted.put(kind, kept.size());
        return kept.isEmpty() ? Shown.no(counted, kept, null, Say.it("lacks.none", name))
                : Shown.yes(null, counted, kept, Say.it("document.kept", name));
    }

    /** Every stretch that is over, from the first entry of the year on, must have its entries. */
    private Shown log(Evidence.Log log) {
        List<RecordFact.Logged> entries = new ArrayList<>();
        LocalDate first = null;
        for (RecordFact fact : facts) {
            if (fact instanceof RecordFact.Logged logged && !logged.date().isBefore(situation.firstDay())
                    && !logged.date().isAfter(situation.lastDay()) && !logged.date().isAfter(situation.today())) {
                entries.add(logged);
                first = first == null || logged.date().isBefore(first) ? logged.date() : first;
            }
        }
        Map<String, Object> counted = new LinkedHashMap<>();
        counted.put("log-entries", entries.size());
        List<RecordRef> records = entries.stream().map(RecordFact::ref).toList();
        String sum = Say.it("log.sum", entries.size());
        if (entries.isEmpty()) {
            return Shown.no(counted, records, sum, Say.it("log.none"));
        }
        List<String> empty = new ArrayList<>();
        for (YearRecords.Stretch stretch : Stretches.of(log.per(), situation)) {
            boolean over = !stretch.to().isBefore(first) && stretch.to().isBefore(situation.today());
            long there = entries.stream().filter(entry -> !entry.date().isBefore(stretch.from())
                    && !entry.date().isAfter(stretch.to())).count();
            if (over && there < log.entries()) {
                empty.add(Say.day(stretch.from()));
            }
        }
        return empty.isEmpty() ? Shown.yes(null, counted, records, sum)
                : Shown.no(counted, records, sum, Say.it("log.gaps", String.join("; ", empty)));
    }

    private Shown samples(Evidence.Samples rule) {
        List<RecordRef> records = new ArrayList<>();
        List<RecordFact.Worked> pieces = new ArrayList<>();
        for (RecordFact fact : facts) {
            if (fact instanceof RecordFact.Worked worked && worked.date() != null && inYear(worked.date())) {
                pieces.add(worked);
                records.add(worked.ref());
            }
        }
        Map<String, Object> counted = new LinkedHashMap<>();
        counted.put("samples", pieces.size());
        counted.put("samples-asked", rule.least());
        String sum = Say.it("samples.sum", pieces.size());
        if (!rule.perSubject()) {
            return pieces.size() >= rule.least() ? Shown.yes(null, counted, records, sum)
                    : Shown.no(counted, records, sum, Say.it("samples.lack", rule.least() - pieces.size()));
        }
        List<String> missing = new ArrayList<>();
        SubjectIndex index = new SubjectIndex(List.copyOf(pieces), piece -> true);
        for (org.hearthrule.law.SubjectItem item : SubjectsOwed.of(situation)) {
            int there = index.facts(item).size();
            counted.put(item.name(), there);
            if (there < rule.least()) {
                missing.add(item.name());
            }
        }
        return missing.isEmpty() ? Shown.yes(null, counted, records, sum)
                : Shown.no(counted, records, sum, Say.it("samples.lack-in", String.join("; ", missing)));
    }

    private Shown readings(int least) {
        List<RecordRef> records = new ArrayList<>();
        for (RecordFact fact : facts) {
            if (fact instanceof RecordFact.Read read
                    && (read.date() == null ? read.year().equals(situation.year().fileLabel()) : inYear(read.date()))) {
                records.add(read.ref());
            }
        }
        Map<String, Object> counted = new LinkedHashMap<>();
        counted.put("readings", records.size());
        String sum = Say.it("readings.sum", records.size());
        return records.size() >= least ? Shown.yes(null, counted, records, sum)
                : Shown.no(counted, records, sum, Say.it("readings.lack", least - records.size()));
    }

    private boolean inYear(LocalDate day) {
        return !day.isBefore(situation.firstDay()) && !day.isAfter(situation.lastDay()) && !day.isAfter(situation.today());
    }

    /** A paper asked for in certain grades must be of that time; others stand once they are there. */
    private Shown health(Evidence.HealthPaper rule) {
        LocalDate earliest = mentionsGrade(requirement.when()) ? situation.year().start().minusMonths(MONTHS_BEFORE_A_GRADE) : LocalDate.MIN;
        for (RecordFact fact : facts) {
            if (fact instanceof RecordFact.Healthy paper && rule.kinds().contains(paper.paper().kind())
                    && (paper.date() == null ? earliest.equals(LocalDate.MIN) : !paper.date().isBefore(earliest))) {
                Map<String, Object> counted = new LinkedHashMap<>();
                counted.put("paper", paper.paper().kind());
                return Shown.yes(paper.date(), counted, List.of(paper.ref()),
                        Say.it("health.there", paper.paper().kind().replace('-', ' ')));
            }
        }
        return Shown.no(Map.of(), List.of(), null, Say.it("health.lack", EvidenceCheck.words(rule.kinds())));
    }

    private static boolean mentionsGrade(Condition condition) {
        if (condition instanceof Condition.All all) {
            return all.parts().stream().anyMatch(PaperCheck::mentionsGrade);
        }
        if (condition instanceof Condition.Any any) {
            return any.parts().stream().anyMatch(PaperCheck::mentionsGrade);
        }
        return condition instanceof Condition.Grade;
    }
}
