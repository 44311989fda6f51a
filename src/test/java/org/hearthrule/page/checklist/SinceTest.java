package org.hearthrule.page.checklist;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.hearthrule.page.Visit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What has changed since the last look is told, until it was said to be seen. */
class SinceTest {

    private static final String TITLE = "Changed since you looked on";

    @TempDir
    private Path folder;
    private int runs;

    private Path lastLook(Visit visit) {
        return visit.book().resolve(".page").resolve("last-look");
    }

    /** Opens the same book once more, with what the page noted beside it. */
    private Visit again(Visit before, LocalDate day) {
        return new Visit(before.book(), folder.resolve("run" + ++runs), day);
    }

    @Test
    void theFirstLookHasNothingToCompareWith() {
        try (Visit visit = Visit.demo(folder)) {
            assertThat(visit.get("/checklist").text()).doesNotContain(TITLE);
            assertThat(visit.get("/checklist").text()).doesNotContain(TITLE);
            assertThat(lastLook(visit)).isRegularFile();
        }
    }

    @Test
    void aDayThatCameAndAPaperThatWasSentAreTold() throws Exception {
        try (Visit visit = Visit.demo(folder)) {
            visit.get("/checklist");
            try (Visit later = again(visit, LocalDate.of(2026, 7, 2))) {
                assertThat(later.post("/tests/new", "student", "wren", "method", "standardized-test", "date", "2026-05-21",
                        "givenBy-other", "a neighbor").status()).isEqualTo(303);

                String text = later.get("/checklist").text();

                // 24 P.S. § 13-1327.1(e)(2), (h)(2): June 30, passed on July 2
                assertThat(text).contains(TITLE + " May 20, 2026")
                        .containsPattern("Test in grades 3, 5 and 8 \\([^)]*\\): now late \\(June 30, 2026\\)\\. It was open \\(June 30, 2026\\)");
                assertThat(later.get("/checklist").text()).contains(TITLE);

                assertThat(later.postAndFollow("/checklist/seen", "back", "/checklist").text()).doesNotContain(TITLE);
            }
        }
    }

    @Test
    void aChangedFileOfTheLawIsTold() throws Exception {
        try (Visit visit = Visit.demo(folder)) {
            visit.get("/checklist");
            String look = Files.readString(lastLook(visit));
            assertThat(look).containsPattern("law\tus-pa\t[0-9a-f]{64}\t");
            try (Visit later = again(visit, Visit.DAY)) {
                assertThat(later.get("/checklist").text()).doesNotContain(TITLE);
            }
            Files.writeString(lastLook(visit), look.replaceAll("law\tus-pa\t[0-9a-f]{64}", "law\tus-pa\t" + "0".repeat(64)));
            try (Visit later = again(visit, Visit.DAY)) {
                assertThat(later.get("/checklist").text()).contains("The file of the law of Pennsylvania was changed.");
            }
        }
    }

    @Test
    void oneChildSeesItsOwnAndABrokenNoteIsNone() throws Exception {
        try (Visit visit = Visit.demo(folder)) {
            visit.get("/checklist");
            try (Visit later = again(visit, LocalDate.of(2026, 7, 2))) {
                assertThat(later.get("/checklist?child=ansel").text()).contains(TITLE).doesNotContain("(Wren)", "(Marit)");
            }
            Files.writeString(lastLook(visit), "hearthrule-look-1\tnot a day\n");
            try (Visit later = again(visit, LocalDate.of(2026, 7, 2))) {
                assertThat(later.get("/checklist").text()).doesNotContain(TITLE);
            }
        }
    }
}
