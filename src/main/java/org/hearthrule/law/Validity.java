package org.hearthrule.law;

import java.time.LocalDate;

/**
 * The days on which a rule is in force, both ends included.
 *
 * @param from      first day, or null when it has always been so as far as this profile reaches
 * @param until     last day, or null while it stands
 * @param announced true when it is reported or enacted but must not yet be relied on: shown as a notice, never due
 * @param unclearFrom first day for which nobody here can say whether it still stands, since a change of it is only
 *                  reported; or null. From then on a line is unclear: not due, and not free of it either
 */
public record Validity(LocalDate from, LocalDate until, boolean announced, LocalDate unclearFrom) {

    public static final Validity ALWAYS = new Validity(null, null, false, null);

    /** @return true when the rule binds on {@code day}; an announced rule never does */
    public boolean inForceOn(LocalDate day) {
        return !announced && (from == null || !day.isBefore(from)) && (until == null || !day.isAfter(until));
    }

    /** @return true when nobody can say whether the rule still stands on {@code day} */
    public boolean unclearOn(LocalDate day) {
        return unclearFrom != null && !day.isBefore(unclearFrom);
    }

    /** @return true when the rule is in force on some day from {@code first} to {@code last} */
    public boolean touches(LocalDate first, LocalDate last) {
        return !announced && (from == null || !last.isBefore(from)) && (until == null || !first.isAfter(until));
    }
}
