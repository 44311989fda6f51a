package org.hearthrule.rules;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/** Ages in whole years. */
final class Ages {

    private Ages() {
    }

    /** @return whole years from birth to {@code day}; a child born on 29 February comes of age on 1 March */
    static int on(LocalDate born, LocalDate day) {
        return (int) ChronoUnit.YEARS.between(born, day);
    }

    /**
     * @return the day an age is reached. A child born on 29 February reaches it on 1 March in other years, since that
     *     is the first day on which the whole years have passed.
     */
    static LocalDate reached(LocalDate born, int age) {
        LocalDate day = born.plusYears(age);
        return day.getDayOfMonth() == born.getDayOfMonth() ? day : day.plusDays(1);
    }
}
