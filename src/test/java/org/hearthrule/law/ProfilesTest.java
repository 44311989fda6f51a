package org.hearthrule.law;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.io.OutputStream;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import org.hearthrule.input.BadInputException;
import org.hearthrule.input.Problem;
import org.hearthrule.input.Problems;
import org.hearthrule.terms.Subjects;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ProfilesTest {

    private static final ProfileReader READER = new ProfileReader(Subjects::known, Subjects.ids());

    @TempDir
    private Path folder;
    private final List<URLClassLoader> loaders = new ArrayList<>();
    private Path packaged;

    @BeforeEach
    void packThreeProfiles() throws IOException {
        packaged = Files.createDirectories(folder.resolve("classes/jurisdictions"));
        write(packaged, "US-XX", "Example");
        write(packaged, "US-XY", "\"New Example\"   # in quotes");
        write(packaged, "US-XZ", "'Sample'");
        Files.writeString(packaged.resolve("notes.txt"), "not a profile");
    }

    @AfterEach
    void close() throws IOException {
        for (URLClassLoader loader : loaders) {
            loader.close();
        }
    }

    private static void write(Path folder, String code, String name) throws IOException {
        String smallest = ProfileFixtures.text(ProfileFixtures.PROFILES.resolve("good/smallest.yaml"));
        Files.writeString(folder.resolve(code.toLowerCase(java.util.Locale.ROOT) + ".yaml"),
                smallest.replace("US-XX", code).replace("name: Example\n", "name: " + name + "\n"));
    }

    private Profiles from(Path root) throws IOException {
        URLClassLoader loader = new URLClassLoader(new URL[] {root.toUri().toURL()}, null);
        loaders.add(loader);
        return Profiles.packaged(READER, loader);
    }

    private Profiles fromFolder() throws IOException {
        return from(folder.resolve("classes"));
    }

    private Profiles fromJar() throws IOException {
        Path jar = folder.resolve("profiles.jar");
        try (OutputStream out = Files.newOutputStream(jar); JarOutputStream entries = new JarOutputStream(out)) {
            entries.putNextEntry(new JarEntry("jurisdictions/"));
            for (String name : List.of("us-xx.yaml", "us-xy.yaml", "us-xz.yaml", "notes.txt")) {
                entries.putNextEntry(new JarEntry("jurisdictions/" + name));
                entries.write(Files.readAllBytes(packaged.resolve(name)));
            }
            entries.putNextEntry(new JarEntry("elsewhere/us-xa.yaml"));
        }
        return from(jar);
    }

    @Test
    void listsCodesOfAFolderOnTheClassPath() throws IOException {
        assertThat(fromFolder().codes()).containsExactly("US-XX", "US-XY", "US-XZ");
    }

    @Test
    void listsCodesOfAJar() throws IOException {
        assertThat(fromJar().codes()).containsExactly("US-XX", "US-XY", "US-XZ");
    }

    @Test
    void readsAProfileOutOfAJar() throws Exception {
        assertThat(fromJar().find("US-XZ").name()).isEqualTo("Sample");
    }

    @Test
    void withoutProfilesThereAreNoCodes() throws IOException {
        assertThat(from(Files.createDirectories(folder.resolve("empty"))).codes()).isEmpty();
    }

    @Test
    void namesAreReadWithQuotesAndCommentsTakenOff() throws IOException {
        assertThat(fromFolder().names())
                .isEqualTo(Map.of("US-XX", "Example", "US-XY", "New Example", "US-XZ", "Sample"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"US-XY", "us-xy", "xy", "XY", "us_xy", "New Example", "new example", "NEW-EXAMPLE", " xy "})
    void findsAProfileByCodeOrNameHoweverItIsWritten(String asked) throws Exception {
        assertThat(fromFolder().find(asked).code()).isEqualTo("US-XY");
    }

    @Test
    void unknownNameGivesTheNearestAndAllThatAreKnown() throws IOException {
        // when
        UnknownJurisdictionException unknown = catchThrowableOfType(UnknownJurisdictionException.class,
                () -> fromFolder().find("Exampel"));

        // then
        assertThat(unknown.asked()).isEqualTo("Exampel");
        assertThat(unknown.nearest()).hasValue("US-XX");
        assertThat(unknown.known()).hasSize(3).containsEntry("US-XZ", "Sample");
        assertThat(unknown).hasMessage("There is no profile for `Exampel`. Perhaps you meant Example (US-XX). "
                + "There are profiles for Example (US-XX), New Example (US-XY), Sample (US-XZ).");
    }

    @ParameterizedTest
    @ValueSource(strings = {"us-qq", "qq", "us-xq", "", "../../etc/passwd", "us-xx.yaml\u0000", "12"})
    void unknownCodeIsNotTakenForAnotherOne(String asked) {
        assertThatThrownBy(() -> fromFolder().find(asked))
                .isInstanceOfSatisfying(UnknownJurisdictionException.class,
                        unknown -> assertThat(unknown.nearest()).isEmpty());
    }

    @Test
    void mistypedCodeIsTakenForTheOnlyOneThatDiffersByOneLetter() {
        assertThatThrownBy(() -> fromFolder().find("us-zz"))
                .isInstanceOfSatisfying(UnknownJurisdictionException.class,
                        unknown -> assertThat(unknown.nearest()).hasValue("US-XZ"));
    }

    @Test
    void onlyTheProfileThatIsAskedForMustBeSound() throws Exception {
        // given
        Files.writeString(packaged.resolve("us-xx.yaml"), "name: Exam\u202Eple\n]");

        // then
        assertThat(fromFolder().find("US-XY").name()).isEqualTo("New Example");
        assertThat(fromFolder().names()).containsEntry("US-XX", "US-XX");
        assertThatThrownBy(() -> fromFolder().find("US-XX")).isInstanceOf(BadInputException.class)
                .hasMessageStartingWith("jurisdictions/us-xx.yaml:1:11: error: [HIDDEN-CHARACTER]");
    }

    @Test
    void fileOfAFolderTakesThePlaceOfThePackagedOne() throws Exception {
        // given
        Path own = Files.createDirectories(folder.resolve("own"));
        write(own, "US-XX", "My Example");
        write(own, "US-XW", "Another");

        // when
        Profiles profiles = fromFolder().with(own);

        // then
        assertThat(profiles.codes()).containsExactly("US-XW", "US-XX", "US-XY", "US-XZ");
        assertThat(profiles.find("US-XX").name()).isEqualTo("My Example");
        assertThat(profiles.find("US-XX").file()).isEqualTo(own.resolve("us-xx.yaml").toString());
        assertThat(profiles.find("sample").file()).isEqualTo("jurisdictions/us-xz.yaml");
    }

    @Test
    void fileOfAFolderIsReadAsStrictly() throws Exception {
        // given
        Path own = Files.createDirectories(folder.resolve("own"));
        write(own, "US-XX", "My Example\ncolour: blue");

        // then
        assertThatThrownBy(() -> fromFolder().with(own).find("xx")).isInstanceOf(BadInputException.class)
                .hasMessageContaining("[UNKNOWN-KEY] found unknown key `colour`");
    }

    @ParameterizedTest
    @ValueSource(strings = {"US-XX.yaml", "us-xx.yml", "us-xxx.yaml", "example.yaml"})
    void wronglyNamedFileOfAFolderIsNotPassedOver(String name) throws Exception {
        // given
        Path own = Files.createDirectories(folder.resolve("own"));
        Files.writeString(own.resolve(name), "format: 1");

        // then
        assertThat(codes(() -> fromFolder().with(own))).containsExactly("WRONG-FILE-NAME");
    }

    @Test
    void folderMustBeThere() {
        assertThat(codes(() -> fromFolder().with(folder.resolve("nowhere")))).containsExactly("CANNOT-READ");
        assertThat(codes(() -> fromFolder().with(packaged.resolve("us-xx.yaml")))).containsExactly("CANNOT-READ");
    }

    @Test
    void fileMustBeUtf8() throws IOException {
        // given
        Files.write(packaged.resolve("us-xx.yaml"), "format: 1\nname: Exámple\n".getBytes(StandardCharsets.ISO_8859_1));

        // then
        assertThatThrownBy(() -> fromFolder().find("xx")).isInstanceOf(BadInputException.class)
                .hasMessageStartingWith("jurisdictions/us-xx.yaml:2:9: error: [NOT-UTF-8]");
    }

    @Test
    void fileThatEndsWithinACharacterIsNotUtf8() throws IOException {
        // given: the first of the two bytes of an é
        Files.write(packaged.resolve("us-xx.yaml"), new byte[] {'a', ':', ' ', (byte) 0xC3});

        // then
        assertThat(codes(() -> fromFolder().find("xx"))).containsExactly("NOT-UTF-8");
    }

    @Test
    void hugeFileIsRefusedWithoutBeingReadToItsEnd() throws IOException {
        // given
        Files.write(packaged.resolve("us-xx.yaml"), new byte[4_000_001]);

        // then
        assertThat(codes(() -> fromFolder().find("xx"))).containsExactly("TOO-BIG");
    }

    @Test
    void folderInThePlaceOfAFileCannotBeRead() throws IOException {
        // given
        Path own = Files.createDirectories(folder.resolve("own/us-xx.yaml"));

        // then
        assertThat(codes(() -> fromFolder().with(own.getParent()).find("xx"))).containsExactly("CANNOT-READ");
        Problems problems = new Problems();
        assertThat(READER.read(own, problems)).isEmpty();
        assertThat(problems.all()).extracting(Problem::code).containsExactly("CANNOT-READ");
    }

    @Test
    void warningsLeaveTheProfileWhole() throws Exception {
        // given
        Path file = packaged.resolve("us-xx.yaml");
        Files.writeString(file, Files.readString(file) + "facts:\n  spare: {about: child, question: Really so.}\n");
        Problems problems = new Problems();

        // when
        boolean present = fromFolder().find("xx", problems).isPresent();

        // then
        assertThat(present).isTrue();
        assertThat(problems.all()).extracting(Problem::code).containsExactly("FACT-NEVER-USED");
    }

    /** A page that shows every law would otherwise parse all of them for each reader. */
    @Test
    void textThatHasNotChangedIsNotParsedAgainAndTextThatHasIs() throws Exception {
        // given
        Profiles profiles = fromFolder();
        Profile first = profiles.find("xx");

        // then
        assertThat(profiles.find("xx")).isSameAs(first);

        // when
        write(packaged, "US-XX", "Changed");

        // then
        assertThat(profiles.find("xx").name()).isEqualTo("Changed");
    }

    /** A warning told only the first time would be missed by whoever looks second. */
    @Test
    void warningsAreToldEachTime() throws Exception {
        // given
        Path file = packaged.resolve("us-xx.yaml");
        Files.writeString(file, Files.readString(file) + "facts:\n  spare: {about: child, question: Really so.}\n");
        Profiles profiles = fromFolder();
        profiles.find("xx", new Problems());
        Problems again = new Problems();

        // when
        profiles.find("xx", again);

        // then
        assertThat(again.all()).hasSize(1);
    }

    @Test
    void problemsOfOneProfileDoNotCountAgainstTheNext() throws Exception {
        // given
        Problems problems = new Problems();
        READER.read("us-xa.yaml", "format: 2", problems);

        // then
        assertThat(READER.read(packaged.resolve("us-xx.yaml"), problems)).isPresent();
        assertThat(problems.hasErrors()).isTrue();
    }

    @Test
    void everyProfileOfTheProgramReadsWithoutAWord() throws Exception {
        // given
        Profiles profiles = Profiles.packaged(READER);
        Problems problems = new Problems();

        // when
        for (String code : profiles.codes()) {
            profiles.find(code, problems);
        }

        // then
        assertThat(profiles.codes()).hasSizeGreaterThanOrEqualTo(8);
        assertThat(ProfileFixtures.words(problems)).isEmpty();
    }

    /** @return the codes of the problems that something throws */
    private static List<String> codes(org.assertj.core.api.ThrowableAssert.ThrowingCallable callable) {
        BadInputException thrown = catchThrowableOfType(BadInputException.class, callable);
        assertThat(thrown).isNotNull();
        return thrown.problems().stream().map(Problem::code).toList();
    }
}
