package org.hearthrule.page.year;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/**
 * Where days and amounts stand in a curve.
 *
 * @param from first day, at the left edge
 * @param to   last day, at the right edge
 * @param most largest amount, at the upper edge
 */
record Scale(LocalDate from, LocalDate to, BigDecimal most) {

    static final double LEFT = 3;
    static final double RIGHT = 297;
    static final double TOP = 40;
    static final double BOTTOM = 172;

    /** @return the end of a day */
    double x(LocalDate day) {
        double whole = ChronoUnit.DAYS.between(from, to) + 1.0;
        double days = ChronoUnit.DAYS.between(from, day) + 1.0;
        return LEFT + (RIGHT - LEFT) * Math.max(0, Math.min(1, days / whole));
    }

    /** @return the beginning of a day */
    double start(LocalDate day) {
        return x(day.minusDays(1));
    }

    double y(BigDecimal amount) {
        return most.signum() == 0 ? BOTTOM : BOTTOM - (BOTTOM - TOP) * amount.doubleValue() / most.doubleValue();
    }

    boolean holds(LocalDate day) {
        return !day.isBefore(from) && !day.isAfter(to);
    }
}
