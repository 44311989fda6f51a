package org.hearthrule.page.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hearthrule.page.Visit.first;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hearthrule.page.DemoVisit;
import org.hearthrule.page.Visit;
import org.hearthrule.pictures.Photos;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PapersTest extends DemoVisit {

    /** The entry of the checklist that has a title. */
    private String entry(String title) {
        String page = visit.get("/checklist").body();
        int at = page.indexOf("<h3>" + title);
        return at < 0 ? "" : page.substring(at, page.indexOf("</li>\n", at));
    }

    @Test
    void aPaperMarkedAsSentFromItsLineMakesTheLineShown() throws IOException {
        assertThat(entry("Evaluator's certificate")).contains("Open.").contains("Mark as sent");

        Visit.Reply reply = visit.postAndFollow("/papers/new", "paper", "evaluation-certificate", "for", "2025-26", "students", "wren",
                "students", "ansel", "students", "marit", "sent", "2026-05-19", "how", "by hand", "back", "/checklist");

        assertThat(reply.body()).contains("Saved: Evaluator").contains("Undo: A paper you sent");
        assertThat(entry("Evaluator's certificate")).contains("Shown.");
        assertThat(year()).contains("\"sent\": \"2026-05-19\"");
    }

    @Test
    void anUndoTakesThePaperBack() throws IOException {
        String before = year();
        visit.post("/papers/new", "paper", "evaluation-certificate", "sent", "2026-05-19");
        assertThat(year()).isNotEqualTo(before);

        assertThat(visit.postAndFollow("/undo").body()).contains("Taken back: A paper you sent");

        assertThat(visit.get("/papers").body()).doesNotContain("May 19, 2026");
    }

    @Test
    void whatMustBePutRightStandsBesideItsFieldAndNothingTypedIsLost() throws IOException {
        String before = year();

        Visit.Reply reply = visit.post("/papers/new", "sent", "2026-02-30", "to", "the office at the quay");

        assertThat(reply.status()).isEqualTo(422);
        assertThat(reply.body()).contains("2 things must be put right").contains("is no day of the calendar")
                .contains("Choose which paper it was").contains("value=\"the office at the quay\"");
        assertThat(year()).isEqualTo(before);
    }

    @Test
    void aTestIsNotedWithItsScores() throws IOException {
        Visit.Reply reply = visit.postAndFollow("/tests/new", "student", "wren", "date", "2026-05-02", "method", "standardized-test",
                "name", "Harbour Test", "scores", "reading percentile 41\nmathematics stanine 6");

        assertThat(reply.body()).contains("Harbour Test").contains("Reading: percentile 41; Mathematics: stanine 6");
        assertThat(year()).contains("Harbour Test").contains("\"percentile\"");
    }

    @Test
    void aScoreThatIsNotUnderstoodIsAskedForAgain() {
        Visit.Reply reply = visit.post("/tests/new", "student", "wren", "date", "2026-05-02", "method", "standardized-test",
                "scores", "quite good");

        assertThat(reply.status()).isEqualTo(422);
        assertThat(reply.body()).contains("reading percentile 41").contains("quite good");
    }

    /** Two windows, or another program, change one paper: neither version may go without a word. */
    @Test
    void aPaperChangedElsewhereIsNotWrittenOver() throws IOException {
        visit.post("/papers/new", "paper", "evaluation-certificate", "sent", "2026-05-19", "to", "the quay office");
        String address = first("href=\"(/papers/2025-26/[^\"]+)\">Evaluator", visit.get("/papers").body());
        String print = first("name=\"print\" value=\"([^\"]+)\"", visit.get(address).body());
        visit.post(address, "paper", "evaluation-certificate", "sent", "2026-05-20", "to", "the hill office", "print", print);

        Visit.Reply second = visit.post(address, "paper", "evaluation-certificate", "sent", "2026-05-21", "to", "the mill office", "print", print);

        assertThat(second.status()).isEqualTo(422);
        assertThat(second.body()).contains("changed elsewhere").contains("the hill office").contains("value=\"the mill office\"");
        assertThat(year()).contains("the hill office").doesNotContain("the mill office");
        String fresh = first("name=\"print\" value=\"([^\"]+)\"", second.body());
        assertThat(visit.post(address, "paper", "evaluation-certificate", "sent", "2026-05-21", "to", "the mill office", "print", fresh)
                .status()).isEqualTo(303);
        assertThat(year()).contains("the mill office");
    }

    @Test
    void aPaperTakenOutCanBeTakenBack() {
        visit.post("/health/new", "student", "ansel", "kind", "medical-examination", "date", "2026-05-11");
        String address = first("href=\"(/health/2025-26/[^\"]+)\">Medical examination", visit.get("/health").body());

        visit.post(address + "/delete");
        assertThat(visit.get("/health").body()).doesNotContain("May 11, 2026");
        visit.post("/undo");

        assertThat(visit.get("/health").body()).contains("May 11, 2026");
    }

    @Test
    void aDoubtThatSomebodyAnsweredIsNoLongerOpen() {
        String page = visit.get("/checklist").body();
        String doubt = first("name=\"doubt\" value=\"([^\"]+)\"", page);

        visit.post("/answers/doubt", "doubt", doubt, "answer", "Yes, in spring too.", "from", "the office");

        assertThat(visit.get("/checklist").body()).contains("Yes, in spring too.").doesNotContain("name=\"doubt\" value=\"" + doubt);
    }

    @Test
    void aLineOpensToEverythingThatWasCounted() {
        String page = visit.get("/checklist").body();
        String address = first("href=\"(/line\\?id=[^\"]*time/wren[^\"]*)\"", page);

        assertThat(visit.get(address.replace("&amp;", "&")).body()).contains("What was counted").contains("not legal advice");
        assertThat(visit.get("/line?id=nothing").status()).isEqualTo(404);
    }

    /** A choice offers persons of the book alone; a role that stands in it must not be lost when something else is mended. */
    @Test
    void whoGaveATestStaysWhenTheTestIsMended() throws IOException {
        visit.post("/tests/new", "student", "wren", "date", "2026-05-02", "method", "standardized-test", "name", "Harbour Test",
                "givenBy-other", "testing center");
        String address = first("href=\"(/tests/2025-26/[^\"]+)\">Harbour Test", visit.get("/tests").body());

        mend(address, "edition", "Second edition");

        assertThat(year()).contains("\"edition\": \"Second edition\"").contains("\"givenBy\": \"testing center\"");
    }

    /** The same of an evaluation, and of a kind that no law of the book asks for. */
    @Test
    void whatIsNotOfferedStaysWhenAnEvaluationIsMended() throws IOException {
        visit.post("/evaluations/new", "student", "wren", "date", "2026-05-02", "method-other", "Long talk", "by-other", "a neighbor");
        String address = first("href=\"(/evaluations/2025-26/[^\"]+)\">Long talk", visit.get("/evaluations").body());

        mend(address, "note", "At the kitchen table.");

        assertThat(year()).contains("\"method\": \"long-talk\"").contains("\"by\": \"a neighbor\"").contains("At the kitchen table.");
    }

    /** A result that lies beside its record is found again, shown, and not lost when something else is mended. */
    @ParameterizedTest
    @CsvSource({"/tests, standardized-test, place, the church hall", "/evaluations, portfolio-evaluation, outcome, appropriate",
            "/health, dental-examination, kind-other, Eye check"})
    void aScanIsKeptBesideItsRecord(String path, String kind, String field, String value) throws IOException {
        byte[] photo = Photos.plain(1);
        assertThat(visit.get(path + "/new").body()).contains("name=\"scan\" type=\"file\"");
        visit.upload(path + "/new", List.of(new Visit.FilePart("scan", "IMG_0007.jpg", photo)), "student", "wren", "date", "2026-05-02",
                "method", kind, "kind", kind);
        String written = first("(?s)(\\{\"id\": \"[^\"]+\", \"student\": \"wren\"[^}]*\"file\": \"[^\"]+\")", year());
        String file = first("\"file\": \"([^\"]+)\"", written);
        assertThat(written).contains("2026-05-02");
        assertThat(file).matches("work/2026-05/2026-05-20-scan-[0-9a-f]+\\.jpg");
        String link = "<a href=\"/attachment?path=" + file + '"';
        String address = first("href=\"(" + path + "/2025-26/[^\"]+)\">[^<]*</a></h2>(?:(?!</li>)[\\s\\S])*>The scan<", visit.get(path).body());

        mend(address, field, value);

        assertThat(visit.get(path).body()).contains(link + ">The scan</a>");
        assertThat(visit.get(address).body()).contains("There is a scan: " + link).contains(value.split(" ")[0]);
        assertThat(visit.get("/attachment?path=" + file).whole().body()).isEqualTo(photo);
        assertThat(visit.get("/unsettled").text()).doesNotContain(file);
    }

    @Test
    void aScanThatIsNoPictureIsRefusedWithItsRecord() throws IOException {
        String before = year();

        Visit.Reply reply = visit.upload("/tests/new", List.of(new Visit.FilePart("scan", "result.txt", "54".getBytes())),
                "student", "wren", "date", "2026-05-02", "method", "standardized-test");

        assertThat(reply.status()).isEqualTo(422);
        assertThat(reply.text()).contains("plain text");
        assertThat(year()).isEqualTo(before);
    }

    /** A link that leads to nothing is a riddle; a sentence says which file to look for. */
    @Test
    void aScanWhoseFileIsGoneIsTold() throws IOException {
        visit.upload("/tests/new", List.of(new Visit.FilePart("scan", "result.jpg", Photos.plain(1))), "student", "wren",
                "date", "2026-05-02", "method", "standardized-test", "name", "Harbour Test");
        String file = first("\"file\": \"(work/[^\"]+)\"", year());
        Files.delete(visit.book().resolve(file));

        assertThat(visit.get("/tests?words=harbour").text()).contains("Its file " + file + " is not in the book")
                .doesNotContain("The scan");
        assertThat(visit.get("/unsettled").text()).contains(file);
    }

    /** Sends a form as it stands, with one field changed, as a browser does. */
    private void mend(String address, String name, String value) {
        String page = visit.get(address).body();
        String form = page.substring(page.indexOf("action=\"" + address + "\""), page.indexOf("</form>", page.indexOf("action=\"" + address + "\"")));
        List<String> sent = new ArrayList<>(List.of(name, value));
        Matcher inputs = Pattern.compile("<input id=\"[^\"]+\" name=\"([^\"]+)\" type=\"(\\w+)\" value=\"([^\"]*)\"( checked)?").matcher(form);
        while (inputs.find()) {
            boolean box = List.of("radio", "checkbox").contains(inputs.group(2));
            if (!inputs.group(1).equals(name) && (!box || inputs.group(4) != null)) {
                sent.addAll(List.of(inputs.group(1), inputs.group(3)));
            }
        }
        Matcher selects = Pattern.compile("<select id=\"[^\"]+\" name=\"([^\"]+)\".*?</select>", Pattern.DOTALL).matcher(form);
        while (selects.find()) {
            Matcher chosen = Pattern.compile("<option value=\"([^\"]*)\" selected").matcher(selects.group());
            sent.addAll(List.of(selects.group(1), chosen.find() ? chosen.group(1) : ""));
        }
        Matcher hidden = Pattern.compile("<input type=\"hidden\" name=\"([^\"]+)\" value=\"([^\"]*)\"").matcher(form);
        while (hidden.find()) {
            if (!hidden.group(1).equals("token")) {
                sent.addAll(List.of(hidden.group(1), hidden.group(2)));
            }
        }
        assertThat(visit.post(address, sent.toArray(String[]::new)).status()).isEqualTo(303);
    }
}
