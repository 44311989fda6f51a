package org.hearthrule.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class BookCopiesTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T10:15:30Z"), ZoneOffset.UTC);

    @TempDir
    private Path folder;
    private Path family;
    private BookWriter writer;

    @BeforeEach
    void bookOfTwoChildren() throws IOException {
        family = Files.writeString(folder.resolve("family.json"), Fixtures.family(""));
        writer = new BookWriter(folder, CLOCK);
    }

    @Test
    void versionBeforeBecomesACopyNamedAfterTheTimeItWasWritten() throws Exception {
        // given
        Files.setLastModifiedTime(family, FileTime.from(Instant.parse("2026-11-20T08:00:00Z")));

        // when
        writer.write("family.json", Fixtures.family("\"facts\": []"), Hash.of(family));

        // then
        Path path = folder.resolve(".copies").resolve("family.2026-11-20T080000.json");
        assertThat(writer.copies("family.json")).containsExactly(
                new Copy("family.json", LocalDateTime.of(2026, 11, 20, 8, 0), path));
        assertThat(path).hasContent(Fixtures.family(""));
    }

    @Test
    void copiesThatNeedNotBeKeptAreDeleted() throws Exception {
        // given
        Hash hash = Hash.of(family);
        List<String> texts = List.of("\"facts\": []", "\"events\": []", "\"answers\": []", "\"persons\": []",
                "\"placements\": []");

        // when
        for (int i = 0; i < texts.size(); i++) {
            Files.setLastModifiedTime(family, FileTime.from(Instant.parse("2026-11-25T08:00:00Z").plusSeconds(i)));
            hash = writer.write("family.json", Fixtures.family(texts.get(i)), hash);
        }

        // then
        assertThat(writer.copies("family.json")).extracting(Copy::time).containsExactly(
                LocalDateTime.of(2026, 11, 25, 8, 0, 4), LocalDateTime.of(2026, 11, 25, 8, 0, 3),
                LocalDateTime.of(2026, 11, 25, 8, 0, 2));
    }

    @Test
    void restoringIsUndoneByRestoring() throws Exception {
        // given
        String first = Fixtures.family("");
        String second = Fixtures.family("\"facts\": []");
        Hash hash = writer.write("family.json", second, Hash.of(family));

        // when
        Hash back = writer.restore(writer.copies("family.json").get(0), hash);

        // then
        assertThat(family).hasContent(first);

        // when
        Copy undone = writer.copies("family.json").stream()
                .filter(copy -> copy.path().toFile().length() == second.length()).findFirst().orElseThrow();
        writer.restore(undone, back);

        // then
        assertThat(family).hasContent(second);
    }

    @Test
    void copyReplacesAFileThatWasCutShort() throws Exception {
        // given
        writer.write("family.json", Fixtures.family("\"facts\": []"), Hash.of(family));
        Files.writeString(family, "{\"hearthrule\": 1, \"stud");

        // when
        writer.restore(writer.copies("family.json").get(0), Hash.of(family));

        // then
        assertThat(family).hasContent(Fixtures.family(""));
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void whoCouldNotReadTheFileStillCannot() throws Exception {
        // given
        Files.setPosixFilePermissions(family, PosixFilePermissions.fromString("rw-------"));

        // when
        writer.write("family.json", Fixtures.family("\"facts\": []"), Hash.of(family));

        // then
        Path copy = writer.copies("family.json").get(0).path();
        for (Path file : List.of(family, copy)) {
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file))).isEqualTo("rw-------");
        }
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void linkToAFileStaysALink() throws Exception {
        // given
        Path real = Files.createDirectories(folder.resolve("drive")).resolve("real.json");
        Files.move(family, real);
        Files.createSymbolicLink(family, real);

        // when
        writer.write("family.json", Fixtures.family("\"facts\": []"), Hash.of(family));

        // then
        assertThat(family).isSymbolicLink();
        assertThat(real).hasContent(Fixtures.family("\"facts\": []"));
    }
}
