package org.hearthrule.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.hearthrule.input.Problems;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every folder below {@code good} reads without a word; every folder below {@code bad} gives exactly the words of its
 * {@code expected.txt}. After a wanted change of words run once with {@code -Drewrite-expected=true} and look at the
 * difference.
 */
class BookFixturesTest {

    static List<Path> bad() {
        return Fixtures.folders("bad");
    }

    static List<Path> good() {
        return Fixtures.folders("good");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("bad")
    void badBookGivesExactlyTheseWords(Path folder) throws IOException {
        // given
        Problems problems = new Problems();

        // when
        Optional<Book> book = BookReader.read(Fixtures.texts(folder), problems);

        // then
        Path expected = folder.resolve(Fixtures.EXPECTED);
        if (Boolean.getBoolean("rewrite-expected")) {
            Files.writeString(expected, Fixtures.words(problems));
        }
        assertThat(Fixtures.words(problems)).isEqualTo(Files.readString(expected)).isNotEmpty();
        assertThat(book.isEmpty()).isEqualTo(problems.hasErrors());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("good")
    void goodBookGivesNoWords(Path folder) {
        // given
        Problems problems = new Problems();

        // when
        Optional<Book> book = BookReader.read(Fixtures.texts(folder), problems);

        // then
        assertThat(Fixtures.words(problems)).isEmpty();
        assertThat(book).isPresent();
    }
}
