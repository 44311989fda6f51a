package org.hearthrule.input;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ProblemsTest {

    private final Problems problems = new Problems();

    @Test
    void allAreSortedByFileLineAndColumn() {
        // given
        error("b", 1, 1);
        error("a", 10, 1);
        error("a", 2, 7);
        error("a", 2, 3);

        // when, then
        assertThat(problems.all())
                .extracting(problem -> problem.place().toString())
                .containsExactly("a:2:3", "a:2:7", "a:10:1", "b:1:1");
    }

    @Test
    void sameProblemIsListedOnce() {
        error("a", 1, 1);
        error("a", 1, 1);

        assertThat(problems.all()).hasSize(1);
    }

    @Test
    void twoProblemsAtOnePlaceKeepTheirOrder() {
        problems.error(new Place("a", 1, 1), "Z", "x", "y", null);
        problems.error(new Place("a", 1, 1), "B", "x", "y", null);

        assertThat(problems.all()).extracting(Problem::code).containsExactly("Z", "B");
    }

    @Test
    void warningIsNotAnError() {
        problems.warning(new Place("a", 1, 1), "C", "x", "y", null);

        assertThat(problems.hasErrors()).isFalse();
        assertThat(problems.isEmpty()).isFalse();
    }

    @Test
    void errorIsAnError() {
        error("a", 1, 1);

        assertThat(problems.hasErrors()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"one\ntwo\nthree", "one\r\ntwo\r\nthree", "one\rtwo\rthree", "\uFEFFone\ntwo"})
    void excerptIsTheLineWhateverEndsIt(String content) {
        problems.register("a", content);
        error("a", 2, 1);

        assertThat(problems.all().get(0).excerpt()).isEqualTo("two");
    }

    @Test
    void byteOrderMarkIsNoPartOfTheFirstLine() {
        problems.register("a", "\uFEFFone");
        error("a", 1, 1);

        assertThat(problems.all().get(0).excerpt()).isEqualTo("one");
    }

    @Test
    void excerptOfAnUnknownFileIsNull() {
        error("a", 1, 1);

        assertThat(problems.all().get(0).excerpt()).isNull();
    }

    @Test
    void excerptIsReadFromTheRegisteredPath(@TempDir Path folder) throws Exception {
        Path path = Files.writeString(folder.resolve("x"), "one\ntwö\n");
        problems.register("a", path);
        error("a", 2, 1);

        assertThat(problems.all().get(0).excerpt()).isEqualTo("twö");
    }

    @Test
    void excerptOfAPathThatIsGoneIsNull(@TempDir Path folder) {
        problems.register("a", folder.resolve("gone"));
        error("a", 2, 1);

        assertThat(problems.all().get(0).excerpt()).isNull();
    }

    @Test
    void exceptionCarriesAllProblems() {
        // given
        error("b", 1, 1);
        error("a", 1, 1);

        // when
        BadInputException thrown = catchThrowableOfType(BadInputException.class, problems::throwIfErrors);

        // then
        assertThat(thrown.problems()).isEqualTo(problems.all());
        assertThat(thrown).hasMessage("a:1:1: error: [C] found x, expected y.\nb:1:1: error: [C] found x, expected y.");
    }

    @Test
    void warningsAloneThrowNothing() {
        problems.warning(new Place("a", 1, 1), "C", "x", "y", null);

        assertThatCode(problems::throwIfErrors).doesNotThrowAnyException();
    }

    private void error(String file, int line, int column) {
        problems.error(new Place(file, line, column), "C", "x", "y", null);
    }
}
