package org.hearthrule.page.year;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.hearthrule.input.Problems;
import org.hearthrule.law.Packaged;
import org.hearthrule.page.PageServer;
import org.hearthrule.page.frame.Settings;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookReader;
import org.hearthrule.records.YearRecords;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page of a year as it is asked for over the loopback address, for a copy of the demo family's book. */
class YearPagesTest {

    private static final Path DEMO = Path.of("test-fixtures", "books", "tennick-landing");

    @TempDir
    private Path folder;
    private PageServer server;
    private HttpClient visitor;

    @BeforeEach
    void open() throws Exception {
        Path book = Files.createDirectories(folder.resolve("book"));
        try (Stream<Path> files = Files.list(DEMO)) {
            for (Path file : files.filter(path -> path.toString().endsWith(".json")).toList()) {
                Files.copy(file, book.resolve(file.getFileName()));
            }
        }
        server = PageServer.start(new Settings(book, folder.resolve("demo"), false, Packaged.profiles(),
                Clock.fixed(Instant.parse("2026-05-20T12:00:00Z"), ZoneOffset.UTC), LocalDate.of(2026, 5, 20), 0, "test"));
        visitor = HttpClient.newBuilder().cookieHandler(new CookieManager()).followRedirects(HttpClient.Redirect.NORMAL).build();
        visitor.send(HttpRequest.newBuilder(URI.create(server.newStartAddress())).build(), HttpResponse.BodyHandlers.discarding());
    }

    @AfterEach
    void close() {
        server.close();
    }

    private HttpResponse<String> get(String path) throws Exception {
        return visitor.send(HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.port() + path)).build(),
                HttpResponse.BodyHandlers.ofString());
    }

    /** @param pairs name and value in turn */
    private HttpResponse<String> post(String path, String... pairs) throws Exception {
        List<String> sent = new ArrayList<>();
        for (int i = 0; i < pairs.length; i += 2) {
            sent.add(pairs[i] + '=' + URLEncoder.encode(pairs[i + 1], StandardCharsets.UTF_8));
        }
        return visitor.send(HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.port() + path))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(String.join("&", sent))).build(), HttpResponse.BodyHandlers.ofString());
    }

    private static String found(String pattern, String text) {
        Matcher matcher = Pattern.compile(pattern).matcher(text);
        assertThat(matcher.find()).as(pattern).isTrue();
        return matcher.group(1);
    }

    private YearRecords.Calendar calendar(String label) {
        Book book = BookReader.read(folder.resolve("book"), new Problems()).orElseThrow();
        return book.years().get(label).calendar();
    }

    @Test
    void theYearOfTheDayIsShownFirst() throws Exception {
        HttpResponse<String> page = get("/year");

        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.body()).contains("<h1>The year 2025–26</h1>", "667 entries on 187 days", "href=\"/year/2024-25\"",
                "href=\"/year/2026-27\"", "href=\"/assets/year.css?");
        assertThat(get("/assets/year.css").statusCode()).isEqualTo(200);
    }

    @Test
    void oneChildIsKeptWhenTheYearIsTurned() throws Exception {
        String page = get("/year/2025-26?child=wren").body();

        assertThat(page).contains("href=\"/year/2024-25?child=wren\"", "href=\"/checklist?child=wren#",
                "href=\"/log?day=2026-05-14&amp;child=wren\"", "171 of 180 days").doesNotContain("165 of 180 days");
    }

    @Test
    void whatIsDueAndWhatIsMissingLeadToTheirReasons() throws Exception {
        String page = get("/year?child=wren").body();
        String minimum = found("href=\"(/line\\?id=[^\"]*time[^\"]*)\">Why, and where", page);
        String due = found("href=\"(/line\\?id=[^\"]*)\">Evaluator", page);

        assertThat(get(minimum).body()).contains("171");
        assertThat(get(due).statusCode()).isEqualTo(200);
    }

    @Test
    void aChildThatIsNotThereIsEverybody() throws Exception {
        assertThat(get("/year/2025-26?child=nobody").body()).contains("171 of 180 days", "165 of 180 days");
    }

    @Test
    void aYearThatIsOverAsksForNothingMore() throws Exception {
        String page = get("/year/2024-25").body();

        assertThat(page).contains("This year is over.", "as of September 30, 2025", "<h3", "32 of 180 days")
                .doesNotContain("class=\"next\"", "rel=\"prev\"");
    }

    /** The book holds one entry of the wrong year, of one child: it shows where it lies. */
    @Test
    void aYearToComeCanBeLookedAt() throws Exception {
        assertThat(get("/year/2026-27").body()).contains("July 2026", "1 entry on 1 day", "rel=\"prev\"").doesNotContain("rel=\"next\"");
        assertThat(get("/year/2026-27?child=wren").body()).contains("Nothing is logged in this year yet.", "href=\"/log\"");
    }

    @Test
    void whatIsNoYearIsNowhere() throws Exception {
        assertThat(get("/year/2025-27").statusCode()).isEqualTo(404);
        assertThat(get("/year/..%2Fbook/days").statusCode()).isIn(400, 404);
    }

    @Test
    void theDaysOfTheYearAreNotedAndSeen() throws Exception {
        String form = get("/year/2025-26/days").body();
        HttpResponse<String> page = post("/year/2025-26/days", "token", found("name=\"token\" value=\"([^\"]+)\"", form),
                "first", "2025-07-28", "last", "June 12, 2026", "school-first", "2025-08-27", "school-last", "2026-06-09",
                "closed", "November 27, 2025 to November 28, 2025\nApril 3, 2026", "term-1-from", "2025-07-28", "term-1-to",
                "2025-12-19", "term-2-from", "2026-01-05", "term-2-to", "2026-06-12");

        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.body()).contains("The days of 2025–26 are noted.", "Your school year ends", "Term 2 begins", "Schools closed");
        assertThat(calendar("2025-26")).returns(LocalDate.of(2026, 6, 12), YearRecords.Calendar::lastDay)
                .returns(List.of(LocalDate.of(2025, 11, 27), LocalDate.of(2025, 11, 28), LocalDate.of(2026, 4, 3)),
                        YearRecords.Calendar::schoolClosed);
    }

    /** A year that is kept too long would show yesterday's book. */
    @Test
    void whatIsLoggedMeanwhileIsSeen() throws Exception {
        assertThat(get("/year/2026-27?child=wren").body()).contains("Nothing is logged");
        Files.writeString(folder.resolve("book").resolve("2026-27.json"), """
                {"hearthrule": 1, "year": "2026-27", "log": [
                 {"date": "2026-07-02", "minutes": 60, "students": ["wren"], "did": "A map of the landing."}]}
                """);

        assertThat(get("/year/2026-27?child=wren").body()).contains("1 entry on 1 day");
    }

    @Test
    void daysOfAYearWithoutAFileMakeIt() throws Exception {
        String form = get("/year/2026-27/days").body();
        post("/year/2026-27/days", "token", found("name=\"token\" value=\"([^\"]+)\"", form), "first", "2026-08-03");

        assertThat(calendar("2026-27").firstDay()).isEqualTo(LocalDate.of(2026, 8, 3));
    }

    @Test
    void aMistypedDayIsToldBesideItsFieldAndNothingIsLost() throws Exception {
        String before = Files.readString(folder.resolve("book").resolve("2025-26.json"));
        String form = get("/year/2025-26/days").body();
        HttpResponse<String> page = post("/year/2025-26/days", "token", found("name=\"token\" value=\"([^\"]+)\"", form),
                "first", "2025-07-28", "last", "2025-07-01", "closed", "snow");

        assertThat(page.statusCode()).isEqualTo(422);
        assertThat(page.body()).contains("2 things must be put right", "July 1, 2025 comes before July 28, 2025", "“snow” is no day",
                "value=\"2025-07-28\"", ">snow</textarea>");
        assertThat(Files.readString(folder.resolve("book").resolve("2025-26.json"))).isEqualTo(before);
    }

    /** Any page of the web could send such a form to this address; only ours knows the word of this run. */
    @Test
    void aFormWithoutTheWordOfThisRunChangesNothing() throws Exception {
        String before = Files.readString(folder.resolve("book").resolve("2025-26.json"));

        assertThat(post("/year/2025-26/days", "first", "2025-09-01").statusCode()).isEqualTo(403);
        assertThat(Files.readString(folder.resolve("book").resolve("2025-26.json"))).isEqualTo(before);
    }
}
