package org.hearthrule.page.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hearthrule.page.Visit.first;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.hearthrule.page.DemoVisit;
import org.hearthrule.page.Visit;
import org.hearthrule.page.frame.Minutes;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LogTest extends DemoVisit {

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

    @Test
    void todayAndYesterdayAreChosenWithoutTypingAndAnotherDayGoesBefore() throws IOException {
        assertThat(visit.get("/log").body()).contains("Today, May 20, 2026", "Yesterday, May 19, 2026");

        visit.post("/log", "did", "Tarred the punt", "when", "2026-05-19", "length", "45", "students", "wren");
        visit.post("/log", "did", "Scraped the punt", "when", "2026-05-19", "date", "2026-05-12", "length", "45", "minutes", "1:10", "students", "wren");

        assertThat(visit.get("/log?day=2026-05-19").body()).contains("Tarred the punt", "45 minutes").doesNotContain("Scraped the punt");
        assertThat(visit.get("/log?day=2026-05-12").body()).contains("Scraped the punt", "1 hour 10 minutes");
    }

    @Test
    void severalChildrenMakeOneEntry() throws IOException {
        visit.post("/log", "did", "Tarred the punt", "when", "2026-05-20", "students", "wren", "students", "ansel");

        assertThat(visit.get("/log?words=tarred").body()).contains("One entry fits", "Wren and Ansel");
        assertThat(visit.get("/log").body()).containsPattern("value=\"wren\" checked").containsPattern("value=\"ansel\" checked")
                .doesNotContainPattern("value=\"marit\" checked");
    }

    @Test
    void aDayToComeIsLoggedOnceItIsMeant() throws IOException {
        Visit.Reply asked = visit.post("/log", "did", "Star night", "date", "2026-05-22", "students", "wren");
        assertThat(asked.body()).contains("May 22, 2026 has not come yet", "Yes, I mean this day", "value=\"Star night\"");
        assertThat(year()).doesNotContain("Star night");

        visit.post("/log", "did", "Star night", "date", "2026-05-22", "students", "wren", "ahead", "yes");

        assertThat(year()).contains("Star night");
    }

    @Test
    void moreHoursThanADayHasAreTold() {
        visit.post("/log", "did", "Rowed", "date", "2026-05-20", "minutes", "800", "students", "wren", "students", "ansel");

        assertThat(visit.postAndFollow("/log", "did", "Rowed back", "date", "2026-05-20", "minutes", "700", "students", "wren").body())
                .contains("Wren has 25 hours on May 20, 2026").doesNotContain("Ansel has");
        assertThat(visit.postAndFollow("/log", "did", "Slept", "date", "2026-05-20", "minutes", "640", "students", "ansel").body())
                .doesNotContain("Ansel has");
    }

    @Test
    void nothingIsTakenThatWasNotOffered() throws IOException {
        String before = year();

        assertThat(visit.post("/log", "did", "Rowed", "when", "someday", "students", "nobody", "subjects", "alchemy").status()).isEqualTo(422);
        assertThat(visit.get("/log?before=2026-99-99&subject=alchemy&child=nobody&from=soon").status()).isEqualTo(200);
        assertThat(visit.get("/log/2025-26/nothing").status()).isEqualTo(404);
        assertThat(visit.get("/log/week?start=someday").status()).isEqualTo(200);
        assertThat(year()).isEqualTo(before);
    }

    private String logOne() {
        visit.post("/log", "did", "Rowed to the lock", "date", "2026-05-20", "minutes", "30", "students", "wren");
        return first("href=\"(/log/2025-26/[^\"]+)\">Rowed to the lock", visit.get("/log").body());
    }

    /** A length that is chosen beside one that is typed already would be passed over without a word. */
    @Test
    void anEntryThatIsMendedHasOnePlaceForItsLength() {
        String page = visit.get(logOne()).body();

        assertThat(page).containsPattern("name=\"minutes\" type=\"text\" value=\"30\"").doesNotContain("name=\"length\"");
        assertThat(visit.get("/log").body()).contains("name=\"length\"");
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
        assertThat(reply.body()).contains("changed elsewhere", "<dd>Rowed to the dam</dd>", "<dd>30 minutes</dd>", "Save mine")
                .contains("value=\"Rowed to the mill\"");
        assertThat(year()).contains("Rowed to the dam").doesNotContain("Rowed to the mill");
        String fresh = first("name=\"print\" value=\"([^\"]+)\"", reply.body());
        assertThat(visit.post(address, "did", "Rowed to the mill", "date", "2026-05-20", "students", "wren", "print", fresh).status()).isEqualTo(303);
        assertThat(year()).contains("Rowed to the mill").doesNotContain("Rowed to the dam");
    }

    /** A complaint beside a field must not make the form forget which version it was opened with. */
    @Test
    void aFormWithAMistakeStillNoticesAChangeFromElsewhere() throws IOException {
        String address = logOne();
        String print = first("name=\"print\" value=\"([^\"]+)\"", visit.get(address).body());
        visit.post(address, "did", "", "date", "2026-05-20", "students", "wren", "print", print);
        visit.post(address, "did", "Rowed to the dam", "date", "2026-05-20", "students", "wren", "print", print);

        Visit.Reply suggest = visit.post(address, "did", "Rowed and measured", "date", "2026-05-20", "students", "wren", "print", print, "suggest", "yes");
        assertThat(suggest.body()).contains("offer-measurement");
        assertThat(first("name=\"print\" value=\"([^\"]+)\"", suggest.body())).isEqualTo(print);
        assertThat(visit.post(address, "did", "Rowed to the mill", "date", "2026-05-20", "students", "wren", "print", print).body())
                .contains("changed elsewhere");
    }

    /** A subject that stands ticked in two places of the form cannot be taken out by unticking one of them. */
    @Test
    void aSubjectThatIsTickedStandsOnceInTheForm() {
        visit.post("/log", "did", "Measured the jetty", "date", "2026-05-20", "students", "wren", "subjects", "measurement");
        String address = first("href=\"(/log/2025-26/[^\"]+)\">Measured the jetty<", visit.get("/log?day=2026-05-20").body());

        String page = visit.get(address).body();

        assertThat(all("name=\"subjects\" type=\"checkbox\" value=\"(measurement)\" checked", page)).hasSize(1);
        assertThat(all("name=\"subjects\" type=\"checkbox\" value=\"(measurement)\"", page)).hasSize(1);
        assertThat(all("name=\"subjects\" type=\"checkbox\" value=\"(arithmetic)\"", page)).isNotEmpty();
    }

    @Test
    void whatWasTypedIsKeptWhenTheEntryWasTakenOutMeanwhile() throws IOException {
        String address = logOne();
        String print = first("name=\"print\" value=\"([^\"]+)\"", visit.get(address).body());
        visit.post(address + "/delete");

        Visit.Reply reply = visit.post(address, "did", "Rowed to the mill", "date", "2026-05-20", "students", "wren", "print", print);

        assertThat(reply.status()).isEqualTo(422);
        assertThat(reply.body()).contains("taken out of the log since", "value=\"Rowed to the mill\"", "action=\"/log\"");
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
    void aWeekWithAMistakeKeepsWhatWasTyped() throws IOException {
        String before = year();

        Visit.Reply reply = visit.post("/log/week", "start", "2026-05-18", "did-2026-05-18-1", "Planted leeks", "minutes-2026-05-18-1", "soon",
                "students-2026-05-18-1", "wren", "minutes-2026-05-19-1", "30", "did-2026-05-23-1", "Star night", "students-2026-05-23-1", "wren");

        assertThat(reply.status()).isEqualTo(422);
        assertThat(reply.body()).contains("3 things must be put right", "“soon” is no length of time", "Type what was done",
                "May 23, 2026 has not come yet", "Yes, I mean these days", "value=\"Planted leeks\"");
        assertThat(year()).isEqualTo(before);
    }

    @Test
    void aWeekShowsWhatIsThere() {
        visit.post("/log", "did", "Mended the net", "date", "2026-05-19", "students", "ansel");

        assertThat(visit.get("/log/week?start=2026-05-21").body()).contains("Monday, May 18, 2026", "Sunday, May 24, 2026")
                .containsPattern("href=\"/log/2025-26/[^\"]+\">Mended the net");
    }

    @Test
    void aDayIsRepeatedOnlyAsFarAsItWasTicked() throws IOException {
        visit.post("/log", "did", "Mended the net", "date", "2026-05-19", "students", "ansel", "minutes", "50", "subjects", "geography");
        visit.post("/log", "did", "Swept the boathouse", "date", "2026-05-19", "students", "ansel");
        String page = visit.get("/log/again").body();
        assertThat(page).contains("Repeat May 19, 2026", "Ansel, 50 minutes · Geography", "Swept the boathouse").doesNotContain(" checked");

        visit.post("/log/again", "day", "2026-05-19", "again", again(page, "Mended the net"), "date", "2026-05-20");

        assertThat(visit.get("/log?day=2026-05-20").body()).contains("Mended the net", "50 minutes", "Geography")
                .doesNotContain("Swept the boathouse");
    }

    private static String again(String page, String did) {
        return first("value=\"(2025-26/[^\"]+)\">\\s*<label for=\"[^\"]+\">" + did, page);
    }

    @Test
    void aRepeatWithNothingTickedOrOnADayToComeIsAskedAgain() throws IOException {
        visit.post("/log", "did", "Mended the net", "date", "2026-05-19", "students", "ansel");
        String before = year();
        String again = again(visit.get("/log/again").body(), "Mended the net");

        assertThat(visit.post("/log/again", "day", "2026-05-19", "date", "2026-05-20").body()).contains("Tick at least one");
        assertThat(visit.post("/log/again", "day", "2026-05-19", "date", "2026-05-21", "again", again).body())
                .contains("May 21, 2026 has not come yet").contains("checked");
        assertThat(year()).isEqualTo(before);
        assertThat(visit.post("/log/again", "day", "2026-05-19", "date", "2026-05-21", "again", again, "ahead", "yes").status()).isEqualTo(303);
    }

    @Test
    void oneEntryIsLoggedAgainForToday() throws IOException {
        visit.post("/log", "did", "Mended the net", "date", "2026-05-11", "students", "ansel", "minutes", "50");
        String address = first("href=\"(/log/2025-26/[^\"]+)\">Mended the net", visit.get("/log?words=mended+the+net").body());

        assertThat(visit.postAndFollow(address + "/again", "back", "/log?words=mended+the+net").body())
                .contains("Logged again for today: Mended the net", "2 entries on 2 days fit", "Undo: The entry of May 20, 2026");

        visit.post("/undo");
        assertThat(visit.get("/log?words=mended+the+net").body()).contains("One entry fits");
    }

    @Test
    void whatWasLoggedIsFound() {
        assertThat(visit.get("/log?words=meteors").body()).contains("count meteors");
        assertThat(visit.get("/log?words=nothing+of+the+kind").body()).contains("0 entries fit");
        assertThat(visit.get("/log?subject=music&child=marit&from=2025-08-01&to=2025-08-31").body()).contains("Fiddle practice")
                .doesNotContain("Capture the flag");
    }

    @Test
    void theLogIsNarrowed() {
        visit.post("/log", "did", "Glazed a pane", "date", "2026-05-18", "students", "wren", "materials", "putty, a grozing iron");
        visit.post("/log", "did", "Glazed another", "date", "2026-05-19", "students", "ansel", "subjects", "geography");

        assertThat(visit.get("/log?words=glazed").body()).contains("2 entries on 2 days fit");
        assertThat(visit.get("/log?words=Grozing").body()).contains("One entry fits", "Glazed a pane");
        assertThat(visit.get("/log?words=glazed&child=ansel").body()).contains("One entry fits", "Glazed another");
        assertThat(visit.get("/log?words=glazed&bare=yes").body()).contains("One entry fits", "Glazed a pane", "no subject yet");
        assertThat(visit.get("/log?words=glazed&from=2026-05-19").body()).contains("One entry fits", "Glazed another");
        assertThat(visit.get("/log?words=glazed&to=2026-05-18").body()).contains("One entry fits", "Glazed a pane");
        assertThat(visit.get("/log?from=2026-05-19&to=2026-05-18").body()).contains("Type a later one");
    }

    /** A day that falls between two pages is a day the parent believes lost. */
    @Test
    void thePagesTogetherShowEachDayOnce() {
        List<String> all = new ArrayList<>();
        List<String> firstPage = null;
        String next = "/log";
        while (next != null) {
            String page = visit.get(next).body();
            List<String> days = all("class=\"date\" datetime=\"([^\"]+)\"", page);
            assertThat(days).hasSizeLessThanOrEqualTo(50);
            firstPage = firstPage == null ? days : firstPage;
            all.addAll(days);
            List<String> older = all("href=\"([^\"]+)\">Earlier days", page);
            next = older.isEmpty() ? null : older.get(0).replace("&amp;", "&").replace("#logged", "");
            if (all.size() == 100) {
                String later = first("href=\"([^\"]+)\">Later days", page).replace("#logged", "");
                assertThat(all("class=\"date\" datetime=\"([^\"]+)\"", visit.get(later).body())).isEqualTo(firstPage);
            }
        }

        TreeSet<String> logged = new TreeSet<>(Comparator.reverseOrder());
        visit.server().house().desk().book().years().values().forEach(year -> year.log().forEach(entry -> logged.add(entry.date().toString())));
        assertThat(all).hasSizeGreaterThan(100).containsExactlyElementsOf(logged);
    }

    private static List<String> all(String pattern, String text) {
        return Pattern.compile(pattern).matcher(text).results().map(found -> found.group(1)).toList();
    }

    /** A family that teaches a word three times is understood the fourth time. */
    @Test
    void itLearnsWhatThisFamilyConfirmed() {
        for (int day = 11; day < 15; day++) {
            visit.post("/log", "did", "Zimbal again, part " + day, "date", "2026-05-" + day, "students", "wren", "subjects", "music");
        }

        assertThat(visit.get("/log/subjects?did=zimbal").body()).contains("value=\"music\"").contains("as you said before");
    }

    /** What was taken back was not confirmed. */
    @Test
    void itForgetsWhatWasTakenBack() {
        for (int day = 11; day < 15; day++) {
            visit.post("/log", "did", "Zimbal again, part " + day, "date", "2026-05-" + day, "students", "wren", "subjects", "music");
        }
        assertThat(visit.get("/log/subjects?did=zimbal").body()).contains("value=\"music\"");

        for (int day = 11; day < 15; day++) {
            visit.post("/undo");
        }

        assertThat(visit.get("/log/subjects?did=zimbal").body()).doesNotContain("value=\"music\"");
    }
}
