package org.hearthrule.input;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class JsonTextTest {

    private final Problems problems = new Problems();

    @Test
    void readsEveryKindOfValueWithItsPlace() {
        // when
        Optional<Node> root = read("{\"a\": [\n  \"x\", 1.50, true,\n  null]}");

        // then
        Listing list = new Listing(at(1, 7), List.of(
                new Scalar(at(2, 3), "x", Scalar.Form.QUOTED),
                new Scalar(at(2, 8), "1.50", Scalar.Form.NUMBER),
                new Scalar(at(2, 14), "true", Scalar.Form.BOOLEAN),
                new Scalar(at(3, 3), "null", Scalar.Form.NULL)));
        Scalar key = new Scalar(at(1, 2), "a", Scalar.Form.QUOTED);
        assertThat(root).contains(new Mapping(at(1, 1), List.of(new Mapping.Entry(key, list))));
        assertThat(problems.isEmpty()).isTrue();
    }

    @Test
    void byteOrderMarkIsSkipped() {
        assertThat(read("\uFEFF\"x\"")).contains(new Scalar(at(1, 1), "x", Scalar.Form.QUOTED));
    }

    @Test
    void everyRepeatedKeyIsRefused() {
        read("{\"a\":1,\"a\":2,\n\"a\":3}");

        assertThat(problems.all())
                .extracting(Problem::toText)
                .containsExactly(
                        "f.json:1:8: error: [REPEATED-KEY] found a second `a`, expected each key once; the first is"
                                + " on line 1. Perhaps remove one of the two.\n{\"a\":1,\"a\":2,\n       ^",
                        "f.json:2:1: error: [REPEATED-KEY] found a second `a`, expected each key once; the first is"
                                + " on line 1. Perhaps remove one of the two.\n\"a\":3}\n^");
    }

    @Test
    void cutShortTellsTheLineAndOfTheBackups() {
        assertThat(read("{\"log\": [\n{\"day\": 1},\n")).isEmpty();
        assertThat(only().toText())
                .isEqualTo("f.json:3:1: error: [CUT-SHORT] found the end of the file on line 3, expected the end of"
                        + " what began on line 1. Perhaps the file was cut short when it was written or copied; a"
                        + " copy may be in the backups.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"{", "[", "[1,", "{\"a\"", "{\"a\":", "{\"a\": tru", "{\"a\": \"xy", "\"\\u00", "nul", "[\"\\"})
    void everyWayOfEndingTooEarlyIsCutShort(String content) {
        assertThat(read(content)).isEmpty();
        assertThat(only().code()).isEqualTo("CUT-SHORT");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " \n", "\uFEFF"})
    void emptyTextIsRefused(String content) {
        assertThat(read(content)).isEmpty();
        assertThat(only().code()).isEqualTo("EMPTY-DOCUMENT");
    }

    @ParameterizedTest
    @ValueSource(strings = {"[1]\n{}", "[1]\nx", "[1]\n]"})
    void contentAfterTheValueIsRefused(String content) {
        read(content);

        assertThat(only().code()).isEqualTo("TRAILING-CONTENT");
        assertThat(only().place().line()).isEqualTo(2);
    }

    @Test
    void spaceAfterTheValueIsAllowed() {
        assertThat(read("[1] \r\n\t\n")).isPresent();
        assertThat(problems.isEmpty()).isTrue();
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

    /** What RFC 8259 does not allow. */
    @ParameterizedTest
    @CsvSource(delimiter = '~', quoteCharacter = '^', value = {
        "[1,]~1:4~`]`~text in double quotes, a number, true, false, null, `{` or `[`~remove the comma before it",
        "{\"a\":1,}~1:8~`}`~a key in double quotes~remove the comma before it",
        "{a:1}~1:2~`a`~a key in double quotes~put the key in double quotes",
        "{'a':1}~1:2~`'`~a key in double quotes~put the key in double quotes",
        "[1 2]~1:4~`2`~a comma or the closing bracket~a comma is missing before it",
        "{\"a\" 1}~1:6~`1`~a colon after the key~a colon is missing before it",
        "[nope, 1]~1:2~`nope`~text in double quotes, a number, true, false, null, `{` or `[`~",
        "[NaN]~1:2~`NaN`~text in double quotes, a number, true, false, null, `{` or `[`~",
        "[01, 1]~1:3~a number that begins with 0~a number without zeros before it~",
        "[-]~1:3~`]`~a digit~",
        "[+1]~1:2~`+`~a number without `+`~",
        "[1}~1:3~`}`~the bracket that closes the last one opened~",
        "[\"\\q\"]~1:4~a backslash before a character that needs none~`\\\\`, `\\\"`, `\\n` or another JSON escape~"
                + "write each backslash twice",
        "[/*x*/1]~1:2~`/`~text in double quotes, a number, true, false, null, `{` or `[`~"
    })
    void wrongSyntaxIsOneProblemWithItsPlace(
            String content, String place, String found, String expected, String perhaps) {
        assertThat(read(content)).isEmpty();
        assertThat(only().place()).hasToString("f.json:" + place);
        assertThat(only())
                .extracting(Problem::code, Problem::found, Problem::expected, Problem::perhaps)
                .containsExactly("WRONG-JSON", found, expected, perhaps);
    }

    @Test
    void lineEndWithinTextIsRefused() {
        read("[\"a\nb\"]");

        assertThat(only().found()).isEqualTo("a line end or control character within text");
    }

    @Test
    void zeroBytesAfterADamageAreRefused() {
        read("[1,\0\0]");

        assertThat(only().perhaps()).isEqualTo("the file is damaged; a copy may be in the backups");
    }

    @Test
    void readsAFileInUtf8(@TempDir Path folder) throws Exception {
        Path path = Files.writeString(folder.resolve("x.json"), "\uFEFF\"Zoë\"");

        assertThat(JsonText.read(path, "f.json", problems)).contains(new Scalar(at(1, 1), "Zoë", Scalar.Form.QUOTED));
    }

    @Test
    void fileInAnotherEncodingIsRefusedWhereItBegins(@TempDir Path folder) throws Exception {
        Path path = Files.write(folder.resolve("x.json"), "[\n\"Zo\u00EB\"]".getBytes(StandardCharsets.ISO_8859_1));

        assertThat(JsonText.read(path, "f.json", problems)).isEmpty();
        assertThat(only()).extracting(Problem::code, Problem::place).containsExactly("NOT-UTF-8", at(2, 4));
    }

    @Test
    void fileCutWithinACharacterIsRefused(@TempDir Path folder) throws Exception {
        Path path = Files.write(folder.resolve("x.json"), new byte[] {'[', '"', (byte) 0xC3});

        assertThat(JsonText.read(path, "f.json", problems)).isEmpty();
        assertThat(only()).extracting(Problem::code, Problem::place).containsExactly("NOT-UTF-8", at(1, 3));
    }

    @Test
    void missingFileIsAProblem(@TempDir Path folder) {
        JsonText.read(folder.resolve("gone"), "f.json", problems);

        assertThat(only().toText())
                .isEqualTo("f.json:1:1: error: [CANNOT-READ] found a file that cannot be read (NoSuchFileException),"
                        + " expected a file that can be read.");
    }

    @Test
    void problemInAFileShowsItsLine(@TempDir Path folder) throws Exception {
        Path path = Files.writeString(folder.resolve("x.json"), "[1,\n2 3]");

        JsonText.read(path, "f.json", problems);

        assertThat(only().excerpt()).isEqualTo("2 3]");
    }

    private Optional<Node> read(String content) {
        return JsonText.read("f.json", content, problems);
    }

    private Problem only() {
        assertThat(problems.all()).hasSize(1);
        return problems.all().get(0);
    }

    private static Place at(int line, int column) {
        return new Place("f.json", line, column);
    }
}
