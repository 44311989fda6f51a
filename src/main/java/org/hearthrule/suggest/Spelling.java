package org.hearthrule.suggest;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.apache.commons.text.similarity.LevenshteinDistance;

/**
 * Finds the word of the vocabulary that a misspelled one was meant to be: one letter too many or too few, two letters
 * that changed places, or, in a long word, one wrong letter. The first letter must be right. Never changes.
 */
final class Spelling {

    /** Shorter words of the language lie too near to one another. */
    private static final int SHORTEST = 6;

    /** From this length on one wrong letter does not make another word. */
    private static final int LONG = 8;

    private static final LevenshteinDistance DISTANCE = new LevenshteinDistance(2);

    /** A word or stem of the vocabulary, and the stem it has there. */
    private record Form(String letters, String stem) { }

    private final Set<String> stems;
    private final Map<Character, List<Form>> byFirstLetter = new HashMap<>();

    /**
     * Makes one.
     *
     * @param written stem by word, for every single word of the vocabulary
     */
    Spelling(Map<String, String> written) {
        this.stems = new HashSet<>(written.values());
        Map<String, String> forms = new TreeMap<>(written);
        written.values().forEach(stem -> forms.putIfAbsent(stem, stem));
        forms.forEach((letters, stem) -> {
            if (letters.length() >= SHORTEST) {
                byFirstLetter.computeIfAbsent(letters.charAt(0), first -> new ArrayList<>())
                        .add(new Form(letters, stem));
            }
        });
    }

    boolean knows(String stem) {
        return stems.contains(stem);
    }

    /**
     * Returns the stem of the word that was meant, or the same when there is none.
     *
     * @param word as it is written, in small letters
     * @param stem its stem
     */
    String meant(String word, String stem) {
        for (Form form : byFirstLetter.getOrDefault(word.charAt(0), List.of())) {
            if (isNear(word, form.letters()) || isNear(stem, form.letters())) {
                return form.stem();
            }
        }
        return stem;
    }

    private static boolean isNear(String found, String known) {
        if (found.length() < SHORTEST || Math.abs(found.length() - known.length()) > 1) {
            return false;
        }
        int distance = DISTANCE.apply(found, known);
        if (found.length() != known.length()) {
            return distance == 1;
        }
        return distance == 1 && found.length() >= LONG || distance == 2 && sorted(found).equals(sorted(known));
    }

    private static String sorted(String word) {
        char[] letters = word.toCharArray();
        Arrays.sort(letters);
        return new String(letters);
    }
}
