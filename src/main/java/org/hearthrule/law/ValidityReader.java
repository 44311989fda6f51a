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
        LocalDate from = fields.optionalDate("from").orElse(null);
        LocalDate until = fields.optionalDate("until").orElse(null);
        boolean announced = announcing && fields.optionalYesNo("announced").orElse(false);
        if (from != null && until != null && until.isBefore(from)) {
            scope.error(fields.place("until"), ProfileFault.BACKWARD_DAYS, "an end before the beginning, " + from,
                    "a day on or after " + from, null);
        }
        return from == null && until == null && !announced ? Validity.ALWAYS : new Validity(from, until, announced);
    }
}
