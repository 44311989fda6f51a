package org.hearthrule.suggest;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import org.hearthrule.terms.Subjects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SuggesterTest {

    private final Suggester suggester = Suggester.packaged();

    @Test
    void suggestsWhatAParentWouldTick() {
        assertThat(subjects("measured the jetty and worked out the planks"))
                .containsExactly("measurement", "practical-arts");
    }

    @Test
    void tellsWhichWordsLedToIt() {
        List<Suggestion> suggestions = suggester.of("Measured the jetty; worked out the Planks.");

        assertThat(suggestions).containsExactly(new Suggestion("measurement", List.of("Measured"), false),
                new Suggestion("practical-arts", List.of("Planks"), false));
    }

    @Test
    void tellsTheWordsOfAPhraseInTheirOrder() {
        assertThat(suggester.of("they built a small wooden bridge")).filteredOn(one -> one.subject().equals("physics"))
                .extracting(Suggestion::because).containsExactly(List.of("built", "bridge"));
    }

    @ParameterizedTest
    @CsvSource({"MEASURING THE BEDS,measurement", "measures,measurement", "sang two rounds,music", "P.E. at the hall,physical-education",
        "maths,mathematics", "drew a crab,drawing", "Grandma’s fractions,arithmetic", "water-colours,visual-art",
        "multiplacation,arithmetic", "mutliplication,arithmetic", "multiplication,arithmetic"})
    void findsAWordInAnyForm(String words, String subject) {
        assertThat(subjects(words)).contains(subject);
    }

    /** Nothing counts as done that the line says was not done. */
    @ParameterizedTest
    @ValueSource(strings = {"no math today", "didn't do math", "Skipped math, long nap", "math was canceled",
        "without fractions", "No math or spelling"})
    void doesNotSuggestWhatWasNotDone(String words) {
        assertThat(subjects(words)).doesNotContain("mathematics", "arithmetic", "spelling");
    }

    @Test
    void whatWasDoneBesideWhatWasNotIsSuggested() {
        assertThat(subjects("no math, but two chapters read aloud")).containsExactly("reading");
    }

    /** A spelling bee is no insect, and a day off no fractions. */
    @ParameterizedTest
    @CsvSource({"spelling bee,life-science", "drew straws,drawing", "a cell phone,life-science", "run errands,fitness",
        "a busy day,economics", "an important visit,economics", "did well,health", "the generous neighbor,technical-education"})
    void doesNotSuggestForAnotherMeaning(String words, String subject) {
        assertThat(subjects(words)).doesNotContain(subject);
    }

    @Test
    void aWordThatMeansLittleAloneNeedsAnotherBesideIt() {
        assertThat(subjects("threw a stone")).isEmpty();
        assertThat(subjects("sorted every stone by hardness")).containsExactly("earth-science");
        assertThat(subjects("threw a stone. Sorted the laundry.")).doesNotContain("earth-science");
    }

    /** The area says nothing more once one of its subjects is offered. */
    @Test
    void offersAnAreaOnlyWithoutItsSubjects() {
        assertThat(subjects("math")).containsExactly("mathematics");
        assertThat(subjects("math: fractions")).containsExactly("arithmetic");
    }

    @Test
    void offersFewAndTheBestFirst() {
        String everything = "read a poem, wrote a letter, fractions, piano, soccer, Spanish, baked bread, the moon, a frog, church";

        assertThat(subjects(everything)).hasSize(Suggester.MOST).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "\n\t", ".", "a quiet day", "the", "12", "Sick today.", "visitors all afternoon"})
    void suggestsNothingForNothing(String words) {
        assertThat(suggester.of(words)).isEmpty();
    }

    /** A subject that no word of the vocabulary leads to would never be offered, and nobody would notice. */
    @Test
    void everySubjectCanBeSuggested() {
        Collection<Set<String>> led = suggester.vocabulary().subjectsByKey().values();

        assertThat(Subjects.ids()).filteredOn(id -> !Subjects.isArea(id))
                .allMatch(id -> led.stream().anyMatch(subjects -> subjects.contains(id)));
    }

    private List<String> subjects(String words) {
        return suggester.of(words).stream().map(Suggestion::subject).toList();
    }
}
