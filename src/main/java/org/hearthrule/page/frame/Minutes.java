package org.hearthrule.page.frame;

import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A length of time as people type it: {@code 90}, {@code 1:30}, {@code 1h 30}, {@code 1.5 h}, {@code 45 min}. */
public final class Minutes {

    public static final int LONGEST_DAY = 1_440;

    private static final Pattern PLAIN = Pattern.compile("(\\d{1,4})\\s*(m|min|mins|minutes)?");
    private static final Pattern CLOCK = Pattern.compile("(\\d{1,2}):([0-5]\\d)");
    private static final Pattern HOURS = Pattern.compile("(\\d{1,2})(?:[.,](\\d{1,2}))?\\s*(?:h|hr|hrs|hour|hours)\\s*"
            + "(?:(\\d{1,2})\\s*(?:m|min|mins|minutes)?)?");

    private Minutes() { }

    /** @return the minutes, or empty when it is no length of a day */
    public static OptionalInt of(String typed) {
        String text = typed.strip().toLowerCase(java.util.Locale.ROOT);
        Matcher plain = PLAIN.matcher(text);
        Matcher clock = CLOCK.matcher(text);
        Matcher hours = HOURS.matcher(text);
        long minutes = -1;
        if (plain.matches()) {
            minutes = Integer.parseInt(plain.group(1));
        } else if (clock.matches()) {
            minutes = Integer.parseInt(clock.group(1)) * 60L + Integer.parseInt(clock.group(2));
        } else if (hours.matches() && (hours.group(2) == null || hours.group(3) == null)) {
            double whole = Double.parseDouble(hours.group(1) + '.' + (hours.group(2) == null ? "0" : hours.group(2)));
            minutes = Math.round(whole * 60) + (hours.group(3) == null ? 0 : Integer.parseInt(hours.group(3)));
        }
        return minutes < 0 || minutes > LONGEST_DAY ? OptionalInt.empty() : OptionalInt.of((int) minutes);
    }

    /** @return for example {@code 1 hour 30 minutes} */
    public static String words(int minutes) {
        int hours = minutes / 60;
        int rest = minutes % 60;
        String h = hours == 0 ? "" : hours == 1 ? "1 hour" : hours + " hours";
        String m = rest == 0 && hours > 0 ? "" : rest == 1 ? "1 minute" : rest + " minutes";
        return h.isEmpty() ? m : m.isEmpty() ? h : h + ' ' + m;
    }
}
