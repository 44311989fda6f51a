package org.hearthrule.law;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hearthrule.input.Fields;
import org.hearthrule.input.Mapping;
import org.hearthrule.input.Node;
import org.hearthrule.input.Place;
import org.hearthrule.input.Scalar;
import org.hearthrule.terms.Grades;

/** Reads evidence that is an amount: of time taught, and of contact with somebody over a time. */
final class TimeReader {

    private static final List<String> PERIODS = List.of("year", "semester", "trimester", "quarter", "month", "week");
    private static final List<String> MEASURES = List.of("days", "hours", "weeks", "months");
    private static final List<String> PLACES = List.of("home");
    private static final String MONTH = "month";
    private static final int MOST = 1_000;

    private TimeReader() { }

    /** @return the stretch under {@code per}, or null */
    static Period period(Fields fields) {
        String word = fields.optionalOneOf("per", PERIODS).orElse(null);
        return word == null ? null : Period.values()[PERIODS.indexOf(word)];
    }

    static Evidence time(Fields fields, Scope scope) {
        String measure = null;
        for (String key : MEASURES) {
            if (!fields.has(key)) {
                continue;
            }
            if (measure != null) {
                scope.error(fields.place(key), ProfileFault.SEVERAL_AMOUNTS,
                        Say.code(key) + " beside " + Say.code(measure), "one amount", "write two, under all-of");
            } else {
                measure = key;
            }
        }
        if (measure == null && fields.isMapping()) {
            scope.error(fields.place(), ProfileFault.NO_AMOUNT, "no amount of time", Say.oneOf(MEASURES), null);
        }
        Fields set = measure == null ? null : setBy(fields, measure);
        Map<String, BigDecimal> amount = measure == null ? Map.of() : set != null ? fallback(set, scope)
                : amount(fields, measure, scope);
        Evidence.Time.SetBy setBy = set == null ? null : setBy(set, scope);
        Period per = period(fields);
        List<String> of = Forms.names(fields, "of", scope);
        checkSubjects(fields, of, scope);
        String at = fields.optionalOneOf("at", PLACES).orElse(null);
        BigDecimal dayHours = hours(fields, "day-hours", measure, scope);
        BigDecimal meanHours = hours(fields, "mean-hours", measure, scope);
        Grades over = fields.has("over") ? GradeReader.listOrLevel(fields, "over", scope) : null;
        Evidence.Time.Yardstick yardstick = fields.optionalOneOf("yardstick", Evidence.Time.Yardstick.class)
                .orElse(Evidence.Time.Yardstick.EXACT);
        fields.done();
        return measure == null ? null : new Evidence.Time(Evidence.Time.Measure.values()[MEASURES.indexOf(measure)],
                amount, per == null ? Period.YEAR : per, of, at, dayHours, meanHours, over, yardstick,
                setBy);
    }

    /** @return the keys of a number that somebody else sets, or null when it is the law's own */
    private static Fields setBy(Fields fields, String measure) {
        if (!(fields.node(measure) instanceof Mapping mapping)
                || mapping.entries().stream().noneMatch(entry -> entry.key().text().equals("set-by"))) {
            return null;
        }
        return fields.fields(measure, "the number that is set");
    }

    private static Map<String, BigDecimal> fallback(Fields set, Scope scope) {
        Map<String, BigDecimal> amounts = new LinkedHashMap<>();
        if (set.has("fallback")) {
            put(amounts, "", set.node("fallback"), scope);
        }
        return Collections.unmodifiableMap(amounts);
    }

    private static Evidence.Time.SetBy setBy(Fields set, Scope scope) {
        String who = set.text("set-by", Forms.LONGEST_TITLE);
        String value = Forms.name(set, "value", scope);
        set.done();
        return new Evidence.Time.SetBy(who, value);
    }

    private static void checkSubjects(Fields fields, List<String> of, Scope scope) {
        Node node = fields.optionalNode("of").orElse(null);
        for (int i = 0; i < of.size(); i++) {
            if (!of.get(i).equals("core")) {
                scope.checkSubject(Forms.place(node, i), of.get(i));
            }
        }
    }

    private static BigDecimal hours(Fields fields, String key, String measure, Scope scope) {
        if (!fields.has(key)) {
            return null;
        }
        if (measure != null && !measure.equals("days")) {
            scope.error(fields.place(key), ProfileFault.WRONG_MEASURE, Say.code(key) + " beside " + Say.code(measure),
                    Say.code(key) + " only beside `days`", null);
        }
        return Forms.number(fields.node(key), false, scope);
    }

    /** One amount for all under the name "", or one for each level. */
    private static Map<String, BigDecimal> amount(Fields fields, String key, Scope scope) {
        Map<String, BigDecimal> amounts = new LinkedHashMap<>();
        if (Forms.isScalar(fields.node(key))) {
            put(amounts, "", fields.node(key), scope);
            return Collections.unmodifiableMap(amounts);
        }
        Fields levels = fields.fields(key, "the amounts");
        List<Mapping.Entry> entries = levels.entries();
        if (levels.isMapping() && entries.isEmpty()) {
            scope.error(levels.place(), ProfileFault.NO_AMOUNT, "no amount", "an amount for each level", null);
        }
        for (Mapping.Entry entry : entries) {
            Place place = entry.key().place();
            String level = entry.key().text();
            Grades grades = GradeReader.level(place, level, scope);
            for (String before : amounts.keySet()) {
                if (grades != null && overlap(grades, scope.levels.get(before))) {
                    scope.error(place, ProfileFault.LEVELS_OVERLAP, Say.code(level) + ", which shares a grade with "
                            + Say.code(before), "levels that share no grade", null);
                }
            }
            if (grades != null) {
                put(amounts, level, entry.value(), scope);
            }
        }
        return Collections.unmodifiableMap(amounts);
    }

    private static void put(Map<String, BigDecimal> amounts, String level, Node node, Scope scope) {
        BigDecimal number = Forms.number(node, false, scope);
        if (number != null) {
            amounts.put(level, number);
        }
    }

    private static boolean overlap(Grades one, Grades other) {
        for (int grade : one.numbers()) {
            if (other.holds(grade)) {
                return true;
            }
        }
        return false;
    }

    static Evidence visits(Fields fields, Scope scope) {
        boolean hours = fields.has("hours");
        if (hours && fields.has("least")) {
            scope.error(fields.place("least"), ProfileFault.SEVERAL_AMOUNTS, "`least` beside `hours`", "one amount",
                    null);
        }
        String key = hours ? "hours" : "least";
        BigDecimal amount = null;
        if (hours || fields.has("least")) {
            amount = Forms.number(fields.node(key), false, scope);
        } else if (fields.isMapping()) {
            scope.error(fields.place(), ProfileFault.NO_AMOUNT, "no amount", "`least` (visits) or `hours`", null);
        }
        int perDays = fields.optionalInteger("per-days", 1, MOST).orElse(0);
        Period per = period(fields);
        if (fields.has("per") && fields.has("per-days")) {
            scope.error(fields.place("per"), ProfileFault.SEVERAL_PERIODS, "`per` beside `per-days`", "one of the two",
                    null);
        } else if (fields.isMapping() && !fields.has("per") && !fields.has("per-days")) {
            scope.error(fields.place(), ProfileFault.NO_PERIOD, "neither `per` nor `per-days`", "one of the two",
                    null);
        }
        boolean monthly = fields.optionalNode("mean").filter(node -> node instanceof Scalar
                && ((Scalar) node).text().equals(MONTH)).isPresent();
        boolean mean = monthly ? fields.oneOf("mean", List.of(MONTH)) != null
                : fields.optionalYesNo("mean").orElse(false);
        if (monthly && (!hours || per != Period.WEEK)) {
            scope.error(fields.place("mean"), ProfileFault.MISPLACED_KEY, "`mean: month` without hours a week",
                    "`hours` and `per: week` beside it", null);
        }
        Evidence.Visits.FurtherChild further = furtherChild(fields, hours && mean && !monthly, scope);
        int faceToFace = fields.optionalInteger("face-to-face", 1, MOST).orElse(0);
        String by = Forms.name(fields, "by", scope);
        fields.done();
        return new Evidence.Visits(amount, hours, perDays, per, mean, monthly, further, faceToFace, by);
    }

    private static Evidence.Visits.FurtherChild furtherChild(Fields fields, boolean fits, Scope scope) {
        if (!fields.has("further-child")) {
            return null;
        }
        if (!fits) {
            scope.error(fields.place("further-child"), ProfileFault.MISPLACED_KEY,
                    "`further-child` without hours on average", "`hours` and `mean: yes` beside it", null);
        }
        Fields further = fields.fields("further-child", "the hours for a further child");
        BigDecimal hours = Forms.number(further.node("hours"), false, scope);
        String per = further.oneOf("per", List.of(MONTH, "week"));
        further.done();
        return new Evidence.Visits.FurtherChild(hours, "week".equals(per) ? Period.WEEK : Period.MONTH);
    }
}
