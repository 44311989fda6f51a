package org.hearthrule.records;

import java.time.LocalDate;

/**
 * A doubt about the law that somebody answered.
 *
 * @param doubt  whole id of the doubt, for example {@code us-xx/doubts/start-in-spring}, or of the requirement that asks
 * @param answer what was said
 * @param from   who said it, or null
 * @param date   when, or null
 */
public record AnsweredDoubt(String doubt, String answer, String from, LocalDate date) {
}
