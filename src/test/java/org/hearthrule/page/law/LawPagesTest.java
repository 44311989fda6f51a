package org.hearthrule.page.law;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.regex.Pattern;
import org.hearthrule.checklist.MistakeReport;
import org.hearthrule.law.Packaged;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Requirement;
import org.hearthrule.page.Accessible;
import org.hearthrule.page.SharedVisit;
import org.hearthrule.page.Visit;
import org.hearthrule.page.Visit.Reply;
import org.hearthrule.records.Book;
import org.hearthrule.records.Student;
import org.hearthrule.terms.Wording;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LawPagesTest extends SharedVisit {

    private static final String MISTAKE = "/law/us-pa/mistake/home-education-program/affidavit";

    /** A rule that no page shows can be neither read nor corrected by those it concerns. */
    @Test
    void everyWayOfEveryLawShowsEachOfItsRulesWithItsSection() throws Exception {
        for (Profile law : Packaged.all()) {
            String code = law.slug();
            for (Pathway way : law.pathways()) {
                Reply page = visit.get("/law/" + code + "?pathway=" + way.slug());
                assertThat(page.status()).as(way.id()).isEqualTo(200);
                String text = page.text();
                for (Requirement asked : way.asks()) {
                    if (asked.validity().inForceOn(Visit.DAY)) {
                        assertThat(text).as(asked.id()).contains(spaced(asked.title()), spaced(asked.cite().words()));
                        assertThat(page.body()).contains("id=\"" + asked.localId() + '"', "/mistake/" + way.slug() + '/' + asked.localId());
                    }
                }
                Accessible.check(page.body(), way.id());
            }
        }
    }

    private static String spaced(String words) {
        return words.replaceAll("\\s+", " ").replaceAll(" ([.,;:?!)])", "$1");
    }

    /** 16 V.S.A. § 166b (a), as amended from July 1, 2023: before, a notice was sent by May 1 or so, and the Secretary could call a hearing. */
    @Test
    void showsTheLawOfAnotherDay() throws Exception {
        Profile law = Packaged.profiles().find("vt");
        LocalDate before = LocalDate.of(2023, 6, 30);
        Requirement old = law.usualPathway().asks().stream().filter(asked -> asked.validity().until() != null
                && asked.validity().inForceOn(before)).findFirst().orElseThrow();

        assertThat(visit.get("/law/us-vt?on=2023-06-30").body()).contains("id=\"" + old.localId() + '"');
        assertThat(visit.get("/law/us-vt").body()).doesNotContain("id=\"" + old.localId() + '"');
        assertThat(visit.get("/law/us-vt?on=2023-06-30").text()).contains("As it stands on June 30, 2023", "What begins after this day");
    }

    @Test
    void saysWhatToTypeForADayThatIsNone() throws Exception {
        Reply page = visit.get("/law/us-vt?on=2026-02-30");

        assertThat(page.status()).isEqualTo(422);
        assertThat(page.text()).contains("is no day of the calendar");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/law/us-zz", "/law/US-PA", "/law/vermont", "/law/us-pa?pathway=none", "/law/us-pa/mistake/none/affidavit",
        "/law/us-pa/mistake/home-education-program/none/text", "/law/us-zz/ways", "/law/..%2Fus-pa"})
    void nothingStandsAtOtherAddresses(String path) throws Exception {
        assertThat(visit.get(path).status()).isIn(400, 404);
    }

    @Test
    void listsEveryLawByNameWithHowItWasRead() throws Exception {
        Reply page = visit.get("/law");
        List<String> names = Pattern.compile("<th scope=\"row\"><a href=\"/law/us-[a-z]{2}\">([^<]+)</a>").matcher(page.body())
                .results().map(found -> found.group(1)).toList();

        assertThat(names).hasSize(51).isSorted().contains("Vermont", "District of Columbia");
        Accessible.check(page.body(), "/law");
    }

    @Test
    void findsALawByAPartOfItsName() throws Exception {
        assertThat(visit.get("/law?q=verm").body()).contains("\"/law/us-vt\"").doesNotContain("\"/law/us-pa\"");
        assertThat(visit.get("/law?q=VT").body()).contains("\"/law/us-vt\"");
        assertThat(visit.get("/law?q=Vermnot").text()).contains("There is no law of “Vermnot” here.", "Perhaps you meant Vermont.");
        assertThat(visit.get("/law?q=%3Cb%3E").body()).doesNotContain("<b>");
    }

    @Test
    void laysTheWaysSideBySide() throws Exception {
        Reply page = visit.get("/law/us-pa/ways");

        assertThat(page.text()).contains("Home education program", "Private tutor", "22 Pa. Code § 11.31");
        Accessible.check(page.body(), "ways");
    }

    /** A text that is sent to strangers: the open book must have left nothing in it. */
    @Test
    void theTextOnAMistakeHoldsNothingOfTheOpenBook() throws Exception {
        Book book = visit.server().house().desk().book();
        Reply page = visit.get(MISTAKE);
        String text = page.body().substring(page.body().indexOf("<textarea"), page.body().indexOf("</textarea>"));

        assertThat(text).contains("readonly", "us-pa/home-education-program/affidavit", "What the law says, in its own words:");
        for (Student student : book.students()) {
            assertThat(text).doesNotContain(student.name().split(" ")[0], student.born().toString(),
                    Wording.english().date(student.born()));
        }
        assertThat(text).doesNotContain(book.familyName(), book.folder().toString());
        Accessible.check(page.body(), "mistake");
    }

    @Test
    void theTextOnAMistakeCanBeSaved() throws Exception {
        Profile law = Packaged.profiles().find("pa");
        Requirement asked = law.usualPathway().asks().stream().filter(rule -> rule.localId().equals("affidavit")).findFirst().orElseThrow();

        Reply file = visit.get(MISTAKE + "/text");

        assertThat(file.body()).isEqualTo(MistakeReport.of(law, asked, Wording.english()));
        assertThat(file.header("Content-Disposition")).isEqualTo("attachment; filename=\"mistake-us-pa-home-education-program-affidavit.txt\"");
        assertThat(file.header("Content-Type")).startsWith("text/plain");
    }

    /** The page works with the network off, and an address of a source is gone to only by the parent's own click. */
    @Test
    void nothingIsFetchedFromElsewhere() throws Exception {
        String html = visit.get("/law/us-al").body();

        assertThat(html).doesNotContainPattern("<(link|script|img)\\b[^>]*(https?:)?//");
        assertThat(html).containsPattern("<a class=\"out\" href=\"https://[^\"]+\" rel=\"noreferrer\">");
        assertThat(html.replaceAll("<a class=\"out\" href=\"[^\"]+\" rel=\"noreferrer\">", "")).doesNotContainPattern("href=\"https?:");
    }

    /** Somebody who only wants to know what is due has no book yet. */
    @Test
    void theLawIsThereWithoutABook(@TempDir Path empty) throws Exception {
        try (Visit first = new Visit(null, empty, Visit.DAY)) {
            assertThat(first.get("/law").status()).isEqualTo(200);
            assertThat(first.get("/law/us-oh").text()).contains("The coming year", "August 30, 2026", "Yearly notice");
            assertThat(first.get("/compare?here=us-oh&there=us-vt").text()).contains("Ohio and Vermont, side by side");
        }
    }
}
