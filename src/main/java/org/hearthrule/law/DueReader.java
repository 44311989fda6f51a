package org.hearthrule.law;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import org.hearthrule.input.Fields;
import org.hearthrule.input.Listing;
import org.hearthrule.input.Mapping;
import org.hearthrule.input.Node;
import org.hearthrule.input.Scalar;
import org.hearthrule.terms.EventKind;

/** Reads when something is due. A mapping holds one form; a list holds cases. */
final class DueReader {

    private static final List<String> FORMS = List.of("by", "window", "after", "before", "at", "in-period",
            "on-request", "set-by", "chosen", "with", "later-of", "earlier-of", "none");
    private static final List<String> REMARKS = List.of("opens", "advisory", "practice", "note");
    private static final List<String> PERIODS = List.of("year", "semester", "trimester", "quarter", "month", "week");

    /** A key that goes with some forms only, then these forms. */
    private static final List<List<String>> PARTS = List.of(
            List.of("of", "by"),
            List.of("days", "after", "before"), List.of("weeks", "after", "before"),
            List.of("months", "after", "before"), List.of("years", "after", "before"),
            List.of("business-days", "after", "before"), List.of("school-days", "after", "before"),
            List.of("rounding", "after", "before"),
            List.of("age", "after"), List.of("not-before", "after"), List.of("strict", "before"),
            List.of("paper", "after"), List.of("around", "after"),
            List.of("times", "in-period", "chosen"), List.of("most", "in-period"), List.of("every", "in-period"),
            List.of("value", "set-by"), List.of("fallback", "set-by"));
    private static final List<String> BESIDES = besides();

    private static final int MOST_TIMES = 400;
    private static final int OLDEST = 30;

    private DueReader() { }

    private static List<String> besides() {
        List<String> keys = new ArrayList<>(REMARKS);
        keys.add("when");
        for (List<String> part : PARTS) {
            keys.add(part.get(0));
        }
        return keys;
    }

    /** @return the due date under {@code due}, or null when it is missing or wrong */
    static Due optional(Fields fields, Scope scope) {
        Node node = fields.optionalNode("due").orElse(null);
        if (node == null) {
            return null;
        }
        if (!(node instanceof Listing)) {
            return form(node, true, false, scope).due();
        }
        List<Node> items = Forms.items(fields, "due", scope);
        List<Due.Case> cases = new ArrayList<>(items.size());
        for (int i = 0; i < items.size(); i++) {
            Due.Case found = form(items.get(i), true, true, scope);
            if (found.when() == Condition.ALWAYS && i < items.size() - 1 && !hasCondition(items.get(i))) {
                scope.error(items.get(i + 1).place(), ProfileFault.UNREACHABLE_CASE,
                        "a case after one that holds always", "`when` in every case but the last", null);
            }
            cases.add(found);
        }
        return new Due.Cases(List.copyOf(cases));
    }

    private static boolean hasCondition(Node node) {
        if (node instanceof Mapping) {
            for (Mapping.Entry entry : ((Mapping) node).entries()) {
                if (entry.key().text().equals("when")) {
                    return true;
                }
            }
        }
        return false;
    }

    /** @return the plain form under a key, or null */
    private static Due plain(Fields fields, String key, Scope scope) {
        Node node = fields.optionalNode(key).orElse(null);
        return node == null ? null : form(node, false, false, scope).due();
    }

    private static Due.Case form(Node node, boolean remarks, boolean cases, Scope scope) {
        Fields fields = Fields.of(node, scope.problems(), "the due date");
        String form = Forms.only(node, fields, FORMS, BESIDES, ProfileFault.NO_DUE_FORM,
                ProfileFault.SEVERAL_DUE_FORMS, scope);
        for (List<String> part : PARTS) {
            String key = part.get(0);
            if (fields.has(key) && form != null && part.lastIndexOf(form) < 1) {
                scope.error(fields.place(key), ProfileFault.MISPLACED_KEY, Say.code(key) + " beside " + Say.code(form),
                        Say.code(key) + " only beside " + Say.oneOf(part.subList(1, part.size())), null);
            }
        }
        Due due = form == null ? null : one(form, fields, scope);
        if (remarks) {
            due = remarked(due, fields, scope);
        }
        Condition when = cases ? ConditionReader.optional(fields, "when", scope) : Condition.ALWAYS;
        fields.done();
        return new Due.Case(when, due);
    }

    private static Due remarked(Due due, Fields fields, Scope scope) {
        Due opens = plain(fields, "opens", scope);
        Due advisory = plain(fields, "advisory", scope);
        Due practice = plain(fields, "practice", scope);
        String note = fields.optionalText("note", Forms.LONGEST_TEXT).orElse(null);
        boolean bare = opens == null && advisory == null && practice == null && note == null;
        return bare ? due : new Due.Remarked(due, opens, advisory, practice, note);
    }

    private static Due one(String form, Fields fields, Scope scope) {
        switch (form) {
            case "by":
                return by(fields, scope);
            case "window":
                return window(fields.fields(form, "the window"), scope);
            case "after":
                return after(fields, scope);
            case "before":
                return before(fields, scope);
            case "at":
                return new Due.At(EventReader.required(fields, form, scope));
            case "in-period":
                return inPeriod(fields, scope);
            case "on-request":
                return onRequest(fields.fields(form, "the form `on-request`"), scope);
            case "set-by":
                return new Due.SetBy(fields.text(form, Forms.LONGEST_TITLE), Forms.name(fields, "value", scope),
                        plain(fields, "fallback", scope));
            case "chosen":
                return chosen(fields, scope);
            case "with":
                return with(fields, scope);
            case "later-of":
                return new Due.LaterOf(parts(fields, form, scope));
            case "earlier-of":
                return new Due.EarlierOf(parts(fields, form, scope));
            default:
                return new Due.None(fields.text(form, Forms.LONGEST_TEXT));
        }
    }

    private static Due by(Fields fields, Scope scope) {
        Node node = fields.node("by");
        List<MonthDay> dates = new ArrayList<>();
        if (node instanceof Listing) {
            dates = MonthDays.list(fields, "by", scope);
        } else {
            MonthDay date = fields.monthDay("by");
            if (date != null) {
                dates.add(date);
            }
        }
        return new Due.By(List.copyOf(dates), yearOf(fields));
    }

    private static Due.YearOf yearOf(Fields fields) {
        return fields.optionalOneOf("of", Due.YearOf.class).orElse(Due.YearOf.THIS_YEAR);
    }

    private static Due window(Fields fields, Scope scope) {
        MonthDay opens = fields.monthDay("opens");
        MonthDay closes = fields.monthDay("closes");
        Due.YearOf of = yearOf(fields);
        SchoolYear year = scope.pathway == null ? null : scope.pathway.year;
        if (opens != null && closes != null && year != null && year.from() != null
                && MonthDays.inYear(closes, year) < MonthDays.inYear(opens, year)) {
            scope.error(fields.place("closes"), ProfileFault.BACKWARD_WINDOW,
                    "a window that closes before it opens in a school year from " + MonthDays.text(year.from()),
                    "a day on or after " + MonthDays.text(opens), null);
        }
        fields.done();
        return new Due.Window(opens, closes, of);
    }

    private static Due after(Fields fields, Scope scope) {
        Node node = fields.node("after");
        boolean birthday = node instanceof Scalar && ((Scalar) node).text().equals(EventReader.BIRTHDAY);
        EventKind event = birthday ? null : EventReader.required(fields, "after", scope);
        Integer age = null;
        if (birthday) {
            age = fields.integer("age", 1, OLDEST);
        } else if (fields.has("age")) {
            scope.error(fields.place("age"), ProfileFault.MISPLACED_KEY, "`age` beside an event",
                    "`age` only beside `after: birthday`", null);
        }
        Span span = SpanReader.required(fields, scope);
        EventKind around = fields.has("around") ? EventReader.required(fields, "around", scope) : null;
        return new Due.After(event, age, span, paper(fields, scope), around, plain(fields, "not-before", scope));
    }

    private static String paper(Fields fields, Scope scope) {
        String paper = Forms.optionalName(fields, "paper", scope);
        if (paper != null) {
            scope.pathway.papersMentioned.add(scope.pathway.mention(fields.place("paper"), paper));
        }
        return paper;
    }

    private static Due before(Fields fields, Scope scope) {
        EventKind event = EventReader.required(fields, "before", scope);
        Span span = SpanReader.required(fields, scope);
        boolean strict = fields.optionalYesNo("strict").orElse(false);
        if (strict && span != null && span.amount() != 0) {
            scope.error(fields.place("strict"), ProfileFault.STRICT_WITH_SPAN,
                    "`strict: yes` with a length of " + span.amount(), "`days: 0` beside it",
                    "count one day more instead");
        }
        return new Due.Before(event, span, strict);
    }

    private static Due inPeriod(Fields fields, Scope scope) {
        String word = fields.oneOf("in-period", PERIODS);
        Period period = word == null ? null : Period.values()[PERIODS.indexOf(word)];
        int least = fields.optionalInteger("times", 1, MOST_TIMES).orElse(1);
        Integer most = fields.has("most") ? Integer.valueOf(fields.integer("most", 1, MOST_TIMES)) : null;
        if (most != null && most < least) {
            scope.error(fields.place("most"), ProfileFault.TIMES_ORDER, "at most " + most + " and at least " + least,
                    least + " or more", null);
        }
        int every = fields.optionalInteger("every", 1, OLDEST).orElse(1);
        if (fields.has("every") && period != null && period != Period.YEAR) {
            scope.error(fields.place("every"), ProfileFault.EVERY_WITHOUT_YEAR, "`every` beside `in-period: " + word
                    + "`", "`in-period: year`", null);
        }
        return new Due.InPeriod(least, most, period, every);
    }

    private static Due onRequest(Fields fields, Scope scope) {
        Span span = SpanReader.optional(fields, scope);
        fields.done();
        return new Due.OnRequest(span);
    }

    private static Due chosen(Fields fields, Scope scope) {
        String name = fields.text("chosen", Forms.LONGEST_NAME);
        int times = fields.optionalInteger("times", 1, MOST_TIMES).orElse(1);
        Pathway.ChoiceOffered choice = name == null ? null : scope.choice(fields.place("chosen"), name);
        if (choice != null && !choice.dates()) {
            scope.error(fields.place("chosen"), ProfileFault.CHOICE_NOT_DATES, Say.code(name)
                    + ", a choice of options", "a choice with `dates: yes`", null);
        }
        return new Due.Chosen(name, times);
    }

    private static Due with(Fields fields, Scope scope) {
        String id = fields.text("with", Forms.LONGEST_NAME);
        if (id != null && scope.checkRequirement(fields.place("with"), id)) {
            scope.pathway.dueWith.add(scope.pathway.mention(fields.place("with"), id));
        }
        return new Due.With(id);
    }

    private static List<Due> parts(Fields fields, String key, Scope scope) {
        List<Node> items = Forms.items(fields, key, scope);
        List<Due> parts = new ArrayList<>(items.size());
        for (Node item : items) {
            Due part = form(item, false, false, scope).due();
            if (part != null) {
                parts.add(part);
            }
        }
        return List.copyOf(parts);
    }
}
