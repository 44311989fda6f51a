package org.hearthrule.pictures;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A day in the name of a file. The forms are common practice, from memory: year, month and day as eight digits or with
 * hyphens, dots or underscores between ({@code IMG_20260514_160233.jpg}, {@code PXL_20260514_160233123.jpg},
 * {@code IMG-20260514-WA0003.jpg}, {@code 2026-05-14 the jetty.jpg}, {@code Scan 2026.05.14.pdf}), perhaps a time after it.
 */
final class NameDates {

    private static final Pattern DAY = Pattern.compile("(?<!\\d)(?<y>\\d{4})(?<s>[-_.]?)(?<m>\\d{2})\\k<s>(?<d>\\d{2})"
            + "(?:(?=\\d{6}(?!\\d))|(?!\\d))");
    private static final Pattern TIME = Pattern.compile("(?:[ _T-]|[ _]at )?(?<h>\\d{2})[-.:_]?(?<m>\\d{2})[-.:_]?(?<s>\\d{2})"
            + "(?:\\d{3})?(?!\\d)");
    private static final Pattern MESSAGE = Pattern.compile("(?i)[-_]WA\\d{4}");
    private static final Pattern UNIVERSAL = Pattern.compile("(?i)PXL_.*");

    private NameDates() { }

    /** Looks at the name that a file had; a name with several days tells nothing. */
    static void look(String name, DayCheck check) {
        Map<LocalDate, Integer> days = new LinkedHashMap<>();
        Matcher found = DAY.matcher(name);
        while (found.find()) {
            LocalDate day = day(found);
            if (day != null) {
                days.putIfAbsent(day, found.end());
            }
        }
        if (days.size() > 1) {
            check.note("picture.note.several-days");
        }
        if (days.size() != 1) {
            return;
        }
        LocalDate day = days.keySet().iterator().next();
        if (UNIVERSAL.matcher(name).matches()) {
            check.found(day, null, null, DateOffer.Origin.FILE_NAME, "universal");
        } else if (MESSAGE.matcher(name).find()) {
            check.found(day, null, null, DateOffer.Origin.FILE_NAME, "sent");
        } else {
            check.found(day, time(name, days.get(day)), null, DateOffer.Origin.FILE_NAME, null);
        }
    }

    private static LocalDate day(Matcher found) {
        try {
            return LocalDate.of(Integer.parseInt(found.group("y")), Integer.parseInt(found.group("m")),
                    Integer.parseInt(found.group("d")));
        } catch (DateTimeException e) {
            return null; // eight digits that are something else
        }
    }

    private static LocalTime time(String name, int from) {
        Matcher found = TIME.matcher(name).region(from, name.length());
        if (!found.lookingAt()) {
            return null;
        }
        try {
            return LocalTime.of(Integer.parseInt(found.group("h")), Integer.parseInt(found.group("m")),
                    Integer.parseInt(found.group("s")));
        } catch (DateTimeException e) {
            return null;
        }
    }
}
