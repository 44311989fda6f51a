package org.hearthrule.page.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hearthrule.page.Visit;
import org.hearthrule.pictures.Photos;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WorkTest {

    private static final byte[] HEIC = "\0\0\0\030ftypheic\0\0\0\0mif1heic".getBytes(StandardCharsets.ISO_8859_1);

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

    private Visit.Reply upload(Visit.FilePart... files) {
        return visit.upload("/work/photos", List.of(files), "student", "wren");
    }

    private static Visit.FilePart file(String name, byte[] content) {
        return new Visit.FilePart("files", name, content);
    }

    /** A day taken over without asking would be said by the camera, not by the parent. */
    @Test
    void theDayOfAPhotoIsOfferedAndOnlyTakenWhenTheParentTakesIt() throws IOException {
        assertThat(upload(file("grebe.jpg", Photos.taken("2026:05:14 16:02:00", 1))).header("Location")).endsWith("/unsettled");

        String page = visit.get("/unsettled").body();
        assertThat(page).contains("grebe.jpg").contains("the camera noted May 14, 2026, 16:02");
        assertThat(year()).contains("\"student\": \"wren\", \"title\": \"grebe.jpg\"");
        String ref = first("name=\"offer:([^\"]+)\"", page);
        String file = first("/preview\\?size=small&amp;path=([^\"]+)\"", page);

        Visit.Reply saved = visit.post("/unsettled", "offer:" + ref, "2026-05-14", "subject:" + ref, "drawing", "title:" + ref, "Grebe at the ramp");
        assertThat(saved.status()).as(saved.body()).isEqualTo(303);

        assertThat(visit.get("/unsettled").body()).doesNotContain("grebe.jpg").doesNotContain("Grebe at the ramp");
        assertThat(visit.get("/work?words=grebe%20at%20the%20ramp").body()).contains("May 14, 2026");
        Visit.Reply preview = visit.get("/preview?size=small&path=" + Visit.encode(file));
        assertThat(preview.status()).isEqualTo(200);
        assertThat(preview.header("Content-Type")).isEqualTo("image/jpeg");
    }

    @Test
    void aPhotoWithoutADayIsSettledByHand() throws IOException {
        upload(file("scan.jpg", Photos.plain(2)), file("scan two.jpg", Photos.plain(3)));
        String page = visit.get("/unsettled").body();
        String ref = first("name=\"date:(2025-26/[^\"]+)\"", page);

        assertThat(visit.post("/unsettled", "date:" + ref, "2026-13-01").status()).isEqualTo(422);
        assertThat(visit.post("/unsettled", "date:" + ref, "2026-04-01", "subject:" + ref, "drawing").status()).isEqualTo(303);

        assertThat(visit.get("/unsettled").body()).doesNotContain("date:" + ref + "\"");
    }

    @Test
    void aHeicPictureIsRefusedWithWhatToDoAndTheOthersAreTaken() {
        Visit.Reply reply = upload(file("IMG_1.HEIC", HEIC), file("jetty.jpg", Photos.plain(4)));

        assertThat(reply.body()).contains("HEIC picture").contains("Most Compatible");
        assertThat(visit.get("/unsettled").body()).contains("jetty.jpg").doesNotContain("IMG_1");
    }

    @Test
    void thePictureThatIsThereAlreadyIsNotTakenTwice() {
        upload(file("jetty.jpg", Photos.plain(4)));

        assertThat(upload(file("jetty again.jpg", Photos.plain(4))).body()).contains("lies in the book already");
    }

    /** The name is the sender's word: nothing of it may become a path. */
    @Test
    void aFileIsStoredUnderOurOwnName() throws IOException {
        upload(file("../../../evil.jpg", Photos.plain(5)), file("..\\..\\windows.jpg", Photos.plain(6)));

        assertThat(Files.exists(folder.resolve("evil.jpg"))).isFalse();
        assertThat(Files.exists(folder.getParent().resolve("evil.jpg"))).isFalse();
        try (var files = Files.walk(visit.book())) {
            assertThat(files.map(Path::getFileName).map(Path::toString).filter(name -> name.contains("evil") || name.contains("windows")))
                    .isEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"family.json", "../book/family.json", "/etc/passwd", "..%2F..%2Fetc%2Fpasswd", ".copies/x.json",
            ".page/calendar-key", "work\\..\\family.json", "C:/family.json", "family.json%00.jpg", "", "file:///etc/passwd"})
    void noOtherFileOfThisMachineIsEverShown(String path) {
        visit.get("/calendar");

        assertThat(visit.get("/attachment?path=" + path.replace("\\", "%5C")).status()).isEqualTo(404);
        assertThat(visit.get("/preview?path=" + path.replace("\\", "%5C")).status()).isEqualTo(404);
    }

    @Test
    void aLinkThatLeadsOutIsNotFollowed() throws IOException {
        Path outside = Files.write(folder.resolve("outside.jpg"), Photos.plain(7));
        Files.createDirectories(visit.book().resolve("work"));
        Files.createSymbolicLink(visit.book().resolve("work").resolve("link.jpg"), outside);

        assertThat(visit.get("/attachment?path=work/link.jpg").status()).isEqualTo(404);
    }

    @Test
    void aPageInDisguiseIsNotTaken() {
        assertThat(upload(file("photo.jpg", "<html><script>alert(1)</script></html>".getBytes())).body()).contains("web page");
    }

    @Test
    void aBookWithAWrongIsbnIsAskedForAgain() throws IOException {
        Visit.Reply wrong = visit.post("/books/new", "title", "The Tide Clock", "students", "wren", "started", "2026-05-01",
                "isbn", "978-0-306-40615-6");
        assertThat(wrong.status()).isEqualTo(422);
        assertThat(wrong.body()).contains("it would be 7");

        visit.post("/books/new", "title", "The Tide Clock", "students", "wren", "started", "2026-05-01", "isbn", "978-0-306-40615-7");

        assertThat(visit.get("/books?words=tide%20clock").body()).contains("The Tide Clock").contains("going on");
        assertThat(year()).contains("\"isbn\": \"9780306406157\"");
    }

    @Test
    void theRecordsPageTellsHowMuchThereIs() {
        assertThat(visit.get("/records").body()).contains("Books").contains("pieces of work have no day or no subject yet");
    }
}
