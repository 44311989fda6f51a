package org.hearthrule.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.hearthrule.terms.Wording;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine.Model.ArgSpec;

class HearthruleTest {

    static List<String> commands() {
        return Commands.names();
    }

    @ParameterizedTest
    @MethodSource("commands")
    void everyCommandTeachesByExample(String name) {
        Run run = Run.of((name + " --help").split(" "));

        assertThat(run.exit()).isZero();
        assertThat(run.out()).contains("USAGE", "EXAMPLES", "  hearthrule " + name + " ", "EXIT CODES", "--jurisdictions DIR");
        assertThat(run.out().lines().filter(line -> line.startsWith("  hearthrule " + name)).count()).isGreaterThan(2);
    }

    @ParameterizedTest
    @MethodSource("commands")
    void helpNamesEveryOptionInTheLineOfUsage(String name) {
        var spec = Hearthrule.commandLine(name, Commands.make(name)).getCommandSpec();
        String usage = Help.usage(name);

        assertThat(spec.options()).extracting(option -> option.longestName()).filteredOn(option -> !option.equals("--help"))
                .allSatisfy(option -> assertThat(usage).contains(option));
        assertThat(spec.positionalParameters()).extracting(ArgSpec::paramLabel)
                .allSatisfy(label -> assertThat(usage).contains(label));
    }

    /** An example that no longer parses teaches a mistake. */
    @ParameterizedTest
    @MethodSource("commands")
    void everyExampleIsUnderstood(String name) {
        Wording help = Wording.load(Help.RESOURCE);
        String key = name.replace(' ', '-');
        for (int i = 1; help.has(key + ".example." + i); i++) {
            String[] words = words(help.say(key + ".example." + i)).toArray(String[]::new);
            int skipped = 1 + name.split(" ").length;
            String[] rest = List.of(words).subList(skipped, words.length).toArray(String[]::new);
            assertThat(Hearthrule.commandLine(name, Commands.make(name)).parseArgs(rest).errors()).isEmpty();
        }
    }

    private static List<String> words(String line) {
        List<String> words = new java.util.ArrayList<>();
        var found = java.util.regex.Pattern.compile("\"([^\"]*)\"|(\\S+)").matcher(line);
        while (found.find()) {
            words.add(found.group(1) != null ? found.group(1) : found.group(2));
        }
        return words;
    }

    @Test
    void listsTheCommandsWithoutAWordAndWithHelp() {
        assertThat(Run.of().out()).contains("check ", "deadlines ", "import log ");
        assertThat(Run.of("--help").out()).isEqualTo(Run.of().out());
        assertThat(Run.of("help", "check").out()).isEqualTo(Run.of("check", "--help").out());
    }

    @Test
    void saysItsVersion() {
        Run run = Run.of("--version");

        assertThat(run.exit()).isZero();
        assertThat(run.out()).startsWith("Hearthrule ");
    }

    @Test
    void suggestsTheNearestCommandAndEndsWithTwo() {
        Run run = Run.of("chek", "book");

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).startsWith("There is no command \"chek\". Perhaps you meant \"check\".\n");
        assertThat(run.err().lines()).hasSize(2);
    }

    @Test
    void suggestsTheNearestOptionWithOneLineOfUsage() {
        Run run = Run.of("check", "book", "--studnet", "Ada");

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err().lines()).first().isEqualTo("There is no option \"--studnet\" here. Perhaps you meant \"--student\".");
        assertThat(run.err().lines()).element(1).asString().startsWith("Usage: hearthrule check BOOK");
    }

    @Test
    void namesWhatIsMissing() {
        Run run = Run.of("deadlines", "us-xx", "--grade", "5");

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).startsWith("Still needed: --born DATE and --starts DATE.");
    }

    @Test
    void namesWhatIsTooMuch() {
        Run run = Run.of("check", "book", "more");

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).startsWith("\"more\" is more than this command takes.");
    }

    /** A stream that breaks stands for any fault of ours; what it says must not reach the terminal. */
    private static Run broken(Map<String, String> environment) {
        OutputStream breaks = new OutputStream() {
            @Override
            public void write(int b) {
                throw new IllegalStateException("Ada Example was here");
            }
        };
        var err = new java.io.ByteArrayOutputStream();
        int exit = Hearthrule.run(new String[] {"--version"}, new Terminal(InputNone.STREAM, breaks, err,
                StandardCharsets.UTF_8, false, environment, LocalDate.of(2027, 3, 1)));
        return new Run(exit, "", err.toString(StandardCharsets.UTF_8));
    }

    private static final class InputNone {
        static final java.io.InputStream STREAM = java.io.InputStream.nullInputStream();
    }

    @Test
    void staysCalmWhenSomethingGoesWrongInside() {
        Run run = broken(Map.of());

        assertThat(run.exit()).isEqualTo(70);
        assertThat(run.err().lines()).hasSize(1);
        assertThat(run.err()).startsWith("Something went wrong inside Hearthrule; your records were not harmed.")
                .doesNotContain("Exception", "Ada");
    }

    @Test
    void writesAReportThatNamesNoOneOnlyWhenAskedTo() throws Exception {
        Run run = broken(Map.of("HEARTHRULE_DEBUG", "1"));

        Path report = Path.of(run.err().substring(run.err().indexOf("written to ") + 11, run.err().length() - 2));
        try {
            assertThat(report).content().contains("java.lang.IllegalStateException", "at org.hearthrule.cli")
                    .doesNotContain("Ada Example");
        } finally {
            Files.delete(report);
        }
    }
}
