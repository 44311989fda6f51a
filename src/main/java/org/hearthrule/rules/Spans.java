package org.hearthrule.rules;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.hearthrule.law.Span;

/** Adding and taking away spans of calendar time. Business and school days need {@link WorkDays}. */
final class Spans {

    private Spans() {
    }

    /** @throws IllegalArgumentException for business and school days */
    static LocalDate minus(LocalDate day, Span span) {
        return plus(day, span, -1);
    }

    /** @throws IllegalArgumentException for business and school days */
    static LocalDate plus(LocalDate day, Span span) {
        return plus(day, span, 1);
    }

    private static LocalDate plus(LocalDate day, Span span, int sign) {
        long amount = (long) sign * span.amount();
        return switch (span.unit()) {
            case DAYS -> day.plusDays(amount);
            case WEEKS -> day.plusWeeks(amount);
            case MONTHS -> rounded(day, day.plus(amount, ChronoUnit.MONTHS), span.rounding());
            case YEARS -> rounded(day, day.plus(amount, ChronoUnit.YEARS), span.rounding());
            case BUSINESS_DAYS, SCHOOL_DAYS -> throw new IllegalArgumentException("needs a calendar of working days");
        };
    }

    /** java.time takes the month's last day where the day does not exist; rounding up takes the day after it. */
    private static LocalDate rounded(LocalDate day, LocalDate moved, Span.Rounding rounding) {
        boolean cut = moved.getDayOfMonth() != day.getDayOfMonth();
        return cut && rounding == Span.Rounding.UP ? moved.plusDays(1) : moved;
    }

    /** @return for example {@code 10 business days} */
    static String words(Span span) {
        String unit = span.unit().name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
        return span.amount() + " " + (span.amount() == 1 ? unit.substring(0, unit.length() - 1) : unit);
    }
}
