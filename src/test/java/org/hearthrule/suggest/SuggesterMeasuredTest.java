package org.hearthrule.suggest;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.hearthrule.terms.Subjects;
import org.junit.jupiter.api.Test;

/** How well the vocabulary does on invented log lines; {@link Measured} says what is counted. */
class SuggesterMeasuredTest {

    private static final String HELD_ASIDE = "held-aside.csv";
    private static final String EVERYDAY = "everyday.csv";
    private static final String DEVELOPMENT = "development.csv";

    /**
     * A suggestion that is often wrong is struck every day and soon not read; one that seldom comes saves nobody a tap.
     * Prints figures and no lines: whoever mends the vocabulary line by line has nothing left that measures it.
     */
    @Test
    void suggestsForLinesKeptAside() {
        Measured measured = Measured.of(Measured.read(HELD_ASIDE), Suggester.packaged());
        System.out.println("Suggested subjects, kept aside: " + measured.figures());

        assertThat(measured.lines()).isEqualTo(300);
        assertThat(measured.precision()).as(measured.figures()).isGreaterThanOrEqualTo(0.9);
        assertThat(measured.recall()).as(measured.figures()).isGreaterThanOrEqualTo(0.7);
    }

    /** The lines to work with: {@code -Dshow-lines=true} prints those that are not as they should be. */
    @Test
    void suggestsForLinesOfDevelopment() {
        Measured measured = Measured.of(Measured.read(DEVELOPMENT), Suggester.packaged());
        System.out.println("Suggested subjects, development: " + measured.figures());
        if (Boolean.getBoolean("show-lines")) {
            measured.misses().forEach(System.out::println);
        }

        assertThat(measured.precision()).as(measured.figures()).isGreaterThanOrEqualTo(0.9);
        assertThat(measured.recall()).as(measured.figures()).isGreaterThanOrEqualTo(0.7);
    }

    /** What the vocabulary was begun with must not be lost while it grows. */
    @Test
    void suggestsWhatEverydayWordsSuggest() {
        Measured measured = Measured.of(Measured.read(EVERYDAY), Suggester.packaged());
        System.out.println("Suggested subjects, everyday words: " + measured.figures());
        if (Boolean.getBoolean("show-lines")) {
            measured.misses().forEach(System.out::println);
        }

        assertThat(measured.recall()).as(String.join("\n", measured.misses())).isGreaterThanOrEqualTo(0.95);
        assertThat(measured.precision()).as(String.join("\n", measured.misses())).isGreaterThanOrEqualTo(0.9);
    }

    /** A subject misspelled in a file would be missing on every run, and a line in both files would measure nothing. */
    @Test
    void linesAreSound() {
        List<Measured.Line> aside = Measured.read(HELD_ASIDE);
        List<Measured.Line> development = Measured.read(DEVELOPMENT);

        assertThat(aside).flatExtracting(Measured.Line::expected).allMatch(id -> Subjects.known((String) id));
        assertThat(aside).flatExtracting(Measured.Line::acceptable).allMatch(id -> Subjects.known((String) id));
        assertThat(development).flatExtracting(Measured.Line::expected).allMatch(id -> Subjects.known((String) id));
        assertThat(development).flatExtracting(Measured.Line::acceptable).allMatch(id -> Subjects.known((String) id));
        assertThat(aside).extracting(Measured.Line::words).doesNotHaveDuplicates()
                .doesNotContainAnyElementsOf(development.stream().map(Measured.Line::words).toList());
        assertThat(aside).filteredOn(line -> line.expected().isEmpty()).hasSizeGreaterThan(10);
    }
}
