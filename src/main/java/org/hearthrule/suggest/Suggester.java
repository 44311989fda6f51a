package org.hearthrule.suggest;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hearthrule.input.Problems;
import org.hearthrule.terms.Subjects;

/**
 * Suggests subjects for what a parent wrote. {@code Suggester.packaged().of("measured the jetty")} offers
 * {@code measurement}, because of "measured"; {@code of("a quiet day")} offers nothing.
 *
 * <p>What a family confirmed before can be learned: line by line with {@link #learn}, or all at once with
 * {@link #learning}. A suggester for each child learns the habits of each. Nothing but {@code learn} changes one; it is
 * safe for several threads.
 */
public final class Suggester {

    /** Where the vocabulary lies on the class path. */
    public static final String RESOURCE = "shared/activities.yaml";

    /** The most suggestions for one line: more would be a list to read, not a few taps. */
    public static final int MOST = 4;

    private static final List<String> ORDER = List.copyOf(Subjects.ids());

    private final Vocabulary vocabulary;
    private final Habits habits = new Habits();

    Suggester(Vocabulary vocabulary) {
        this.vocabulary = vocabulary;
    }

    /** @return a suggester that knows the vocabulary of the program, and no family */
    public static Suggester packaged() {
        return new Suggester(Packaged.VOCABULARY);
    }

    /** @return a suggester that has learned from a family's lines, in their order */
    public static Suggester learning(Iterable<Confirmed> lines) {
        Suggester suggester = packaged();
        lines.forEach(suggester::learn);
        return suggester;
    }

    /** Learns from one line more. */
    public void learn(Confirmed line) {
        habits.take(ReadLine.of(line, vocabulary), 1);
    }

    /**
     * Forgets a line that was learned: it was changed, deleted, or its logging undone. Exact as long as its words have
     * not faded (see {@link Habit}).
     */
    public void forget(Confirmed line) {
        habits.take(ReadLine.of(line, vocabulary), -1);
    }

    /** @return what was learned, by word and subject, to be shown to the family */
    public List<Habit> habits() {
        return habits.all(vocabulary.subjectsByKey());
    }

    Vocabulary vocabulary() {
        return vocabulary;
    }

    /** @return how many words the habits are kept of */
    int words() {
        return habits.words();
    }

    /**
     * Returns what the words suggest, the best first, at most {@value #MOST}; empty when they suggest nothing. Never
     * throws for what the words are; of a very long text only the beginning counts.
     */
    public List<Suggestion> of(String words) {
        List<Word> read = vocabulary.respelled(vocabulary.words(words), words, habits::knows);
        Map<String, Offer> offers = new LinkedHashMap<>();
        for (Offer offer : Offers.of(vocabulary.hits(read), read, habits)) {
            offers.put(offer.subject(), offer);
        }
        taught(read).forEach(offers::putIfAbsent);
        // "mathematics" says nothing more once "arithmetic" is offered
        Set<String> said = new HashSet<>();
        offers.keySet().stream().filter(subject -> !Subjects.isArea(subject)).map(Subjects::areaOf).forEach(said::add);
        offers.keySet().removeAll(said);
        return offers.values().stream()
                .sorted(Comparator.comparingDouble((Offer offer) -> -offer.strength())
                        .thenComparingInt(offer -> offer.places().nextSetBit(0))
                        .thenComparingInt(offer -> ORDER.indexOf(offer.subject())))
                .limit(MOST)
                .map(offer -> new Suggestion(offer.subject(), because(offer, read, words), offer.learned()))
                .toList();
    }

    private Map<String, Offer> taught(List<Word> read) {
        Map<String, Offer> offers = new HashMap<>();
        for (int i = 0; i < read.size(); i++) {
            for (String subject : habits.taughtBy(read.get(i).stem())) {
                BitSet place = new BitSet();
                place.set(i);
                offers.merge(subject, new Offer(subject, habits.trust(read.get(i).stem(), subject), place, true),
                        Suggester::both);
            }
        }
        return offers;
    }

    private static Offer both(Offer one, Offer other) {
        BitSet places = (BitSet) one.places().clone();
        places.or(other.places());
        return new Offer(one.subject(), Math.max(one.strength(), other.strength()), places, true);
    }

    private static List<String> because(Offer offer, List<Word> read, String words) {
        List<String> because = new ArrayList<>();
        offer.places().stream().mapToObj(place -> read.get(place).in(words)).filter(word -> !because.contains(word))
                .forEach(because::add);
        return because;
    }

    /** Read on first use; a fault here is a fault of the build, and a test finds it. */
    private static final class Packaged {

        static final Vocabulary VOCABULARY = load();

        private static Vocabulary load() {
            try (InputStream bytes = Suggester.class.getClassLoader().getResourceAsStream(RESOURCE)) {
                if (bytes == null) {
                    throw new IllegalStateException(RESOURCE + " is missing from the program");
                }
                Problems problems = new Problems();
                String text = new String(bytes.readAllBytes(), StandardCharsets.UTF_8);
                return VocabularyReader.read(RESOURCE, text, problems)
                        .orElseThrow(() -> new IllegalStateException(problems.all().get(0).toText()));
            } catch (IOException e) {
                throw new IllegalStateException(RESOURCE + " cannot be read", e);
            }
        }
    }
}
