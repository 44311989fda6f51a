package org.hearthrule.page.log;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hearthrule.page.Visit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LogTest {

    @TempDir
    private Path folder;
    private Visit visit;

    @BeforeEach
    void open() {
        visit = Visit.demo(folder);
    }

    @AfterEach
    void close() {
        visit.close();
    }

    private String year() throws IOException {
        return Files.readString(visit.book().resolve("2025-26.json"));
    }

    private static String first(String pattern, String text) {
        Matcher found = Pattern.compile(pattern).matcher(text);
        assertThat(found.find()).as(pattern).isTrue();
        return found.group(1);
    }

    @Test
    void aDayIsLoggedWithTheTimeItWasWritten() throws IOException {
        Visit.Reply reply = visit.postAndFollow("/log", "did", "Rowed to the lock and back", "date", "2026-05-20", "minutes", "1h 30",
                "students", "wren", "students", "ansel", "subjects", "fitness");

        assertThat(reply.body()).contains("Saved: May 20, 2026").contains("Rowed to the lock and back").contains("1 hour 30 minutes")
                .contains("Undo: The entry of May 20, 2026");
        assertThat(year()).contains("\"did\": \"Rowed to the lock and back\"").contains("\"written\": \"2026-05-20T12:00\"");
    }

    /** What is ticked by itself would be said by the program, not by the parent. */
    @Test
    void subjectsAreOfferedFromTheWordsAndNoneIsTicked() throws IOException {
        String before = year();
        String page = visit.post("/log", "did", "Measured the jetty and worked out the planks", "date", "2026-05-20", "suggest", "yes").body();

        String offers = page.substring(page.indexOf("id=\"offers\""), page.indexOf("without-script"));
        assertThat(offers).contains("value=\"measurement\"").contains("from “Measured”").doesNotContain(" checked");
        assertThat(year()).isEqualTo(before);
        assertThat(visit.get("/log/subjects?did=measured%20the%20jetty").body()).contains("measurement").doesNotContain("<html");
    }

    @Test
    void whatIsWrongStandsBesideItsField() throws IOException {
        String before = year();

        Visit.Reply reply = visit.post("/log", "did", "", "date", "2026-06-20", "minutes", "2000");

        assertThat(reply.status()).isEqualTo(422);
        assertThat(reply.body()).contains("4 things must be put right").contains("has not come yet").contains("no length of time within a day")
                .contains("Tick who took part");
        assertThat(year()).isEqualTo(before);
    }

    @ParameterizedTest
    @CsvSource({"90, 90", "1:30, 90", "1h 30, 90", "1.5 h, 90", "45 min, 45", "2 hours, 120", "0, 0", "1440, 1440"})
    void aLengthOfTimeIsUnderstoodAsPeopleTypeIt(String typed, int minutes) {
        assertThat(Minutes.of(typed)).hasValue(minutes);
    }

    @ParameterizedTest
    @CsvSource({"1441", "25:00", "1:75", "soon", "-5", "1.5"})
    void whatIsNoLengthOfADayIsNone(String typed) {
        assertThat(Minutes.of(typed)).isEmpty();
    }

    private String logOne() {
        visit.post("/log", "did", "Rowed to the lock", "date", "2026-05-20", "minutes", "30", "students", "wren");
        return first("href=\"(/log/2025-26/[^\"]+)\">Rowed to the lock", visit.get("/log").body());
    }

    @Test
    void anEntryThatIsMendedKeepsTheTimeItWasWritten() throws IOException {
        String address = logOne();
        String print = first("name=\"print\" value=\"([^\"]+)\"", visit.get(address).body());

        visit.post(address, "did", "Rowed to the mill", "date", "2026-05-19", "minutes", "35", "students", "wren", "print", print);

        assertThat(year()).contains("Rowed to the mill").doesNotContain("Rowed to the lock").contains("\"written\": \"2026-05-20T12:00\"");
    }

    @Test
    void anEntryChangedElsewhereIsNotWrittenOver() throws IOException {
        String address = logOne();
        String print = first("name=\"print\" value=\"([^\"]+)\"", visit.get(address).body());
        Path file = visit.book().resolve("2025-26.json");
        Files.writeString(file, Files.readString(file).replace("Rowed to the lock", "Rowed to the dam"));

        Visit.Reply reply = visit.post(address, "did", "Rowed to the mill", "date", "2026-05-20", "students", "wren", "print", print);

        assertThat(reply.status()).isEqualTo(422);
        assertThat(reply.body()).contains("Rowed to the dam").contains("value=\"Rowed to the mill\"");
        assertThat(year()).contains("Rowed to the dam").doesNotContain("Rowed to the mill");
    }

    @Test
    void anEntryTakenOutComesBackWithUndo() throws IOException {
        String address = logOne();

        visit.post(address + "/delete");
        assertThat(year()).doesNotContain("Rowed to the lock");
        visit.post("/undo");

        assertThat(year()).contains("Rowed to the lock");
    }

    @Test
    void aWeekIsSavedAndTakenBackAsOne() throws IOException {
        visit.post("/log/week", "start", "2026-05-18", "did-2026-05-18-1", "Planted leeks", "students-2026-05-18-1", "wren",
                "did-2026-05-19-2", "Read of otters", "minutes-2026-05-19-2", "25", "students-2026-05-19-2", "ansel");
        assertThat(year()).contains("Planted leeks").contains("Read of otters");
        assertThat(visit.postAndFollow("/undo").body()).contains("Taken back: 2 entries of a week");

        assertThat(year()).doesNotContain("Planted leeks").doesNotContain("Read of otters");
    }

    @Test
    void aDayIsRepeatedOnlyAsFarAsItWasTicked() throws IOException {
        logOne();
        visit.post("/log", "did", "Mended the net", "date", "2026-05-19", "students", "ansel");
        String page = visit.get("/log/again").body();
        String ticked = first("name=\"(again-[^\"]+)\" value=\"yes\">\\s*<label for=\"[^\"]+\">Mended the net", page);

        visit.post("/log/again", ticked, "yes", "date", "2026-05-20");

        assertThat(visit.get("/log?day=2026-05-20&words=mended").body()).contains("One entry fits");
    }

    @Test
    void whatWasLoggedIsFound() {
        assertThat(visit.get("/log?words=meteors").body()).contains("count meteors");
        assertThat(visit.get("/log?words=nothing+of+the+kind").body()).contains("0 entries fit");
        assertThat(visit.get("/log?subject=music&child=marit&from=2025-08-01&to=2025-08-31").body()).contains("Fiddle practice")
                .doesNotContain("Capture the flag");
    }

    /** A family that teaches a word three times is understood the fourth time. */
    @Test
    void itLearnsWhatThisFamilyConfirmed() {
        for (int day = 11; day < 15; day++) {
            visit.post("/log", "did", "Zimbal again, part " + day, "date", "2026-05-" + day, "students", "wren", "subjects", "music");
        }

        assertThat(visit.get("/log/subjects?did=zimbal").body()).contains("value=\"music\"").contains("as you said before");
    }
}
