package org.hearthrule.rules;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hearthrule.law.Condition;
import org.hearthrule.law.Threshold;
import org.hearthrule.records.YearRecords;
import org.hearthrule.records.YearRecords.TestTaken;

/** Recorded scores against a law's number, or against those of the test before. */
final class Results {

    private Results() {
    }

    /**
     * @param testDay day of the test that brought the duty up, or null
     * @return whether the scores meant hold the comparison; no when there is no test at all
     */
    static Truth holds(Condition.Result rule, Situation situation, LocalDate testDay) {
        Situation then = rule.yearsAgo() == 0 ? situation : situation.earlier(rule.yearsAgo());
        List<TestTaken> tests = TestsTaken.of(rule.requirement(), situation);
        Optional<TestTaken> test;
        if (testDay != null && rule.yearsAgo() == 0) {
            test = tests.stream().filter(taken -> testDay.equals(taken.date())).reduce((first, second) -> second);
        } else {
            test = rule.orEarlier() ? TestsTaken.lastUpTo(tests, then) : TestsTaken.lastIn(tests, then);
        }
        return test.map(taken -> compare(rule.threshold(), taken, situation))
                .orElseGet(() -> Truth.no(Say.it("result.none", then.year().fileLabel())));
    }

    /** Every area named must hold; without named areas every score of the measure must. */
    static Truth compare(Threshold threshold, TestTaken test, Situation situation) {
        Optional<TestTaken> earlier = threshold.againstTestBefore() ? TestsTaken.before(test, situation) : Optional.empty();
        if (threshold.againstTestBefore() && earlier.isEmpty()) {
            return Truth.no(Say.it("result.first"));
        }
        List<YearRecords.Score> before = earlier.map(TestTaken::scores).orElse(List.of());
        List<Truth> parts = new ArrayList<>();
        if (threshold.areas().isEmpty()) {
            for (YearRecords.Score score : test.scores()) {
                if (score.measure().equals(threshold.measure())) {
                    parts.add(one(threshold, score, before));
                }
            }
            if (parts.isEmpty()) {
                return missing(threshold, threshold.measure());
            }
        }
        for (String area : threshold.areas()) {
            parts.add(score(test.scores(), area, threshold.measure()).map(found -> one(threshold, found, before))
                    .orElseGet(() -> missing(threshold, area)));
        }
        return Truth.all(parts);
    }

    private static Optional<YearRecords.Score> score(List<YearRecords.Score> scores, String area, String measure) {
        return scores.stream().filter(score -> score.area().equals(area) && score.measure().equals(measure))
                .reduce((first, second) -> second);
    }

    private static Truth one(Threshold threshold, YearRecords.Score score, List<YearRecords.Score> before) {
        BigDecimal bound = threshold.againstTestBefore()
                ? score(before, score.area(), score.measure()).map(YearRecords.Score::value).orElse(null) : threshold.number();
        if (bound == null) {
            return Truth.unknown(Say.it("result.missing-before", score.area(), threshold.measure()),
                    Say.it("result.ask-before", score.area(), threshold.measure()));
        }
        String reason = Say.it("result.is", score.area(), score.measure(), score.value().toPlainString(),
                threshold.comparison().words(), bound.toPlainString());
        return threshold.comparison().holds(score.value(), bound) ? Truth.yes(reason) : Truth.no(reason);
    }

    private static Truth missing(Threshold threshold, String area) {
        return Truth.unknown(Say.it("result.missing", area, threshold.measure()),
                Say.it("result.ask", area, threshold.measure()));
    }
}
