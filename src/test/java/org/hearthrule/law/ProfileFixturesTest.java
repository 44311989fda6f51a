package org.hearthrule.law;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthrule.input.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Reader and schema over the same small profiles, so that they cannot drift apart: both take every file of
 * {@code good}; the reader refuses every file of {@code bad} with exactly the words beside it, and so does the schema,
 * except where {@code reader-only.txt} says why it cannot. After a wanted change of words run once with
 * {@code -Drewrite-expected=true} and look at the difference.
 */
class ProfileFixturesTest {

    private static final Path READER_ONLY = ProfileFixtures.PROFILES.resolve("reader-only.txt");

    static List<Path> good() {
        return ProfileFixtures.yaml(ProfileFixtures.PROFILES.resolve("good"));
    }

    static List<Path> bad() {
        return ProfileFixtures.yaml(ProfileFixtures.PROFILES.resolve("bad"));
    }

    /** The eight profiles that come with the program must pass too. */
    static List<Path> packaged() {
        return ProfileFixtures.yaml(Path.of("jurisdictions"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("good")
    void readerTakesGoodProfile(Path file) {
        // given
        Problems problems = new Problems();

        // when
        Optional<Profile> profile = ProfileFixtures.read(ProfileFixtures.text(file), problems);

        // then
        assertThat(ProfileFixtures.words(problems)).isEmpty();
        assertThat(profile).isPresent();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource({"good", "packaged"})
    void schemaTakesGoodProfile(Path file) {
        assertThat(ProfileFixtures.schemaErrors(ProfileFixtures.text(file))).hasValue(List.of());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("bad")
    void readerRefusesBadProfileWithExactlyTheseWords(Path file) throws IOException {
        // given
        Problems problems = new Problems();
        Path expected = file.resolveSibling(name(file) + ".expected.txt");

        // when
        Optional<Profile> profile = ProfileFixtures.read(ProfileFixtures.text(file), problems);

        // then
        if (Boolean.getBoolean("rewrite-expected")) {
            Files.writeString(expected, ProfileFixtures.words(problems));
        }
        assertThat(ProfileFixtures.words(problems)).isEqualTo(ProfileFixtures.text(expected));
        assertThat(profile.isEmpty()).isEqualTo(problems.hasErrors());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("bad")
    void badProfileIsNamedByTheFaultItShows(Path file) {
        // given
        Problems problems = new Problems();
        String code = name(file).replaceAll("\\..*", "").toUpperCase(java.util.Locale.ROOT);

        // when
        ProfileFixtures.read(ProfileFixtures.text(file), problems);

        // then
        if (code.equals("EVERYTHING-AT-ONCE")) {
            assertThat(ProfileFixtures.codes(problems)).hasSizeGreaterThan(4);
        } else {
            assertThat(ProfileFixtures.codes(problems)).contains(code);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("bad")
    void schemaRefusesBadProfileUnlessOnlyTheReaderCan(Path file) {
        // given
        boolean readerOnly = readerOnly().containsKey(name(file));

        // when
        Optional<List<String>> errors = ProfileFixtures.schemaErrors(ProfileFixtures.text(file));

        // then
        assertThat(errors.map(List::isEmpty).orElse(true))
                .as("taken by the schema; listed in reader-only.txt: %s; errors %s", readerOnly, errors)
                .isEqualTo(readerOnly);
    }

    @Test
    void readerOnlyFaultsHaveAFileAndAReason() {
        // given
        List<String> names = bad().stream().map(ProfileFixturesTest::name).toList();

        // then
        assertThat(readerOnly()).allSatisfy((name, reason) -> {
            assertThat(names).contains(name);
            assertThat(reason).isNotBlank();
        });
    }

    @Test
    void everyFaultIsShownByAFile() {
        // given: faults of whole files and folders are shown by ProfilesTest
        List<ProfileFault> elsewhere = List.of(ProfileFault.NOT_UTF_8, ProfileFault.CANNOT_READ, ProfileFault.TOO_BIG,
                ProfileFault.WRONG_FILE_NAME);

        // when
        List<String> shown = bad().stream().map(file -> name(file).replaceAll("\\..*", "")).distinct().toList();

        // then
        for (ProfileFault fault : ProfileFault.values()) {
            if (!elsewhere.contains(fault)) {
                assertThat(shown).contains(fault.code().toLowerCase(java.util.Locale.ROOT));
            }
        }
    }

    @Test
    void catalogueHoldsEveryFaultThatAFileShows() {
        // given
        List<String> catalogue = List.of(ProfileFault.values()).stream().map(ProfileFault::code).toList();

        // then
        for (Path file : bad()) {
            Problems problems = new Problems();
            ProfileFixtures.read(ProfileFixtures.text(file), problems);
            assertThat(catalogue).as(file.toString()).containsAll(ProfileFixtures.codes(problems));
        }
    }

    private static String name(Path file) {
        String name = file.getFileName().toString();
        return name.substring(0, name.length() - ".yaml".length());
    }

    /** Lines {@code name: reason}. */
    private static Map<String, String> readerOnly() {
        Map<String, String> reasons = new LinkedHashMap<>();
        for (String line : ProfileFixtures.text(READER_ONLY).split("\n")) {
            int colon = line.indexOf(": ");
            if (!line.startsWith("#") && colon > 0) {
                reasons.put(line.substring(0, colon), line.substring(colon + 2));
            }
        }
        return reasons;
    }
}
