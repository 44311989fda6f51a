package org.hearthrule.checklist;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.hearthrule.checklist.Sheet.Column;
import org.hearthrule.checklist.Sheet.Column.Align;
import org.hearthrule.checklist.Sheet.Item;
import org.hearthrule.checklist.Sheet.Plain;
import org.hearthrule.checklist.Sheet.Reference;
import org.hearthrule.rules.Status;
import org.hearthrule.terms.Wording;
import org.junit.jupiter.api.Test;

class SheetTextTest {

    private static final Style NARROW = new Style(40, true, false);

    private static List<String> lines(Sheet sheet) {
        return SheetText.of(sheet, Wording.english(), NARROW).lines().toList();
    }

    @Test
    void setsABlankLineBetweenPassagesAndBeforeHeadingsButNotAfterOne() {
        Sheet sheet = new SheetBuilder().say("One.").say("Two.").apart().say("Three.").heading("Part").say("Four.")
                .dash("Five.").within("Within").say("Six.").foot().say("Seven.").sheet("Title");

        assertThat(lines(sheet)).containsExactly("Title", "One.", "Two.", "", "Three.", "", "PART ───────────────────────────────────",
                "Four.", "  - Five.", "", "  Within", "    Six.", "", "Seven.");
    }

    @Test
    void setsMarksInFrontOfTheirItems() {
        Sheet sheet = new SheetBuilder().item(Plain.HERE, "This one.").item(Plain.NUMBER, "The second.")
                .item(new Sheet.Tile(Status.MET), "Shown.").item(new Sheet.Day(LocalDate.of(2027, 3, 1)), "Measured a jetty.")
                .sheet("");

        assertThat(lines(sheet)).containsExactly("  > This one.", " 2  The second.", "◆ Shown.", "  2027-03-01  Measured a jetty.");
    }

    /** What a browser follows is typed on a terminal; what opens on a page is left out. */
    @Test
    void setsWhatCanBeTypedInPlaceOfLinks() {
        Reference law = new Reference.Law("us-xx", "private-tutor");
        Item item = Item.of(Plain.DASH, List.of(new Sheet.See("private-tutor", new Sheet.Link("Private tutor", law)),
                new Sheet.Text(": a tutor teaches."))).opening("more", new SheetBuilder().say("Only on a page.").blocks());
        Sheet sheet = new SheetBuilder().item(item).hint("For more: add --all.", new Sheet.Link("More", law)).sheet("");

        assertThat(lines(sheet)).containsExactly("  - private-tutor: a tutor teaches.", "", "For more: add --all.");
    }

    @Test
    void setsATableWithItsGroupsAndTurnsOverLongNames() {
        List<Column> columns = List.of(new Column("", "", 14, Align.WRAPPED), new Column("days", "", 6, Align.RIGHT),
                new Column("1st", "by third", 6, Align.RIGHT), new Column("2nd", "by third", 6, Align.RIGHT));
        Sheet sheet = new SheetBuilder().add(new Sheet.Table("Subjects", columns, List.of(row("Art", "3", "1", "2"),
                row("Dangers of fires", "12", "-", "1")), false)).sheet("");

        assertThat(lines(sheet)).containsExactly("                      by third", "                days   1st   2nd",
                "Art                3     1     2", "Dangers of        12     -     1", "  fires");
    }

    @Test
    void setsTwoSidesInTwoColumns() {
        Sheet sheet = new SheetBuilder().add(new Sheet.Beside("Two laws", List.of(new Sheet.Side("Here", "Not open yet."),
                new Sheet.Side("There", "")), List.of(new Sheet.Topic("Time", List.of(List.of(Item.of(Plain.DASH,
                "180 days in the school year")), List.of(Item.of(Plain.DASH, "nothing"))))))).sheet("");

        assertThat(lines(sheet)).containsExactly("Here                 There", "Not open yet.", "",
                "TIME ───────────────────────────────────", "- 180 days in the    - nothing", "  school year");
    }

    private static List<Sheet.Span> row(String... cells) {
        return List.of(cells).stream().<Sheet.Span>map(Sheet.Text::new).toList();
    }
}
