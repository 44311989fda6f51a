package org.hearthrule.records;

import java.time.LocalDateTime;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;

/** Days with a time of day, {@code 2026-09-01T20:15} or with seconds. By hand: quicker in a short-lived process. */
final class Times {

    private static final String FORM = "dddd-dd-ddTdd:dd:dd";
    private static final int WITHOUT_SECONDS = 16;

    private Times() { }

    /** Returns the time, or null when the text is none. */
    static LocalDateTime parse(String text) {
        int length = text.length();
        if (length != WITHOUT_SECONDS && length != FORM.length()) {
            return null;
        }
        for (int i = 0; i < length; i++) {
            char c = text.charAt(i);
            if (FORM.charAt(i) == 'd' ? c < '0' || c > '9' : c != FORM.charAt(i)) {
                return null;
            }
        }
        int year = number(text, 0, 4);
        int month = number(text, 5, 7);
        int day = number(text, 8, 10);
        int hour = number(text, 11, 13);
        int minute = number(text, 14, 16);
        int second = length == WITHOUT_SECONDS ? 0 : number(text, 17, 19);
        boolean exists = month >= 1 && month <= 12 && day >= 1 && day <= YearMonth.of(year, month).lengthOfMonth()
                && hour < 24 && minute < 60 && second < 60;
        return exists ? LocalDateTime.of(year, month, day, hour, minute, second) : null;
    }

    /** Returns the time as it is written to a file; parts of a second are dropped. */
    static String format(LocalDateTime time) {
        return time.truncatedTo(ChronoUnit.SECONDS).toString();
    }

    private static int number(String text, int start, int end) {
        int number = 0;
        for (int i = start; i < end; i++) {
            number = number * 10 + text.charAt(i) - '0';
        }
        return number;
    }
}
