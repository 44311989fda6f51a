package org.hearthrule.page.family;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hearthrule.page.FilledForm;
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

    private static final Pattern HIDDEN = Pattern.compile("<input type=\"hidden\" name=\"([^\"]+)\" value=\"([^\"]*)\">");

    private Visit.Reply begin(String... more) {
        return visit.post("/begin", more);
    }

    /** Sends what a page carries in its fields, as a browser does, and more. */
    private Visit.Reply goOn(Visit.Reply page, String... more) {
        List<String> all = new ArrayList<>();
        Matcher hidden = HIDDEN.matcher(page.body().replace("&amp;", "&"));
        while (hidden.find()) {
            if (!hidden.group(1).equals("token") && !all.contains(hidden.group(1))) {
                all.addAll(List.of(hidden.group(1), hidden.group(2)));
            }
        }
        all.addAll(List.of(more));
        return visit.post("/begin", all.toArray(String[]::new));
    }

    @Test
    void fromNothingToTheFirstChecklist() throws IOException {
        visit = new Visit(null, folder, Visit.DAY);

        Visit.Reply over = begin("state", "us-vt", "family", "Harbour family", "name", "Ada Harbour", "born", "2015-04-03", "grade",
                "5", "pathway", "home-study", "starts", "2026-08-31");
        assertThat(over.text()).contains("Look it over", "Born on April 3, 2015", "From August 31, 2026", "Nothing is written yet");
        assertThat(Files.exists(visit.book().resolve("family.json"))).isFalse();
        assertThat(goOn(over, "family", "Harbour family", "do", "begin").header("Location")).endsWith("/checklist");

        String page = visit.get("/checklist").body();
        assertThat(page).contains("Harbour family").contains("Ada Harbour").contains("class=\"entry");
        assertThat(family()).contains("\"pathway\": \"home-study\"");
    }

    @Test
    void severalChildrenAreEnteredAndMendedBeforeTheBookIsBegun() throws IOException {
        visit = new Visit(null, folder, Visit.DAY);

        Visit.Reply first = begin("state", "us-vt", "family", "Harbour family", "name", "Ada", "born", "2015-04-03", "grade", "5",
                "pathway", "home-study", "starts", "2026-08-31");
        Visit.Reply second = goOn(first, "family", "Harbour family", "do", "another");
        assertThat(second.text()).contains("Another child, under the law of Vermont").doesNotContain("Ada");
        Visit.Reply both = goOn(second, "name", "Bo", "born", "2018-02-01", "grade", "2", "pathway", "home-study", "starts",
                "2026-08-31", "do", "child");
        Visit.Reply mended = goOn(both, "family", "Harbour family", "do", "change-1");
        assertThat(mended.body()).contains("value=\"Ada\"").contains("value=\"2015-04-03\"").contains("name=\"name-1\" value=\"Bo\"");
        Visit.Reply over = goOn(mended, "name", "Ada Maria", "born", "2015-04-03", "grade", "5", "pathway", "home-study", "starts",
                "2026-08-31", "do", "child");
        goOn(over, "family", "The Harbours", "do", "begin");

        assertThat(visit.get("/family").text()).contains("Ada Maria", "Bo", "The Harbours");
        assertThat(family()).contains("\"ada\"", "\"bo\"").containsOnlyOnce("\"born\": \"2015-04-03\"");
    }

    /** Stops a birth date from standing in the browser's list of visited addresses. */
    @Test
    void noBirthDateStandsInAnAddress() {
        visit = new Visit(null, folder, Visit.DAY);

        Visit.Reply over = begin("state", "us-vt", "family", "Harbour family", "name", "Ada", "born", "2015-04-03", "grade", "5",
                "pathway", "home-study", "starts", "2026-08-31");

        assertThat(over.status()).isEqualTo(200);
        assertThat(over.body()).doesNotContain("?born").doesNotContain("&amp;born").containsPattern("<form method=\"post\" action=\"/begin\">");
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

    private FilledForm move(String state, String day, String way, String... students) {
        return FilledForm.of(visit.get("/family/move?state=" + state), "/family/move").with("day", day)
                .with("pathway", way).with("students", students);
    }

    @Test
    void aMoveInMarchBringsBothLawsAndOneUndoTakesItBack() throws IOException {
        visit = Visit.demo(folder);
        assertThat(visit.get("/family/move?state=us-vt").body()).contains("Vermont").contains("/compare?here=us-pa&amp;there=us-vt");

        Visit.Reply sent = move("us-vt", "2026-03-02", "home-study", "wren", "ansel", "marit").send(visit);

        assertThat(sent.status()).isEqualTo(303);
        assertThat(visit.get("/checklist").body()).contains("The move to Vermont is noted").contains("V.S.A.")
                .contains("24 P.S.");
        assertThat(family()).contains("\"to\": \"2026-03-01\", \"ended\": \"moved\"").contains("us-vt");
        visit.post("/undo");
        assertThat(visit.get("/family").text()).doesNotContain("Vermont, home study");
        assertThat(family()).doesNotContain("us-vt");
    }

    /** Stops a family that only changes its way from losing its district, city and county, which rules look at. */
    @Test
    void anotherWayInTheSameStateKeepsWhereTheFamilyLives() throws IOException {
        visit = Visit.demo(folder);

        move("us-pa", "2026-03-02", "private-tutor", "wren").send(visit);

        assertThat(family()).contains("\"to\": \"2026-03-01\", \"ended\": \"changed-pathway\"").containsPattern("\"pathway\": "
                + "\"private-tutor\", \"from\": \"2026-03-02\",\\s+\"district\": \"Tennick Valley\", \"city\": \"Tennick\", \"county\": \"Corrow County\"");
        visit.post("/undo");
        assertThat(family()).doesNotContain("private-tutor").doesNotContain("ended");
    }

    /** Stops a state typed by name into the address from being kept under a code that is none. */
    @Test
    void aBookKeepsTheStateByItsCode() throws IOException {
        visit = new Visit(null, folder, Visit.DAY);

        goOn(begin("state", "Vermont", "family", "Harbour family", "name", "Ada Harbour", "born", "2015-04-03", "grade", "5",
                "pathway", "home-study", "starts", "2026-08-31"), "family", "Harbour family", "do", "begin");

        assertThat(family()).contains("\"jurisdiction\": \"us-vt\"");
    }

    @Test
    void whatAMoveBringsIsShownBeforeItIsNoted() throws IOException {
        visit = Visit.demo(folder);
        String before = family();

        Visit.Reply reply = move("us-vt", "2026-03-02", "home-study", "wren").press("do", "look").send(visit);

        assertThat(reply.status()).isEqualTo(200);
        assertThat(reply.text()).contains("What the move brings Wren Kestler", "Still owed in Pennsylvania", "What ends in Pennsylvania",
                "What Vermont asks", "Worth keeping").doesNotContain("What the move brings Ansel");
        assertThat(reply.body()).contains("value=\"2026-03-02\"").contains("id=\"wren-owed\"");
        assertThat(family()).isEqualTo(before);
    }

    @Test
    void aMoveBeforeTheBeginningIsAskedForAgain() throws IOException {
        visit = Visit.demo(folder);
        String before = family();

        Visit.Reply reply = move("us-vt", "2020-03-02", "home-study", "wren").send(visit);

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

        FilledForm.of(visit.get("/family"), "/answers/fact", "fact", "household-conviction").press("is", "yes")
                .send(visit);

        assertThat(family()).contains("\"fact\": \"household-conviction\", \"is\": true");
    }

    private Visit.Reply childAgain(Visit.Reply page, String name) {
        return FilledForm.of(page, "/family/child").with("name", name).send(visit);
    }

    @Test
    void aChildIsMended() throws IOException {
        visit = Visit.demo(folder);

        assertThat(childAgain(visit.get("/family/child?id=wren"), "Wren Alma Kestler").status()).isEqualTo(303);

        assertThat(family()).contains("Wren Alma Kestler").contains("\"from\": \"2022-08-29\", \"to\": \"2024-06-07\"");
    }

    /** Stops one window from silently taking back what was mended in another. */
    @Test
    void aChildThatWasChangedMeanwhileIsShownInBothVersions() throws IOException {
        visit = Visit.demo(folder);
        Visit.Reply opened = visit.get("/family/child?id=wren");
        childAgain(opened, "Wren of the other window");

        Visit.Reply late = childAgain(opened, "Wren of this window");

        assertThat(late.status()).isEqualTo(422);
        assertThat(late.text()).contains("This was changed elsewhere", "Wren of the other window");
        assertThat(late.body()).contains("value=\"Wren of this window\"");
        assertThat(family()).contains("Wren of the other window").doesNotContain("Wren of this window");
        assertThat(childAgain(late, "Wren of this window").status()).isEqualTo(303);
        assertThat(family()).contains("Wren of this window");
    }

    private String opened(String address, String field) {
        Matcher value = Pattern.compile("name=\"" + field + "\" value=\"([^\"]*)\"").matcher(visit.get(address).body());
        assertThat(value.find()).isTrue();
        return value.group(1);
    }

    @Test
    void aPersonIsMendedAndTakenOut() throws IOException {
        visit = Visit.demo(folder);

        visit.post("/family/person", "id", "pascoe", "print", opened("/family/person?id=pascoe", "print"), "name", "Orrin Pascoe",
                "roles", "certified-teacher", "roles", "evaluator", "credential-0", "teaching certificate", "given-0", "2009-07-15",
                "credential-1", "Master's degree", "given-1", "");
        assertThat(family()).contains("\"roles\": [\"certified-teacher\", \"evaluator\"]")
                .contains("{\"kind\": \"teaching-certificate\", \"state\": \"us-pa\", \"date\": \"2009-07-15\"}").contains("\"masters-degree\""); // as the laws' files spell it

        visit.post("/family/person", "name", "Selma Orrick", "roles", "evaluator");
        assertThat(visit.get("/family").text()).contains("Selma Orrick: looks over the work");
        visit.post("/family/person/delete", "id", "selma");
        assertThat(family()).doesNotContain("Selma");
    }

    @Test
    void anEventIsMendedAndTakenOut() throws IOException {
        visit = Visit.demo(folder);
        visit.post("/family/event", "kind", "teacher-changed", "date", "2026-04-01", "note", "Corwin teaches now");
        Matcher address = Pattern.compile("/family/event\\?event=([0-9a-f]+)").matcher(visit.get("/family").body());
        assertThat(address.find()).isTrue();
        String event = address.group(1);
        assertThat(visit.get("/family/event?event=" + event).body()).contains("Corwin teaches now").contains("2026-04-01");

        visit.post("/family/event", "event", event, "kind", "teacher-changed", "date", "2026-04-02", "note", "Corwin teaches now");
        assertThat(family()).contains("2026-04-02").doesNotContain("2026-04-01");
        Visit.Reply late = visit.post("/family/event", "event", event, "kind", "teacher-changed", "date", "2026-04-09");
        assertThat(late.status()).isEqualTo(422);
        assertThat(late.text()).contains("This was changed elsewhere", "April 2, 2026");
        assertThat(family()).doesNotContain("2026-04-09");

        address = Pattern.compile("/family/event\\?event=([0-9a-f]+)").matcher(visit.get("/family").body());
        assertThat(address.find()).isTrue();
        visit.post("/family/event/delete", "event", address.group(1));
        assertThat(family()).doesNotContain("teacher-changed");
    }

    @Test
    void whereAChildLivesIsMended() throws IOException {
        visit = Visit.demo(folder);
        FilledForm form = FilledForm.of(visit.get("/family/place?child=wren"), "/family/place");

        Visit.Reply wrong = form.with("from", "2010-08-19").send(visit);
        assertThat(wrong.status()).isEqualTo(422);
        assertThat(wrong.text()).contains("before the birth date");
        FilledForm.of(wrong, "/family/place").with("from", "2024-08-20").with("district", "Upper Tennick").send(visit);

        assertThat(family()).containsOnlyOnce("Upper Tennick").containsOnlyOnce("\"from\": \"2024-08-20\"");
    }

    @Test
    void gradesOfEachYearAreMendedAtOnce() throws IOException {
        visit = Visit.demo(folder);
        Path year = visit.book().resolve("2025-26.json");
        assertThat(Files.exists(year)).as("%s among %s", year, visit.book().toFile().list()).isTrue();

        visit.post("/family/grades", "print", opened("/family/grades", "print"), "grade:2025-26:wren", "4", "grade:2025-26:ansel", "6",
                "grade:2025-26:marit", "8");

        assertThat(visit.get("/family").text()).contains("grade 4");
        visit.post("/undo");
        assertThat(visit.get("/family").text()).doesNotContain("grade 4");
    }

    @Test
    void anAnswerBecomesAQuestionAgain() throws IOException {
        visit = Visit.demo(folder);
        assertThat(family()).contains("household-conviction");

        FilledForm.of(visit.get("/family"), "/family/unsaid", "fact", "household-conviction").send(visit);

        assertThat(family()).doesNotContain("household-conviction").contains("special-education");
    }

    private FilledForm end(String why, String day) {
        return FilledForm.of(visit.get("/family/stop"), "/family/stop").with("ended", why).with("day", day)
                .with("students", "wren");
    }

    @Test
    void anEndIsNotNotedForAChildForWhomNothingGoesOn() throws IOException {
        visit = Visit.demo(folder);
        end("entered-school", "2026-05-01").send(visit);
        assertThat(family()).contains("\"ended\": \"entered-school\"").contains("\"kind\": \"entered-school\"");

        Visit.Reply again = end("stopped", "2026-05-08").send(visit);

        assertThat(again.status()).isEqualTo(422);
        assertThat(again.text()).contains("Nothing goes on for Wren Kestler");
        assertThat(family()).doesNotContain("2026-05-08");
    }

    @Test
    void theDemoIsStartedAfresh() throws IOException {
        visit = new Visit(null, folder, Visit.DAY);
        visit.postAndFollow("/demo");
        visit.post("/family/event", "kind", "teacher-changed", "date", "2026-04-01", "note", "Tried out here");
        assertThat(visit.get("/family").text()).contains("Tried out here");

        visit.postAndFollow("/demo", "afresh", "yes");

        assertThat(visit.get("/family").text()).doesNotContain("Tried out here").contains("Kestler");
        assertThat(Files.exists(visit.book())).isFalse();
    }

    /** Stops the demo from writing into the book of a family that has one. */
    @Test
    void theDemoLeavesTheFamilysOwnBookByteForByte() throws IOException {
        visit = Visit.demo(folder);
        String before = family();

        visit.postAndFollow("/demo");
        assertThat(visit.get("/family").body()).contains("This is an invented family");
        visit.post("/family/event", "kind", "teacher-changed", "date", "2026-04-01", "note", "Tried out here");
        visit.postAndFollow("/demo/leave");

        assertThat(visit.get("/family").text()).doesNotContain("Tried out here");
        assertThat(family()).isEqualTo(before);
    }
}
