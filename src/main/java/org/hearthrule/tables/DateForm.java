package org.hearthrule.tables;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Optional;

/** A form in which a table may write its dates: one for the whole table. */
public enum DateForm {
    ISO("uuuu-MM-dd"),
    US_TWO_DIGITS("MM/dd/uuuu"),
    EUROPEAN_SLASHES("dd/MM/uuuu"),
    EUROPEAN_POINTS("dd.MM.uuuu"),
    US("M/d/uuuu"),
    US_SHORT_YEAR("M/d/uu");

    private static final int THIS_CENTURY = 2000;

    private final String pattern;

    DateForm(String pattern) {
        this.pattern = pattern;
    }

    /**
     * @return the letters by which a person names it: {@code uuuu} or {@code uu} the year, {@code MM} or {@code M}
     *         the month, {@code dd} or {@code d} the day; a single letter allows one digit as well as two
     */
    public String pattern() {
        return pattern;
    }

    /** @return the form of this pattern; {@code yyyy} and {@code yy} are understood too */
    public static Optional<DateForm> of(String pattern) {
        String wanted = pattern.strip().replace('y', 'u');
        for (DateForm form : values()) {
            if (form.pattern.equals(wanted)) {
                return Optional.of(form);
            }
        }
        return Optional.empty();
    }

    /** @return the date, or null when the text does not have this form or names no day; {@code uu} is 2000 to 2099 */
    public LocalDate parse(String text) {
        int year = -1;
        int month = -1;
        int day = -1;
        int at = 0;
        for (int i = 0; i < pattern.length();) {
            char letter = pattern.charAt(i);
            int letters = 1;
            while (i + letters < pattern.length() && pattern.charAt(i + letters) == letter) {
                letters++;
            }
            i += letters;
            if (letter != 'u' && letter != 'M' && letter != 'd') {
                if (at >= text.length() || text.charAt(at) != letter) {
                    return null;
                }
                at++;
                continue;
            }
            int digits = digits(text, at);
            if (letters == 1 ? digits < 1 || digits > 2 : digits != letters) {
                return null;
            }
            int number = Integer.parseInt(text.substring(at, at + digits));
            at += digits;
            year = letter == 'u' ? number + (letters == 2 ? THIS_CENTURY : 0) : year;
            month = letter == 'M' ? number : month;
            day = letter == 'd' ? number : day;
        }
        boolean exists = at == text.length() && month >= 1 && month <= 12 && day >= 1
                && day <= YearMonth.of(year, month).lengthOfMonth();
        return exists ? LocalDate.of(year, month, day) : null;
    }

    /** @return the date in this form */
    public String format(LocalDate date) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < pattern.length(); i++) {
            char letter = pattern.charAt(i);
            if (letter != 'u' && letter != 'M' && letter != 'd') {
                text.append(letter);
            } else if (i == 0 || pattern.charAt(i - 1) != letter) {
                int letters = pattern.lastIndexOf(letter) - i + 1;
                int number = letter == 'u' ? letters == 2 ? date.getYear() % 100 : date.getYear()
                        : letter == 'M' ? date.getMonthValue() : date.getDayOfMonth();
                String digits = Integer.toString(number);
                text.append("0".repeat(Math.max(0, letters - digits.length()))).append(digits);
            }
        }
        return text.toString();
    }

    private static int digits(String text, int start) {
        int end = start;
        while (end < text.length() && text.charAt(end) >= '0' && text.charAt(end) <= '9') {
            end++;
        }
        return end - start > 4 ? 0 : end - start;
    }

    /** Returns the pattern. */
    @Override
    public String toString() {
        return pattern;
    }
}
