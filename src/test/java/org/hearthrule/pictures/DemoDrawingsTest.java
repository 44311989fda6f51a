package org.hearthrule.pictures;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class DemoDrawingsTest {

    private static final Path BOOK = Path.of("test-fixtures", "books", "tennick-landing");
    private static final int LARGEST = 40_960;

    /** A picture that is not on the list is not in the program: its record would show a gap and nothing would say why. */
    @Test
    void theListOfTheDemoNamesEveryPicture() throws IOException {
        try (Stream<Path> pictures = Files.list(BOOK.resolve("photos"))) {
            List<String> there = pictures.map(file -> "photos/" + file.getFileName()).toList();

            assertThat(there).hasSizeGreaterThan(5);
            assertThat(Files.readAllLines(BOOK.resolve("files.txt"))).containsAll(there);
        }
    }

    @Test
    void everyPictureIsNamedByARecordAndCanBeShown() throws IOException {
        String records = Files.readString(BOOK.resolve("2024-25.json")) + Files.readString(BOOK.resolve("2025-26.json"));
        Attachments attachments = new Attachments(BOOK, Clock.systemUTC());

        try (Stream<Path> pictures = Files.list(BOOK.resolve("photos"))) {
            assertThat(pictures.map(file -> "photos/" + file.getFileName())).allSatisfy(path -> {
                assertThat(records).contains('"' + path + '"');
                assertThat(attachments.open(path)).hasValueSatisfying(file -> {
                    assertThat(file.kind()).isEqualTo(FileKind.JPEG);
                    assertThat(file.bytes()).isLessThan(LARGEST);
                });
            });
        }
    }
}
