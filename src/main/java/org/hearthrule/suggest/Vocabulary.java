package org.hearthrule.suggest;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/**
 * What words suggest, as {@code shared/activities.yaml} says it, ready to be looked for in a line. Never changes; safe
 * for several threads.
 */
final class Vocabulary {

    /** How many other words may stand between two neighbours of a phrase. */
    private static final int GAP = 2;

    /** How many words the strikers of the file take away behind them. */
    private static final int STRUCK_WORDS = 2;

    private final Stemmer stemmer;
    private final ReadAsOne readAsOne;
    private final Set<String> strikesNext;
    private final Set<String> strikesAround;
    private final Map<String, List<Cue>> byFirstStem = new HashMap<>();
    private final Spelling spelling;

    /**
     * Makes one.
     *
     * @param words         cuts lines and joins phrases that are read as one word
     * @param strikesNext   stems after which the next two words did not happen
     * @param strikesAround stems in whose part of a sentence nothing happened
     * @param cues          all words and phrases of all subjects
     * @param written       the single words of the file as they are written, for words that are spelled wrong
     */
    Vocabulary(Words words, Set<String> strikesNext, Set<String> strikesAround, List<Cue> cues,
               Map<String, String> written) {
        this.stemmer = words.stemmer();
        this.readAsOne = words.readAsOne();
        this.strikesNext = Set.copyOf(strikesNext);
        this.strikesAround = Set.copyOf(strikesAround);
        for (Cue cue : cues) {
            byFirstStem.computeIfAbsent(cue.stems().get(0), stem -> new ArrayList<>()).add(cue);
        }
        byFirstStem.replaceAll((stem, list) -> List.copyOf(list));
        this.spelling = new Spelling(written);
    }

    /** What cuts a text into words: needed before there are cues, which are cut by it too. */
    record Words(Stemmer stemmer, ReadAsOne readAsOne) {

        List<Word> of(String text) {
            return readAsOne.join(stemmer.words(text));
        }
    }

    /** @return the words of a line that say what was done, in their order */
    List<Word> words(String line) {
        List<Word> words = readAsOne.join(stemmer.words(line));
        Set<Integer> undone = new HashSet<>();
        for (Word word : words) {
            if (strikesAround.contains(word.stem())) {
                undone.add(word.clause());
            }
        }
        List<Word> done = new ArrayList<>(words.size());
        int struckUntil = -1;
        int struckClause = -1;
        for (int i = 0; i < words.size(); i++) {
            Word word = words.get(i);
            if (strikesNext.contains(word.stem())) {
                struckUntil = i + STRUCK_WORDS;
                struckClause = word.clause();
            } else if (!undone.contains(word.clause()) && (i > struckUntil || word.clause() != struckClause)) {
                done.add(word);
            }
        }
        return done;
    }

    /** @return the same words, where one that no list knows and that is spelled almost like a known one becomes it */
    List<Word> respelled(List<Word> words, String line, Predicate<String> known) {
        List<Word> spelled = new ArrayList<>(words);
        spelled.replaceAll(word -> word.mayBeMisspelled() && !spelling.knows(word.stem()) && !known.test(word.stem())
                ? word.as(spelling.meant(word.in(line).toLowerCase(Locale.ROOT), word.stem())) : word);
        return spelled;
    }

    /** @return every cue found, by its first word and then in the order of the file */
    List<Hit> hits(List<Word> words) {
        List<Hit> hits = new ArrayList<>();
        for (int i = 0; i < words.size(); i++) {
            for (Cue cue : byFirstStem.getOrDefault(words.get(i).stem(), List.of())) {
                int[] places = places(cue.stems(), words, i);
                if (places != null) {
                    hits.add(new Hit(cue, cue.key(), places));
                }
            }
        }
        return hits;
    }

    /** @return the subjects of which a word or phrase alone speaks, by its stems */
    Map<String, Set<String>> subjectsByKey() {
        Map<String, Set<String>> subjects = new HashMap<>();
        byFirstStem.values().forEach(cues -> cues.stream().filter(cue -> cue.kind() != Cue.Kind.WITH)
                .forEach(cue -> subjects.computeIfAbsent(cue.key(), key -> new HashSet<>()).add(cue.subject())));
        return subjects;
    }

    private static int[] places(List<String> stems, List<Word> words, int first) {
        int[] places = new int[stems.size()];
        places[0] = first;
        for (int part = 1; part < places.length; part++) {
            int before = places[part - 1];
            int end = Math.min(words.size(), before + GAP + 2);
            int found = before + 1;
            while (found < end && !(words.get(found).stem().equals(stems.get(part))
                    && words.get(found).clause() == words.get(first).clause())) {
                found++;
            }
            if (found >= end) {
                return null;
            }
            places[part] = found;
        }
        return places;
    }
}
