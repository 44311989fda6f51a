package org.hearthrule.suggest;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What a family confirmed before raises, strikes and teaches. */
class SuggesterLearningTest {

    private final Suggester suggester = Suggester.packaged();

    @Test
    void threeLinesTeachAWordAndTwoDoNot() {
        // given
        learn("an hour on the ferry", "physics");
        learn("counting cars, then the ferry again", "physics");
        List<String> afterTwo = subjects("took the ferry");

        // when
        learn("the ferry with Ned", "physics");

        // then
        assertThat(afterTwo).isEmpty();
        assertThat(suggester.of("Ferry all afternoon"))
                .containsExactly(new Suggestion("physics", List.of("Ferry"), true));
    }

    @Test
    void aWordThatIsTickedNowThisWayNowThatTeachesNothing() {
        for (int i = 0; i < 3; i++) {
            learn("ferry", "physics");
            learn("ferry", "geography");
        }

        assertThat(suggester.of("ferry")).isEmpty();
    }

    /** What the line itself explains must not be laid on the words that happen to stand beside it. */
    @Test
    void aNameBesideAKnownWordIsNotTaught() {
        for (int i = 0; i < 6; i++) {
            learn("fractions with Otis", "arithmetic");
        }

        assertThat(suggester.of("Otis")).isEmpty();
    }

    /** A family that ticks the same subject each day has said nothing about the words of the day. */
    @Test
    void whatIsTickedEveryDayIsNotTaughtByAWord() {
        for (String words : List.of("wind", "wet socks", "hail", "mud", "ice on the slip", "gale", "calm", "haze", "sleet")) {
            learn(words, "religion");
        }
        for (int i = 0; i < 3; i++) {
            learn("ferry", "religion");
        }

        assertThat(subjects("ferry")).isEmpty();
    }

    @Test
    void oneWrongLineDoesNotOutweighTheVocabulary() {
        learn("journal", "physics");

        assertThat(subjects("journal")).containsExactly("writing");
    }

    @Test
    void whatIsStruckEachTimeIsNoLongerOffered() {
        for (int i = 0; i < 3; i++) {
            learn("journal", "emotional-health");
        }

        assertThat(subjects("journal")).containsExactly("emotional-health");
        assertThat(subjects("wrote a letter")).contains("writing");
    }

    @Test
    void whatIsConfirmedAgainIsOfferedAgain() {
        for (int i = 0; i < 3; i++) {
            learn("journal", "emotional-health");
        }
        for (int i = 0; i < 3; i++) {
            learn("journal", "writing");
        }

        assertThat(subjects("journal")).contains("writing");
    }

    /** Ticking the exact subject instead of the area offered is no striking of the area. */
    @Test
    void aSubjectOfTheAreaConfirmsTheArea() {
        for (int i = 0; i < 5; i++) {
            learn("math", "geometry");
        }

        assertThat(subjects("math")).containsExactly("geometry");
        assertThat(suggester.habits()).extracting(Habit::kind).containsOnly(Habit.Kind.TAUGHT);
    }

    @Test
    void whatIsConfirmedStandsBeforeWhatIsNot() {
        // given a line that suggests both, the first word first
        assertThat(subjects("piano and fractions")).containsExactly("music", "arithmetic");

        // when one of them was often confirmed
        for (int i = 0; i < 5; i++) {
            learn("fractions", "arithmetic");
        }

        // then
        assertThat(subjects("piano and fractions")).containsExactly("arithmetic", "music");
    }

    /** A child of six is no child of fourteen: eight years of one habit must give way within a term. */
    @Test
    void aNewHabitOutweighsAnOldOne() {
        for (int i = 0; i < 1_500; i++) {
            learn("math", "arithmetic");
        }
        for (int i = 0; i < 60; i++) {
            learn("math", "algebra");
        }

        assertThat(subjects("math")).containsExactly("algebra");
    }

    @Test
    void aLineThatIsForgottenLeavesNothing() {
        Confirmed ferry = new Confirmed("ferry", Set.of("physics"));
        Confirmed journal = new Confirmed("journal", Set.of("physics"));
        for (int i = 0; i < 4; i++) {
            suggester.learn(ferry);
            suggester.learn(journal);
        }
        for (int i = 0; i < 4; i++) {
            suggester.forget(ferry);
            suggester.forget(journal);
        }
        suggester.forget(ferry);

        assertThat(suggester.of("ferry")).isEmpty();
        assertThat(subjects("journal")).containsExactly("writing");
        assertThat(suggester.habits()).isEmpty();
        assertThat(suggester.words()).isZero();
    }

    @Test
    void tellsWhatWasLearned() {
        for (int i = 0; i < 3; i++) {
            learn("journal", "emotional-health");
        }

        assertThat(suggester.habits()).containsExactly(
                new Habit("journal", "emotional-health", Habit.Kind.TAUGHT, 3, 3),
                new Habit("journal", "writing", Habit.Kind.STRUCK, 0, 3));
    }

    @Test
    void theSameLinesGiveTheSameSuggestions() {
        List<Confirmed> lines = SuggesterSpeedTest.years(3_000);

        Suggester one = Suggester.learning(lines);
        Suggester other = Suggester.packaged();
        lines.forEach(other::learn);

        assertThat(one.habits()).isNotEmpty().isEqualTo(other.habits());
        for (Confirmed line : lines.subList(0, 300)) {
            assertThat(one.of(line.words())).isEqualTo(other.of(line.words()));
        }
    }

    @Test
    void whatIsNoSubjectIsPassedOver() {
        for (int i = 0; i < 3; i++) {
            learn("ferry", "core", "no-such-subject");
        }

        assertThat(suggester.of("ferry")).isEmpty();
    }

    /** Habits are kept as long as the page is open; any number of lines must fit. */
    @Test
    void keepsAtMostSoManyWords() {
        List<String> words = new ArrayList<>();
        for (int i = 0; i < 30_000; i++) {
            words.add("w" + Integer.toString(i + 46_656, 36).replaceAll("\\d", "z") + i % 7 + "q");
        }
        Collections.shuffle(words, new java.util.Random(3));
        for (int i = 0; i < 40; i++) {
            learn("ferry", "physics");
        }
        words.forEach(word -> learn(word, "music"));

        assertThat(suggester.words()).isLessThanOrEqualTo(Habits.MOST_WORDS);
        assertThat(subjects("ferry")).containsExactly("physics");
    }

    private void learn(String words, String... subjects) {
        suggester.learn(new Confirmed(words, Set.of(subjects)));
    }

    private List<String> subjects(String words) {
        return suggester.of(words).stream().map(Suggestion::subject).toList();
    }
}
