package org.hearthrule.rules;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthrule.law.Evidence;
import org.hearthrule.law.Requirement;
import org.hearthrule.law.Threshold;
import org.hearthrule.records.Person;
import org.hearthrule.records.YearRecords;

/** Compares tests and evaluations of the year with what a law asks of them. */
final class AssessmentCheck {

    private final Requirement requirement;
    private final Situation situation;
    private final Occasion occasion;
    private final List<RecordFact> facts;

    AssessmentCheck(Requirement requirement, Situation situation, Occasion occasion, List<RecordFact> facts) {
        this.requirement = requirement;
        this.situation = situation;
        this.occasion = occasion;
        this.facts = facts;
    }

    /** The test of this year, or since the event, that comes closest decides. */
    Shown check(Evidence.Test rule) {
        List<Shown> tried = new ArrayList<>();
        for (RecordFact fact : facts) {
            if (fact instanceof RecordFact.Tested tested && forThisOccasion(tested)
                    && tested.test().method().equals(rule.method())) {
                tried.add(check(rule, tested));
            }
        }
        return best(tried).orElseGet(() -> Shown.no(Map.of(), List.of(), null,
                Say.it("lacks.none", rule.method().replace('-', ' '))));
    }

    Shown check(Evidence.Evaluation rule) {
        List<Shown> tried = new ArrayList<>();
        for (RecordFact fact : facts) {
            if (fact instanceof RecordFact.Evaluated evaluated && forThisOccasion(evaluated)
                    && evaluated.evaluation().method().equals(rule.method())) {
                tried.add(check(rule, evaluated));
            }
        }
        return best(tried).orElseGet(() -> Shown.no(Map.of(), List.of(), null,
                Say.it("lacks.none", rule.method().replace('-', ' '))));
    }

    private boolean forThisOccasion(RecordFact fact) {
        LocalDate day = fact.date();
        if (day != null && day.isAfter(situation.today())) {
            return false;
        }
        if (occasion.eventDay() != null) {
            return day != null && !day.isBefore(occasion.answersFrom());
        }
        return situation.holds(fact.year(), day) ? !ofLastYear(day) : afterTheYear(day);
    }

    /** What is due only after the school year may be done after it, up to its day, in whichever file it lies. */
    private boolean afterTheYear(LocalDate day) {
        LocalDate due = occasion.due().date();
        return day != null && due != null && day.isAfter(situation.year().end()) && !day.isAfter(due);
    }

    /** What still was in time for last year's duty is not taken for this year's. */
    private boolean ofLastYear(LocalDate day) {
        LocalDate due = occasion.due().date();
        if (day == null || due == null || !due.isAfter(situation.year().end()) || situation.yearOfProgram() == 1
                || day.isBefore(situation.year().start())) {
            return false;
        }
        return situation.earlier(1).occasions(requirement).stream().anyMatch(last -> last.due().date() != null
                && !day.isAfter(last.due().date()) && !last.applies().isNo());
    }

    private static Optional<Shown> best(List<Shown> tried) {
        Shown best = null;
        for (Shown one : tried) {
            if (best == null || one.value().ordinal() == 0 || best.value() == Truth.Value.NO && one.value() == Truth.Value.UNKNOWN) {
                best = one;
            }
        }
        return Optional.ofNullable(best);
    }

    private Shown check(Evidence.Test rule, RecordFact.Tested tested) {
        YearRecords.TestTaken test = tested.test();
        Map<String, Object> counted = new LinkedHashMap<>();
        counted.put("test", test.label());
        for (YearRecords.Score score : test.scores()) {
            counted.put(score.area() + " " + score.measure(), score.value());
        }
        List<RecordRef> records = List.of(tested.ref());
        List<String> lacks = new ArrayList<>();
        List<String> questions = new ArrayList<>();
        for (String area : rule.areas()) {
            if (test.scores().stream().noneMatch(score -> score.area().equals(area))) {
                lacks.add(Say.it("test.area-missing", area));
            }
        }
        if (!rule.list().isEmpty() && rule.list().stream().noneMatch(listed -> sameTest(listed, test.name()))) {
            questions.add(Say.it("test.not-listed", test.label(), String.join(", ", rule.list())));
        }
        who(test.givenBy(), rule.givenBy(), rule.notBy(), lacks, questions, "test.giver");
        consent(rule.consent(), test.consent(), questions);
        for (Threshold threshold : rule.thresholds()) {
            threshold(threshold, test, lacks, questions);
        }
        return outcome(counted, records, test.date(), Say.it("test.sum", test.label(), dayOf(test.date())), lacks, questions);
    }

    /** Names are compared loosely: a family writes the short one. */
    private static boolean sameTest(String listed, String written) {
        String one = listed.toLowerCase(java.util.Locale.ROOT);
        String other = written == null ? "" : written.toLowerCase(java.util.Locale.ROOT);
        return !other.isEmpty() && (one.contains(other) || other.contains(one));
    }

    private Shown check(Evidence.Evaluation rule, RecordFact.Evaluated evaluated) {
        YearRecords.Evaluation evaluation = evaluated.evaluation();
        Map<String, Object> counted = new LinkedHashMap<>();
        counted.put("evaluation", evaluation.method());
        List<String> lacks = new ArrayList<>();
        List<String> questions = new ArrayList<>();
        who(evaluation.by(), rule.by(), rule.notBy(), lacks, questions, "evaluation.by");
        consent(rule.consent(), evaluation.consent(), questions);
        for (String part : rule.includes()) {
            if (!evaluation.includes().contains(part)) {
                lacks.add(Say.it("evaluation.includes", part.replace('-', ' ')));
            }
        }
        if (!rule.says().isEmpty()) {
            if (evaluation.outcome() == null) {
                questions.add(Say.it("evaluation.outcome"));
            } else if (!rule.says().contains(evaluation.outcome())) {
                lacks.add(Say.it("evaluation.says", evaluation.outcome(), String.join(Say.it("lacks.or"), rule.says())));
            }
            counted.put("outcome", evaluation.outcome() == null ? "not noted" : evaluation.outcome());
        }
        return outcome(counted, List.of(evaluated.ref()), evaluation.date(),
                Say.it("evaluation.sum", evaluation.method().replace('-', ' '), dayOf(evaluation.date())), lacks, questions);
    }

    private static String dayOf(LocalDate day) {
        return day == null ? Say.it("day.unknown") : Say.day(day);
    }

    private static Shown outcome(Map<String, Object> counted, List<RecordRef> records, LocalDate day, String sum,
                                 List<String> lacks, List<String> questions) {
        if (!lacks.isEmpty()) {
            return new Shown(Truth.Value.NO, null, counted, records, List.of(sum), lacks, List.of());
        }
        if (!questions.isEmpty()) {
            return new Shown(Truth.Value.UNKNOWN, null, counted, records, List.of(sum), questions, questions);
        }
        return Shown.yes(day, counted, records, sum);
    }

    /** Roles of the person named, or the role itself. A person who may not do it rules it out; an unknown one is asked for. */
    private void who(String named, List<String> may, List<String> mayNot, List<String> lacks, List<String> questions, String key) {
        if (may.isEmpty() && mayNot.isEmpty()) {
            return;
        }
        if (named == null) {
            questions.add(Say.it(key + "-ask"));
            return;
        }
        List<String> roles = new ArrayList<>(List.of(named));
        situation.book().person(named).map(Person::roles).ifPresent(roles::addAll);
        situation.book().person(named).ifPresent(person -> person.credentials().forEach(held -> roles.add(held.kind())));
        if (roles.stream().anyMatch(mayNot::contains)) {
            lacks.add(Say.it(key + "-not", EvidenceCheck.words(mayNot)));
        } else if (!may.isEmpty() && roles.stream().noneMatch(may::contains)) {
            // a role written down is an answer; a person's papers may only not have been entered
            (situation.book().person(named).isPresent() ? questions : lacks).add(Say.it(key + "-who", EvidenceCheck.words(may)));
        }
    }

    private static void consent(String asked, String given, List<String> questions) {
        if (asked != null && given == null) {
            questions.add(Say.it("consent.ask", asked));
        }
    }

    private void threshold(Threshold threshold, YearRecords.TestTaken test, List<String> lacks, List<String> questions) {
        Truth holds = Results.compare(threshold, test, situation);
        if (holds.isNo()) {
            lacks.add(holds.reason());
        } else if (holds.isUnknown()) {
            questions.addAll(holds.questions());
        }
    }
}
