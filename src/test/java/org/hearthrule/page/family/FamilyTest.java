package org.hearthrule.page.family;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.hearthrule.page.Visit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FamilyTest {

    @TempDir
    private Path folder;
    private Visit visit;

    @AfterEach
    void close() {
        visit.close();
    }

    private String family() throws IOException {
        return Files.readString(visit.book().resolve("family.json"));
    }

    @Test
    void whatIsDueIsShownBeforeAnythingIsEntered() {
        visit = new Visit(null, folder, Visit.DAY);

        assertThat(visit.follow("/").body()).contains("What does your state ask, and by when?");
        // the yearly affidavit and the certificate: 24 P.S. 13-1327.1 (b)(1) and (h.1)
        String page = visit.get("/welcome?state=us-pa").body();

        assertThat(page).contains("The coming year").contains("August 1, 2026").contains("June 30, 2026").contains("Confirm with").contains("Begin a book");
        assertThat(Files.exists(visit.book().resolve("family.json"))).isFalse();
    }

    private Visit.Reply begin(String... more) {
        return visit.post("/begin", more);
    }

    @Test
    void fromNothingToTheFirstChecklist() throws IOException {
        visit = new Visit(null, folder, Visit.DAY);

        assertThat(begin("state", "us-vt", "family", "Harbour family", "name", "Ada Harbour", "born", "2015-04-03", "grade", "5",
                "pathway", "home-study", "starts", "2026-08-31").header("Location")).endsWith("/checklist");

        String page = visit.get("/checklist").body();
        assertThat(page).contains("Harbour family").contains("Ada Harbour").contains("class=\"entry");
        assertThat(family()).contains("\"pathway\": \"home-study\"");
    }

    @Test
    void whatIsMissingIsToldAtOnceAndNoBookIsMade() {
        visit = new Visit(null, folder, Visit.DAY);

        Visit.Reply reply = begin("state", "us-vt", "name", "Ada", "born", "2035-04-03");

        assertThat(reply.status()).isEqualTo(422);
        assertThat(reply.body()).contains("Type what your family is called").contains("no birth date").contains("Choose the grade")
                .contains("Choose the way").contains("value=\"Ada\"");
        assertThat(Files.exists(visit.book().resolve("family.json"))).isFalse();
    }

    @Test
    void theDemoIsKeptApart() throws IOException {
        visit = new Visit(null, folder, Visit.DAY);

        assertThat(visit.postAndFollow("/demo").body()).contains("This is an invented family").contains("Kestler");
        visit.post("/log", "did", "Tried the demo", "date", "2026-05-20", "students", "wren");
        assertThat(visit.postAndFollow("/demo/leave").body()).contains("What does your state ask");

        assertThat(Files.exists(visit.book())).isFalse();
    }

    @Test
    void aMoveInMarchBringsBothLawsAndOneUndoTakesItBack() throws IOException {
        visit = Visit.demo(folder);
        assertThat(visit.get("/family/move?state=us-vt").body()).contains("Vermont").contains("/compare?here=us-pa&amp;there=us-vt");

        Visit.Reply reply = visit.postAndFollow("/family/move", "state", "us-vt", "day", "2026-03-02", "pathway", "home-study",
                "students", "wren", "students", "ansel", "students", "marit");

        assertThat(reply.body()).contains("The move to Vermont is noted").contains("V.S.A.").contains("24 P.S.");
        assertThat(family()).contains("\"to\": \"2026-03-01\", \"ended\": \"moved\"").contains("us-vt");
        visit.post("/undo");
        assertThat(visit.get("/family").body()).doesNotContain("Vermont, home study");
        assertThat(family()).doesNotContain("us-vt");
    }

    /** Stops a family that only changes its way from losing its district, city and county, which rules look at. */
    @Test
    void anotherWayInTheSameStateKeepsWhereTheFamilyLives() throws IOException {
        visit = Visit.demo(folder);

        visit.post("/family/move", "state", "us-pa", "day", "2026-03-02", "pathway", "private-tutor", "students", "wren");

        assertThat(family()).contains("\"to\": \"2026-03-01\", \"ended\": \"changed-pathway\"").containsPattern("\"pathway\": "
                + "\"private-tutor\", \"from\": \"2026-03-02\",\\s+\"district\": \"Tennick Valley\", \"city\": \"Tennick\", \"county\": \"Corrow County\"");
        visit.post("/undo");
        assertThat(family()).doesNotContain("private-tutor").doesNotContain("ended");
    }

    /** Stops a state typed by name into the address from being kept under a code that is none. */
    @Test
    void aBookKeepsTheStateByItsCode() throws IOException {
        visit = new Visit(null, folder, Visit.DAY);

        begin("state", "Vermont", "family", "Harbour family", "name", "Ada Harbour", "born", "2015-04-03", "grade", "5",
                "pathway", "home-study", "starts", "2026-08-31");

        assertThat(family()).contains("\"jurisdiction\": \"us-vt\"");
    }

    @Test
    void aMoveBeforeTheBeginningIsAskedForAgain() throws IOException {
        visit = Visit.demo(folder);
        String before = family();

        Visit.Reply reply = visit.post("/family/move", "state", "us-vt", "day", "2020-03-02", "pathway", "home-study", "students", "wren");

        assertThat(reply.status()).isEqualTo(422);
        assertThat(reply.body()).contains("Enter a later day");
        assertThat(family()).isEqualTo(before);
    }

    @Test
    void anotherChildComesIntoTheBook() {
        visit = Visit.demo(folder);

        visit.post("/family/child", "name", "Tove Kestler", "born", "2019-06-01", "grade", "1", "pathway", "home-education-program",
                "starts", "2025-08-25");

        assertThat(visit.get("/family").body()).contains("Tove Kestler").contains("grade 1");
        assertThat(visit.get("/checklist?child=tove").status()).isEqualTo(200);
    }

    @Test
    void anAnswerToAFactIsKept() throws IOException {
        visit = Visit.demo(folder);

        visit.post("/answers/fact", "fact", "household-conviction", "is", "yes", "question", "x");

        assertThat(family()).contains("\"fact\": \"household-conviction\", \"is\": true");
    }
}
