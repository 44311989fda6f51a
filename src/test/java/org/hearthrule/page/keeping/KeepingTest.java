package org.hearthrule.page.keeping;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hearthrule.page.Visit.first;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import org.hearthrule.page.DemoVisit;
import org.hearthrule.page.FilledForm;
import org.hearthrule.page.Visit;
import org.junit.jupiter.api.Test;

class KeepingTest extends DemoVisit {

    private void noteAPaper(String kind) {
        assertThat(visit.post("/health/new", "student", "ansel", "kind-other", kind, "date", "2026-05-11").status()).isEqualTo(303);
    }

    @Test
    void theBookAsItWasYesterdayComesBackAndCanBeUndone() throws Exception {
        Path year = visit.book().resolve("2025-26.json");
        Files.setLastModifiedTime(year, FileTime.from(Instant.parse("2026-05-19T20:15:00Z")));
        noteAPaper("letter of today");

        String page = visit.get("/copies").body();
        assertThat(page).contains("May 19, 2026");
        visit.post("/copies/back", "moment", first("name=\"moment\" value=\"(2026-05-19[^\"]*)\"", page));

        assertThat(visit.get("/health").body()).doesNotContain("Letter of today");
        assertThat(visit.postAndFollow("/undo").body()).contains("Taken back: The book as it was on May 19, 2026");
        assertThat(visit.get("/health").body()).contains("Letter of today");
    }

    @Test
    void aWholeCopyComesBack() {
        byte[] zip = visit.get("/copies/whole").whole().body();
        noteAPaper("letter of today");

        Visit.Reply reply = visit.upload("/copies/restore", List.of(new Visit.FilePart("copy", "my copy.zip", zip)));

        assertThat(reply.status()).isEqualTo(303);
        assertThat(visit.get("/health").body()).doesNotContain("Letter of today");

        // which can be undone, and that too
        FilledForm.of(visit.get("/copies"), "/copies/earlier").send(visit);
        assertThat(visit.get("/health").body()).contains("Letter of today");
        String kept = first("name=\"copy\" value=\"([^\"]+)\"", visit.get("/copies").body());
        visit.post("/copies/earlier", "copy", kept);
        assertThat(visit.get("/health").body()).doesNotContain("Letter of today");
        assertThat(visit.postAndFollow("/copies/earlier", "copy", "../family.json").body()).contains("kept no longer");
    }

    @Test
    void aFileThatIsNoCopyIsRefusedAndNothingChanges() throws Exception {
        byte[] before = Files.readAllBytes(visit.book().resolve("family.json"));

        Visit.Reply reply = visit.upload("/copies/restore", List.of(new Visit.FilePart("copy", "x.zip", "not a zip".getBytes())));

        assertThat(reply.status()).isEqualTo(422);
        assertThat(reply.body()).contains("no whole copy of a book");
        assertThat(Files.readAllBytes(visit.book().resolve("family.json"))).isEqualTo(before);
    }

    @Test
    void theCalendarHasAlarmsAndNoNames() {
        String calendar = visit.get("/calendar-file").body();

        assertThat(calendar).startsWith("BEGIN:VCALENDAR").contains("TRIGGER;RELATED=START:-P30D").contains("TRIGGER;RELATED=START:-P7D").contains("TRIGGER;RELATED=START:-P1D")
                .doesNotContain("Wren");
        assertThat(visit.get("/calendar-file?names=yes").body()).contains("Wren");
    }

    private int fetch(String address) throws Exception {
        return HttpClient.newHttpClient().send(HttpRequest.newBuilder(URI.create(address)).build(), BodyHandlers.ofString()).statusCode();
    }

    /** A calendar program has no cookie; only whoever knows the address may fetch the dates, and nothing else. */
    @Test
    void theCalendarsAddressIsTheSecret() throws Exception {
        String address = first("value=\"(http://127[^\"]*\\.ics)\"", visit.get("/calendar").body());

        assertThat(fetch(address)).isEqualTo(200);
        assertThat(fetch(address.replaceFirst("[A-Za-z0-9_-]\\.ics", "~.ics"))).isEqualTo(404);
        assertThat(fetch(visit.address() + "/calendar/../checklist.ics")).isIn(400, 403, 404);
        assertThat(first("value=\"(http://127[^\"]*\\.ics)\"", visit.get("/calendar").body())).isEqualTo(address);
    }

    @Test
    void filesThatCannotBeReadAreToldOnEveryPageUntilTheyAreMended() throws Exception {
        Path file = visit.book().resolve("2025-26.json");
        String whole = Files.readString(file);
        visit.get("/log");
        Files.writeString(file, whole.replaceFirst("\"log\": \\[", "\"log\": ["  + "{,"));
        String broken = Files.readString(file);

        // what was there before it broke is still to be seen, with the word that it is old
        assertThat(visit.get("/checklist").text()).contains("cannot be read just now", "Evaluator's certificate");
        assertThat(visit.get("/log").text()).contains("cannot be read just now");
        assertThat(visit.get("/keeping/files").text()).containsPattern("2025-26\\.json:\\d+:\\d+ Found ");
        assertThat(visit.post("/log", "did", "Rowed to the lock", "date", "2026-05-20", "students", "wren").status()).isEqualTo(422);
        assertThat(Files.readString(file)).isEqualTo(broken);

        Files.writeString(file, whole);
        assertThat(visit.get("/checklist").text()).doesNotContain("cannot be read just now");
        // the demo family has mistyped one day
        assertThat(visit.get("/keeping/files").body().split("class=\"place\"")).hasSize(2);
        assertThat(visit.get("/keeping/files").text()).contains("Found \"2026-10-03\"");
    }
}
