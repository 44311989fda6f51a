package org.hearthrule.law;

import java.time.LocalDate;

/**
 * The days on which a rule is in force, both ends included.
 *
 * @param from      first day, or null when it has always been so as far as this profile reaches
 * @param until     last day, or null while it stands
 * @param announced true when it is reported or enacted but must not yet be relied on: shown as a notice, never due
 */
public record Validity(LocalDate from, LocalDate until, boolean announced) {

    public static final Validity ALWAYS = new Validity(null, null, false);

    /** @return true when the rule binds on {@code day}; an announced rule never does */
    public boolean inForceOn(LocalDate day) {
        return !announced && (from == null || !day.isBefore(from)) && (until == null || !day.isAfter(until));
    }

    /** @return true when the rule is in force on some day from {@code first} to {@code last} */
    public boolean touches(LocalDate first, LocalDate last) {
        return !announced && (from == null || !last.isBefore(from)) && (until == null || !first.isAfter(until));
    }
}
