package org.hearthrule.checklist;

import static org.assertj.core.api.Assertions.assertThat;

import org.hearthrule.law.Packaged;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Requirement;
import org.hearthrule.terms.Prose;
import org.hearthrule.terms.Wording;
import org.junit.jupiter.api.Test;

/** What law files say is set in sentences that read as sentences, whatever the file. */
class LawWordsTest {

    @Test
    void dueDatesOfEveryLawAreSentences() throws Exception {
        for (Profile law : Packaged.all()) {
            for (Pathway pathway : law.pathways()) {
                DueWords words = new DueWords(Wording.english(), law, pathway);
                for (Requirement asked : pathway.asks()) {
                    assertThat(words.sentence(asked.due())).as(asked.id()).matches("[A-Z].*[.?!]").doesNotMatch("Due (if |[A-Z]).*")
                            .doesNotContain("..");
                }
            }
        }
    }

    @Test
    void amountsAndSubjectsOfEveryLawBeginWithWords() throws Exception {
        for (Profile law : Packaged.all()) {
            for (Pathway pathway : law.pathways()) {
                EvidenceWords words = new EvidenceWords(Wording.english(), law, pathway);
                pathway.asks().stream().map(Requirement::shows).filter(shows -> shows != null)
                        .forEach(shows -> assertThat(words.of(shows)).as(law.code()).doesNotMatch("[ ;,.].*"));
            }
        }
    }

    @Test
    void namesKeepTheirAbbreviations() {
        assertThat(Prose.lowerFirst("Home instruction")).isEqualTo("home instruction");
        assertThat(Prose.lowerFirst("CHEC school")).isEqualTo("CHEC school");
        assertThat(Prose.lowerFirst("")).isEmpty();
    }
}
