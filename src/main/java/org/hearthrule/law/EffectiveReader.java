package org.hearthrule.law;

import java.time.LocalDate;
import org.hearthrule.input.Fields;
import org.hearthrule.input.Node;
import org.hearthrule.input.Scalar;

/** Reads since when a change binds: a day, or its month or year alone when the day is not known. */
final class EffectiveReader {

    private static final int YEAR = 4;
    private static final int MONTH = 7;

    private EffectiveReader() { }

    /** @return the day as far as it is known, or null */
    static Profile.Effective read(Fields change, Scope scope) {
        Node node = change.node("effective");
        String text = node instanceof Scalar scalar && scalar.form() == Scalar.Form.QUOTED ? scalar.text() : "";
        if (text.length() != YEAR && text.length() != MONTH) {
            LocalDate day = change.date("effective");
            return day == null ? null : new Profile.Effective(day.getYear(), day.getMonthValue(), day.getDayOfMonth());
        }
        boolean year = text.length() == YEAR;
        if (!text.matches(year ? "(19|20)\\d\\d" : "(19|20)\\d\\d-(0[1-9]|1[0-2])")) {
            scope.error(node.place(), ProfileFault.WRONG_DATE, Say.code(text),
                    "a day \"2026-09-01\", or its month \"2026-09\" or year \"2026\" when the day is not known", null);
            return null;
        }
        return new Profile.Effective(Integer.parseInt(text.substring(0, YEAR)),
                year ? null : Integer.valueOf(text.substring(YEAR + 1)), null);
    }
}
