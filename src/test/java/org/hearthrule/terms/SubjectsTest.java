package org.hearthrule.terms;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.hearthrule.input.Fields;
import org.hearthrule.input.Mapping;
import org.hearthrule.input.Problems;
import org.hearthrule.input.Scalar;
import org.hearthrule.input.YamlText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SubjectsTest {

    @Test
    void handReaderAndYamlReaderSeeTheSame() throws IOException {
        // given
        Problems problems = new Problems();
        String text = Files.readString(Path.of(Subjects.RESOURCE));

        // when
        Fields root = Fields.of(YamlText.read("subjects.yaml", text, problems).orElseThrow(), problems, "the file");
        List<String> fromYaml = new ArrayList<>();
        for (Mapping.Entry area : root.fields("areas", "the areas").entries()) {
            Fields one = Fields.of(area.value(), problems, "the area");
            fromYaml.add(area.key().text() + "=" + one.text("name") + " in " + area.key().text());
            for (Mapping.Entry subject : one.fields("subjects", "the subjects").entries()) {
                fromYaml.add(subject.key().text() + "=" + ((Scalar) subject.value()).text() + " in "
                        + area.key().text());
            }
            one.done();
        }
        root.fields("also-shows", "what also shows").entries();
        root.done();

        // then
        assertThat(problems.all()).isEmpty();
        assertThat(Subjects.ids().stream().map(id -> id + "=" + Subjects.name(id) + " in " + Subjects.areaOf(id)))
                .containsExactlyElementsOf(fromYaml);
    }

    @Test
    void areasComeBeforeTheirSubjectsInTheOrderOfTheFile() {
        assertThat(Subjects.ids()).startsWith("language-arts", "reading", "literature");
        assertThat(Subjects.areas()).startsWith("language-arts", "mathematics", "science", "history", "civics");
        assertThat(Subjects.subjectsOf("geography-economics")).containsExactly("geography", "economics", "cultures");
    }

    @Test
    void knowsAreasAndSubjectsButNotTheMarkCore() {
        assertThat(Subjects.known("science")).isTrue();
        assertThat(Subjects.known("life-science")).isTrue();
        assertThat(Subjects.known("Reading")).isFalse();
        assertThat(Subjects.known(Subjects.CORE)).isFalse();
    }

    @Test
    void areaOfAnUnknownIdIsEmpty() {
        assertThat(Subjects.area("algebra")).contains("mathematics");
        assertThat(Subjects.area("mathematics")).contains("mathematics");
        assertThat(Subjects.area("alchemy")).isEmpty();
        assertThatThrownBy(() -> Subjects.areaOf("alchemy")).hasMessageContaining("alchemy");
    }

    @ParameterizedTest
    @CsvSource({
        "algebra, algebra, true",
        "algebra, mathematics, true",
        "mathematics, mathematics, true",
        "mathematics, algebra, false",
        "algebra, geometry, false",
        "drawing, visual-art, true",
        "drawing, arts, true",
        "visual-art, drawing, false",
        "physics, mathematics, false",
        "core, core, false",
        "core, mathematics, false",
        "alchemy, alchemy, false"
    })
    void areaIsShownByItsSubjectsAndNeverTheOtherWay(String logged, String asked, boolean shown) {
        assertThat(Subjects.shows(logged, asked)).isEqualTo(shown);
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "areas:\n  a:\n    name: A\n  a:\n    name: B",
        "areas:\n  a:\n    name: A\n    subjects:\n      b: B\n      b: C",
        "areas:\n  a:\n    subjects:\n      b: B",
        "areas:\n  a:\n    name:",
        "areas:\n   a:\n",
        "also-shows:\n  x: y",
        "other:\n",
        "areas:\n  a\n"
    })
    void faultInTheFileStopsTheBuild(String text) {
        assertThatThrownBy(() -> SubjectsFile.parse(text)).hasMessageContaining("is not understood");
    }
}
