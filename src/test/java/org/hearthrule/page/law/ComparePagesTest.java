package org.hearthrule.page.law;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.hearthrule.page.Accessible;
import org.hearthrule.page.SharedVisit;
import org.hearthrule.page.Visit.Reply;
import org.hearthrule.records.Hash;
import org.junit.jupiter.api.Test;

/** The demo book: Wren Kestler, taught in Pennsylvania since August 19, 2024. */
class ComparePagesTest extends SharedVisit {

    @Test
    void asksForTheTwoFirst() throws Exception {
        Reply page = visit.get("/compare");

        assertThat(page.status()).isEqualTo(200);
        assertThat(page.body()).doesNotContain("<table").contains("<option value=\"us-vt\"", "<option value=\"wren\"");
        Accessible.check(page.body(), "/compare");
    }

    @Test
    void laysTwoLawsSideBySideInATable() throws Exception {
        Reply page = visit.get("/compare?here=us-oh&there=us-vt");

        assertThat(page.text()).contains("Ohio and Vermont, side by side", "175 days in the school year", "Compulsory age");
        assertThat(page.body()).contains("href=\"/law/us-vt?pathway=home-study#notice\"", "way-there=independent-school");
        Accessible.check(page.body(), "two laws");
    }

    @Test
    void tellsAnotherWayOfOneOfThem() throws Exception {
        assertThat(visit.get("/compare?here=us-oh&there=us-vt&way-there=independent-school").text()).contains("Vermont, independent school");
    }

    /** Due in Pennsylvania on June 30 and August 1: 24 P.S. § 13-1327.1 (b)(1), (h.1). Vermont: 16 V.S.A. § 166b (a), ten business days before. */
    @Test
    void saysWhatAMoveBringsAChildOfTheBook() throws Exception {
        Reply page = visit.get("/compare?here=us-pa&there=us-vt&child=wren&moves=2026-08-15");
        String text = page.text();

        assertThat(text.substring(text.lastIndexOf("Still owed in Pennsylvania"), text.lastIndexOf("What ends in Pennsylvania")))
                .contains("Evaluator's certificate. June 30, 2026", "Affidavit or unsworn declaration. August 1, 2026");
        assertThat(text.substring(text.lastIndexOf("What Vermont asks"), text.lastIndexOf("Worth keeping")))
                .contains("First notice of intent. August 3, 2026");
        Accessible.check(page.body(), "a move");
    }

    /** A move is looked at, not made. */
    @Test
    void writesNothingIntoTheBook() throws Exception {
        Map<Path, Hash> before = hashes();

        visit.get("/compare?here=us-pa&there=us-vt&child=wren&moves=2026-08-15");

        assertThat(before).isNotEmpty();
        assertThat(hashes()).isEqualTo(before);
        assertThat(visit.server().house().desk().book().placements()).noneMatch(one -> one.jurisdiction().equals("us-vt"));
    }

    private Map<Path, Hash> hashes() throws IOException {
        Map<Path, Hash> hashes = new TreeMap<>();
        try (Stream<Path> files = Files.walk(visit.book())) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                hashes.put(file, Hash.of(file));
            }
        }
        return hashes;
    }

    @Test
    void saysBesideEachFieldWhatToTypeInstead() throws Exception {
        assertThat(complaint("here=us-pa&there=us-vt&child=wren&moves=2020-08-15")).contains("began on August 19, 2024. Type a later day.");
        assertThat(complaint("here=us-oh&there=us-vt&child=wren")).contains("Wren Kestler is taught in Pennsylvania.");
        assertThat(complaint("here=us-pa&there=us-vt&moves=2026-08-15")).contains("Choose the child who moves");
        assertThat(complaint("there=us-vt")).contains("Choose the state you live in");
        assertThat(complaint("here=us-zz&there=us-vt")).contains("Choose one of those offered");
    }

    private String complaint(String query) throws Exception {
        Reply page = visit.get("/compare?" + query);
        assertThat(page.status()).isEqualTo(422);
        assertThat(page.body()).doesNotContain("<table").contains("aria-invalid=\"true\"");
        return page.text();
    }
}
