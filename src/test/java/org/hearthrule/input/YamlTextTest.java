package org.hearthrule.input;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class YamlTextTest {

    private final Problems problems = new Problems();

    @Test
    void readsKeysListsAndTextWithPlaces() {
        // when
        Optional<Node> root = read("a: x\nb:\n  - \"y\"\n  - 'z'\n");

        // then
        Listing list = new Listing(at(3, 3), List.of(
                new Scalar(at(3, 5), "y", Scalar.Form.QUOTED), new Scalar(at(4, 5), "z", Scalar.Form.QUOTED)));
        assertThat(root).contains(new Mapping(at(1, 1), List.of(
                new Mapping.Entry(plain(1, 1, "a"), plain(1, 4, "x")),
                new Mapping.Entry(plain(2, 1, "b"), list))));
        assertThat(problems.isEmpty()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"|", ">"})
    void readsBlocks(String sign) {
        assertThat(value("a: " + sign + "\n  text\n")).isEqualTo(new Scalar(at(1, 4), "text\n", Scalar.Form.BLOCK));
    }

    @Test
    void valueLeftOutIsEmptyPlainText() {
        assertThat(value("a:\n")).isEqualTo(plain(1, 3, ""));
    }

    @Test
    void plainTextIsNeverTakenForAnotherType() {
        assertThat(value("a: 012\n")).isEqualTo(plain(1, 4, "012"));
    }

    @Test
    void byteOrderMarkIsSkipped() {
        assertThat(value("\uFEFFa: 1\n")).isEqualTo(plain(1, 4, "1"));
    }

    @Test
    void columnsCountUtf16Units() {
        assertThat(value("😀: x\n").place()).isEqualTo(at(1, 5));
    }

    @Test
    void documentMarkersAroundOneDocumentAreAllowed() {
        assertThat(value("---\na: '%TAG'\n...\n")).isEqualTo(new Scalar(at(2, 4), "%TAG", Scalar.Form.QUOTED));
        assertThat(problems.isEmpty()).isTrue();
    }

    @Test
    void everyRepeatedKeyIsRefusedWhereItIsRepeated() {
        read("a: 1\na: 2\nb: 1\na: 3\n");

        assertThat(problems.all())
                .extracting(Problem::toText)
                .containsExactly(
                        "f.yaml:2:1: error: [REPEATED-KEY] found a second `a`, expected each key once; the first is"
                                + " on line 1. Perhaps remove one of the two.\na: 2\n^",
                        "f.yaml:4:1: error: [REPEATED-KEY] found a second `a`, expected each key once; the first is"
                                + " on line 1. Perhaps remove one of the two.\na: 3\n^");
    }

    @Test
    void repeatedKeyIsFoundAmongMany() {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < 40; i++) {
            text.append("k").append(i).append(": x\n");
        }
        read(text + "k39: y\n");

        assertThat(problems.all()).extracting(Problem::place).containsExactly(at(41, 1));
    }

    @Test
    void anchorAndAliasAreRefused() {
        read("a: &x 1\nb: *x\n");

        assertThat(problems.all())
                .extracting(Problem::code, Problem::place, Problem::found)
                .containsExactly(
                        tuple("ANCHOR", at(1, 4), "the anchor `&x`"),
                        tuple("ALIAS", at(2, 4), "the alias `*x`"));
    }

    @ParameterizedTest
    @CsvSource({"!!str 1,!!str", "! 1,!", "!own {},!own", "!!set [],!!set"})
    void tagsAreRefused(String value, String tag) {
        read("a: " + value + "\n");

        assertThat(only()).extracting(Problem::code, Problem::found).containsExactly("TAG", "the tag `" + tag + "`");
    }

    @Test
    void mergeKeyIsRefused() {
        read("<<: {b: x}\n");

        assertThat(only()).extracting(Problem::code, Problem::place).containsExactly("MERGE-KEY", at(1, 1));
    }

    @Test
    void quotedMergeSignIsAnOrdinaryKey() {
        read("'<<': x\n");

        assertThat(problems.isEmpty()).isTrue();
    }

    @Test
    void secondDocumentIsRefused() {
        read("a: 1\n---\nb: 2\n");

        assertThat(only()).extracting(Problem::code, Problem::place).containsExactly("SEVERAL-DOCUMENTS", at(2, 1));
    }

    @ParameterizedTest
    @ValueSource(strings = {"%YAML 1.1\n---\na: 1\n", "%TAG ! tag:example.org,2000:\n---\na: 1\n"})
    void directivesAreRefused(String content) {
        read(content);

        assertThat(only()).extracting(Problem::code, Problem::place).containsExactly("DIRECTIVE", at(1, 1));
    }

    @Test
    void everyTabInIndentationIsRefused() {
        read("a:\n\tb: 1\n  \tc: 1\n");

        assertThat(problems.all())
                .extracting(Problem::toText)
                .containsExactly(
                        "f.yaml:2:1: error: [TAB-INDENT] found a tab in front of a line, expected spaces. Perhaps set"
                                + " the editor to indent with spaces.\n\\u0009b: 1\n^",
                        "f.yaml:3:3: error: [TAB-INDENT] found a tab in front of a line, expected spaces. Perhaps set"
                                + " the editor to indent with spaces.\n  \\u0009c: 1\n  ^");
    }

    @Test
    void tabBehindTextIsNoIndentation() {
        read("a: 1\t\nb: 2 \t# x\n");

        assertThat(problems.isEmpty()).isTrue();
    }

    @Test
    void listAsKeyIsRefused() {
        read("? [x]\n: 1\n");

        assertThat(only()).extracting(Problem::code, Problem::place).containsExactly("KEY-NOT-TEXT", at(1, 3));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "\n", "# only a comment\n", "---\n", "\uFEFF"})
    void emptyDocumentIsRefused(String content) {
        assertThat(read(content)).isEmpty();
        assertThat(only().code()).isEqualTo("EMPTY-DOCUMENT");
    }

    @ParameterizedTest
    @CsvSource({"0,CONTROL-CHARACTER,U+0000", "7,CONTROL-CHARACTER,U+0007", "133,CONTROL-CHARACTER,U+0085",
        "8238,HIDDEN-CHARACTER,U+202E", "8294,HIDDEN-CHARACTER,U+2066", "8206,HIDDEN-CHARACTER,U+200E",
        "8232,HIDDEN-CHARACTER,U+2028", "65279,HIDDEN-CHARACTER,U+FEFF"})
    void hiddenCharactersAreRefusedEvenInComments(int character, String code, String name) {
        read("a: 1\n# x" + (char) character + "\n");

        assertThat(only()).extracting(Problem::code, Problem::place).containsExactly(code, at(2, 4));
        assertThat(only().found()).endsWith(" character " + name);
    }

    @Test
    void textOfTwoMillionCharactersIsRead() {
        read("a: x\n#" + "x".repeat(YamlText.MAX_CHARACTERS - 6));

        assertThat(problems.isEmpty()).isTrue();
    }

    @Test
    void longerTextIsRefused() {
        read("a: x\n#" + "x".repeat(YamlText.MAX_CHARACTERS - 5));

        assertThat(only()).extracting(Problem::code, Problem::found).containsExactly("TOO-BIG", "2000001 characters");
    }

    @Test
    void sixtyLevelsAreRead() {
        assertThat(read("[".repeat(60) + "]".repeat(60))).isPresent();
    }

    @Test
    void sixtyOneLevelsAreRefused() {
        assertThat(read("[".repeat(61) + "]".repeat(61))).isEmpty();
        assertThat(only()).extracting(Problem::code, Problem::place).containsExactly("TOO-DEEP", at(1, 61));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', value = {
        "a: b: c~1:5~`:`~one key on a line, or text in quotes",
        "a: \"x~1:4~a quote that is never closed~a closing quote",
        "a: 1⏎b⏎c: 2~2:1~text without a colon~`key: value`",
        "a:⏎  - 1⏎ b: 2~3:2~`b`~a line indented like the ones above it",
        "a: [1, 2⏎b: 3~2:2~`:`~a comma or `]`",
        "{a: 1~1:6~the end of the file~a comma or `}`",
        "a: \"\\q\"~1:6~`q`~`\\\\`, `\\\"` or `\\n` after a backslash",
        "a: @x~1:4~`@`~text, a key or a list item",
        "a: *~1:4~`*`~text, a key or a list item",
        "a: &~1:4~`&`~text, a key or a list item"
    })
    void wrongSyntaxIsOneProblemWithItsPlace(String content, String place, String found, String expected) {
        assertThat(read(content.replace('⏎', '\n'))).isEmpty();
        assertThat(only().place()).hasToString("f.yaml:" + place);
        assertThat(only()).extracting(Problem::code, Problem::found, Problem::expected)
                .containsExactly("WRONG-YAML", found, expected);
    }

    @Test
    void tabAfterAKeyIsRefused() {
        read("a:\t- b\n");

        assertThat(only()).extracting(Problem::code, Problem::place).containsExactly("TAB-INDENT", at(1, 3));
    }

    private Optional<Node> read(String content) {
        return YamlText.read("f.yaml", content, problems);
    }

    private Node value(String content) {
        return ((Mapping) read(content).orElseThrow()).entries().get(0).value();
    }

    private Problem only() {
        assertThat(problems.all()).hasSize(1);
        return problems.all().get(0);
    }

    private static Scalar plain(int line, int column, String text) {
        return new Scalar(at(line, column), text, Scalar.Form.PLAIN);
    }

    private static Place at(int line, int column) {
        return new Place("f.yaml", line, column);
    }
}
