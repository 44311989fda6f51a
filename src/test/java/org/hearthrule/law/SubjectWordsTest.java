package org.hearthrule.law;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.hearthrule.terms.SubjectNames;
import org.junit.jupiter.api.Test;

class SubjectWordsTest {

    private final Map<String, List<String>> words;

    SubjectWordsTest() throws Exception {
        words = SubjectWords.of(Packaged.all());
    }

    @Test
    void nameThatStandsForOneSubjectIsKnown() {
        assertThat(words).containsEntry("health education", List.of("health"))
                .containsEntry("patriotism and citizenship", List.of("citizenship"));
    }

    /** "Social studies" is history or civics or geography: to take all three would claim what nobody wrote. */
    @Test
    void nameThatStandsForAnyOfSeveralIsNot() {
        assertThat(words).isNotEmpty().doesNotContainKeys("social studies", "social sciences");
        assertThat(words.values()).allSatisfy(ids -> assertThat(ids).hasSize(1));
    }

    /** A law's own meaning of "reading" must not change what the vocabulary's "reading" is. */
    @Test
    void nameOfTheVocabularyStaysItsOwn() {
        assertThat(words.keySet()).allSatisfy(name -> assertThat(SubjectNames.find(name)).isEmpty());
    }
}
