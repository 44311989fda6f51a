package org.hearthrule.pictures;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.hearthrule.input.Problems;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookReader;
import org.hearthrule.records.RecordFiles;
import org.junit.jupiter.api.Test;

class DemoDrawingsTest {

    private static final Path BOOK = Path.of("test-fixtures", "books", "tennick-landing");
    private static final int LARGEST = 40_960;

    /** A file that is not on the list is not in the program: its record would show a gap and nothing would say why. */
    @Test
    void theListOfTheDemoNamesEveryFile() throws IOException {
        try (Stream<Path> files = Files.walk(BOOK)) {
            List<String> there = files.filter(Files::isRegularFile).map(file -> BOOK.relativize(file).toString().replace('\\', '/'))
                    .filter(name -> !name.equals("files.txt")).toList();

            assertThat(there).hasSizeGreaterThan(5);
            assertThat(Files.readAllLines(BOOK.resolve("files.txt"))).containsExactlyInAnyOrderElementsOf(there);
        }
    }

    /** Whoever opens the demo must not be asked after files that nobody ever made. */
    @Test
    void everyFileThatTheRecordsNameIsThere() throws IOException {
        Book book = BookReader.read(BOOK, new Problems()).orElseThrow();

        assertThat(RecordFiles.of(book)).hasSizeGreaterThan(15);
        assertThat(new Attachments(BOOK, Clock.systemUTC()).missing(book)).isEmpty();
    }

    /** The papers are as their program sets them, and each says of itself that it is invented. */
    @Test
    void everyPaperIsNamedByARecordAndSaysThatItIsInvented() throws IOException {
        try (Stream<Path> papers = Files.list(BOOK.resolve("papers"))) {
            assertThat(papers.map(file -> file.getFileName().toString())).containsExactlyInAnyOrderElementsOf(DemoPapers.all().keySet());
        }
        Set<String> named = RecordFiles.of(BookReader.read(BOOK, new Problems()).orElseThrow());
        for (Map.Entry<String, byte[]> paper : DemoPapers.all().entrySet()) {
            assertThat(named).contains("papers/" + paper.getKey());
            assertThat(BOOK.resolve("papers").resolve(paper.getKey())).hasBinaryContent(paper.getValue());
            assertThat(new String(paper.getValue(), StandardCharsets.US_ASCII)).contains("An invented paper of an invented family");
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
