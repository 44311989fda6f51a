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

/** A child's story: the times it was taught under a law, and the schools before, however many. */
class StoryTest extends DemoVisit {

    private static final Pattern STRETCH = Pattern
            .compile("<li>([^<]*) <a href=\"(/family/place\\?child=wren[^\"]*)\">");

    /** The form of that stretch of Wren's story which says the words. */
    private FilledForm stretch(String words) {
        return FilledForm.of(page(words), "/family/place");
    }

    private Visit.Reply page(String words) {
        Matcher found = STRETCH.matcher(visit.get("/family").body());
        while (found.find()) {
            if (found.group(1).contains(words)) {
                return visit.get(found.group(2).replace("&amp;", "&"));
            }
        }
        throw new AssertionError("no stretch of Wren's story says: " + words);
    }

    private FilledForm earlier(String state) {
        return FilledForm.of(visit.get("/family/place?place=new&child=wren&state=" + state), "/family/place");
    }

    private void move() {
        Visit.Reply sent = FilledForm.of(visit.get("/family/move?state=us-vt"), "/family/move").with("day",
                "2026-03-02")
                .with("pathway", "home-study").with("students", "wren").send(visit);
        assertThat(sent.status()).isEqualTo(303);
    }

    @Test
    void aTimeThatHasEndedIsMended() throws IOException {
        move();

        Visit.Reply sent = stretch("until March 1, 2026").with("from", "2024-08-21").with("to", "2026-02-20")
                .with("ended", "stopped")
                .with("pathway", "private-tutor").with("started", "2023-09-04").with("district", "Upper Tennick")
                .with("city", "Uptown")
                .with("county", "Mill County").send(visit);

        assertThat(sent.status()).isEqualTo(303);
        assertThat(family()).containsPattern("\"wren\", \"jurisdiction\": \"us-pa\", \"pathway\": \"private-tutor\", "
                + "\"from\": \"2024-08-21\",\\s+\"to\": \"2026-02-20\",\\s+\"ended\": \"stopped\",\\s+"
                + "\"started\": \"2023-09-04\",\\s+"
                + "\"district\": \"Upper Tennick\",\\s+\"city\": \"Uptown\",\\s+\"county\": \"Mill County\"");
        assertThat(visit.get("/family").text()).contains("until February 20, 2026, when home instruction stopped");
        assertThat(visit.get("/checklist").status()).isEqualTo(200);
    }

    @Test
    void aTimeThatEndedByMistakeGoesOnAgain() throws IOException {
        FilledForm.of(visit.get("/family/stop"), "/family/stop").with("ended", "entered-school").with("day",
                "2026-05-01")
                .with("students", "wren").send(visit);

        stretch("until May 1, 2026").with("to", "").with("ended", "").send(visit);

        assertThat(family()).doesNotContain("\"ended\"");
        // the day itself is a record of its own, which the parent is told of
        assertThat(visit.get("/family").text()).contains("May 1, 2026 is still noted below")
                .contains("the day the child entered a school");
    }

    @Test
    void twoTimesOfAChildNeverShareADay() throws IOException {
        move();
        String before = family();

        Visit.Reply late = stretch("until March 1, 2026").with("to", "2026-03-02").send(visit);
        assertThat(late.status()).isEqualTo(422);
        assertThat(late.body())
                .containsPattern("id=\"to-error\">From March 2, 2026 on something else is noted for Wren Kestler. "
                + "Enter a last day before that.");
        Visit.Reply early = stretch("Vermont").with("from", "2026-03-01").send(visit);
        assertThat(early.status()).isEqualTo(422);
        assertThat(early.body()).containsPattern("id=\"from-error\">Until March 1, 2026 something else is noted");
        Visit.Reply open = stretch("until March 1, 2026").with("to", "").with("ended", "").send(visit);
        assertThat(open.status()).isEqualTo(422);

        assertThat(family()).isEqualTo(before);
    }

    @Test
    void daysThatCannotBeAreToldBesideTheirFields() throws IOException {
        String before = family();

        Visit.Reply reply = stretch("from August 19, 2024").with("to", "2024-08-18").with("started", "2024-08-20")
                .send(visit);
        assertThat(reply.status()).isEqualTo(422);
        assertThat(reply.body()).contains("id=\"to-error\">This lies before the first day")
                .contains("id=\"started-error\">This lies after");
        Visit.Reply reason = stretch("from August 19, 2024").with("ended", "moved").send(visit);
        assertThat(reason.body()).contains("id=\"to-error\">Enter the last day too");

        assertThat(family()).isEqualTo(before);
    }

    @Test
    void aTimeEnteredByMistakeIsTakenOut() throws IOException {
        move();

        Visit.Reply sent = FilledForm.of(page("Vermont"), "/family/place/delete").send(visit);

        assertThat(sent.status()).isEqualTo(303);
        assertThat(visit.get("/family").text()).contains("What went before still ends on March 1, 2026");
        assertThat(family()).doesNotContain("us-vt").contains("\"to\": \"2026-03-01\"");
        visit.post("/undo");
        assertThat(family()).contains("us-vt");
    }

    @Test
    void theLastTimeOfAChildCanBeTakenOutToo() {
        FilledForm.of(page("from August 19, 2024"), "/family/place/delete").send(visit);

        assertThat(visit.get("/family").text()).contains("Nothing is noted of where and how Wren Kestler is taught");
        assertThat(visit.get("/checklist").status()).isEqualTo(200);
    }

    @Test
    void aTimeNotedInTheWrongStateIsMended() throws IOException {
        Visit.Reply page = page("from August 19, 2024");
        String place = FilledForm.of(page, "/family/place").of("print").get(0);

        FilledForm other = FilledForm.of(visit.get("/family/place?child=wren&place=" + place + "&state=us-vt"),
                "/family/place");
        other.with("pathway", "home-study").send(visit);

        assertThat(family()).contains("\"wren\", \"jurisdiction\": \"us-vt\", \"pathway\": \"home-study\"");
    }

    /** 24 P.S. 13-1327.1(d): courses of grades 9 to 12 for a diploma, which a family may go for and need not. */
    @Test
    void aProgramThatIsJoinedBringsItsDuties() throws IOException {
        FilledForm.of(visit.get("/family/grades"), "/family/grades").with("grade:2025-26:marit", "9").send(visit);
        FilledForm form = FilledForm.of(visit.get("/family/place?child=marit"), "/family/place");
        assertThat(form.of("programs")).isEmpty();
        assertThat(visit.get("/checklist?child=marit").text())
                .doesNotContain("You take part in: home education diploma");

        form.with("programs", "home-education-diploma", "extracurricular").send(visit);

        assertThat(family()).contains("\"optIns\": [\"home-education-diploma\", \"extracurricular\"]");
        assertThat(visit.get("/checklist?child=marit").text()).contains("Courses for a home education diploma");
        FilledForm again = FilledForm.of(visit.get("/family/place?child=marit"), "/family/place");
        assertThat(again.of("programs")).containsExactly("extracurricular", "home-education-diploma");
        again.with("programs").send(visit);
        assertThat(family()).doesNotContain("home-education-diploma");
    }

    /** What a later version of a law's file does not name any more must not fall out of the book by a mended city. */
    @Test
    void whatTheLawDoesNotOfferStaysWhenSomethingElseIsMended() throws IOException {
        Files.writeString(visit.book().resolve("family.json"), family().replaceFirst("\"optIns\": \\[\\]",
                "\"ended\": \"our-own-reason\", \"to\": \"2026-05-04\", \"optIns\": [\"chess-league\"]"));

        stretch("until May 4, 2026").with("city", "Uptown").send(visit);

        assertThat(family()).contains("Uptown").contains("our-own-reason").contains("chess-league");
    }

    @Test
    void timesOfHomeEducationBeforeASchoolAreEnteredAndMended() throws IOException {
        assertThat(earlier("us-vt").with("pathway", "home-study").with("from", "2021-09-01").with("to", "2022-06-10")
                .with("ended", "moved").send(visit).status()).isEqualTo(303);
        assertThat(earlier("us-pa").with("pathway", "home-education-program").with("from", "2022-07-01").with("to",
                "2022-08-26")
                .with("ended", "entered-school").send(visit).status()).isEqualTo(303);

        assertThat(visit.get("/family").text()).containsSubsequence("Wren Kestler", "Vermont", "from September 1, 2021",
                "from July 1, 2022",
                "from August 19, 2024");
        // the last of the file is the one that goes on: the form of a move asks where the family lives now
        assertThat(visit.get("/family/move?state=us-vt").body()).contains("/compare?here=us-pa&amp;there=us-vt");
        stretch("from September 1, 2021").with("to", "2022-06-17").send(visit);
        stretch("from July 1, 2022").with("from", "2022-07-05").send(visit);
        assertThat(family()).contains("\"to\": \"2022-06-17\"").contains("\"from\": \"2022-07-05\"")
                .doesNotContain("2022-06-10");
        assertThat(visit.get("/checklist?child=wren").status()).isEqualTo(200);
    }

    @Test
    void anEarlierTimeThatRunsIntoWhatGoesOnIsAskedForAgain() throws IOException {
        String before = family();

        Visit.Reply reply = earlier("us-vt").with("pathway", "home-study").with("from", "2025-01-01").send(visit);

        assertThat(reply.status()).isEqualTo(422);
        assertThat(reply.body())
                .contains("id=\"from-error\">What goes on now for Wren Kestler began on August 19, 2024");
        assertThat(family()).isEqualTo(before);
    }

    private FilledForm child() {
        return FilledForm.of(visit.get("/family/child?id=wren"), "/family/child");
    }

    @Test
    void severalFormerSchoolsAreEnteredMendedAndTakenOut() throws IOException {
        child().with("school-1", "private-school").with("school-state-1", "us-vt").with("entered-1", "2024-06-10")
                .with("left-1", "2024-07-05").send(visit);
        child().with("school-2", "home-program").with("left-2", "2022-06-03").send(visit);
        assertThat(family()).containsPattern("(?s)\"public-school\", \"state\": \"us-pa\", \"from\": \"2022-08-29\", "
                + "\"to\": \"2024-06-07\"}.{1,30}\"kind\": \"private-school\", \"state\": \"us-vt\", "
                + "\"from\": \"2024-06-10\", \"to\": \"2024-07-05\"}"
                + ".{1,30}\"kind\": \"home-program\", \"to\": \"2022-06-03\"}");

        child().with("left-0", "2024-06-05").with("left-1", "2024-07-09").send(visit);
        assertThat(family()).contains("\"to\": \"2024-06-05\"").contains("\"to\": \"2024-07-09\"")
                .doesNotContain("2024-07-05");

        child().with("school-1", "").with("school-state-1", "").with("entered-1", "").with("left-1", "").send(visit);
        assertThat(family()).doesNotContain("private-school").contains("\"to\": \"2024-06-05\"")
                .contains("home-program");
    }

    @Test
    void daysOfSchoolsThatCannotBeAreToldBesideTheirFields() throws IOException {
        String before = family();

        Visit.Reply reply = child().with("left-0", "2022-08-01").with("left-1", "2023-01-09").send(visit);

        assertThat(reply.status()).isEqualTo(422);
        assertThat(reply.body()).contains("id=\"left-0-error\">That school began on August 29, 2022")
                .contains("id=\"school-1-error\">Choose what it was");
        Visit.Reply both = child().with("school-0", "never").send(visit);
        assertThat(both.body()).contains("id=\"school-0-error\">Choose what the child was in first");
        assertThat(family()).isEqualTo(before);
    }

    /** That nothing was said, and that there was no school, are two answers: laws ask it. */
    @Test
    void noSchoolAndNothingSaidAreKeptApart() throws IOException {
        child().with("school-0", "never").with("school-state-0", "").with("entered-0", "").with("left-0", "")
                .send(visit);
        assertThat(family()).containsPattern("\"id\": \"wren\"[^}]*\"schools\": \\[\\]");

        child().with("school-0", "").send(visit);
        assertThat(family()).doesNotContainPattern("\"id\": \"wren\"[^}]*\"schools\"");
    }

    @Test
    void severalDaysOfLeavingASchoolAreNotedAndMended() throws IOException {
        visit.post("/family/event", "kind", "left-school", "date", "2022-06-03", "students", "wren", "note",
                "the first school");
        visit.post("/family/event", "kind", "left-school", "date", "2023-06-03", "students", "wren", "note",
                "the second school");
        Matcher address = Pattern.compile("the first school <a href=\"(/family/event\\?event=[0-9a-f]+)\"")
                .matcher(visit.get("/family").body());
        assertThat(address.find()).isTrue();

        FilledForm.of(visit.get(address.group(1)), "/family/event").with("date", "2022-06-10").send(visit);

        assertThat(visit.get("/family").text()).contains("June 10, 2022: the day the child left school",
                "June 3, 2023: the day the child left school",
                "June 7, 2024: the day the child left school");
    }
}
