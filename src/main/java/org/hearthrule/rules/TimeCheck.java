package org.hearthrule.rules;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hearthrule.law.Evidence;
import org.hearthrule.law.Period;
import org.hearthrule.law.Requirement;
import org.hearthrule.records.YearRecords;
import org.hearthrule.terms.Grades;
import org.hearthrule.terms.Subjects;

/** Counts days, hours, weeks or months of instruction from the log. */
final class TimeCheck {

    private static final String HOURS = "hours";

    private final Requirement requirement;
    private final Situation situation;
    private final List<RecordFact> facts;

    TimeCheck(Requirement requirement, Situation situation, List<RecordFact> facts) {
        this.requirement = requirement;
        this.situation = situation;
        this.facts = facts;
    }

    /** Minutes a day, and what could not be told. */
    private static final class Tally {
        private final Map<LocalDate, Integer> minutes = new HashMap<>();
        private final List<RecordRef> records = new ArrayList<>();
        private int unsaidMinutes;
        private String unsaid;

        private LocalDate lastDay() {
            return minutes.isEmpty() ? null : Collections.max(minutes.keySet());
        }

        private int total() {
            int sum = 0;
            for (int day : minutes.values()) {
                sum += day;
            }
            return sum;
        }
    }

    Shown check(Evidence.Time time) {
        Optional<BigDecimal> amount = amount(time);
        if (amount.isEmpty() && time.setBy() != null) {
            return Shown.unknown(Map.of(), List.of(), null, Say.it("time.set-by-missing", time.setBy().who(), unit(time)),
                    Say.it("time.set-by-question", time.setBy().who(), unit(time), time.setBy().value()));
        }
        if (amount.isEmpty()) {
            String name = situation.student().name();
            return Shown.unknown(Map.of(), List.of(), null, Say.it("grade.unknown-level", name, situation.year().label()),
                    Say.it("grade.ask", name, situation.year().label()));
        }
        if (time.per() != null && time.per() != Period.YEAR) {
            return inEach(time, amount.get());
        }
        LocalDate first = countFrom();
        LocalDate last = earlier(situation.today(), situation.lastDay());
        Tally tally = tally(time, first, last);
        Shown judged = judged(time, amount.get(), tally, last);
        judged = judged.along(courses(time, amount.get(), first, tally, judged.counted().containsKey(HOURS)));
        Optional<String> missing = time.over() == null ? Optional.empty() : missingYear(time.over());
        return judged.value() == Truth.Value.NO && missing.isPresent()
                ? Shown.unknown(judged.counted(), judged.records(), String.join(" ", judged.sums()),
                String.join(" ", judged.lacks()), Say.it("history.ask", missing.get())).along(judged.courses())
                : judged;
    }

    /** Years are added up: without one of them nobody can say that the sum is too small. */
    private Optional<String> missingYear(Grades over) {
        int yearsBefore = situation.grade().orElse(over.numbers().first()) - over.numbers().first();
        for (int back = 1; back <= yearsBefore; back++) {
            String label = situation.year().plus(-back).fileLabel();
            if (!situation.book().years().containsKey(label)) {
                return Optional.of(label);
            }
        }
        return Optional.empty();
    }

    private Optional<BigDecimal> amount(Evidence.Time time) {
        Optional<BigDecimal> entered = time.setBy() == null ? Optional.empty() : entered(time.setBy());
        if (entered.isPresent()) {
            return entered;
        }
        if (time.amount().containsKey("")) {
            return Optional.of(time.amount().get(""));
        }
        Optional<Integer> grade = situation.grade();
        for (Map.Entry<String, BigDecimal> level : time.amount().entrySet()) {
            Grades grades = situation.profile().levels().get(level.getKey());
            if (grade.isPresent() && grades != null && grades.holds(grade.get())) {
                return Optional.of(level.getValue());
            }
        }
        return Optional.empty();
    }

    /** The number that the family entered for what its district has set. */
    private Optional<BigDecimal> entered(Evidence.Time.SetBy setBy) {
        return situation.choice(setBy.value()).map(YearRecords.ChoiceMade::value)
                .filter(value -> value.matches("\\d{1,4}(\\.\\d{1,2})?")).map(BigDecimal::new);
    }

    /** In the first year of a program a law may count only from the day its paper was sent. */
    private LocalDate countFrom() {
        LocalDate first = situation.firstDay();
        if (requirement.countsFrom() == null || situation.yearOfProgram() > 1) {
            return first;
        }
        LocalDate sent = null;
        for (RecordFact fact : facts) {
            if (fact instanceof RecordFact.Filed filed && filed.filing().paper().equals(requirement.countsFrom())
                    && filed.date() != null && filed.year().equals(situation.year().fileLabel())
                    && (sent == null || filed.date().isBefore(sent))) {
                sent = filed.date();
            }
        }
        return sent != null && sent.isAfter(first) ? sent : first;
    }

    private Tally tally(Evidence.Time time, LocalDate from, LocalDate to) {
        Tally tally = new Tally();
        for (RecordFact fact : facts) {
            if (fact instanceof RecordFact.Logged logged && counts(time, logged.entry(), from, to, tally)) {
                tally.minutes.merge(logged.date(), logged.entry().minutes(), Integer::sum);
                tally.records.add(logged.ref());
            }
        }
        if (time.dayHours() != null) {
            tally.minutes.values().removeIf(day -> TimeSums.hours(day).compareTo(time.dayHours()) < 0);
        }
        return tally;
    }

    private boolean counts(Evidence.Time time, YearRecords.LogEntry entry, LocalDate from, LocalDate to, Tally tally) {
        boolean inTime = time.over() == null ? !entry.date().isBefore(from) && !entry.date().isAfter(to)
                : !entry.date().isAfter(to) && inGrades(time.over(), entry.date());
        if (!inTime || entry.minutes() <= 0 || !subjectCounts(time.of(), entry, tally)) {
            return false;
        }
        if (time.at() == null || time.at().equals(entry.place())) {
            return true;
        }
        if (entry.place() == null) {
            tally.unsaidMinutes += entry.minutes();
            tally.unsaid = Say.it("time.place-unsaid", time.at());
        }
        return false;
    }

    private static boolean subjectCounts(List<String> of, YearRecords.LogEntry entry, Tally tally) {
        if (of.isEmpty()) {
            return true;
        }
        if (Boolean.FALSE.equals(entry.core()) && of.contains("core")) {
            return false;
        }
        if (Boolean.TRUE.equals(entry.core()) && of.contains("core")) {
            return true;
        }
        for (String asked : of) {
            for (String subject : entry.subjects()) {
                if (Subjects.shows(subject, asked)) {
                    return true;
                }
            }
        }
        if (of.contains("core") && of.size() == 1) {
            tally.unsaidMinutes += entry.minutes();
            tally.unsaid = Say.it("time.core-unsaid");
        }
        return false;
    }

    private boolean inGrades(Grades grades, LocalDate day) {
        ProgramYear year = ProgramYear.holding(situation.pathway().year(), day);
        return situation.gradeIn(year).filter(grades::holds).isPresent();
    }

    private Shown judged(Evidence.Time time, BigDecimal amount, Tally tally, LocalDate last) {
        BigDecimal reached = TimeSums.reached(time.measure(), tally.minutes);
        String unit = unit(time);
        Map<String, Object> counted = new LinkedHashMap<>();
        counted.put(key(time), reached);
        counted.put(key(time) + "-asked", amount);
        String whose = time.setBy() == null || entered(time.setBy()).isPresent() ? ""
                : " " + Say.it("time.set-by-ask", time.setBy().who(), time.setBy().value());
        String sum = Say.it("time.sum", reached.toPlainString(), unit, tally.records.size(), amount.toPlainString()) + whose;
        boolean enough = reached.compareTo(amount) >= 0;
        if (enough && time.meanHours() != null) {
            return mean(time, amount, tally, counted, sum);
        }
        if (enough) {
            return Shown.yes(tally.lastDay(), counted, tally.records, sum);
        }
        String lack = Say.it("time.lack", reached.toPlainString(), amount.toPlainString(), unit,
                amount.subtract(reached).toPlainString());
        if (tally.unsaid != null && reached.add(TimeSums.hours(tally.unsaidMinutes)).compareTo(amount) >= 0) {
            return Shown.unknown(counted, tally.records, sum, lack, tally.unsaid);
        }
        boolean over = !last.isBefore(situation.year().end());
        if (over && !whose.isEmpty()) {
            return Shown.unknown(counted, tally.records, sum, lack,
                    Say.it("time.set-by-question", time.setBy().who(), unit, time.setBy().value()));
        }
        // short of a number that is not meant exactly nobody can tell; that nothing at all is too little is certain
        if (over && time.yardstick() != Evidence.Time.Yardstick.EXACT && reached.signum() > 0) {
            String key = time.yardstick() == Evidence.Time.Yardstick.SUBSTANTIAL ? "time.substantial" : "time.prorated";
            return Shown.unknown(counted, tally.records, sum, lack,
                    Say.it(key, amount.toPlainString(), unit, situation.profile().confirmWith()));
        }
        return Shown.no(counted, tally.records, sum, lack);
    }

    /** An average over the days: certain above days times hours, certain failure below, unclear between. */
    private Shown mean(Evidence.Time time, BigDecimal amount, Tally tally, Map<String, Object> counted, String sum) {
        BigDecimal hours = TimeSums.hours(tally.total());
        BigDecimal need = time.meanHours().multiply(amount);
        counted.put(HOURS, hours);
        counted.put(HOURS + "-asked", need);
        if (hours.compareTo(time.meanHours().multiply(BigDecimal.valueOf(tally.minutes.size()))) >= 0) {
            return Shown.yes(tally.lastDay(), counted, tally.records, sum);
        }
        String lack = Say.it("time.mean", time.meanHours().toPlainString(), hours.toPlainString(), tally.minutes.size());
        return hours.compareTo(need) < 0 ? Shown.no(counted, tally.records, sum, lack)
                : Shown.unknown(counted, tally.records, sum, lack,
                Say.it("time.mean-question", situation.profile().confirmWith()));
    }

    /** The number itself, and the hours beside it where they were counted for an average. */
    private List<TimeCourse> courses(Evidence.Time time, BigDecimal amount, LocalDate first, Tally tally, boolean hours) {
        LocalDate last = situation.lastDay();
        List<TimeCourse> courses = new ArrayList<>(2);
        courses.add(new TimeCourse(key(time), time, time.measure(), unit(time), amount, 0, first, last, tally.minutes));
        if (hours && time.meanHours() != null) {
            courses.add(new TimeCourse(HOURS, time, Evidence.Time.Measure.HOURS, unit(Evidence.Time.Measure.HOURS, time),
                    time.meanHours().multiply(amount), 0, first, last, tally.minutes));
        }
        return courses;
    }

    private Shown inEach(Evidence.Time time, BigDecimal amount) {
        List<YearRecords.Stretch> stretches = Stretches.of(time.per(), situation);
        String per = time.per().name().toLowerCase(Locale.ROOT);
        if (stretches.isEmpty()) {
            return Shown.unknown(Map.of(), List.of(), null, Say.it("time.no-stretch", per), Say.it("time.ask-stretch", per));
        }
        List<Shown> parts = new ArrayList<>();
        int number = 1;
        for (YearRecords.Stretch stretch : stretches) {
            LocalDate last = earlier(situation.today(), stretch.to());
            Tally tally = tally(time, stretch.from(), last);
            BigDecimal reached = TimeSums.reached(time.measure(), tally.minutes);
            Map<String, Object> counted = new LinkedHashMap<>();
            counted.put(per + "-" + number, reached);
            String sum = Say.it("time.sum-in", per, number, reached.toPlainString(), unit(time), amount.toPlainString());
            Shown part = reached.compareTo(amount) >= 0 ? Shown.yes(null, counted, tally.records, sum)
                    : Shown.no(counted, tally.records, sum, Say.it("time.lack-in", per, number, reached.toPlainString(),
                    amount.toPlainString(), unit(time)));
            parts.add(part.along(List.of(new TimeCourse(per + "-" + number, time, time.measure(), unit(time), amount, number,
                    stretch.from(), stretch.to(), tally.minutes))));
            number++;
        }
        return Shown.all(parts);
    }

    private static String unit(Evidence.Time time) {
        return unit(time.measure(), time);
    }

    private static String unit(Evidence.Time.Measure measure, Evidence.Time time) {
        String unit = measure.slug();
        String of = time.of().isEmpty() ? "" : Say.it("time.of-core");
        return unit + of + (time.at() == null ? "" : Say.it("time.at", time.at()));
    }

    private static String key(Evidence.Time time) {
        return (time.of().isEmpty() ? "" : "core-") + time.measure().slug()
                + (time.at() == null ? "" : "-at-" + time.at());
    }

    private static LocalDate earlier(LocalDate one, LocalDate other) {
        return one.isBefore(other) ? one : other;
    }
}
