package org.hearthrule.law;

/**
 * A length of time such as 14 days, 10 business days or 12 months.
 *
 * @param amount   zero or more
 * @param unit     what is counted
 * @param rounding what becomes of a day that the target month lacks (31 May plus one month); only for months and years
 */
public record Span(int amount, Unit unit, Rounding rounding) {

    public enum Unit {
        DAYS, WEEKS, MONTHS, YEARS, BUSINESS_DAYS, SCHOOL_DAYS
    }

    /** There is no default: a law counted in months must say which. */
    public enum Rounding {
        /** The last day that exists: 31 May plus one month is 30 June. */
        DOWN,
        /** The next day that exists: 31 May plus one month is 1 July. */
        UP,
        /** Not a span of months or years. */
        NONE
    }

    public static Span days(int amount) {
        return new Span(amount, Unit.DAYS, Rounding.NONE);
    }
}
