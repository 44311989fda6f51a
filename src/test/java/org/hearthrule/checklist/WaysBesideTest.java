package org.hearthrule.checklist;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.hearthrule.law.Packaged;
import org.hearthrule.law.Profile;
import org.hearthrule.terms.Wording;
import org.junit.jupiter.api.Test;

class WaysBesideTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 26);

    private static List<String> lines(Sheet.Beside beside, String topic, int side) {
        Sheet.Topic found = beside.topics().stream().filter(one -> one.name().equals(topic)).findFirst().orElseThrow();
        Sheet cell = new SheetBuilder().add(new Sheet.Items(found.cells().get(side))).sheet("");
        return List.of(SheetText.of(cell, Wording.english(), new Style(500, true, false)).split("\n"));
    }

    /** Ohio Rev. Code § 3321.042: a yearly notice, six subjects, no hours; Ohio Adm. Code 3301-35-08: hours and a report. */
    @Test
    void setsWhatIsAskedInShortWordsWithItsSection() throws Exception {
        Profile law = Packaged.profiles().find("oh");
        Sheet.Beside beside = WaysBeside.of(law, DAY, Wording.english());

        assertThat(beside.sides()).extracting(Sheet.Side::head).containsExactly("Home education",
                "School without a state charter, for religious reasons");
        assertThat(lines(beside, "Papers to send", 0)).anyMatch(line -> line.startsWith("  - Yearly notice: by August 30."))
                .anyMatch(line -> line.contains("3321.042"));
        assertThat(lines(beside, "Subjects", 0)).anyMatch(line -> line.contains("subjects are named"));
        assertThat(lines(beside, "Time", 0)).containsExactly("  - nothing that was read");
        assertThat(lines(beside, "Time", 1)).anyMatch(line -> line.contains("910 hours"));
    }

    /** A way that is not open yet must not look like one to choose. */
    @Test
    void leavesOutWhatIsNotOpen() throws Exception {
        Profile law = Packaged.profiles().find("ct");

        assertThat(law.pathways()).anyMatch(way -> way.validity().announced());
        assertThat(WaysBeside.of(law, DAY, Wording.english()).sides()).hasSize((int) law.pathways().stream()
                .filter(way -> way.validity().inForceOn(DAY)).count());
    }

    @Test
    void everyCellOfEveryLawSaysSomething() throws Exception {
        for (Profile law : Packaged.all()) {
            Sheet.Beside beside = WaysBeside.of(law, DAY, Wording.english());
            for (Sheet.Topic topic : beside.topics()) {
                assertThat(topic.cells()).as(law.code()).hasSameSizeAs(beside.sides()).noneMatch(List::isEmpty);
            }
        }
    }
}
