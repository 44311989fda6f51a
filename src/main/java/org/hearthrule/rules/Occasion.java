package org.hearthrule.rules;

import java.time.LocalDate;
import org.hearthrule.terms.EventKind;

/**
 * One time a requirement comes up for a child in a year.
 *
 * @param key      what tells it from the other times: the school year, its part, or the day of an event
 * @param part     1 for the first of several in a year
 * @param hangsOn  kind of the event it hangs on, or null
 * @param eventDay day of that event, or null
 * @param due      when it is due
 * @param applies  whether it applies, with the reason
 */
record Occasion(String key, int part, EventKind hangsOn, LocalDate eventDay, DueDate due, Truth applies) {

    /** @return the day of the test that this comes up on, or null */
    LocalDate testDay() {
        return hangsOn == EventKind.TEST_GIVEN ? eventDay : null;
    }

    /** @return first day on which something done may be what is asked after the event; null when it hangs on none */
    LocalDate answersFrom() {
        return testDay() != null ? eventDay.plusDays(1) : eventDay;
    }
}
