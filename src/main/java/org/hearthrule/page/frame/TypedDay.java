package org.hearthrule.page.frame;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.ResolverStyle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A day as a browser's date field sends it, or as people in the United States write it: {@code 2026-05-14},
 * {@code May 14, 2026}, {@code 14 May 2026}, {@code 5/14/2026}. Nothing is guessed: February 30 is no day.
 */
final class TypedDay {

    private static final List<DateTimeFormatter> FORMS = List.of(form("uuuu-MM-dd"), form("MMMM d[,] uuuu"),
            form("MMM d[,] uuuu"), form("d MMMM uuuu"), form("d MMM uuuu"), form("M/d/uuuu"));

    private TypedDay() { }

    private static DateTimeFormatter form(String pattern) {
        return new DateTimeFormatterBuilder().parseCaseInsensitive().appendPattern(pattern).toFormatter(Locale.US)
                .withResolverStyle(ResolverStyle.STRICT);
    }

    static Optional<LocalDate> of(String typed) {
        for (DateTimeFormatter form : FORMS) {
            try {
                LocalDate day = LocalDate.parse(typed.strip().replaceAll("\\s+", " "), form);
                return day.getYear() < 1900 || day.getYear() > 2200 ? Optional.empty() : Optional.of(day);
            } catch (DateTimeException e) {
                continue; // another form may fit
            }
        }
        return Optional.empty();
    }
}
