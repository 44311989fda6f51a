package org.hearthrule.input;

import java.util.Arrays;
import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** Finds the known word that someone most likely meant. */
public final class Nearest {

    private static final int SHORTEST_STEM = 3;
    private static final int LONGEST_WORD = 100;

    private Nearest() {}

    /**
     * Returns the known word nearest to what was found. Case does not count. A word is near when at
     * most a third of its letters (at least one) must change, when its letters only stand in another
     * order, or, failing those, when one of the two (of three letters or more) begins the other.
     *
     * @param found the word that is not known
     * @param known the words that are
     * @return the nearest, the earlier one of equals; or empty when none is near
     */
    public static Optional<String> of(String found, Collection<String> known) {
        if (found.length() > LONGEST_WORD) {
            return Optional.empty();
        }
        String word = found.toLowerCase(Locale.ROOT);
        String best = null;
        int bestDistance = Integer.MAX_VALUE;
        for (String candidate : known) {
            int distance = distance(word, candidate.toLowerCase(Locale.ROOT));
            if (distance >= 0 && distance < bestDistance) {
                best = candidate;
                bestDistance = distance;
            }
        }
        return best == null ? stem(word, known) : Optional.of(best);
    }

    private static int distance(String word, String candidate) {
        int limit = Math.max(1, Math.max(word.length(), candidate.length()) / 3);
        int distance = new LevenshteinDistance(limit).apply(word, candidate);
        if (distance < 0 && word.length() == candidate.length() && sorted(word).equals(sorted(candidate))) {
            return limit + 1;
        }
        return distance >= Math.max(word.length(), candidate.length()) ? -1 : distance;
    }

    private static String sorted(String word) {
        char[] letters = word.toCharArray();
        Arrays.sort(letters);
        return new String(letters);
    }

    private static Optional<String> stem(String word, Collection<String> known) {
        for (String candidate : known) {
            String lower = candidate.toLowerCase(Locale.ROOT);
            String shorter = lower.length() < word.length() ? lower : word;
            String longer = lower.length() < word.length() ? word : lower;
            if (shorter.length() >= SHORTEST_STEM && longer.startsWith(shorter)) {
                return Optional.of(candidate);
            }
        }
        return Optional.empty();
    }
}
