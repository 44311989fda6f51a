package org.hearthrule.records;

import java.text.Normalizer;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.hearthrule.input.Phrases;
import org.hearthrule.input.Place;
import org.hearthrule.input.Problems;

/** Short names that must be unique: checks those given and makes those left out. */
final class Ids {

    /** The most characters of an id. */
    static final int LONGEST = 60;

    private final Map<String, Place> taken = new HashMap<>();

    /** Takes an id that stands in the file; records what is wrong with it. */
    void take(String id, Place place, Problems problems) {
        if (!isWellFormed(id)) {
            String better = slug(id);
            problems.error(place, "WRONG-ID", Phrases.quoted(id),
                    "an id of small letters, digits and single hyphens, at most " + LONGEST + " characters",
                    better.isEmpty() ? null : "write \"" + better + "\"");
            return;
        }
        Place first = taken.putIfAbsent(id, place);
        if (first != null) {
            problems.error(place, "REPEATED-ID", "a second " + Phrases.quoted(id),
                    "each id once; the first is on line " + first.line(), "give this one another id");
        }
    }

    /** Makes an id that nobody has yet: the wish itself, or the wish with a number. */
    String make(String wish, Place place) {
        String id = wish;
        for (int number = 2; taken.putIfAbsent(id, place) != null; number++) {
            id = wish + "-" + number;
        }
        return id;
    }

    /** Makes an id from a person's name: the first name, or the whole one when that is taken. */
    String makeFromName(String name, String otherwise, Place place) {
        String[] words = name.strip().split("\\s+", 2);
        String first = slug(words[0]);
        String whole = slug(name);
        String wish = first.isEmpty() || taken.containsKey(first) && !whole.isEmpty() ? whole : first;
        return make(wish.isEmpty() ? otherwise : wish, place);
    }

    private static boolean isWellFormed(String id) {
        boolean hyphen = true;
        for (int i = 0; i < id.length(); i++) {
            char c = id.charAt(i);
            boolean plain = c >= 'a' && c <= 'z' || c >= '0' && c <= '9';
            if (!plain && (c != '-' || hyphen)) {
                return false;
            }
            hyphen = c == '-';
        }
        return !hyphen && id.length() <= LONGEST;
    }

    /** Returns the plain letters and digits of a text, parted by hyphens; perhaps nothing. */
    static String slug(String text) {
        String plain = Normalizer.normalize(text, Normalizer.Form.NFD).toLowerCase(Locale.ROOT);
        StringBuilder slug = new StringBuilder();
        boolean gap = false;
        for (int i = 0; i < plain.length() && slug.length() < LONGEST - 4; i++) {
            char c = plain.charAt(i);
            if (c >= 'a' && c <= 'z' || c >= '0' && c <= '9') {
                slug.append(gap && slug.length() > 0 ? "-" : "").append(c);
                gap = false;
            } else if (Character.getType(c) != Character.NON_SPACING_MARK && c != '\'' && c != '’') {
                gap = true;
            }
        }
        return slug.toString();
    }
}
