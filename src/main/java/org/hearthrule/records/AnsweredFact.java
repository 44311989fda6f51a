package org.hearthrule.records;

import java.time.LocalDate;

/**
 * An answer to a question a profile asks.
 *
 * @param fact  name of the fact
 * @param about student or person id, or null for the family or the place
 * @param is    the answer
 * @param date  when it was given, or null
 */
public record AnsweredFact(String fact, String about, boolean is, LocalDate date) {
}
