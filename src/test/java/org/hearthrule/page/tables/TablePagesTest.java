package org.hearthrule.page.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hearthrule.page.Visit.first;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.hearthrule.input.Problems;
import org.hearthrule.page.DemoVisit;
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

    /** Sends what a page shows as chosen, with some of it chosen otherwise, as a browser does. */
    private Visit.Reply send(String path, Visit.Reply page, String... otherwise) {
        List<String> sent = new ArrayList<>(List.of(otherwise));
        Matcher hidden = Pattern.compile("<input type=\"hidden\" name=\"([^\"]+)\" value=\"([^\"]*)\"").matcher(page.body());
        while (hidden.find()) {
            keep(sent, otherwise, hidden.group(1), hidden.group(2));
        }
        Matcher select = Pattern.compile("(?s)<select id=\"[^\"]*\" name=\"([^\"]+)\".*?</select>").matcher(page.body());
        while (select.find()) {
            Matcher chosen = Pattern.compile("<option value=\"([^\"]*)\" selected").matcher(select.group());
            if (chosen.find()) {
                keep(sent, otherwise, select.group(1), chosen.group(1));
            }
        }
        return visit.post(path, sent.toArray(new String[0]));
    }

    private static void keep(List<String> sent, String[] otherwise, String name, String value) {
        if (!name.equals("token") && !List.of(otherwise).contains(name)) {
            sent.addAll(List.of(name, value));
        }
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

        Visit.Reply taken = send(path, shown, "do", "take");
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
        send(path, shown, "do", "take");

        String again = look("log", table);
        assertThat(visit.get(again).text()).contains("No row would be added.", "already in the book as")
                .doesNotContain("Take over");
    }

    @Test
    void columnsThatNoHeaderNamesAreChosenOnThePage() throws Exception {
        String path = look("log", "When it was,Pupil,How many,Words\n2026-05-18,Marit,15,Sorted the shells\n");

        Visit.Reply first = visit.get(path);
        assertThat(first.text()).contains("Choose the column that holds the day.", "When it was: 2026-05-18").doesNotContain("Take over");

        Visit.Reply second = send(path, first, "do", "look", "column-date", "0", "column-minutes", "2", "column-did", "3");
        assertThat(second.status()).isEqualTo(200);
        assertThat(second.text()).contains("One row would be added", "Sorted the shells", "15 minutes", "Marit");

        assertThat(send(path, second, "do", "take").status()).isEqualTo(303);
        assertThat(book().years().get("2025-26").log()).anySatisfy(entry -> assertThat(entry.did()).isEqualTo("Sorted the shells"));
    }

    @Test
    void nothingIsTakenOverThatWasNotShownSo() throws Exception {
        Book before = book();
        String path = look("log", "Date,Child,Minutes,Notes,Other\n2026-05-18,Wren,40,Weighed the flour,Baked with it\n");
        Visit.Reply shown = visit.get(path);

        Visit.Reply reply = send(path, shown, "do", "take", "column-did", "4");

        assertThat(reply.status()).isEqualTo(422);
        assertThat(reply.text()).contains("Look once more", "Baked with it");
        assertThat(book()).isEqualTo(before);
        assertThat(send(path, reply, "do", "take").status()).isEqualTo(303);
        assertThat(book().years().get("2025-26").log()).anySatisfy(entry -> assertThat(entry.did()).isEqualTo("Baked with it"));
    }

    @Test
    void namesOfItsOwnAreExplainedOnceForTheWholeTable() throws Exception {
        String path = look("log", "Date,Child,Minutes,Subject,Notes\n2026-05-18,Birdie,40,Numbers,Weighed the flour\n"
                + "2026-05-19,Birdie,20,Numbers,Halved the dough\n2026-05-19,Birdie,20,Puttering,Swept the ramp\n");
        Visit.Reply first = visit.get(path);
        assertThat(first.text()).contains("“Birdie” is", "In 3 rows.", "“Numbers” is", "Choose who “Birdie” is",
                "Choose what “Puttering” stands for").doesNotContain("Take over");

        Visit.Reply second = send(path, first, "do", "look", "child-0", "wren", "subject-0", "arithmetic", "subject-1", "none");
        assertThat(second.text()).contains("3 rows would be added");
        assertThat(second.body()).contains("<option value=\"arithmetic\" selected");

        assertThat(send(path, second, "do", "take").status()).isEqualTo(303);
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

        Visit.Reply second = send(path, first, "do", "look", "leave-out", "yes");
        assertThat(second.text()).contains("One row would be added", "Take over this row");

        Visit.Reply done = send(path, second, "do", "take", "leave-out", "yes");
        assertThat(done.status()).isEqualTo(303);
        assertThat(visit.get("/log").text()).contains("One row was taken over. One row that could not be read is left out.");
    }

    @Test
    void datesThatMeanTwoDaysAndHoursThatMayBeMinutesAreAskedAbout() {
        String path = look("log", "Date,Child,Hours,Notes\n04/05/2026,Wren,1.5,Weighed the flour\n");
        Visit.Reply first = visit.get(path);
        assertThat(first.text()).contains("not all mean the same days", "minutes or hours").doesNotContain("Take over");

        Visit.Reply second = send(path, first, "do", "look", "dates", "MM/dd/uuuu", "time", "hours");
        assertThat(second.text()).contains("April 5, 2026", "1 hour 30 minutes", "Take over this row");
    }

    @Test
    void booksAreTakenOverWithTheSchoolYearOfThoseWithoutADay() throws Exception {
        String path = look("books", "Title,Author,Child,Finished\nThe Brass Lantern,I. Quill,Ansel,\n");
        Visit.Reply first = visit.get(path);
        assertThat(first.text()).contains("One row cannot be read");

        Visit.Reply second = send(path, first, "do", "look", "year", "2025-26");
        assertThat(second.text()).contains("The Brass Lantern", "Take over this row");
        assertThat(send(path, second, "do", "take", "year", "2025-26").status()).isEqualTo(303);
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
