package org.hearthrule.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** The README is a manual: what it tells a reader to type must do what it says. */
class ReadmeTest {

    private static final Path README = Path.of("README.md");
    private static final String PROMPT = "./hearthrule ";

    @TempDir
    Path folder;

    /**
     * Commands with a file of the reader's own (in capitals) cannot be run here, and `open` runs until it is stopped: the
     * tests of the page start it.
     */
    @TestFactory
    Stream<DynamicTest> everyCommandRuns() throws IOException {
        List<String> commands = new ArrayList<>();
        for (String line : Files.readAllLines(README)) {
            int start = line.indexOf(PROMPT);
            if (start >= 0 && (start == 0 || line.charAt(start - 1) == '`')) {
                int end = line.indexOf('`', start);
                commands.add(line.substring(start + PROMPT.length(), end < 0 ? line.length() : end));
            }
        }
        assertThat(commands).hasSizeGreaterThan(8);
        return commands.stream().filter(command -> !command.matches(".*\\b[A-Z]{4,}\\b.*") && !command.startsWith("open"))
                .map(command -> DynamicTest.dynamicTest(command, () -> {
                    String[] args = command.replace("dates.ics", folder.resolve("dates.ics").toString()).split(" ");
                    assertThat(Run.of(args).exit()).as(command).isZero();
                }));
    }

    /** A sample that no longer is what the program prints teaches the wrong thing. */
    @Test
    void sampleIsWhatTheProgramPrints() throws IOException {
        String readme = Files.readString(README);
        String sample = readme.substring(readme.indexOf("```text\n") + 8, readme.indexOf("\n…\n```"));

        String printed = Run.of("check", "test-fixtures/books/tennick-landing", "--as-of", "2026-05-20").out();

        assertThat(printed).startsWith(sample);
    }
}
