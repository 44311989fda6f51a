package org.hearthrule.law;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import org.hearthrule.input.Fields;
import org.hearthrule.input.Mapping;
import org.hearthrule.input.Node;
import org.hearthrule.input.Scalar;

/** Days of the year: lists of them, and their order within a school year. */
final class MonthDays {

    private static final int MONTH = 100;
    private static final int YEAR = 10_000;

    private MonthDays() { }

    /** @return the days of a list */
    static List<MonthDay> list(Fields fields, String key, Scope scope) {
        List<MonthDay> days = new ArrayList<>();
        for (Node item : Forms.items(fields, key, scope)) {
            // the reader of a value wants a key; it is made up here and never shown
            Mapping one = new Mapping(item.place(), List.of(new Mapping.Entry(
                    new Scalar(item.place(), key, Scalar.Form.PLAIN), item)));
            MonthDay day = Fields.of(one, scope.problems(), "the list").monthDay(key);
            if (day == null) {
                continue;
            }
            if (days.contains(day)) {
                scope.error(item.place(), ProfileFault.REPEATED_ITEM, "a second " + Say.code(text(day)),
                        "each day once", "remove one of the two");
            }
            days.add(day);
        }
        return days;
    }

    /** @return a number that is greater for a later day of a school year */
    static int inYear(MonthDay day, SchoolYear year) {
        int number = day.getMonthValue() * MONTH + day.getDayOfMonth();
        int first = year.from().getMonthValue() * MONTH + year.from().getDayOfMonth();
        return number < first ? number + YEAR : number;
    }

    /** @return the day as files write it, for example {@code 09-01} */
    static String text(MonthDay day) {
        return day.toString().substring(2);
    }
}
