package org.hearthrule.suggest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What a family's own lines teach. A word teaches a subject when it stood, unexplained by the vocabulary, in three
 * lines of that subject, when four lines of five with it stood under the subject, and when that is clearly more than
 * among the lines without it. A word of the vocabulary is struck when three lines with it did not stand under the
 * subject it suggests, and no more than one of five did.
 *
 * <p>The same lines in the same order give the same habits. Holds at most {@value #MOST_WORDS} words: then those that
 * were met least often are forgotten. Safe for several threads.
 */
final class Habits {

    static final int MOST_WORDS = 10_000;
    private static final int ENOUGH_LINES = 3;
    private static final double OFTEN = 0.8;
    private static final double SELDOM = 0.2;

    /** How much more often, as a part of 1, a taught subject must stand with the word than without it. */
    private static final double CLEARLY_MORE = 0.3;

    /** With fewer lines than this without the word, nothing can be said about lines without it. */
    private static final int FEW_LINES = 8;

    private final Map<String, Tally> tallies = new HashMap<>();
    private final Tally all = new Tally(false);

    /**
     * Takes a line in, or out again.
     *
     * @param line what its words and the vocabulary say
     * @param step 1 to take it in, -1 to take it out
     */
    synchronized void take(ReadLine line, int step) {
        count(all, line, "", step);
        for (String word : line.words()) {
            count(tallies.computeIfAbsent(word, key -> new Tally(true)), line, word, step);
        }
        if (step < 0) {
            tallies.values().removeIf(tally -> tally.lines() == 0);
        }
        for (int least = 1; tallies.size() > MOST_WORDS; least++) {
            int most = least;
            tallies.values().removeIf(tally -> tally.lines() <= most);
        }
    }

    private static void count(Tally tally, ReadLine line, String word, int step) {
        tally.line(step);
        for (String subject : line.shown()) {
            tally.under(subject, line.mayTeach(word, subject), step);
        }
        tally.fade();
    }

    /** @return whether the family has struck what the word suggests */
    synchronized boolean strikes(String word, String subject) {
        Tally tally = tallies.get(word);
        return tally != null && isStruck(tally, subject);
    }

    private static boolean isStruck(Tally tally, String subject) {
        int together = tally.together(subject);
        return tally.lines() - together >= ENOUGH_LINES && together <= SELDOM * tally.lines();
    }

    /** @return how readily the family confirms what the word suggests: from 0.5 (never) over 1 (unknown) to 1.5 (always) */
    synchronized double trust(String word, String subject) {
        Tally tally = tallies.get(word);
        return tally == null ? 1 : 0.5 + (tally.together(subject) + 1.0) / (tally.lines() + 2.0);
    }

    /** @return the subjects a word teaches, in no particular order */
    synchronized List<String> taughtBy(String word) {
        Tally tally = tallies.get(word);
        if (tally == null || tally.lines() < ENOUGH_LINES) {
            return List.of();
        }
        List<String> taught = new ArrayList<>(1);
        for (Tally.Count count : tally.counts()) {
            if (isTaught(tally, count)) {
                taught.add(count.subject());
            }
        }
        return taught;
    }

    private boolean isTaught(Tally tally, Tally.Count count) {
        if (count.unexplained() < ENOUGH_LINES || count.together() < OFTEN * tally.lines()) {
            return false;
        }
        int others = all.lines() - tally.lines();
        int othersTogether = all.together(count.subject()) - count.together();
        double elsewhere = others < FEW_LINES ? 0 : (double) othersTogether / others;
        return (double) count.together() / tally.lines() - elsewhere >= CLEARLY_MORE;
    }

    /** @return whether the family has used a word before */
    synchronized boolean knows(String word) {
        return tallies.containsKey(word);
    }

    /** @return how many words were met and not forgotten */
    synchronized int words() {
        return tallies.size();
    }

    /**
     * Returns everything that is taught or struck, by word and subject.
     *
     * @param suggested the subjects that the vocabulary gives a word
     */
    synchronized List<Habit> all(Map<String, Set<String>> suggested) {
        List<Habit> habits = new ArrayList<>();
        tallies.forEach((word, tally) -> {
            for (String subject : taughtBy(word)) {
                habits.add(habit(word, subject, Habit.Kind.TAUGHT, tally));
            }
            for (String subject : suggested.getOrDefault(word, Set.of())) {
                if (isStruck(tally, subject)) {
                    habits.add(habit(word, subject, Habit.Kind.STRUCK, tally));
                }
            }
        });
        habits.sort(Comparator.comparing(Habit::word).thenComparing(Habit::subject));
        return List.copyOf(habits);
    }

    private static Habit habit(String word, String subject, Habit.Kind kind, Tally tally) {
        return new Habit(word, subject, kind, tally.together(subject), tally.lines());
    }
}
