package org.hearthrule.page.readiness;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.hearthrule.checklist.Readiness;
import org.hearthrule.checklist.ReadinessCheck;
import org.hearthrule.page.Accessible;
import org.hearthrule.page.SharedVisit;
import org.hearthrule.page.Visit;
import org.hearthrule.pictures.Photos;
import org.hearthrule.page.Visit.Reply;
import org.hearthrule.page.frame.Desk;
import org.hearthrule.records.Student;
import org.hearthrule.records.YearRecords.Sample;
import org.hearthrule.terms.Wording;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReadinessPagesTest extends SharedVisit {

    private Readiness ready(String child) throws Exception {
        Desk desk = visit.server().house().desk();
        return ReadinessCheck.of(desk.checklist(), desk.book(), desk.book().student(child).orElseThrow(), Wording.english());
    }

    /** What a page leaves out is what the evaluator asks for. */
    @Test
    void showsEverySubjectWithItsPiecesAndEveryStep() throws Exception {
        for (Student child : visit.server().house().desk().book().students()) {
            Reply page = visit.get("/readiness?child=" + child.id());
            String text = page.text();
            Readiness ready = ready(child.id());

            assertThat(ready.subjects()).isNotEmpty();
            for (Readiness.SubjectRow row : ready.subjects()) {
                assertThat(page.body()).contains(">" + row.name());
                for (Sample sample : row.samples().stream().flatMap(List::stream).toList()) {
                    assertThat(text).contains(Wording.english().date(sample.date()) + ' ' + sample.title());
                }
                row.undated().forEach(sample -> assertThat(text).contains(sample.title()));
            }
            ready.steps().forEach(step -> assertThat(text).contains(step.title(), step.next(), step.found()));
            ready.items().forEach(item -> assertThat(text).contains(item.name(), item.found()));
            ready.evaluators().forEach(sentence -> assertThat(text).contains(sentence));
            Accessible.check(page.body(), child.id());
        }
    }

    /** Wren's civics: one piece each in the second and the last third, none in the first (2025-26.json). */
    @Test
    void saysInWordsWhichThirdOfTheYearHasNothing() throws Exception {
        String html = visit.get("/readiness?child=wren").body();
        String civics = html.substring(html.indexOf(">civics</h2>"));
        civics = civics.substring(0, civics.indexOf("</section>"));

        assertThat(civics).containsPattern("First third, to November 16, 2025</h3>\\s*<p class=\"none\">No dated piece\\.</p>");
        assertThat(Pattern.compile("class=\"none\">No dated piece").matcher(civics).results()).hasSize(1);
    }

    /** A third that goes on still lacks nothing. */
    @Test
    void aThirdThatGoesOnIsNotOver() throws Exception {
        assertThat(visit.get("/readiness?child=wren").text()).contains("Last third, to June 30, 2026 No dated piece yet.");
    }

    @Test
    void goesFromChildToChild() throws Exception {
        assertThat(visit.get("/readiness").text()).contains("Before the evaluation Wren Kestler");
        assertThat(visit.get("/readiness?child=marit").text()).contains("Before the evaluation Marit Kestler");
        assertThat(visit.get("/readiness?child=marit").body()).contains("href=\"/readiness?child=ansel\"");
        assertThat(visit.get("/readiness?child=nobody").text()).contains("Before the evaluation Wren Kestler");
    }

    @Test
    void eachStepLeadsToWhereItCanBeDone() throws Exception {
        String html = visit.get("/readiness?child=wren").body();

        String certificate = "us-pa/home-education-program/evaluation-certificate/wren/2025-26";
        assertThat(html).contains("href=\"/checklist?child=wren#" + certificate + '"', "href=\"/work?child=wren\"",
                "href=\"/tests/new?student=wren&amp;method=standardized-test");
        assertThat(visit.get("/checklist?child=wren").body()).contains("id=\"" + certificate + '"');
    }

    /** A picture that is not in the book would be a broken frame on every page of the print. */
    @Test
    void showsAPictureOnlyWhereThereIsOne() throws Exception {
        Sample sample = ready("ansel").subjects().stream().flatMap(row -> row.samples().stream().flatMap(List::stream))
                .filter(one -> !one.files().isEmpty()).findFirst().orElseThrow();
        String address = "/preview?path=" + Visit.encode(sample.files().get(0));
        String picture = "<img src=\"" + address + "\" alt=\"Picture of “" + sample.title() + "”\"";
        Path file = visit.book().resolve(sample.files().get(0));
        byte[] drawing = Files.readAllBytes(file);
        Files.delete(file);
        assertThat(visit.get("/readiness?child=ansel").body()).contains("<img").doesNotContain(picture);
        Files.write(file, drawing);

        assertThat(visit.get("/readiness?child=ansel").body()).contains(picture);
        assertThat(visit.get(address).header("Content-Type")).isEqualTo("image/jpeg");
    }

    /** Whoever evaluates asks to see the result; where it is named, it is one step away. */
    @Test
    void leadsToTheScanOfATestWhereItIsNamed(@TempDir Path own) throws Exception {
        try (Visit one = Visit.demo(own)) {
            String print = Visit.first("name=\"print\" value=\"([^\"]+)\"", one.get("/tests/2025-26/test-1").body());
            one.upload("/tests/2025-26/test-1", List.of(new Visit.FilePart("scan", "result.jpg", Photos.plain(1))), "print", print,
                    "student", "marit", "date", "2026-04-14", "method", "standardized-test", "name", "TerraNova", "givenBy", "pascoe",
                    "scores", "reading percentile 88\nmathematics percentile 69");
            String file = one.server().house().desk().book().years().get("2025-26").tests().get(0).file();
            String html = one.get("/readiness?child=marit").body();
            String link = "<a href=\"/attachment?path=" + file + "\">The scan of TerraNova, April 14, 2026</a>";

            assertThat(html.substring(html.indexOf("id=\"portfolio\""), html.indexOf("id=\"tests\""))).contains(link);
            assertThat(html.substring(html.indexOf("id=\"tests\""))).contains(link);
            Files.delete(one.book().resolve(file));
            assertThat(one.get("/readiness?child=marit").text()).contains(file).doesNotContain(link)
                    .contains("The scan of TerraNova, April 14, 2026 is not in the book's folder");
        }
    }

    @Test
    void leadsToTheWelcomeWithoutABook(@TempDir Path empty) throws Exception {
        try (Visit first = new Visit(null, empty, Visit.DAY)) {
            assertThat(first.get("/readiness").status()).isEqualTo(302);
            assertThat(first.get("/readiness").header("Location")).endsWith("/welcome");
        }
    }
}
