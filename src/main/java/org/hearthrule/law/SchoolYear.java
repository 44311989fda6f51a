package org.hearthrule.law;

import java.time.MonthDay;

/**
 * The year a pathway counts in.
 *
 * @param from  first day
 * @param to    last day
 * @param given who fixes it
 */
public record SchoolYear(MonthDay from, MonthDay to, Given given) {

    public enum Given {
        /** The law names the days. */
        BY_LAW,
        /** No law names them; these are the usual ones. */
        CUSTOMARY,
        /** The family's own; these are a fallback. */
        FAMILY,
        /** The district's own; these are a fallback. */
        DISTRICT
    }
}
