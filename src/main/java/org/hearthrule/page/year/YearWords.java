package org.hearthrule.page.year;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.hearthrule.checklist.year.CalendarDay;
import org.hearthrule.checklist.year.DayMark;
import org.hearthrule.page.frame.PageWords;
import org.hearthrule.rules.Status;
import org.hearthrule.terms.Prose;
import org.hearthrule.terms.Wording;

/** What the drawings of a year say, in words. Safe for several threads. */
final class YearWords {

    private static final Wording ENGLISH = Wording.english();
    private static final int HOUR = 60;

    private YearWords() { }

    static String say(String key, Object... arguments) {
        return PageWords.say(key, arguments);
    }

    static String count(String key, long number) {
        return PageWords.count(key, number);
    }

    static String date(LocalDate day) {
        return ENGLISH.date(day);
    }

    /** @return for example {@code June 5} */
    static String dayOfMonth(LocalDate day) {
        return ENGLISH.date(java.time.MonthDay.from(day));
    }

    /** @return for example {@code October 2026} */
    static String month(YearMonth month) {
        return ENGLISH.date(month.getYear(), month.getMonthValue(), null);
    }

    /** @return for example {@code Oct} */
    static String shortMonth(int month) {
        return ENGLISH.months().get(month - 1).substring(0, 3);
    }

    static String and(List<String> words) {
        return ENGLISH.and(words);
    }

    /** @return for example {@code 2 h 10 min} */
    static String time(int minutes) {
        if (minutes == 0) {
            return say("year.no-minutes");
        }
        String hours = Wording.number(minutes / HOUR);
        return minutes < HOUR ? say("year.minutes", minutes) : minutes % HOUR == 0 ? say("year.hours", hours)
                : say("year.hours-minutes", hours, minutes % HOUR);
    }

    /** @return hours, cut and not rounded: to a tenth below ten, else whole; nothing for none. Fits under a small disc */
    static String hours(int minutes) {
        return minutes == 0 ? "" : number(BigDecimal.valueOf(minutes)
                .divide(BigDecimal.valueOf(HOUR), minutes < 10 * HOUR ? 1 : 0, RoundingMode.DOWN));
    }

    /** @return a number with commas between thousands, without zeros after its point */
    static String number(BigDecimal number) {
        String whole = Wording.number(number.longValue());
        String plain = number.stripTrailingZeros().toPlainString();
        int point = plain.indexOf('.');
        return point < 0 ? whole : whole + plain.substring(point);
    }

    static String status(Status status) {
        return ENGLISH.say("status." + status.slug());
    }

    static String mark(DayMark mark, Names names) {
        String key = "year.mark." + mark.kind().name().toLowerCase(Locale.ROOT).replace('_', '-');
        String words = mark.kind() == DayMark.Kind.EVENT ? Prose.upperFirst(mark.what())
                : say(key, mark.kind().isBound() ? mark.number() : mark.what());
        if (mark.note() != null) {
            words = say("year.mark.note", words, mark.note().replace('-', ' '));
        }
        return mark.children().isEmpty() ? words : say("year.mark.of", words, and(mark.children().stream().map(names::of).toList()));
    }

    /** @return what was logged on the day, in one line with its date */
    static String logged(CalendarDay day) {
        return day.entries() == 0 ? say("year.day.plain", date(day.date())) : say("year.day.logged", date(day.date()), amounts(day));
    }

    /** @return for example {@code 2 entries, 1 h 45 min; Arithmetic, Music}; nothing without an entry */
    static String amounts(CalendarDay day) {
        if (day.entries() == 0) {
            return "";
        }
        String amounts = say("year.day.amounts", count("year.entries", day.entries()), time(day.minutes()));
        return day.subjects().isEmpty() ? amounts : say("year.day.subjects", amounts, String.join(", ", day.subjects()));
    }

    /** @return for example {@code 1 h 45 min, 2 entries, 1 piece of work}; that nothing is noted where there is nothing */
    static String amounts(int minutes, int entries, int pieces, int books) {
        List<String> parts = new ArrayList<>();
        if (entries > 0) {
            parts.add(time(minutes));
            parts.add(count("year.entries", entries));
        }
        if (pieces > 0) {
            parts.add(count("year.pieces", pieces));
        }
        if (books > 0) {
            parts.add(count("year.books", books));
        }
        return parts.isEmpty() ? say("year.nothing") : String.join(", ", parts);
    }
}
