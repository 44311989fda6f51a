package org.hearthrule.terms;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SubjectNamesTest {

    @ParameterizedTest
    @CsvSource({"life-science, life-science", "Living things, life-science", "' LIVING THINGS ', life-science",
        "Measuring, measurement"})
    void idsAndPlainNamesAreFound(String text, String id) {
        assertThat(SubjectNames.find(text)).contains(id);
    }

    @ParameterizedTest
    @CsvSource({"maths, mathematics", "geografy, geography", "Living thing, life-science", "Handwritting, handwriting"})
    void wordThatIsNearIsOnlyOffered(String text, String id) {
        assertThat(SubjectNames.find(text)).isEmpty();
        assertThat(SubjectNames.nearest(text)).contains(id);
    }

    @Test
    void wordFarFromAllIsNoSubject() {
        assertThat(SubjectNames.nearest("xylophone repair")).isEmpty();
    }
}
