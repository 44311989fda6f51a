package org.hearthrule.suggest;

import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.hearthrule.terms.Subjects;

/**
 * A family's line, read for what it can teach.
 *
 * @param words     the stems of its words, and the phrases of the vocabulary found in it
 * @param shown     the subjects it stands under, and what they show too: their areas, a sister
 * @param confirmed the subjects it stands under, as ticked
 * @param explained the subjects that the vocabulary suggests for it
 * @param free      the stems that no cue of the vocabulary uses; when there are none, all
 */
record ReadLine(Set<String> words, Set<String> shown, Set<String> confirmed, Set<String> explained, Set<String> free) {

    static ReadLine of(Confirmed line, Vocabulary vocabulary) {
        List<Word> words = vocabulary.words(line.words());
        List<Hit> hits = vocabulary.hits(words);
        Set<String> explained = new HashSet<>();
        Set<String> keys = new LinkedHashSet<>();
        for (Word word : words) {
            if (!word.isNumber() && word.stem().length() > 1) {
                keys.add(word.stem());
            }
        }
        Set<String> free = new LinkedHashSet<>(keys);
        for (Offer offer : Offers.of(hits, words, null)) {
            explained.add(offer.subject());
            offer.places().stream().forEach(place -> free.remove(words.get(place).stem()));
        }
        Set<String> all = new LinkedHashSet<>(keys);
        hits.forEach(hit -> all.add(hit.key()));
        Set<String> confirmed = new HashSet<>();
        Set<String> shown = new HashSet<>();
        for (String subject : line.subjects()) {
            if (Subjects.known(subject)) {
                confirmed.add(subject);
                shown.add(subject);
            }
        }
        for (String subject : explained) {
            if (confirmed.stream().anyMatch(ticked -> Subjects.shows(ticked, subject))) {
                shown.add(subject);
            }
        }
        return new ReadLine(all, shown, confirmed, explained, free.isEmpty() ? keys : free);
    }

    /** @return whether the line teaches that the word means the subject: it was ticked, and nothing explains it */
    boolean mayTeach(String word, String subject) {
        return confirmed.contains(subject) && !explained.contains(subject) && free.contains(word);
    }
}
