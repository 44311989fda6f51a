package org.hearthrule.rules;

import java.time.LocalDate;

/**
 * One time a requirement comes up for a child in a year.
 *
 * @param key      what tells it from the other times: the school year, its part, or the day of an event
 * @param part     1 for the first of several in a year
 * @param eventDay day of the event it hangs on, or null
 * @param due      when it is due
 * @param applies  whether it applies, with the reason
 */
record Occasion(String key, int part, LocalDate eventDay, DueDate due, Truth applies) {
}
