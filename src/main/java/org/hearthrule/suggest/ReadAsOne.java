package org.hearthrule.suggest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Phrases that mean something else than their words: a spelling bee is no insect. Never changes. */
final class ReadAsOne {

    private final Map<String, List<List<String>>> byFirstStem = new HashMap<>();

    /**
     * Makes one.
     *
     * @param phrases stems of each, two or more
     */
    ReadAsOne(List<List<String>> phrases) {
        phrases.stream().sorted(Comparator.comparing((List<String> phrase) -> -phrase.size()))
                .forEach(phrase -> byFirstStem.computeIfAbsent(phrase.get(0), stem -> new ArrayList<>()).add(phrase));
    }

    /** @return the words, each such phrase as one word; the longest phrase wins */
    List<Word> join(List<Word> words) {
        List<Word> joined = new ArrayList<>(words.size());
        for (int i = 0; i < words.size(); i++) {
            int length = length(words, i);
            Word first = words.get(i);
            Word last = words.get(i + length - 1);
            StringBuilder stem = new StringBuilder(first.stem());
            for (int part = 1; part < length; part++) {
                stem.append(' ').append(words.get(i + part).stem());
            }
            joined.add(length == 1 ? first
                    : new Word(stem.toString(), first.start(), last.end(), first.sentence(), first.clause()));
            i += length - 1;
        }
        return joined;
    }

    /** How many words from here on are one. */
    private int length(List<Word> words, int from) {
        for (List<String> phrase : byFirstStem.getOrDefault(words.get(from).stem(), List.of())) {
            if (stands(phrase, words, from)) {
                return phrase.size();
            }
        }
        return 1;
    }

    private static boolean stands(List<String> phrase, List<Word> words, int from) {
        if (from + phrase.size() > words.size()) {
            return false;
        }
        for (int part = 1; part < phrase.size(); part++) {
            Word word = words.get(from + part);
            if (!word.stem().equals(phrase.get(part)) || word.clause() != words.get(from).clause()) {
                return false;
            }
        }
        return true;
    }
}
