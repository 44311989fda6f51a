package org.hearthrule.page.family;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import org.hearthrule.page.DemoVisit;
import org.hearthrule.page.FilledForm;
import org.hearthrule.page.Visit;
import org.junit.jupiter.api.Test;

class ChoicePagesTest extends DemoVisit {

    private static final String ADDRESS = "/family/choice";

    @Test
    void whatTheLawLeavesToTheParentIsChosenAndTakenBack() throws IOException {
        assertThat(visit.get("/family").text()).contains("Will you count days or hours?", "2025-26: Will you count days or hours? count days");

        // 24 P.S. § 13-1327.1(c): 180 days, or 900 hours at the elementary level
        assertThat(visit.get("/checklist?child=wren").text()).contains("of 180 days");
        Visit.Reply page = visit.get(ADDRESS + "?choice=time-count");
        assertThat(page.body()).contains("value=\"days\" checked");
        Visit.Reply done = FilledForm.of(page, ADDRESS).with("value", "hours").send(visit);

        assertThat(done.status()).isEqualTo(303);
        assertThat(year()).contains("\"value\": \"hours\"");
        assertThat(visit.get("/checklist?child=wren").text()).contains("of 900 hours").doesNotContain("of 180 days");

        FilledForm back = FilledForm.of(visit.get("/family"), "/family/unchosen", "year", "2025-26");
        assertThat(back.send(visit).status()).isEqualTo(303);
        assertThat(year()).doesNotContain("time-count");
    }

    @Test
    void oneChildMayGoItsOwnWay() throws IOException {
        FilledForm.of(visit.get(ADDRESS + "?choice=time-count"), ADDRESS).with("value", "hours").with("student", "marit").send(visit);

        // 24 P.S. § 13-1327.1(c): 990 hours at the secondary level
        assertThat(visit.get("/checklist?child=marit").text()).contains("of 990 hours");
        assertThat(visit.get("/checklist?child=wren").text()).contains("of 180 days");
        assertThat(visit.get("/family").text()).contains("2025-26: Marit Kestler, Will you count days or hours? count hours");
    }

    @Test
    void nothingThatTheLawDoesNotOfferIsChosen() throws IOException {
        String before = year();
        assertThat(FilledForm.of(visit.get(ADDRESS + "?choice=time-count"), ADDRESS).with("value", "weeks").send(visit).status())
                .isEqualTo(422);
        assertThat(visit.get(ADDRESS + "?choice=moon-phase").status()).isEqualTo(404);
        assertThat(visit.post(ADDRESS, "choice", "moon-phase", "value", "full", "year", "2025-26").status()).isEqualTo(404);
        assertThat(year()).isEqualTo(before);
    }

    @Test
    void bothVersionsAreShownWhenItWasChangedMeanwhile() throws IOException {
        FilledForm opened = FilledForm.of(visit.get(ADDRESS + "?choice=time-count"), ADDRESS).with("value", "hours");
        var file = visit.book().resolve("2025-26.json");
        Files.writeString(file, Files.readString(file).replaceFirst("(\"choice\": \"time-count\", \"value\": )\"days\"", "$1\"days\", \"student\": \"wren\""));

        Visit.Reply late = opened.send(visit);

        assertThat(late.status()).isEqualTo(422);
        assertThat(late.text()).contains("This was changed elsewhere", "Wren Kestler, Will you count days or hours? count days");
        assertThat(year()).doesNotContain("\"value\": \"hours\"");
        assertThat(FilledForm.of(late, ADDRESS).send(visit).status()).isEqualTo(303);
        assertThat(year()).contains("\"value\": \"hours\"");
    }
}
