package org.hearthrule.suggest;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Makes offers of the cues found in a line. */
final class Offers {

    /** How far apart, in words, two words may stand that suggest something only together. */
    private static final int NEAR = 8;

    private static final double SURE = 1;
    private static final double LESS_SURE = 0.9;

    /** What each further cue adds. */
    private static final double ONE_MORE = 0.05;

    private Offers() { }

    /**
     * Returns the subjects for which the line says enough.
     *
     * @param habits what the family struck and confirmed; null when only the vocabulary is asked
     */
    static List<Offer> of(List<Hit> hits, List<Word> words, Habits habits) {
        Map<String, List<Hit>> bySubject = new LinkedHashMap<>();
        for (Hit hit : hits) {
            bySubject.computeIfAbsent(hit.cue().subject(), subject -> new ArrayList<>(2)).add(hit);
        }
        List<Offer> offers = new ArrayList<>();
        bySubject.forEach((subject, found) -> {
            if (habits != null) {
                found.removeIf(hit -> hit.cue().kind() != Cue.Kind.WITH && habits.strikes(hit.key(), subject));
            }
            Offer offer = offer(subject, found, words, habits);
            if (offer != null) {
                offers.add(offer);
            }
        });
        return offers;
    }

    private static Offer offer(String subject, List<Hit> found, List<Word> words, Habits habits) {
        BitSet places = new BitSet();
        Set<String> keys = new HashSet<>();
        double strength = 0;
        for (Hit hit : found) {
            boolean sure = hit.cue().kind() == Cue.Kind.SURELY;
            Hit helper = hit.cue().kind() == Cue.Kind.PERHAPS ? helper(hit, found, words) : null;
            if (sure || helper != null) {
                double trust = habits == null ? 1 : habits.trust(hit.key(), subject);
                strength = Math.max(strength, (sure ? SURE : LESS_SURE) * trust);
                keys.add(hit.key());
                mark(hit, places);
            }
            if (helper != null) {
                mark(helper, places);
            }
        }
        return keys.isEmpty() ? null : new Offer(subject, strength + ONE_MORE * (keys.size() - 1), places, false);
    }

    private static void mark(Hit hit, BitSet places) {
        for (int place : hit.places()) {
            places.set(place);
        }
    }

    /** The first word near enough to make this one count, or null. */
    private static Hit helper(Hit hit, List<Hit> found, List<Word> words) {
        for (Hit other : found) {
            int apart = other.first() > hit.first() ? other.first() - hit.last() : hit.first() - other.last();
            if (other.cue().kind() == Cue.Kind.WITH && apart > 0 && apart <= NEAR
                    && words.get(other.first()).sentence() == words.get(hit.first()).sentence()) {
                return other;
            }
        }
        return null;
    }
}
