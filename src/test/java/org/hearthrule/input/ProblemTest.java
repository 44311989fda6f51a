package org.hearthrule.input;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ProblemTest {

    @Test
    void textHasPlaceSeverityCodeRemedyLineAndCaret() {
        assertThat(problem(8, "a line", "write it", "due:   09-01").toText())
                .isEqualTo(
                        """
                        f.yaml:2:8: error: [SOME-CODE] found a line, expected another. Perhaps write it.
                        due:   09-01
                               ^""");
    }

    @Test
    void textIsOneLineWithoutRemedyAndExcerpt() {
        assertThat(problem(1, "a line", null, null).toText())
                .isEqualTo("f.yaml:2:1: error: [SOME-CODE] found a line, expected another.");
    }

    @Test
    void warningIsCalledWarning() {
        Problem warning = new Problem(new Place("f", 1, 2), Severity.WARNING, "C", "x", "y", null, null);

        assertThat(warning.toText()).isEqualTo("f:1:2: warning: [C] found x, expected y.");
    }

    @Test
    void blankLineIsNotShown() {
        assertThat(problem(1, "a line", null, "  ").toText()).doesNotContain("\n");
    }

    @Test
    void hiddenCharactersOfTheLineAreShownAsEscapes() {
        assertThat(problem(3, "x", null, "\u202Ea\tb").toText()).endsWith("\n\\u202Ea\\u0009b\n       ^");
    }

    @Test
    void hiddenCharactersOfTheMessageAreShownAsEscapes() {
        assertThat(problem(1, "\u001B[31m", null, null).toText()).contains("found \\u001B[31m, expected");
    }

    @Test
    void longLineIsCutRoundTheColumn() {
        // given
        String line = "a".repeat(200) + "X" + "b".repeat(200);

        // when
        String[] shown = problem(201, "x", null, line).toText().split("\n");

        // then
        assertThat(shown[1]).startsWith("…a").endsWith("b…").hasSizeLessThanOrEqualTo(76);
        assertThat(shown[2].indexOf('^')).isEqualTo(shown[1].indexOf('X'));
    }

    @Test
    void longLineOfHiddenCharactersIsAtMostSeventySixWide() {
        String[] shown = problem(150, "x", null, "\u202E".repeat(300)).toText().split("\n");

        assertThat(shown[1]).hasSizeLessThanOrEqualTo(76);
    }

    @Test
    void lineOfSeventySixCharactersIsShownWhole() {
        String line = "a".repeat(76);

        assertThat(problem(76, "x", null, line).toText()).endsWith("\n" + line + "\n" + " ".repeat(75) + "^");
    }

    @Test
    void columnBehindTheLineHasItsCaretBehindTheLine() {
        assertThat(problem(4, "x", null, "abc").toText()).endsWith("\nabc\n   ^");
    }

    private static Problem problem(int column, String found, String perhaps, String excerpt) {
        Place place = new Place("f.yaml", 2, column);
        return new Problem(place, Severity.ERROR, "SOME-CODE", found, "another", perhaps, excerpt);
    }
}
