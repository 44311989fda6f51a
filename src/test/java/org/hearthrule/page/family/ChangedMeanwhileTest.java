package org.hearthrule.page.family;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hearthrule.page.DemoVisit;
import org.hearthrule.page.FilledForm;
import org.hearthrule.page.Visit;
import org.junit.jupiter.api.Test;

/** The book's file changes on the disk between a form shown and the same form sent: neither version is lost unseen. */
class ChangedMeanwhileTest extends DemoVisit {

    private static final String CHANGED = "This was changed elsewhere since you opened it";

    /** Another program writes into the book. */
    private void outside(String before, String after) throws IOException {
        String family = family();
        assertThat(family).contains(before);
        int at = family.indexOf(before);
        Files.writeString(visit.book().resolve("family.json"),
                family.substring(0, at) + after + family.substring(at + before.length()));
    }

    private void wrenLivesElsewhere() throws IOException {
        outside("\"from\": \"2024-08-19\",\n     \"district\": \"Tennick Valley\"",
                "\"from\": \"2024-08-26\",\n     \"district\": \"Lower Tennick\"");
    }

    private FilledForm move(String... students) {
        return FilledForm.of(visit.get("/family/move?state=us-vt"), "/family/move").with("day", "2026-03-02")
                .with("pathway", "home-study").with("students", students);
    }

    @Test
    void aMoveShowsBothVersions() throws IOException {
        FilledForm opened = move("wren", "ansel");
        wrenLivesElsewhere();

        Visit.Reply late = opened.send(visit);

        assertThat(late.status()).isEqualTo(422);
        assertThat(late.text()).contains(CHANGED, "Wren Kestler: Pennsylvania",
                "from August 26, 2024, Lower Tennick school district")
                .doesNotContain("Ansel Kestler: ");
        assertThat(FilledForm.of(late, "/family/move").of("day")).containsExactly("2026-03-02");
        assertThat(family()).doesNotContain("us-vt");
        assertThat(FilledForm.of(late, "/family/move").send(visit).status()).isEqualTo(303);
        assertThat(family()).contains("us-vt").contains("Lower Tennick");
    }

    @Test
    void aLookAtAMoveShowsBothVersionsToo() throws IOException {
        FilledForm opened = move("wren").press("do", "look");
        wrenLivesElsewhere();

        Visit.Reply late = opened.send(visit);

        assertThat(late.status()).isEqualTo(422);
        assertThat(late.text()).contains(CHANGED).doesNotContain("What the move brings Wren");
    }

    /** A form that looked at what a move brings is made from the book as it was then. */
    @Test
    void aMoveThatWasLookedAtFirstShowsBothVersions() throws IOException {
        Visit.Reply looked = move("wren").press("do", "look").send(visit);
        assertThat(looked.status()).isEqualTo(200);
        wrenLivesElsewhere();

        Visit.Reply late = FilledForm.of(looked, "/family/move").press("do", "note").send(visit);

        assertThat(late.status()).isEqualTo(422);
        assertThat(late.text()).contains(CHANGED, "Lower Tennick");
    }

    /** A change of a child that a move is not about is none of its business. */
    @Test
    void aMoveOfOthersGoesOn() throws IOException {
        FilledForm opened = move("ansel");
        wrenLivesElsewhere();

        assertThat(opened.send(visit).status()).isEqualTo(303);

        assertThat(family()).contains("us-vt").contains("Lower Tennick");
    }

    @Test
    void anEndShowsBothVersions() throws IOException {
        FilledForm opened = FilledForm.of(visit.get("/family/stop"), "/family/stop").with("ended", "stopped")
                .with("day", "2026-05-08")
                .with("students", "wren");
        wrenLivesElsewhere();

        Visit.Reply late = opened.send(visit);

        assertThat(late.status()).isEqualTo(422);
        assertThat(late.text()).contains(CHANGED, "Lower Tennick school district");
        assertThat(FilledForm.of(late, "/family/stop").of("ended")).containsExactly("stopped");
        assertThat(family()).doesNotContain("2026-05-08");
        assertThat(FilledForm.of(late, "/family/stop").send(visit).status()).isEqualTo(303);
        assertThat(family()).contains("\"to\": \"2026-05-08\"");
    }

    @Test
    void aTimeOfAChildShowsBothVersions() throws IOException {
        FilledForm opened = FilledForm.of(visit.get("/family/place?child=wren"), "/family/place").with("city",
                "Uptown");
        outside("\"city\": \"Tennick\"", "\"city\": \"Downtown\"");

        Visit.Reply late = opened.send(visit);

        assertThat(late.status()).isEqualTo(422);
        assertThat(late.text()).contains(CHANGED, "City or town: Downtown");
        assertThat(FilledForm.of(late, "/family/place").of("city")).containsExactly("Uptown");
        assertThat(family()).doesNotContain("Uptown");
        assertThat(FilledForm.of(late, "/family/place").send(visit).status()).isEqualTo(303);
        assertThat(family()).contains("Uptown").doesNotContain("Downtown");
    }

    @Test
    void aTimeTakenOutElsewhereIsNotedAnewWhenItIsSavedOnceMore() throws IOException {
        FilledForm opened = FilledForm.of(visit.get("/family/place?child=wren"), "/family/place").with("city",
                "Uptown");
        Matcher wren = Pattern.compile("(?s)\\{\"student\": \"wren\".*?\\},\\s*").matcher(family());
        assertThat(wren.find()).isTrue();
        outside(wren.group(), "");

        Visit.Reply late = opened.send(visit);

        assertThat(late.status()).isEqualTo(422);
        assertThat(late.text()).contains(CHANGED, "Nothing is noted of where and how Wren Kestler is taught");
        assertThat(family()).doesNotContain("\"student\": \"wren\"");
        assertThat(FilledForm.of(late, "/family/place").send(visit).status()).isEqualTo(303);
        assertThat(family()).contains("\"student\": \"wren\"").contains("Uptown");
    }

    @Test
    void aTimeIsNotTakenOutInAVersionThatNobodySaw() throws IOException {
        FilledForm opened = FilledForm.of(visit.get("/family/place?child=wren"), "/family/place/delete");
        outside("\"city\": \"Tennick\"", "\"city\": \"Downtown\"");

        Visit.Reply late = opened.send(visit);

        assertThat(late.status()).isEqualTo(422);
        assertThat(late.text()).contains(CHANGED, "City or town: Downtown");
        assertThat(family()).contains("\"student\": \"wren\"");
        assertThat(FilledForm.of(late, "/family/place/delete").send(visit).status()).isEqualTo(303);
        assertThat(family()).doesNotContain("\"student\": \"wren\"");
    }

    @Test
    void anAnswerToAFactShowsBothVersions() throws IOException {
        FilledForm opened = FilledForm.of(visit.get("/family"), "/answers/fact", "fact", "household-conviction")
                .press("is", "no");
        outside("\"is\": false, \"date\": \"2025-07-24\"", "\"is\": true, \"date\": \"2026-05-02\"");

        Visit.Reply late = opened.send(visit);

        assertThat(late.status()).isEqualTo(422);
        assertThat(late.text()).contains(CHANGED, "Yes, noted on May 2, 2026");
        assertThat(FilledForm.of(late, "/answers/fact").of("is")).containsExactly("no");
        assertThat(family()).contains("\"is\": true");
        assertThat(FilledForm.of(late, "/answers/fact").send(visit).status()).isEqualTo(303);
        assertThat(family()).doesNotContain("\"is\": true");
    }

    @Test
    void aFirstAnswerThatCameMeanwhileIsShown() throws IOException {
        outside("{\"fact\": \"household-conviction\", \"is\": false, \"date\": \"2025-07-24\"},", "");
        FilledForm opened = FilledForm.of(visit.get("/family"), "/answers/fact", "fact", "household-conviction")
                .press("is", "no");
        outside("\"facts\": [",
                "\"facts\": [{\"fact\": \"household-conviction\", \"is\": true, \"date\": \"2026-05-02\"},");

        Visit.Reply late = opened.send(visit);

        assertThat(late.status()).isEqualTo(422);
        assertThat(late.text()).contains(CHANGED, "Yes, noted on May 2, 2026");
    }

    @Test
    void anAnswerIsNotTakenBackInAVersionThatNobodySaw() throws IOException {
        FilledForm opened = FilledForm.of(visit.get("/family"), "/family/unsaid", "fact", "household-conviction");
        outside("\"is\": false, \"date\": \"2025-07-24\"", "\"is\": true, \"date\": \"2026-05-02\"");

        opened.send(visit);

        assertThat(visit.get("/family").text()).contains("Not taken back: the answer was changed elsewhere");
        assertThat(family()).contains("household-conviction");
    }

    @Test
    void whatWasToldAboutADoubtShowsBothVersions() throws IOException {
        Matcher doubt = Pattern.compile("name=\"doubt\" value=\"([^\"]+)\"").matcher(visit.get("/checklist").body());
        assertThat(doubt.find()).isTrue();
        FilledForm opened = FilledForm.of(visit.get("/checklist"), "/answers/doubt", "doubt", doubt.group(1))
                .with("answer", "No, said the mill office.");
        outside("\"answers\": []", "\"answers\": [{\"doubt\": \"" + doubt.group(1)
                + "\", \"answer\": \"Yes, in spring too.\", "
                + "\"from\": \"the district\", \"date\": \"2026-05-02\"}]");

        Visit.Reply late = opened.send(visit);

        assertThat(late.status()).isEqualTo(422);
        assertThat(late.text()).contains(CHANGED, "Yes, in spring too. (the district), noted on May 2, 2026");
        assertThat(FilledForm.of(late, "/answers/doubt").of("answer")).containsExactly("No, said the mill office.");
        assertThat(family()).doesNotContain("mill office");
        assertThat(FilledForm.of(late, "/answers/doubt").send(visit).status()).isEqualTo(303);
        assertThat(family()).contains("mill office").doesNotContain("in spring too");
    }
}
