package org.hearthrule.checklist;

import static org.assertj.core.api.Assertions.assertThat;

import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.law.ProfileReader;
import org.hearthrule.law.Profiles;
import org.hearthrule.law.Requirement;
import org.hearthrule.terms.Subjects;
import org.hearthrule.terms.Wording;
import org.junit.jupiter.api.Test;

/** What law files say is set in sentences that read as sentences, whatever the file. */
class LawWordsTest {

    @Test
    void dueDatesOfEveryLawAreSentences() throws Exception {
        Profiles packaged = Profiles.packaged(new ProfileReader(Subjects::known, Subjects.ids()));
        for (String code : packaged.codes()) {
            Profile law = packaged.find(code);
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
        Profiles packaged = Profiles.packaged(new ProfileReader(Subjects::known, Subjects.ids()));
        for (String code : packaged.codes()) {
            Profile law = packaged.find(code);
            for (Pathway pathway : law.pathways()) {
                EvidenceWords words = new EvidenceWords(Wording.english(), law, pathway);
                pathway.asks().stream().map(Requirement::shows).filter(shows -> shows != null)
                        .forEach(shows -> assertThat(words.of(shows)).as(code).doesNotMatch("[ ;,.].*"));
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
