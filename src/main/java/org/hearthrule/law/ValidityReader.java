package org.hearthrule.law;

import java.time.LocalDate;
import org.hearthrule.input.Fields;

/** Reads the days on which a rule is in force. */
final class ValidityReader {

    private ValidityReader() { }

    /**
     * Reads {@code from} and {@code until}.
     *
     * @param announcing whether {@code announced} may stand beside them
     */
    static Validity read(Fields fields, boolean announcing, Scope scope) {
        return read(fields, announcing, false, scope);
    }

    /** Reads {@code from}, {@code until}, {@code announced} and {@code unclear-from}. */
    static Validity ofRequirement(Fields fields, Scope scope) {
        return read(fields, true, true, scope);
    }

    private static Validity read(Fields fields, boolean announcing, boolean doubting, Scope scope) {
        LocalDate from = fields.optionalDate("from").orElse(null);
        LocalDate until = fields.optionalDate("until").orElse(null);
        boolean announced = announcing && fields.optionalYesNo("announced").orElse(false);
        LocalDate unclearFrom = doubting ? fields.optionalDate("unclear-from").orElse(null) : null;
        checkUnclear(fields, from, until, unclearFrom, scope);
        if (from != null && until != null && until.isBefore(from)) {
            scope.error(fields.place("until"), ProfileFault.BACKWARD_DAYS, "an end before the beginning, " + from,
                    "a day on or after " + from, null);
        }
        boolean always = from == null && until == null && !announced && unclearFrom == null;
        return always ? Validity.ALWAYS : new Validity(from, until, announced, unclearFrom);
    }

    /** A day from which it is unclear lies within the days in force. */
    private static void checkUnclear(Fields fields, LocalDate from, LocalDate until, LocalDate unclear, Scope scope) {
        if (unclear != null && (from != null && unclear.isBefore(from) || until != null && unclear.isAfter(until))) {
            scope.error(fields.place("unclear-from"), ProfileFault.BACKWARD_DAYS, "a day on which it is not in force",
                    "a day from `from` to `until`", null);
        }
    }
}
