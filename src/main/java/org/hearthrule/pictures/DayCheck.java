package org.hearthrule.pictures;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.hearthrule.terms.Wording;

/** Sorts days that were found into those to be offered and those of which it is only said why they are not. */
final class DayCheck {

    /** No family photo is born digital before; from the task, as the two days on which unset camera clocks begin. */
    private static final int FIRST_YEAR = 1990;
    private static final Set<LocalDate> UNSET_CLOCK = Set.of(LocalDate.of(1970, 1, 1), LocalDate.of(2000, 1, 1));

    private final LocalDate today;
    private final Wording wording = Wording.english();
    private final List<DateOffer> offers = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();

    DayCheck(LocalDate today) {
        this.today = today;
    }

    List<DateOffer> offers() {
        return List.copyOf(offers);
    }

    /** Returns whole sentences. */
    List<String> notes() {
        return List.copyOf(notes);
    }

    /** Returns whether there is an offer yet. */
    boolean hasOffer() {
        return !offers.isEmpty();
    }

    void note(String key) {
        notes.add(wording.say(key));
    }

    /**
     * Takes a day that was found.
     *
     * @param time   or null
     * @param offset from UTC as noted, such as {@code -04:00}, or null
     * @param hint   what to think of it, as the end of a key, or null
     */
    void found(LocalDate day, LocalTime time, String offset, DateOffer.Origin origin, String hint) {
        String when = wording.date(day);
        if (time != null) {
            when = wording.say("picture.date.time", when, String.format(Locale.ROOT, "%02d:%02d", time.getHour(), time.getMinute()));
        }
        if (offset != null) {
            when = wording.say("picture.date.offset", when, offset);
        }
        String key = "picture.date." + origin.name().toLowerCase(Locale.ROOT).replace('_', '-');
        String words = wording.say(key, when) + (hint == null ? "" : wording.say("picture.date.hint." + hint));
        String doubt = doubt(day);
        if (doubt == null) {
            offers.add(new DateOffer(day, time, origin, words));
        } else {
            notes.add(wording.say("picture.doubt." + doubt, words));
        }
    }

    private String doubt(LocalDate day) {
        if (UNSET_CLOCK.contains(day)) {
            return "unset";
        }
        if (day.isAfter(today)) {
            return "future";
        }
        return day.getYear() < FIRST_YEAR ? "old" : null;
    }
}
