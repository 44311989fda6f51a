package org.hearthrule.rules;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hearthrule.law.Condition;
import org.hearthrule.law.Evidence;
import org.hearthrule.records.YearRecords;
import org.hearthrule.records.YearRecords.Evaluation;

/** What a recorded evaluation found. */
final class Outcomes {

    private Outcomes() {
    }

    /** @return whether the evaluation meant has one of the outcomes; no when there is none, unknown when it says none */
    static Truth holds(Condition.Outcome rule, Situation situation) {
        Situation then = rule.yearsAgo() == 0 ? situation : situation.earlier(rule.yearsAgo());
        Optional<Evaluation> found = last(rule, situation, then);
        String label = then.year().fileLabel();
        if (found.isEmpty()) {
            return Truth.no(Say.it("outcome.none", label));
        }
        String outcome = found.get().outcome();
        if (outcome == null) {
            return Truth.unknown(Say.it("outcome.missing"), Say.it("outcome.ask"));
        }
        String reason = Say.it("outcome.is", outcome.replace('-', ' '));
        return rule.says().contains(outcome) ? Truth.yes(reason) : Truth.no(reason);
    }

    private static Optional<Evaluation> last(Condition.Outcome rule, Situation situation, Situation then) {
        Set<String> methods = new HashSet<>();
        situation.requirement(rule.requirement()).ifPresent(asked ->
                Evidence.leaves(asked.shows(), Evidence.Evaluation.class).forEach(one -> methods.add(one.method())));
        List<Evaluation> upToThen = situation.book().years().entrySet().stream()
                .flatMap(year -> year.getValue().evaluations().stream()
                        .filter(evaluation -> counts(evaluation, methods, situation))
                        .filter(evaluation -> rule.orEarlier() ? upTo(evaluation, then, year)
                                : then.holds(year.getKey(), evaluation.date())))
                .sorted(Comparator.comparing(Evaluation::date, Comparator.nullsFirst(Comparator.naturalOrder()))).toList();
        return upToThen.isEmpty() ? Optional.empty() : Optional.of(upToThen.get(upToThen.size() - 1));
    }

    private static boolean upTo(Evaluation evaluation, Situation then, Map.Entry<String, YearRecords> year) {
        return then.holds(year.getKey(), evaluation.date())
                || evaluation.date() != null && evaluation.date().isBefore(then.year().start());
    }

    private static boolean counts(Evaluation evaluation, Set<String> methods, Situation situation) {
        return evaluation.student().equals(situation.studentId())
                && (evaluation.date() == null || !evaluation.date().isAfter(situation.today()))
                && (methods.isEmpty() || methods.contains(evaluation.method()));
    }
}
