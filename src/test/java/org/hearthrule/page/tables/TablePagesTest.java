package org.hearthrule.page.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hearthrule.page.Visit.first;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.hearthrule.input.Problems;
import org.hearthrule.page.DemoVisit;
import org.hearthrule.page.FilledForm;
import org.hearthrule.page.Visit;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookReader;
import org.junit.jupiter.api.Test;

class TablePagesTest extends DemoVisit {

    private Book book() throws Exception {
        return BookReader.read(visit.book(), new Problems()).orElseThrow();
    }

    private Visit.Reply choose(String holds, String name, String content) {
        return visit.upload("/tables", List.of(new Visit.FilePart("table", name, content.getBytes(StandardCharsets.UTF_8))),
                "holds", holds);
    }

    /** Chooses a table and returns the address where it is looked at. */
    private String look(String holds, String content) {
        Visit.Reply reply = choose(holds, "table.csv", content);
        assertThat(reply.status()).as(reply.text()).isEqualTo(303);
        return reply.header("Location").replace(visit.address(), "");
    }

    private static FilledForm form(String path, Visit.Reply page) {
        return FilledForm.of(page, path);
    }

    @Test
    void whatAClearTableGivesIsShownAndTakenOverAndTakenBackAsOne() throws Exception {
        int before = book().years().get("2025-26").log().size();
        String path = look("log", "Date,Child,Minutes,Subject,Notes\n2026-05-18,Wren,40,Mathematics,Weighed the flour\n"
                + "2026-05-19,Ansel,25,Music,Played the long tune\n");

        Visit.Reply shown = visit.get(path);
        assertThat(shown.text()).contains("2 rows would be added to the book.", "May 18, 2026", "Weighed the flour", "40 minutes",
                "Take over these 2 rows");
        assertThat(book().years().get("2025-26").log()).hasSize(before);

        Visit.Reply taken = form(path, shown).press("do", "take").send(visit);
        assertThat(taken.status()).isEqualTo(303);
        assertThat(book().years().get("2025-26").log()).hasSize(before + 2)
                .anySatisfy(entry -> {
                    assertThat(entry.did()).isEqualTo("Weighed the flour");
                    assertThat(entry.minutes()).isEqualTo(40);
                    assertThat(entry.students()).containsExactly("wren");
                    assertThat(entry.subjects()).containsExactly("mathematics");
                    assertThat(entry.written()).isNull();
                });

        assertThat(visit.postAndFollow("/undo", "back", "/log").text()).contains("2 rows taken over");
        assertThat(book().years().get("2025-26").log()).hasSize(before);
    }

    @Test
    void whatIsInTheBookAlreadyDoesNotComeInTwice() throws Exception {
        String table = "Date,Child,Minutes,Subject,Notes\n2026-05-18,Wren,40,Mathematics,Weighed the flour\n"
                + "2026-05-18,Wren,40,Mathematics,Weighed the flour\n";
        String path = look("log", table);
        Visit.Reply shown = visit.get(path);
        assertThat(shown.text()).contains("One row would be added", "Line 3: the same as line 2.");
        form(path, shown).press("do", "take").send(visit);

        String again = look("log", table);
        assertThat(visit.get(again).text()).contains("No row would be added.", "already in the book as")
                .doesNotContain("Take over");
    }

    @Test
    void columnsThatNoHeaderNamesAreChosenOnThePage() throws Exception {
        String path = look("log", "When it was,Pupil,How many,Words\n2026-05-18,Marit,15,Sorted the shells\n");

        Visit.Reply first = visit.get(path);
        assertThat(first.text()).contains("Choose the column that holds the day.", "When it was: 2026-05-18").doesNotContain("Take over");

        Visit.Reply second = form(path, first).press("do", "look").with("column-date", "0")
                .with("column-minutes", "2").with("column-did", "3").send(visit);
        assertThat(second.status()).isEqualTo(200);
        assertThat(second.text()).contains("One row would be added", "Sorted the shells", "15 minutes", "Marit");

        assertThat(form(path, second).press("do", "take").send(visit).status()).isEqualTo(303);
        assertThat(book().years().get("2025-26").log()).anySatisfy(entry -> assertThat(entry.did()).isEqualTo("Sorted the shells"));
    }

    @Test
    void nothingIsTakenOverThatWasNotShownSo() throws Exception {
        Book before = book();
        String path = look("log", "Date,Child,Minutes,Notes,Other\n2026-05-18,Wren,40,Weighed the flour,Baked with it\n");
        Visit.Reply shown = visit.get(path);

        Visit.Reply reply = form(path, shown).press("do", "take").with("column-did", "4").send(visit);

        assertThat(reply.status()).isEqualTo(422);
        assertThat(reply.text()).contains("Look once more", "Baked with it");
        assertThat(book()).isEqualTo(before);
        assertThat(form(path, reply).press("do", "take").send(visit).status()).isEqualTo(303);
        assertThat(book().years().get("2025-26").log()).anySatisfy(entry -> assertThat(entry.did()).isEqualTo("Baked with it"));
    }

    @Test
    void namesOfItsOwnAreExplainedOnceForTheWholeTable() throws Exception {
        String path = look("log", "Date,Child,Minutes,Subject,Notes\n2026-05-18,Birdie,40,Numbers,Weighed the flour\n"
                + "2026-05-19,Birdie,20,Numbers,Halved the dough\n2026-05-19,Birdie,20,Puttering,Swept the ramp\n");
        Visit.Reply first = visit.get(path);
        assertThat(first.text()).contains("“Birdie” is", "In 3 rows.", "“Numbers” is", "Choose who “Birdie” is",
                "Choose what “Puttering” stands for").doesNotContain("Take over");

        Visit.Reply second = form(path, first).press("do", "look").with("child-0", "wren")
                .with("subject-0", "arithmetic").with("subject-1", "none").send(visit);
        assertThat(second.text()).contains("3 rows would be added");
        assertThat(second.body()).contains("<option value=\"arithmetic\" selected");

        assertThat(form(path, second).press("do", "take").send(visit).status()).isEqualTo(303);
        assertThat(book().years().get("2025-26").log()).anySatisfy(entry -> {
            assertThat(entry.did()).isEqualTo("Halved the dough");
            assertThat(entry.students()).containsExactly("wren");
            assertThat(entry.subjects()).containsExactly("arithmetic");
        }).anySatisfy(entry -> {
            assertThat(entry.did()).isEqualTo("Swept the ramp");
            assertThat(entry.subjects()).isEmpty();
        });
    }

    @Test
    void aRowThatCannotBeReadStopsAllUntilItIsToBeLeftOut() throws Exception {
        String path = look("log", "Date,Child,Minutes,Notes\n2026-05-18,Wren,40,Weighed the flour\n2026-02-30,Wren,40,No such day\n");
        Visit.Reply first = visit.get(path);
        assertThat(first.text()).contains("One row cannot be read", "Line 3: found \"2026-02-30\"").doesNotContain("Take over");

        Visit.Reply second = form(path, first).press("do", "look").with("leave-out", "yes").send(visit);
        assertThat(second.text()).contains("One row would be added", "Take over this row");

        Visit.Reply done = form(path, second).press("do", "take").with("leave-out", "yes").send(visit);
        assertThat(done.status()).isEqualTo(303);
        assertThat(visit.get("/log").text()).contains("One row was taken over. One row that could not be read is left out.");
    }

    @Test
    void datesThatMeanTwoDaysAndHoursThatMayBeMinutesAreAskedAbout() {
        String path = look("log", "Date,Child,Hours,Notes\n04/05/2026,Wren,1.5,Weighed the flour\n");
        Visit.Reply first = visit.get(path);
        assertThat(first.text()).contains("not all mean the same days", "minutes or hours").doesNotContain("Take over");

        Visit.Reply second = form(path, first).press("do", "look").with("dates", "MM/dd/uuuu")
                .with("time", "hours").send(visit);
        assertThat(second.text()).contains("April 5, 2026", "1 hour 30 minutes", "Take over this row");
    }

    @Test
    void booksAreTakenOverWithTheSchoolYearOfThoseWithoutADay() throws Exception {
        String path = look("books", "Title,Author,Child,Finished\nThe Brass Lantern,I. Quill,Ansel,\n");
        Visit.Reply first = visit.get(path);
        assertThat(first.text()).contains("One row cannot be read");

        Visit.Reply second = form(path, first).press("do", "look").with("year", "2025-26").send(visit);
        assertThat(second.text()).contains("The Brass Lantern", "Take over this row");
        assertThat(form(path, second).press("do", "take").with("year", "2025-26").send(visit).status()).isEqualTo(303);
        assertThat(book().years().get("2025-26").readings()).anySatisfy(one -> assertThat(one.title()).isEqualTo("The Brass Lantern"));
    }

    @Test
    void whatIsNoTableIsRefusedWhereItWasChosen() {
        Visit.Reply picture = choose("log", "photo.png", "\u0089PNG\r\n\u001a\n0000");
        assertThat(picture.status()).isEqualTo(422);
        assertThat(first("id=\"table-error\">([^<]*)<", picture.body())).startsWith("Found");

        Visit.Reply none = visit.upload("/tables", List.of(), "holds", "log");
        assertThat(none.status()).isEqualTo(422);
        assertThat(none.text()).contains("Choose a spreadsheet (XLSX)");
    }

    @Test
    void aTableThatIsAtHandNoLongerIsAskedForAgain() {
        assertThat(visit.follow("/tables/take?table=99").text()).contains("That table is at hand no longer", "Take a table over");
        assertThat(visit.postAndFollow("/tables/take?table=99", "do", "take").text()).contains("That table is at hand no longer");
    }

    @Test
    void aHeaderWithMarkupIsShownAsItStands() {
        String path = look("log", "Date,<script>alert(1)</script>\n2026-05-18,<img src=x>\n");

        assertThat(visit.get(path).body()).contains("&lt;script&gt;").doesNotContain("<script>alert", "<img src=x");
    }

    @Test
    void everythingIsTakenOutInThreeForms() throws Exception {
        Visit.Reply csv = visit.get("/tables/out?format=csv");
        assertThat(csv.header("Content-Disposition")).isEqualTo("attachment; filename=\"hearthrule-2026-05-20.zip\"");
        assertThat(names(csv.whole().body())).contains("log.csv");

        Visit.Reply xlsx = visit.get("/tables/out?format=xlsx");
        assertThat(names(xlsx.whole().body())).contains("xl/workbook.xml");

        Visit.Reply json = visit.get("/tables/out?format=json&students=wren");
        assertThat(json.body()).contains("\"wren\"").doesNotContain("\"marit\"");
    }

    @Test
    void aSpanThatEndsBeforeItBeginsIsTold() {
        Visit.Reply reply = visit.get("/tables/out?format=csv&from=2026-05-01&to=2026-04-01");

        assertThat(reply.status()).isEqualTo(422);
        assertThat(first("id=\"to-error\">([^<]*)<", reply.body())).isEqualTo("This day lies before the first one. Type a later day.");
    }

    private static List<String> names(byte[] zip) throws IOException {
        List<String> names = new ArrayList<>();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                names.add(entry.getName());
            }
        }
        return names;
    }
}
