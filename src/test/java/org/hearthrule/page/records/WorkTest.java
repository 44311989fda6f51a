package org.hearthrule.page.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hearthrule.page.Visit.first;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.hearthrule.page.DemoVisit;
import org.hearthrule.page.Visit;
import org.hearthrule.pictures.Photos;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WorkTest extends DemoVisit {

    private static final byte[] HEIC = "\0\0\0\030ftypheic\0\0\0\0mif1heic".getBytes(StandardCharsets.ISO_8859_1);

    private Visit.Reply upload(Visit.FilePart... files) {
        return visit.upload("/work/photos", List.of(files), "student", "wren");
    }

    private static Visit.FilePart file(String name, byte[] content) {
        return new Visit.FilePart("files", name, content);
    }

    /** Says something about one piece of a page that is open. */
    private Visit.Reply settle(String page, String ref, String... fieldsAndValues) {
        return visit.post("/unsettled", said(page, ref, fieldsAndValues));
    }

    private static String[] said(String page, String ref, String... fieldsAndValues) {
        List<String> sent = new ArrayList<>(List.of("piece", ref, "print:" + ref, first("name=\"print:" + ref + "\" value=\"([^\"]+)\"", page)));
        for (int i = 0; i < fieldsAndValues.length; i += 2) {
            sent.addAll(List.of(fieldsAndValues[i] + ':' + ref, fieldsAndValues[i + 1]));
        }
        return sent.toArray(String[]::new);
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

        Visit.Reply saved = settle(page, ref, "offer", "2026-05-14", "subject", "drawing", "title", "Grebe at the ramp");
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

        assertThat(settle(page, ref, "date", "2026-13-01").status()).isEqualTo(422);
        assertThat(settle(page, ref, "date", "2026-04-01", "subject", "drawing").status()).isEqualTo(303);

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

    @Test
    void aFileOverTheCapIsToldInAPageAndNothingIsKept() throws IOException {
        String before = year();

        Visit.Reply reply = upload(file("huge.jpg", new byte[41 * 1024 * 1024]));

        assertThat(reply.status()).isEqualTo(413);
        assertThat(reply.header("Content-Type")).startsWith("text/html");
        assertThat(year()).isEqualTo(before);
    }

    @Test
    void workIsNarrowedToAChildASubjectAndAMonth() {
        String page = visit.get("/work?child=wren&subject=data&month=2025-08").body();

        assertThat(page).contains("Meteors, one bar for each of us");
        assertThat(page).doesNotContain("The otter slide").doesNotContain("Star notebook, how the columns are kept");
        assertThat(visit.get("/work?state=chosen&month=2025-08").body()).contains("Meteors, one bar").doesNotContain("The otter slide");
    }

    @Test
    void booksAreNarrowedToASubjectAYearAndToThoseGoingOn() {
        assertThat(visit.get("/books?subject=algebra&year=2025-26").body()).contains("Reasoning with X").doesNotContain("Mole Street");
        assertThat(visit.get("/books?state=going-on&year=2025-26").body()).contains("Reasoning with X").doesNotContain("Mole Street");
        assertThat(visit.get("/books?state=finished&year=2025-26&words=lunt").body()).contains("Mole Street").doesNotContain("Reasoning with X");
    }

    @Test
    void titlesAndAuthorsOfEarlierBooksAreOffered() {
        assertThat(visit.get("/books/new").body()).contains("list=\"earlier-authors\"")
                .contains("<datalist id=\"earlier-authors\">").contains("<option value=\"Pia Lunt\">").contains("<option value=\"Mole Street\">");
    }

    /** Whoever sees a hundred of more must be led to the others, or they are lost to her. */
    @Test
    void aLongListGoesOnAfterAHundred() {
        String all = visit.get("/work").body();

        assertThat(all.split("<h2><a href=\"/work/", -1)).hasSize(101);
        String next = first("<a href=\"(/work\\?from=100)\">Show more", all);
        assertThat(visit.get(next).body()).contains("<h2><a href=\"/work/");
    }

    /** A picture that does not come is a riddle; a sentence says which file to look for. */
    @Test
    void aPieceWhoseFileIsNotThereSaysSoAndAPaperIsNoPicture() throws IOException {
        Files.delete(visit.book().resolve("photos/2024-09-05-heron.jpg"));

        assertThat(visit.get("/work?words=heron").body()).contains("photos/2024-09-05-heron.jpg is not in the book");
        assertThat(visit.get("/unsettled").text()).contains("Files that are not there").contains("photos/2024-09-05-heron.jpg");
        String card = visit.get("/work?words=first-aid%20course").body();
        assertThat(card).contains("/attachment?path=papers/first-aid-card.pdf").doesNotContain("/preview?size=small&amp;path=papers");
        assertThat(visit.get("/attachment?path=papers/first-aid-card.pdf").header("Content-Disposition")).startsWith("attachment");
        assertThat(visit.get("/work?words=meteors").body()).contains("/preview?size=small&amp;path=photos/2025-08-13-meteors.jpg");
    }

    /** The demo is the first thing a parent sees: it must not look broken. */
    @Test
    void theDemoFamilyMissesNoFile() {
        assertThat(visit.get("/unsettled").text()).doesNotContain("Files that are not there").doesNotContain("Files that no record names");
    }

    @Test
    void aPictureIsShownInThePageAndKeptByThisBrowserAlone() {
        Visit.Reply picture = visit.get("/attachment?path=photos/2025-08-13-meteors.jpg");

        assertThat(picture.header("Content-Type")).isEqualTo("image/jpeg");
        assertThat(picture.header("Content-Disposition")).isEqualTo("inline");
        assertThat(picture.header("Cache-Control")).startsWith("private");
    }

    @Test
    void aPieceChangedMeanwhileIsNotWrittenOverAndBothVersionsAreShown() throws IOException {
        String print = first("name=\"print\" value=\"([^\"]+)\"", visit.get("/work/2025-26/sample-9").body());
        assertThat(change("The slide in snow", print).status()).isEqualTo(303);

        Visit.Reply second = change("The slide in mud", print);

        assertThat(second.status()).isEqualTo(422);
        assertThat(second.body()).contains("changed elsewhere").contains("The slide in mud");
        assertThat(year()).contains("The slide in snow").doesNotContain("The slide in mud");
        String there = first("name=\"print\" value=\"([^\"]+)\"", second.body());
        assertThat(change("The slide in mud", there).status()).isEqualTo(303);
        assertThat(year()).contains("The slide in mud");
    }

    private Visit.Reply change(String title, String print) {
        return visit.post("/work/2025-26/sample-9", "print", print, "title", title, "student", "wren", "date", "2025-08-19",
                "subjects", "drawing");
    }

    @Test
    void aPieceTakenOutComesBackByUndo() throws IOException {
        assertThat(visit.post("/work/2025-26/sample-9/delete").status()).isEqualTo(303);
        assertThat(year()).doesNotContain("The otter slide");

        assertThat(visit.post("/undo").status()).isEqualTo(303);

        assertThat(year()).contains("The otter slide");
    }

    /** What was not saved must not be told as saved, and what was typed for it not be lost. */
    @Test
    void aPieceChangedMeanwhileIsLeftAndToldAndTheOthersAreSaved() throws IOException {
        upload(file("one.jpg", Photos.plain(2)), file("two.jpg", Photos.plain(3)), file("three.jpg", Photos.plain(4)));
        String page = visit.get("/unsettled").body();
        String one = first("/work/(2025-26/[^\"]+)\">one.jpg", page);
        String two = first("/work/(2025-26/[^\"]+)\">two.jpg", page);
        String three = first("/work/(2025-26/[^\"]+)\">three.jpg", page);
        visit.post("/work/" + two, "print", first("name=\"print\" value=\"([^\"]+)\"", visit.get("/work/" + two).body()),
                "title", "The net loft", "student", "wren");
        visit.post("/work/" + three + "/delete");
        List<String> sent = new ArrayList<>(List.of(said(page, one, "date", "2026-04-01", "subject", "drawing")));
        sent.addAll(List.of(said(page, two, "date", "2026-04-02", "title", "The boat shed")));
        sent.addAll(List.of(said(page, three, "idea", "how a knot holds")));

        Visit.Reply reply = visit.post("/unsettled", sent.toArray(String[]::new));

        assertThat(reply.text()).contains("2 pieces were left as they are")
                .contains("The net loft: It was changed elsewhere after you opened this page. You said: April 2, 2026; The boat shed.")
                .contains("A piece: It was taken out of the book").contains("how a knot holds").contains("The other one is saved.");
        assertThat(year()).contains("\"student\": \"wren\", \"title\": \"The net loft\"").doesNotContain("The boat shed")
                .doesNotContain("how a knot holds").contains("\"date\": \"2026-04-01\", \"subjects\": [\"drawing\"], \"title\": \"one.jpg\"");
        assertThat(reply.body()).contains("value=\"The boat shed\"").contains("value=\"2026-04-02\"")
                .doesNotContain("name=\"piece\" value=\"" + one).doesNotContain("name=\"piece\" value=\"" + three);
        assertThat(settle(reply.body(), two, "date", "2026-04-02", "title", "The boat shed").status()).isEqualTo(303);
        assertThat(year()).contains("The boat shed").doesNotContain("The net loft");
    }

    @Test
    void whenEveryPieceWasChangedMeanwhileNothingIsSaved() throws IOException {
        upload(file("one.jpg", Photos.plain(2)));
        String page = visit.get("/unsettled").body();
        String one = first("/work/(2025-26/[^\"]+)\">one.jpg", page);
        settle(page, one, "title", "The net loft");
        String before = year();

        Visit.Reply second = settle(page, one, "title", "The boat shed");

        assertThat(second.status()).isEqualTo(422);
        assertThat(second.text()).contains("One piece was left as it is").doesNotContain("saved.");
        assertThat(year()).isEqualTo(before);
    }

    @Test
    void anIdeaIsSettledToo() throws IOException {
        upload(file("scan.jpg", Photos.plain(8)));
        String page = visit.get("/unsettled").body();

        settle(page, first("name=\"date:(2025-26/[^\"]+)\"", page), "idea", "how a knot holds");

        assertThat(year()).contains("how a knot holds");
    }
}
