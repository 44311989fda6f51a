package org.hearthrule.law;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.hearthrule.input.Mapping;
import org.hearthrule.input.Node;
import org.hearthrule.input.Problems;
import org.hearthrule.input.YamlText;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A volunteer who has read one state's file finds the same things in the same places in every other. */
class LawFilesTest {

    private static final List<String> TOP = keys("format jurisdiction name law-calls-it agency confirm-with sources year "
            + "levels grade-by-age attendance-age facts pathways doubts changes announced opt-ins");
    private static final List<String> PATHWAY = keys("name in-short usual open-to instructor excludes combines year from "
            + "until announced cite attendance-age choices asks does-not-ask");
    private static final List<String> REQUIREMENT = keys("kind title for by to ages when paper recurs group counts-from "
            + "interval span needs due states attaches form shows list words keep-for question ask next note confirm-with "
            + "binding basis from until waived-in unclear-from announced cite");

    private static List<String> keys(String keys) {
        return Arrays.asList(keys.split(" "));
    }

    static Stream<Path> files() {
        return Stream.concat(ProfileFixtures.yaml(Path.of("jurisdictions")).stream(),
                Stream.of(Path.of("test-fixtures", "profiles", "us-xx.yaml")));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("files")
    void keysStandInTheSameOrderEverywhere(Path file) {
        String text = ProfileFixtures.text(file);
        Mapping top = (Mapping) YamlText.read(file.getFileName().toString(), text, new Problems()).orElseThrow();
        List<String> misplaced = new ArrayList<>();
        check("the file", top, TOP, misplaced);
        for (Map.Entry<String, Node> pathway : entries(value(top, "pathways"))) {
            check(pathway.getKey(), pathway.getValue(), PATHWAY, misplaced);
            for (Map.Entry<String, Node> asked : entries(value(pathway.getValue(), "asks"))) {
                check(pathway.getKey() + "/" + asked.getKey(), asked.getValue(), REQUIREMENT, misplaced);
            }
        }
        assertThat(misplaced).isEmpty();
    }

    /** What is odd about a state is said before anything else. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("files")
    void fileBeginsWithWhatItIsAbout(Path file) {
        List<String> lines = ProfileFixtures.text(file).lines().toList();
        assertThat(lines.get(0)).startsWith("# yaml-language-server: $schema=");
        assertThat(lines.stream().skip(1).takeWhile(line -> line.startsWith("#")).filter(line -> line.length() > 20)).isNotEmpty();
    }

    private static void check(String where, Node node, List<String> order, List<String> misplaced) {
        List<String> found = entries(node).stream().map(Map.Entry::getKey).toList();
        List<String> ordered = found.stream().sorted(Comparator.comparing(order::indexOf)).toList();
        if (!found.equals(ordered)) {
            misplaced.add(where + ": " + found + ", expected " + ordered);
        }
    }

    private static Node value(Node mapping, String key) {
        return entries(mapping).stream().filter(entry -> entry.getKey().equals(key)).map(Map.Entry::getValue).findFirst().orElse(null);
    }

    private static List<Map.Entry<String, Node>> entries(Node node) {
        return node instanceof Mapping mapping
                ? mapping.entries().stream().map(entry -> Map.entry(entry.key().text(), entry.value())).toList() : List.of();
    }
}
