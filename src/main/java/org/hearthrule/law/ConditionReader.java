package org.hearthrule.law;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.hearthrule.input.Fields;
import org.hearthrule.input.Node;
import org.hearthrule.terms.EventKind;
import org.hearthrule.terms.Grades;

/** Reads conditions. A mapping holds one of them. */
final class ConditionReader {

    private static final List<String> KEYS = List.of("any", "all", "not", "age", "grade", "year-of-program", "event",
            "came-from", "choice", "history", "result", "attribute", "place", "asked", "opt-in");
    private static final List<String> DAYS = List.of("that-day", "year-start", "year-end");
    private static final List<String> SCHOOLS = List.of("public-school", "private-school", "home-program");
    private static final List<String> PROGRAM_YEARS = List.of("first", "later");
    private static final List<String> ORDERS = List.of("before", "on-or-before", "after", "on-or-after");

    private static final int OLDEST = 30;
    private static final int LONGEST_PAST = 13;

    private ConditionReader() { }

    /** @return the condition under a key, {@link Condition#ALWAYS} when it is missing or wrong */
    static Condition optional(Fields fields, String key, Scope scope) {
        Node node = fields.optionalNode(key).orElse(null);
        return node == null ? Condition.ALWAYS : read(node, scope);
    }

    /** @return the condition, {@link Condition#ALWAYS} after recording why there is none */
    static Condition read(Node node, Scope scope) {
        Fields fields = Fields.of(node, scope.problems(), "the condition");
        String key = Forms.only(node, fields, KEYS, List.of(), ProfileFault.NO_CONDITION,
                ProfileFault.SEVERAL_CONDITIONS, scope);
        Condition condition = key == null ? null : one(key, fields, scope);
        fields.done();
        return condition == null ? Condition.ALWAYS : condition;
    }

    private static Condition one(String key, Fields fields, Scope scope) {
        switch (key) {
            case "any":
                return new Condition.Any(parts(fields, key, scope));
            case "all":
                return new Condition.All(parts(fields, key, scope));
            case "not":
                return new Condition.Not(read(fields.node(key), scope));
            case "age":
                return age(fields.fields(key, "the condition `age`"), scope);
            case "grade":
                Grades grades = GradeReader.listOrLevel(fields, key, scope);
                return grades == null ? null : new Condition.Grade(grades);
            case "year-of-program":
                return yearOfProgram(fields, scope);
            case "event":
                return event(fields.fields(key, "the condition `event`"), scope);
            case "came-from":
                return cameFrom(fields.fields(key, "the condition `came-from`"), scope);
            case "choice":
                return choice(fields.fields(key, "the condition `choice`"), scope);
            case "history":
                return history(fields.fields(key, "the condition `history`"), scope);
            case "result":
                return result(fields.fields(key, "the condition `result`"), scope);
            case "attribute":
                return attribute(fields.fields(key, "the condition `attribute`"), scope);
            case "place":
                return new Condition.Place(Forms.texts(fields, key, scope));
            case "asked":
                return new Condition.Asked(Forms.name(fields, key, scope));
            default:
                return optIn(fields, scope);
        }
    }

    private static List<Condition> parts(Fields fields, String key, Scope scope) {
        List<Node> items = Forms.items(fields, key, scope);
        List<Condition> parts = new ArrayList<>(items.size());
        for (Node item : items) {
            parts.add(read(item, scope));
        }
        return List.copyOf(parts);
    }

    private static Condition age(Fields fields, Scope scope) {
        Integer atLeast = boxed(fields.optionalInteger("at-least", 0, OLDEST));
        Integer below = boxed(fields.optionalInteger("below", 1, OLDEST));
        if (fields.isMapping() && !fields.has("at-least") && !fields.has("below")) {
            scope.error(fields.place(), ProfileFault.NO_AGE, "no age", "`at-least`, `below` or both", null);
        }
        if (atLeast != null && below != null && atLeast >= below) {
            scope.error(fields.place("below"), ProfileFault.AGE_ORDER, "below " + below + " and at least " + atLeast,
                    "an age greater than " + atLeast, null);
        }
        Condition.AgeDay day = ageDay(fields, scope);
        fields.done();
        return new Condition.Age(atLeast, below, day);
    }

    private static Condition.AgeDay ageDay(Fields fields, Scope scope) {
        if (fields.has("on") && fields.has("before")) {
            scope.error(fields.place("before"), ProfileFault.SEVERAL_ORDERS, "`before` beside `on`",
                    "only one of the two", null);
            return Condition.AgeDay.THAT_DAY;
        }
        if (fields.has("before")) {
            return new Condition.AgeDay(Condition.AgeDay.Anchor.BEFORE, fields.monthDay("before"));
        }
        if (!fields.has("on")) {
            return Condition.AgeDay.THAT_DAY;
        }
        if (Forms.startsWithDigit(fields, "on")) {
            return new Condition.AgeDay(Condition.AgeDay.Anchor.ON, fields.monthDay("on"));
        }
        String word = fields.oneOf("on", DAYS);
        if ("year-start".equals(word)) {
            return new Condition.AgeDay(Condition.AgeDay.Anchor.YEAR_START, null);
        }
        return "year-end".equals(word)
                ? new Condition.AgeDay(Condition.AgeDay.Anchor.YEAR_END, null)
                : Condition.AgeDay.THAT_DAY;
    }

    private static Integer boxed(OptionalInt number) {
        return number.isPresent() ? number.getAsInt() : null;
    }

    private static Condition yearOfProgram(Fields fields, Scope scope) {
        if (Forms.isScalar(fields.node("year-of-program"))) {
            String word = fields.oneOf("year-of-program", PROGRAM_YEARS);
            return "later".equals(word)
                    ? new Condition.YearOfProgram(2, null, 1)
                    : new Condition.YearOfProgram(1, 1, 1);
        }
        Fields years = fields.fields("year-of-program", "the condition `year-of-program`");
        int atLeast = years.integer("at-least", 1, LONGEST_PAST);
        Integer atMost = boxed(years.optionalInteger("at-most", 1, LONGEST_PAST));
        int every = years.optionalInteger("every", 1, LONGEST_PAST).orElse(1);
        if (atMost != null && atMost < atLeast) {
            scope.error(years.place("at-most"), ProfileFault.TIMES_ORDER, "at most " + atMost + " and at least "
                    + atLeast, atLeast + " or more", null);
        }
        years.done();
        return new Condition.YearOfProgram(atLeast, atMost, every);
    }

    private static Condition event(Fields fields, Scope scope) {
        EventKind kind = EventReader.required(fields, "is", scope);
        String order = null;
        for (String key : ORDERS) {
            if (!fields.has(key)) {
                continue;
            }
            if (order != null) {
                scope.error(fields.place(key), ProfileFault.SEVERAL_ORDERS,
                        Say.code(key) + " beside " + Say.code(order), "only one of the two", null);
            } else {
                order = key;
            }
        }
        MonthDay date = null;
        EventKind other = null;
        if (order != null && Forms.startsWithDigit(fields, order)) {
            date = fields.monthDay(order);
        } else if (order != null) {
            other = EventReader.required(fields, order, scope);
        }
        Span within = span(fields, "within", scope);
        Span ago = span(fields, "ago", scope);
        boolean thisYear = fields.optionalYesNo("this-year").orElse(false);
        fields.done();
        return new Condition.Event(kind, order == null ? null : Condition.Event.Order.values()[ORDERS.indexOf(order)],
                date, other, within, ago, thisYear);
    }

    /** @return the length of time that a key holds, or null */
    static Span span(Fields fields, String key, Scope scope) {
        if (!fields.has(key)) {
            return null;
        }
        Fields span = fields.fields(key, "the length of time");
        Span read = SpanReader.required(span, scope);
        span.done();
        return read;
    }

    private static Condition cameFrom(Fields fields, Scope scope) {
        List<String> kinds = Forms.requiredTexts(fields, "kinds", scope);
        Node node = fields.optionalNode("kinds").orElse(null);
        for (int i = 0; i < kinds.size(); i++) {
            if (!SCHOOLS.contains(kinds.get(i))) {
                scope.unknown(Forms.place(node, i), ProfileFault.UNKNOWN_VALUE, "kind of school", kinds.get(i),
                        SCHOOLS);
            }
        }
        Boolean inState = fields.optionalYesNo("in-state").orElse(null);
        Span within = span(fields, "within", scope);
        fields.done();
        return new Condition.CameFrom(kinds, inState, within);
    }

    private static Condition choice(Fields fields, Scope scope) {
        String name = fields.text("of", Forms.LONGEST_NAME);
        List<String> values = Forms.requiredTexts(fields, "is", scope);
        Pathway.ChoiceOffered choice = name == null ? null : scope.choice(fields.place("of"), name);
        if (choice != null && choice.dates()) {
            scope.error(fields.place("of"), ProfileFault.CHOICE_IS_DATES, Say.code(name) + ", a choice of dates",
                    "a choice with options", null);
        } else if (choice != null) {
            Node node = fields.optionalNode("is").orElse(null);
            for (int i = 0; i < values.size(); i++) {
                if (!choice.options().containsKey(values.get(i))) {
                    scope.unknown(Forms.place(node, i), ProfileFault.UNKNOWN_OPTION, "option", values.get(i),
                            choice.options().keySet());
                }
            }
        }
        fields.done();
        return new Condition.Choice(name, values);
    }

    private static Condition history(Fields fields, Scope scope) {
        String of = requirement(fields, scope);
        String was = Forms.name(fields, "was", scope);
        int yearsAgo = fields.optionalInteger("years-ago", 0, LONGEST_PAST).orElse(1);
        if (yearsAgo == 0 && !PathwayCheck.PAPERS.contains(was)) {
            scope.error(fields.place("was"), ProfileFault.UNKNOWN_VALUE, Say.code(was) + " of this school year",
                    Say.oneOf(PathwayCheck.PAPERS), null);
        }
        if (of != null && was != null && !PathwayCheck.STANDINGS.contains(was)) {
            scope.pathway.methodsMentioned.add(
                    new PathwayScope.Mention(fields.place("was"), scope.pathway.requirement, of, was));
        }
        fields.done();
        return new Condition.History(of, was, yearsAgo);
    }

    private static Condition result(Fields fields, Scope scope) {
        String of = requirement(fields, scope);
        if (fields.has("says")) {
            return outcome(of, fields, scope);
        }
        Threshold threshold = ThresholdReader.read(fields, scope);
        int yearsAgo = fields.optionalInteger("years-ago", 0, LONGEST_PAST).orElse(0);
        boolean orEarlier = fields.optionalYesNo("or-earlier").orElse(false);
        fields.done();
        return new Condition.Result(of, threshold, yearsAgo, orEarlier);
    }

    private static Condition outcome(String of, Fields fields, Scope scope) {
        List<String> says = Forms.requiredNames(fields, "says", scope);
        int yearsAgo = fields.optionalInteger("years-ago", 0, LONGEST_PAST).orElse(0);
        boolean orEarlier = fields.optionalYesNo("or-earlier").orElse(false);
        fields.done();
        return new Condition.Outcome(of, says, yearsAgo, orEarlier);
    }

    /** @return a local id of the pathway that is being read, or null */
    private static String requirement(Fields fields, Scope scope) {
        String of = fields.text("of", Forms.LONGEST_NAME);
        return of != null && scope.checkRequirement(fields.place("of"), of) ? of : null;
    }

    private static Condition attribute(Fields fields, Scope scope) {
        String fact = fields.text("fact", Forms.LONGEST_NAME);
        if (fact != null) {
            scope.checkFact(fields.place("fact"), fact);
        }
        boolean is = fields.yesNo("is");
        fields.done();
        return new Condition.Attribute(fact, is);
    }

    private static Condition optIn(Fields fields, Scope scope) {
        String program = fields.text("opt-in", Forms.LONGEST_NAME);
        if (program != null && !scope.optIns.contains(program)) {
            scope.unknown(fields.place("opt-in"), ProfileFault.UNKNOWN_OPT_IN, "optional program", program,
                    scope.optIns);
        }
        return new Condition.OptIn(program);
    }
}
