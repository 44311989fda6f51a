package org.hearthrule.rules;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.hearthrule.law.Evidence;
import org.hearthrule.records.YearRecords.Stretch;

/** Counts a person's contacts with the child. */
final class VisitCheck {

    private final Situation situation;
    private final List<RecordFact> facts;

    VisitCheck(Situation situation, List<RecordFact> facts) {
        this.situation = situation;
        this.facts = facts;
    }

    Shown check(Evidence.Visits rule) {
        List<RecordFact.Visited> visits = new ArrayList<>();
        for (RecordFact fact : facts) {
            if (fact instanceof RecordFact.Visited visited && !visited.date().isBefore(situation.firstDay())
                    && !visited.date().isAfter(situation.lastDay()) && !visited.date().isAfter(situation.today())) {
                visits.add(visited);
            }
        }
        List<RecordRef> records = visits.stream().map(RecordFact::ref).toList();
        return rule.perDays() > 0 ? perDays(rule, visits, records) : perStretch(rule, visits, records);
    }

    /** Whole blocks of days taught decide; a block that is still running leaves it open. */
    private Shown perDays(Evidence.Visits rule, List<RecordFact.Visited> visits, List<RecordRef> records) {
        long taught = facts.stream().filter(RecordFact.Logged.class::isInstance).map(RecordFact::date)
                .filter(day -> !day.isBefore(situation.firstDay()) && !day.isAfter(situation.today())
                        && !day.isAfter(situation.lastDay())).distinct().count();
        long blocks = taught / rule.perDays();
        BigDecimal needed = rule.amount().multiply(BigDecimal.valueOf(blocks));
        long faceToFace = visits.stream().filter(visit -> visit.visit().faceToFace()).count();
        long faceNeeded = rule.faceToFace() == 0 ? 0 : needed.divide(BigDecimal.valueOf(rule.faceToFace()), 0, RoundingMode.UP).longValue();
        Map<String, Object> counted = new LinkedHashMap<>();
        counted.put("visits", visits.size());
        counted.put("visits-asked", needed);
        counted.put("face-to-face", faceToFace);
        counted.put("face-to-face-asked", faceNeeded);
        String sum = Say.it("visits.sum-days", visits.size(), taught, rule.perDays(), needed.toPlainString());
        boolean enough = BigDecimal.valueOf(visits.size()).compareTo(needed) >= 0 && faceToFace >= faceNeeded;
        return enough ? Shown.yes(null, counted, records, sum)
                : Shown.no(counted, records, sum, Say.it("visits.lack", needed.toPlainString(), visits.size()));
    }

    private Shown perStretch(Evidence.Visits rule, List<RecordFact.Visited> visits, List<RecordRef> records) {
        List<Stretch> stretches = Stretches.of(rule.per(), situation).stream()
                .filter(stretch -> stretch.to().isBefore(situation.today())).toList();
        BigDecimal total = BigDecimal.ZERO;
        int tooFew = 0;
        for (Stretch stretch : stretches) {
            BigDecimal reached = reached(rule, visits, stretch.from(), stretch.to());
            total = total.add(reached);
            if (reached.compareTo(rule.amount()) < 0) {
                tooFew++;
            }
        }
        String per = rule.per().name().toLowerCase(Locale.ROOT);
        Map<String, Object> counted = new LinkedHashMap<>();
        counted.put(rule.hours() ? "hours-of-contact" : "visits", total);
        counted.put(per + "s", stretches.size());
        String sum = Say.it("visits.sum", total.toPlainString(), stretches.size(), per, rule.amount().toPlainString());
        BigDecimal needed = rule.amount().multiply(BigDecimal.valueOf(stretches.size()));
        boolean enough = rule.mean() ? total.compareTo(needed) >= 0 : tooFew == 0;
        return enough ? Shown.yes(null, counted, records, sum)
                : Shown.no(counted, records, sum, Say.it("visits.lack", needed.toPlainString(), total.toPlainString()));
    }

    private static BigDecimal reached(Evidence.Visits rule, List<RecordFact.Visited> visits, LocalDate from, LocalDate to) {
        long count = 0;
        int minutes = 0;
        for (RecordFact.Visited visit : visits) {
            if (!visit.date().isBefore(from) && !visit.date().isAfter(to)) {
                count++;
                minutes += visit.visit().minutes();
            }
        }
        return rule.hours() ? BigDecimal.valueOf(minutes).divide(BigDecimal.valueOf(60), 1, RoundingMode.DOWN)
                : BigDecimal.valueOf(count);
    }
}
