package org.hearthrule.rules;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.hearthrule.law.Evidence;
import org.hearthrule.law.Period;
import org.hearthrule.records.YearRecords.Stretch;

/** Counts a person's contacts with the child, or with the children of the family when each further one adds to them. */
final class VisitCheck {

    private static final BigDecimal MINUTES = BigDecimal.valueOf(60);
    private static final BigDecimal DAYS_OF_WEEK = BigDecimal.valueOf(7);

    private final Situation situation;
    private final List<RecordFact> facts;
    /** First day of what is counted by weeks or months. */
    private final LocalDate first;

    VisitCheck(Situation situation, List<RecordFact> facts) {
        this(situation, facts, Stretches.first(situation));
    }

    private VisitCheck(Situation situation, List<RecordFact> facts, LocalDate first) {
        this.situation = situation;
        this.facts = facts;
        this.first = first;
    }

    /** Visits by the right person decide; those of an unnamed person may only leave it open. */
    Shown check(Evidence.Visits rule) {
        Visits visits = Visits.of(rule, situation, facts);
        Shown certain = count(rule, visits.certain());
        if (certain.isYes()) {
            return certain;
        }
        if (!visits.perhaps().isEmpty() && count(rule, visits.all()).isYes()) {
            return open(certain, visits.all(), Say.it("visits.ask-by", rule.by().replace('-', ' ')));
        }
        return enoughSinceTheFirst(rule, visits.certain())
                ? open(certain, visits.certain(), Say.it("visits.ask-first-day")) : certain;
    }

    private static Shown open(Shown certain, List<RecordFact.Visited> visits, String question) {
        return Shown.unknown(certain.counted(), records(visits), String.join(" ", certain.sums()),
                String.join(" ", certain.lacks()), question);
    }

    /** Whether it would do if a school year that goes on from the last one began only with the first visit. */
    private boolean enoughSinceTheFirst(Evidence.Visits rule, List<RecordFact.Visited> visits) {
        boolean firstDayUnsaid = situation.calendar().firstDay() == null && first.equals(situation.year().start());
        return firstDayUnsaid && visits.stream().map(RecordFact.Visited::date).min(LocalDate::compareTo)
                .filter(day -> new VisitCheck(situation, facts, day).count(rule, visits).isYes()).isPresent();
    }

    private Shown count(Evidence.Visits rule, List<RecordFact.Visited> visits) {
        if (rule.perDays() > 0) {
            return perDays(rule, visits);
        }
        return rule.monthly() ? inEachMonth(rule, visits) : perStretch(rule, visits);
    }

    private static List<RecordRef> records(List<RecordFact.Visited> visits) {
        return visits.stream().map(RecordFact::ref).toList();
    }

    /** Whole blocks of days taught decide; a block that is still running leaves it open. */
    private Shown perDays(Evidence.Visits rule, List<RecordFact.Visited> visits) {
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
        return enough ? Shown.yes(null, counted, records(visits), sum)
                : Shown.no(counted, records(visits), sum, Say.it("visits.lack", needed.toPlainString(), visits.size()));
    }

    private Shown perStretch(Evidence.Visits rule, List<RecordFact.Visited> visits) {
        List<Stretch> stretches = over(rule.per());
        BigDecimal asked = counted(rule, rule.amount());
        BigDecimal total = BigDecimal.ZERO;
        int tooFew = 0;
        for (Stretch stretch : stretches) {
            BigDecimal reached = reached(rule, visits, stretch);
            total = total.add(reached);
            if (reached.compareTo(asked) < 0) {
                tooFew++;
            }
        }
        String per = rule.per().name().toLowerCase(Locale.ROOT);
        String what = rule.hours() ? "hours-of-contact" : "visits";
        BigDecimal needed = asked.multiply(BigDecimal.valueOf(stretches.size())).add(forFurtherChildren(rule));
        Map<String, Object> counted = new LinkedHashMap<>();
        counted.put(what, shown(rule, total));
        counted.put(what + "-asked", shown(rule, needed));
        counted.put(per + "s", stretches.size());
        String sum = Say.it("visits.sum", shown(rule, total).toPlainString(), stretches.size(), per,
                rule.amount().toPlainString());
        boolean enough = rule.mean() ? total.compareTo(needed) >= 0 : tooFew == 0;
        return enough ? Shown.yes(null, counted, records(visits), sum)
                : Shown.no(counted, records(visits), sum, Say.it("visits.lack", shown(rule, needed).toPlainString(),
                shown(rule, total).toPlainString()));
    }

    private List<Stretch> over(Period period) {
        return Stretches.of(period, situation).stream().filter(stretch -> stretch.to().isBefore(situation.today())
                && !stretch.to().isBefore(first)).toList();
    }

    /** Only stretches that were taught from their first day add to what is asked. */
    private BigDecimal forFurtherChildren(Evidence.Visits rule) {
        if (rule.further() == null) {
            return BigDecimal.ZERO;
        }
        long whole = over(rule.further().per()).stream().filter(stretch -> !stretch.from().isBefore(first)).count();
        int further = Visits.children(situation).size() - 1;
        return counted(rule, rule.further().hours()).multiply(BigDecimal.valueOf(whole * further));
    }

    /** Hours of the month over its weeks, the days of the month divided by seven, for each month that is over. */
    private Shown inEachMonth(Evidence.Visits rule, List<RecordFact.Visited> visits) {
        BigDecimal total = BigDecimal.ZERO;
        int months = 0;
        List<String> tooFew = new ArrayList<>();
        for (Stretch month : over(Period.MONTH)) {
            Stretch taught = new Stretch(month.from().isBefore(first) ? first : month.from(),
                    month.to().isAfter(Stretches.end(situation)) ? Stretches.end(situation) : month.to());
            BigDecimal reached = reached(rule, visits, taught);
            long days = ChronoUnit.DAYS.between(taught.from(), taught.to()) + 1;
            months++;
            total = total.add(reached);
            if (reached.multiply(DAYS_OF_WEEK).compareTo(counted(rule, rule.amount()).multiply(BigDecimal.valueOf(days))) < 0) {
                tooFew.add(Say.month(month.from()));
            }
        }
        Map<String, Object> counted = new LinkedHashMap<>();
        counted.put("hours-of-contact", shown(rule, total));
        counted.put("months", months);
        counted.put("months-short", tooFew.size());
        String sum = Say.it("visits.sum-months", shown(rule, total).toPlainString(), months, rule.amount().toPlainString());
        return tooFew.isEmpty() ? Shown.yes(null, counted, records(visits), sum)
                : Shown.no(counted, records(visits), sum, Say.it("visits.lack-months", String.join(", ", tooFew)));
    }

    /** Hours are counted in minutes, so that nothing is rounded before it is shown. */
    private static BigDecimal counted(Evidence.Visits rule, BigDecimal amount) {
        return rule.hours() ? amount.multiply(MINUTES) : amount;
    }

    private static BigDecimal shown(Evidence.Visits rule, BigDecimal counted) {
        BigDecimal shown = rule.hours() ? counted.divide(MINUTES, 1, RoundingMode.DOWN).stripTrailingZeros() : counted;
        return shown.scale() < 0 ? shown.setScale(0) : shown;
    }

    private static BigDecimal reached(Evidence.Visits rule, List<RecordFact.Visited> visits, Stretch stretch) {
        long count = 0;
        for (RecordFact.Visited visit : visits) {
            if (!visit.date().isBefore(stretch.from()) && !visit.date().isAfter(stretch.to())) {
                count += rule.hours() ? visit.visit().minutes() : 1;
            }
        }
        return BigDecimal.valueOf(count);
    }
}
