package org.hearthrule.records;

import java.time.LocalDate;
import java.util.List;

/**
 * A child.
 *
 * @param id      short name used in the other lists
 * @param name    as printed
 * @param born    birth date, or null while it is not entered
 * @param schools where the child was taught before, or null while that was not said; empty: never in a school
 */
public record Student(String id, String name, LocalDate born, List<FormerSchool> schools) {

    /**
     * @param kind  {@code public-school}, {@code private-school} or {@code home-program}
     * @param state jurisdiction code, for example {@code us-xx}, or null when unknown
     * @param from  first day, or null
     * @param to    last day, or null while it goes on
     */
    public record FormerSchool(String kind, String state, LocalDate from, LocalDate to) { }
}
