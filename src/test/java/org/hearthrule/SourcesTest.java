package org.hearthrule;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The law is in the profiles. Java, the rules of no state and the fixed sentences hold none of it. */
class SourcesTest {

    private static final Path NAMES = Path.of("test-fixtures", "reference", "jurisdictions.csv");

    /** US-XX is the invented state of examples; there is no such code. */
    private static final Pattern CODE = Pattern.compile("\\bus-(?!xx\\b)[a-z]{2}\\b", Pattern.CASE_INSENSITIVE);

    /** A section sign with a number. "22-5" is the invented code of examples. */
    private static final Pattern SECTION = Pattern.compile("§+\\s*(?!22-5)\\d");

    /**
     * A state named in Java is a rule that hides from its profile: whoever keeps that state's file true changes the
     * file, every test of the file passes, and the program goes on doing what the old law said.
     */
    @Test
    void noSourceNamesAState() throws IOException {
        Pattern names = Pattern.compile("\\b(" + String.join("|", names()) + ")\\b");

        assertThat(lines()).filteredOn(line -> names.matcher(line).find()).isEmpty();
    }

    /** The same, for a code in a comparison. */
    @Test
    void noSourceHoldsAStatesCode() throws IOException {
        assertThat(lines()).filteredOn(line -> CODE.matcher(line).find()).isEmpty();
    }

    /** The same, for a section of the law. */
    @Test
    void noSourceHoldsASection() throws IOException {
        assertThat(lines()).filteredOn(line -> SECTION.matcher(line).find()).isEmpty();
    }

    /** The three tests above would pass for ever if the patterns found nothing or nothing were read. */
    @Test
    void thePatternsFindWhatTheyLookFor() throws IOException {
        Matcher code = CODE.matcher("equals(\"us-vt\") || equals(\"US-XX\") || equals(\"Us-Ny\")");
        List<String> found = new ArrayList<>();
        while (code.find()) {
            found.add(code.group());
        }

        assertThat(found).containsExactly("us-vt", "Us-Ny");
        assertThat(SECTION.matcher("see § 3205").find()).isTrue();
        assertThat(SECTION.matcher("Example Code § 22-5 (b)").find()).isFalse();
        assertThat(names()).hasSize(51).contains("Vermont", "District of Columbia");
        assertThat(lines()).hasSizeGreaterThan(5_000).anyMatch(line -> line.contains("rule \"the records show it\""));
    }

    private static List<String> names() throws IOException {
        return Files.readAllLines(NAMES).stream().filter(line -> line.startsWith("US-"))
                .map(line -> line.substring(line.indexOf(',') + 1)).toList();
    }

    /** Every line of every source, with its file in front. Help teaches by the names of real states and computes nothing. */
    private static List<String> lines() throws IOException {
        List<String> lines = new ArrayList<>();
        for (Path root : List.of(Path.of("src", "main", "java"), Path.of("rules"), Path.of("shared", "wording"))) {
            try (Stream<Path> files = Files.walk(root)) {
                for (Path file : files.filter(Files::isRegularFile)
                        .filter(file -> !file.endsWith("help.properties")).sorted().toList()) {
                    for (String line : Files.readAllLines(file)) {
                        lines.add(file + ": " + line);
                    }
                }
            }
        }
        return lines;
    }
}
