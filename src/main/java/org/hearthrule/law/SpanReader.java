package org.hearthrule.law;

import java.util.List;
import java.util.OptionalInt;
import org.hearthrule.input.Fields;

/** Reads a length of time out of a mapping that holds it among other keys: {@code days: 14}. */
final class SpanReader {

    /** Keys of a length of time. */
    static final List<String> KEYS =
            List.of("days", "weeks", "months", "years", "business-days", "school-days", "rounding");

    private static final List<String> ROUNDINGS = List.of("down", "up");
    private static final int MOST = 3_660;

    private SpanReader() { }

    /** @return the span, or null after recording why there is none */
    static Span required(Fields fields, Scope scope) {
        if (fields.isMapping() && !isPresent(fields)) {
            scope.error(fields.place(), ProfileFault.NO_SPAN, "no length of time", "a number of days, weeks, months, "
                    + "years, business-days or school-days", null);
            return null;
        }
        return optional(fields, scope);
    }

    private static boolean isPresent(Fields fields) {
        for (Span.Unit unit : Span.Unit.values()) {
            if (fields.has(key(unit))) {
                return true;
            }
        }
        return false;
    }

    private static String key(Span.Unit unit) {
        return KEYS.get(unit.ordinal());
    }

    /** @return the span, or null when there is none */
    static Span optional(Fields fields, Scope scope) {
        Span.Unit found = null;
        for (Span.Unit unit : Span.Unit.values()) {
            if (fields.has(key(unit))) {
                if (found != null) {
                    scope.error(fields.place(key(unit)), ProfileFault.SEVERAL_SPANS,
                            Say.code(key(unit)) + " beside " + Say.code(key(found)), "one unit", null);
                } else {
                    found = unit;
                }
            }
        }
        boolean rounded = fields.has("rounding");
        String rounding = fields.optionalOneOf("rounding", ROUNDINGS).orElse(null);
        if (found == null) {
            if (rounded) {
                scope.error(fields.place("rounding"), ProfileFault.ROUNDING_UNUSED, "`rounding` without a length",
                        "`months` or `years` beside it", null);
            }
            return null;
        }
        OptionalInt amount = fields.optionalInteger(key(found), 0, MOST);
        boolean calendar = found == Span.Unit.MONTHS || found == Span.Unit.YEARS;
        if (calendar && !rounded) {
            scope.error(fields.place(key(found)), ProfileFault.ROUNDING_MISSING,
                    Say.code(key(found)) + " without `rounding`",
                    "`rounding: down` (31 May and one month is 30 June) or `rounding: up` (1 July)", null);
        }
        if (!calendar && rounded) {
            scope.error(fields.place("rounding"), ProfileFault.ROUNDING_UNUSED,
                    "`rounding` beside " + Say.code(key(found)), "`rounding` only with months and years",
                    "remove it");
        }
        return new Span(amount.orElse(0), found, rounding(rounding));
    }

    private static Span.Rounding rounding(String word) {
        if (word == null) {
            return Span.Rounding.NONE;
        }
        return word.equals("down") ? Span.Rounding.DOWN : Span.Rounding.UP;
    }
}
