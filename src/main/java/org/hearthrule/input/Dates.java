package org.hearthrule.input;

import java.time.LocalDate;
import java.time.MonthDay;
import java.time.YearMonth;

/** Reads dates strictly by hand, which in a short-lived process is quicker than a formatter. */
final class Dates {

    private static final int[] LENGTHS = {31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};

    private Dates() {}

    /** Returns the date, or null after recording why the text is none. */
    static LocalDate date(Scalar scalar, Problems problems) {
        String text = scalar.text();
        int year = text.length() == 10 && text.charAt(4) == '-' && text.charAt(7) == '-' ? number(text, 0, 4) : -1;
        int month = year < 0 ? -1 : number(text, 5, 7);
        int day = month < 0 ? -1 : number(text, 8, 10);
        if (day >= 1 && month >= 1 && month <= 12 && day <= YearMonth.of(year, month).lengthOfMonth()) {
            return LocalDate.of(year, month, day);
        }
        String perhaps;
        if (day < 0) {
            perhaps = guess(text);
        } else {
            perhaps = day > 0 && day <= 31 && month >= 1 && month <= 12
                    ? "the last day of that month, " + YearMonth.of(year, month).atEndOfMonth()
                    : null;
        }
        problems.error(scalar.place(), "WRONG-DATE", Shown.quoted(text), "a date such as \"2026-09-01\"", perhaps);
        return null;
    }

    /** Returns the day of the year, or null after recording why the text is none. */
    static MonthDay monthDay(Scalar scalar, boolean leapDay, Problems problems) {
        String text = scalar.text();
        int month = text.length() == 5 && text.charAt(2) == '-' ? number(text, 0, 2) : -1;
        int day = month < 0 ? -1 : number(text, 3, 5);
        boolean exists = month >= 1 && month <= 12 && day >= 1 && day <= LENGTHS[month - 1];
        if (exists && (leapDay || month != 2 || day != 29)) {
            return MonthDay.of(month, day);
        }
        String perhaps = exists ? "use \"02-28\", which every year has" : monthDayGuess(text, month, day);
        String expected = "a month and day such as \"09-01\"";
        problems.error(scalar.place(), "WRONG-MONTH-DAY", Shown.quoted(text), expected, perhaps);
        return null;
    }

    private static String monthDayGuess(String text, int month, int day) {
        if (day >= 1 && day <= 31 && month >= 1 && month <= 12) {
            return "the last day of that month, \"" + two(month) + "-" + LENGTHS[month - 1] + "\"";
        }
        int[] parts = text.length() > 10 ? null : parts(text, 2);
        boolean sound = parts != null && text.indexOf('-') > 0 && isDay(2024, parts[0], parts[1]);
        return sound ? "write \"" + two(parts[0]) + "-" + two(parts[1]) + "\"" : null;
    }

    /** Guesses the date meant, only where just one can be. */
    private static String guess(String text) {
        int[] parts = text.length() > 10 ? null : parts(text, 3);
        if (parts == null) {
            return null;
        }
        if (parts[0] > 999) {
            return isDay(parts[0], parts[1], parts[2]) ? iso(parts[0], parts[1], parts[2]) : null;
        }
        if (parts[2] < 1000) {
            return null;
        }
        boolean american = isDay(parts[2], parts[0], parts[1]);
        boolean european = isDay(parts[2], parts[1], parts[0]);
        if (american && european && parts[0] != parts[1] || !american && !european) {
            return null;
        }
        return american ? iso(parts[2], parts[0], parts[1]) : iso(parts[2], parts[1], parts[0]);
    }

    private static boolean isDay(int year, int month, int day) {
        return month >= 1 && month <= 12 && day >= 1 && day <= YearMonth.of(year, month).lengthOfMonth();
    }

    private static String iso(int year, int month, int day) {
        return "write \"" + LocalDate.of(year, month, day) + "\"";
    }

    private static String two(int number) {
        return number < 10 ? "0" + number : Integer.toString(number);
    }

    /** Splits numbers at one kind of separator; null when the text is not so many of them. */
    private static int[] parts(String text, int count) {
        int[] parts = new int[count];
        int part = 0;
        int start = 0;
        char separator = 0;
        for (int i = 0; i <= text.length(); i++) {
            char c = i < text.length() ? text.charAt(i) : 0;
            if (c >= '0' && c <= '9') {
                continue;
            }
            boolean end = i == text.length();
            boolean right = c == '-' || c == '/' || c == '.';
            boolean same = separator == 0 || c == separator;
            if (i == start || part == count || !end && !(right && same)) {
                return null;
            }
            parts[part++] = number(text, start, i);
            start = i + 1;
            separator = end ? separator : c;
        }
        return part == count ? parts : null;
    }

    /** Returns the number made of ASCII digits, or -1. */
    private static int number(String text, int start, int end) {
        int number = 0;
        for (int i = start; i < end; i++) {
            int digit = text.charAt(i) - '0';
            if (digit < 0 || digit > 9 || number > 99_999_999) {
                return -1;
            }
            number = number * 10 + digit;
        }
        return number;
    }
}
