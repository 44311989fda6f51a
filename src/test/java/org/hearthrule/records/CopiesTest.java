package org.hearthrule.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CopiesTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    @Test
    void threeOfTheSameDayAreKept() {
        assertThat(kept("2026-11-25T08:00", "2026-11-25T09:00", "2026-11-25T10:00", "2026-11-25T11:00"))
                .containsExactly("2026-11-25T11:00", "2026-11-25T10:00", "2026-11-25T09:00");
    }

    @Test
    void howTheDayBeforeEndedIsKeptHoweverMuchIsDoneToday() {
        assertThat(kept("2026-11-24T08:00", "2026-11-24T20:00", "2026-11-25T08:00", "2026-11-25T09:00",
                "2026-11-25T10:00", "2026-11-25T11:00"))
                .contains("2026-11-24T20:00").doesNotContain("2026-11-24T08:00");
    }

    @Test
    void oneADayIsKeptForTenDaysThenOneAMonth() {
        assertThat(kept("2026-11-15T08:00", "2026-11-15T09:00", "2026-11-14T09:00", "2026-11-01T09:00",
                "2026-10-31T09:00", "2026-10-02T09:00", "2019-03-04T09:00"))
                .containsExactly("2026-11-15T09:00", "2026-11-14T09:00", "2026-10-31T09:00", "2019-03-04T09:00");
    }

    @Test
    void otherFilesInTheFolderAreLeftAlone(@TempDir Path book) throws IOException {
        // given
        Path folder = Files.createDirectories(book.resolve(Copies.FOLDER));
        for (String name : List.of("2026-27.note.json", "2026-27.2026-13-01T000000.json",
                "2026-27.2026-11-01T080000.json", "2026-27.2026-11-02T080000-2.json")) {
            Files.writeString(folder.resolve(name), "{}");
        }

        // when
        Copies copies = new Copies(book);
        copies.pruneIfPossible("2026-27.json", TODAY);

        // then
        try (var left = Files.list(folder)) {
            assertThat(left.map(path -> path.getFileName().toString())).containsExactlyInAnyOrder(
                    "2026-27.note.json", "2026-27.2026-13-01T000000.json", "2026-27.2026-11-02T080000-2.json");
        }
    }

    private static List<String> kept(String... times) {
        List<Copy> copies = new ArrayList<>();
        for (String time : times) {
            copies.add(new Copy("2026-27.json", LocalDateTime.parse(time), Path.of(time.replace(':', '-'))));
        }
        copies.sort(Comparator.comparing(Copy::time).reversed());
        return Copies.worthKeeping(copies, TODAY).stream().map(copy -> copy.time().toString())
                .collect(Collectors.toList());
    }
}
