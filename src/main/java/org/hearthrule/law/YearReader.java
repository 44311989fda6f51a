package org.hearthrule.law;

import java.time.MonthDay;
import org.hearthrule.input.Fields;

/** Reads the school year that minimums are counted in. */
final class YearReader {

    private YearReader() { }

    /** @return the year under the key {@code year}, which must be there */
    static SchoolYear read(Fields fields, Scope scope) {
        Fields year = fields.fields("year", "the school year");
        MonthDay from = year.monthDay("from");
        MonthDay to = year.monthDay("to");
        SchoolYear.Given given = year.oneOf("given", SchoolYear.Given.class);
        if (from != null && to != null && from.equals(to)) {
            scope.error(year.place("to"), ProfileFault.BACKWARD_YEAR, "a last day that is the first day",
                    "the day on which the year ends", null);
        }
        year.done();
        return new SchoolYear(from, to, given);
    }
}
