package org.hearthrule.rules;

import java.util.ArrayList;
import java.util.List;
import org.hearthrule.law.Condition;
import org.hearthrule.law.Threshold;
import org.hearthrule.records.YearRecords;

/** Recorded scores against a law's number. */
final class Results {

    private Results() {
    }

    /** @return whether the scores of the year meant hold the comparison; no when there is no test at all */
    static Truth holds(Condition.Result rule, Situation situation) {
        String label = situation.year().plus(-rule.yearsAgo()).fileLabel();
        YearRecords records = situation.book().years().get(label);
        YearRecords.TestTaken last = null;
        if (records != null) {
            for (YearRecords.TestTaken test : records.tests()) {
                if (test.student().equals(situation.studentId()) && !test.scores().isEmpty()) {
                    last = test;
                }
            }
        }
        return last == null ? Truth.no(Say.it("result.none", label)) : compare(rule.threshold(), last.scores());
    }

    /** Every area named must hold; without named areas every score of the measure must. */
    static Truth compare(Threshold threshold, List<YearRecords.Score> scores) {
        List<Truth> parts = new ArrayList<>();
        if (threshold.areas().isEmpty()) {
            for (YearRecords.Score score : scores) {
                if (score.measure().equals(threshold.measure())) {
                    parts.add(one(threshold, score));
                }
            }
            if (parts.isEmpty()) {
                return missing(threshold, threshold.measure());
            }
        }
        for (String area : threshold.areas()) {
            YearRecords.Score found = null;
            for (YearRecords.Score score : scores) {
                if (score.area().equals(area) && score.measure().equals(threshold.measure())) {
                    found = score;
                }
            }
            parts.add(found == null ? missing(threshold, area) : one(threshold, found));
        }
        return Truth.all(parts);
    }

    private static Truth one(Threshold threshold, YearRecords.Score score) {
        String reason = Say.it("result.is", score.area(), score.measure(), score.value().toPlainString(),
                threshold.comparison().words(), threshold.number().toPlainString());
        return threshold.comparison().holds(score.value(), threshold.number()) ? Truth.yes(reason) : Truth.no(reason);
    }

    private static Truth missing(Threshold threshold, String area) {
        return Truth.unknown(Say.it("result.missing", area, threshold.measure()),
                Say.it("result.ask", area, threshold.measure()));
    }
}
