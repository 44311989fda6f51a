package org.hearthrule.law;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.hearthrule.input.Listing;
import org.hearthrule.input.Mapping;
import org.hearthrule.input.Node;
import org.hearthrule.input.Problem;
import org.hearthrule.input.Problems;
import org.hearthrule.input.Scalar;
import org.hearthrule.input.YamlText;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Text in a profile is only ever text. A profile whose every free text is hostile reads to the same rules as the clean
 * one, or is refused with problems that can be shown; a profile whose every other value is hostile is refused; nothing
 * a file can hold makes the reader throw.
 */
class HostileProfileTest {

    /** Keys under which words of the author stand, in the annotated example. */
    private static final Set<String> FREE = Set.of("law-calls-it", "agency", "confirm-with", "title", "address",
            "question", "note", "open-to", "instructor", "in-short", "to", "states", "attaches", "form", "next",
            "consent", "what", "about", "ask", "words", "as", "set-by", "none", "place");

    /** True: refused. False: only text. */
    static Stream<Arguments> hostile() {
        return Stream.of(
                Arguments.of("double quotes", "say \"x\" \\\" + y", false),
                Arguments.of("single quotes", "it's '' ' -- ;", false),
                Arguments.of("new lines", "one\ntwo\n- three: [4]\n", false),
                Arguments.of("a call", "\") eval(", false),
                Arguments.of("an end of a rule", "\"); end\nrule x when eval(true) then System.exit(1); end //", false),
                Arguments.of("a lookup", "${jndi:ldap://x} #{1+1} %s %n {0}", false),
                Arguments.of("markup", "<script>alert(1)</script> &amp; ]]>", false),
                Arguments.of("100,000 characters", "x".repeat(100_000), true),
                Arguments.of("right-to-left marks", "law\u202Egnorw\u202C", true),
                Arguments.of("terminal colours", "\u001B[31mred\u001B[0m", true),
                Arguments.of("a NUL", "cut\u0000off", true),
                Arguments.of("half a character", "half \uD83C moon", true));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("hostile")
    void freeTextIsOnlyText(String what, String text, boolean refused) {
        // given
        Problems problems = new Problems();

        // when
        Optional<Profile> hostile = ProfileFixtures.read(withFreeText(text), problems);

        // then
        if (refused) {
            assertThat(hostile).isEmpty();
            assertThat(problems.all()).isNotEmpty().allSatisfy(HostileProfileTest::canBeShown);
        } else {
            assertThat(ProfileFixtures.words(problems)).isEmpty();
            Profile clean = ProfileFixtures.read(withFreeText("clean"), new Problems()).orElseThrow();
            assertThat(rules(hostile.orElseThrow()).replace(text, "clean")).isEqualTo(rules(clean));
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("hostile")
    void namesDatesAndWordsOfTheFormatCannotBeHostile(String what, String text, boolean refused) {
        // given
        Problems problems = new Problems();
        String content = YamlAgain.write(YamlAgain.changed(annotated(), "", (key, value) ->
                isFree(key, value) ? value : YamlAgain.text(value.place(), text)));

        // when
        Optional<Profile> profile = ProfileFixtures.read(content, problems);

        // then
        assertThat(profile).isEmpty();
        assertThat(problems.all()).isNotEmpty().allSatisfy(HostileProfileTest::canBeShown);
    }

    static List<Path> good() {
        return ProfileFixtures.yaml(ProfileFixtures.PROFILES.resolve("good"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("good")
    void valueOfAnyWrongShapeIsAProblemAndNeverThrows(Path file) {
        // given
        Node root = YamlText.read(ProfileFixtures.FILE, ProfileFixtures.text(file), new Problems()).orElseThrow();
        List<UnaryOperator<Node>> shapes = List.of(
                node -> new Mapping(node.place(), List.of()),
                node -> new Listing(node.place(), List.of()),
                node -> new Listing(node.place(), List.of(new Listing(node.place(), List.of()))),
                node -> new Scalar(node.place(), "", Scalar.Form.PLAIN),
                node -> YamlAgain.text(node.place(), ""),
                node -> YamlAgain.text(node.place(), "a b"),
                node -> new Scalar(node.place(), "999999999999999999", Scalar.Form.PLAIN));

        for (UnaryOperator<Node> shape : shapes) {
            for (Node copy : YamlAgain.eachChanged(root, shape)) {
                // when
                String content = YamlAgain.write(copy);
                Problems problems = new Problems();

                // then
                assertThatCode(() -> ProfileFixtures.read(content, problems)).as(content).doesNotThrowAnyException();
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("good")
    void valueLeftOutIsAProblemOrHasADefaultAndNeverThrows(Path file) {
        // given
        String[] lines = YamlAgain.write(YamlText.read(ProfileFixtures.FILE, ProfileFixtures.text(file),
                new Problems()).orElseThrow()).split("\n");

        for (int left = 0; left < lines.length; left++) {
            // when
            StringBuilder content = new StringBuilder();
            for (int i = 0; i < lines.length; i++) {
                content.append(i == left ? "" : lines[i] + "\n");
            }

            // then
            assertThatCode(() -> ProfileFixtures.read(content.toString(), new Problems()))
                    .as(content.toString()).doesNotThrowAnyException();
        }
    }

    private static Node annotated() {
        return YamlText.read(ProfileFixtures.FILE, ProfileFixtures.text(ProfileFixtures.ANNOTATED), new Problems())
                .orElseThrow();
    }

    /** Numbers each text, because an entry may not stand twice in a list. */
    private static String withFreeText(String text) {
        int[] number = {0};
        return YamlAgain.write(YamlAgain.changed(annotated(), "", (key, value) -> {
            number[0]++;
            return isFree(key, value) ? YamlAgain.text(value.place(), number[0] + text) : value;
        }));
    }

    /** The facts' "about" is one of a few words, that of a doubt a sentence; a school year's "to" is a day. */
    private static boolean isFree(String key, Scalar value) {
        boolean word = key.equals("about") && !value.text().endsWith(".");
        boolean day = key.equals("to") && Character.isDigit(value.text().charAt(0));
        return FREE.contains(key) && !word && !day;
    }

    private static void canBeShown(Problem problem) {
        assertThat(problem.place().file()).isEqualTo(ProfileFixtures.FILE);
        assertThat(problem.toText()).hasSizeLessThan(2_000)
                .matches(text -> text.chars().noneMatch(c -> c < ' ' && c != '\n' || c == 0x202E || c == 0x202C));
    }

    /** All that the profile says, without the text it was read from. */
    private static String rules(Profile profile) {
        return profile.toString().substring(0, profile.toString().lastIndexOf(", content="));
    }
}
