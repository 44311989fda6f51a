package org.hearthrule.page.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.hearthrule.page.Visit;
import org.hearthrule.pictures.Photos;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.JavascriptExecutor;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.ExpectedConditions;
import org.openqa.selenium.support.ui.Select;
import org.openqa.selenium.support.ui.WebDriverWait;

/** The ways a parent goes, in a real browser. */
class JourneysTest {

    @TempDir
    private Path folder;
    private Visit visit;
    private Chromium chromium;

    @BeforeEach
    void browser() {
        chromium = new Chromium();
    }

    @AfterEach
    void close() {
        chromium.close();
        visit.close();
    }

    private void open(Path book) {
        visit = new Visit(book, folder, Visit.DAY);
        chromium.driver().get(visit.server().newStartAddress());
    }

    private WebElement find(String css) {
        return chromium.driver().findElement(By.cssSelector(css));
    }

    private void press(String words) {
        find("main").findElement(By.xpath(".//button[contains(., '" + words + "')]")).click();
    }

    private void link(String words) {
        chromium.driver().findElement(By.partialLinkText(words)).click();
    }

    private void type(String id, String words) {
        WebElement field = chromium.driver().findElement(By.id(id));
        field.clear();
        field.sendKeys(words);
    }

    /** A date field takes a day from the keyboard in the order of the reader's country; a script sets it alike everywhere. */
    private void day(String id, String iso) {
        ((JavascriptExecutor) chromium.driver()).executeScript("document.getElementById(arguments[0]).value = arguments[1]", id, iso);
    }

    private String page() {
        return find("body").getText();
    }

    /** Waits for the page that a press leads to. While one page gives way to the next, the driver has no clear word for it. */
    private void expect(String... words) {
        new WebDriverWait(chromium.driver(), Duration.ofSeconds(10)).ignoring(WebDriverException.class)
                .withMessage(() -> "all of " + List.of(words) + " in: " + page())
                .until(driver -> List.of(words).stream().allMatch(page()::contains));
    }

    @Test
    void fromTheFirstVisitToTheFirstChecklist() {
        open(null);
        new Select(find("#state")).selectByVisibleText("Pennsylvania");
        press("Show what is due");
        expect("The coming year");
        link("Begin a book");
        press("Look it over");
        expect("things must be put right");
        assertThat(chromium.driver().switchTo().activeElement().getDomAttribute("id")).isEqualTo("complaints");
        type("family", "Harbour family");
        type("name", "Ada Harbour");
        day("born", "2015-04-03");
        new Select(find("#grade")).selectByVisibleText("Grade 5");
        find("#pathway").click();
        day("starts", "2026-08-24");
        press("Look it over");
        expect("Nothing is written yet", "Born on April 3, 2015");
        assertThat(Files.exists(visit.book().resolve("family.json"))).isFalse();
        press("Begin the book");

        expect("Harbour family", "Your book is begun", "Checklist");
        assertThat(Files.isRegularFile(visit.book().resolve("family.json"))).isTrue();
    }

    @Test
    void aWeekIsLoggedWithSubjectsThatAreOffered() {
        open(Visit.DEMO);
        for (int day = 18; day <= 20; day++) {
            chromium.driver().get(visit.address() + "/log");
            type("did", "Measured the jetty again, day " + day);
            day("date", "2026-05-" + day);
            type("minutes", "45");
            WebElement offer = new WebDriverWait(chromium.driver(), Duration.ofSeconds(10))
                    .until(ExpectedConditions.elementToBeClickable(By.id("offer-measurement")));
            assertThat(offer.isSelected()).isFalse();
            offer.click();
            press("Save");
            expect("Saved: May " + day + ", 2026", "45 minutes", "Measuring");
        }

        find(".undo button").click();

        expect("Taken back: The entry of May 20, 2026");
    }

    @ParameterizedTest
    @ValueSource(strings = {"year-of-days.xlsx", "year-of-days.csv"})
    void aSpreadsheetOfFourHundredRowsIsTakenOver(String table) {
        open(Visit.DEMO);
        link("Keeping");
        link("Spreadsheets");
        find("#table").sendKeys(Path.of("test-fixtures", "tables", table).toAbsolutePath().toString());
        press("Look at it");

        // what the table leaves open is asked once, not row by row
        expect(table, "What stands in which column", "Not taken over: the column “Weather”", "One row cannot be read");
        choose("“Everybody” is", "All children");
        choose("“Math” is", "Mathematics");
        choose("“PE” is", "Physical education");
        choose("“Nature Study” is", "Science: Living things");
        choose("“Social Studies” is", "No subject");
        choose("“Astronomy” is", "Science: Earth and sky");
        find("#leave-out").click();
        press("Show what that gives");
        // 400 rows: five stand twice, one has a day that is none
        expect("394 rows would be added to the book", "The first 20 of 394");
        press("Take over these 394 rows");
        expect("394 rows were taken over. 5 rows that were there already are left out. One row that could not be read is left out.");
        chromium.driver().get(visit.address() + "/log?from=2026-09-01");
        // one entry of the demo family lies there too
        expect("395 entries");

        find(".undo button").click();
        expect("Taken back: 394 rows taken over");
        chromium.driver().get(visit.address() + "/log?from=2026-09-01");
        expect("One entry fits");
    }

    private void choose(String label, String option) {
        WebElement named = chromium.driver().findElement(By.xpath("//label[normalize-space(.)='" + label + "']"));
        new Select(chromium.driver().findElement(By.id(named.getDomAttribute("for")))).selectByVisibleText(option);
    }

    @Test
    void photosWithAndWithoutADayAreSettled() throws Exception {
        open(Visit.DEMO);
        Path taken = Files.write(folder.resolve("grebe.jpg"), Photos.taken("2026:05:14 16:02:00", 1));
        Path plain = Files.write(folder.resolve("jetty plan.jpg"), Photos.plain(2));
        chromium.driver().get(visit.address() + "/work/photos");
        find("#student").click();
        find("#files").sendKeys(taken + "\n" + plain);
        press("Save them");

        expect("Saved: 2 pieces", "the camera noted May 14, 2026", "jetty plan.jpg");
        find("input[value='2026-05-14']").click();
        new Select(find("select[name^='subject:']")).selectByVisibleText("The arts: Art");
        press("Save what I have said");

        expect("Saved:");
    }

    @Test
    void aPaperIsMarkedAsSentWhereItsLineStandsByKeyboardAlone() {
        open(Visit.DEMO);
        chromium.driver().get(visit.address() + "/checklist");
        WebElement entry = chromium.driver().findElement(By.xpath("//li[.//h3[contains(., \"Evaluator's certificate\")]]"));
        entry.findElement(By.cssSelector("details.steps summary")).sendKeys(Keys.ENTER);
        List<WebElement> days = entry.findElements(By.cssSelector("input[type=date]"));
        day(days.get(0).getDomAttribute("id"), "2026-05-19");
        entry.findElement(By.cssSelector("form button")).sendKeys(Keys.ENTER);

        expect("Saved: Evaluator's certificate", "Undo: A paper you sent");
    }

    @Test
    void readinessIsWalkedThroughAndWhatIsMissingIsNotedFromThere() {
        open(Visit.DEMO);
        link("Readiness");
        link("Wren");
        expect("Before the evaluation", "Wren Kestler", "June 30, 2026", "in 41 days",
                "By then: Yearly evaluation and Test in grades 3, 5 and 8", "To do first",
                "Not noted yet: portfolio evaluation.", "The portfolio, item by item");
        assertThat(find(".steps").getText()).contains("Yearly evaluation");
        link("Note the evaluation");
        day("date", "2026-05-19");
        new Select(find("#by")).selectByVisibleText("Orrin Pascoe");
        // 24 P.S. § 13-1327.1(e)(2): an interview of the child and a review of the portfolio
        chromium.driver().findElements(By.name("includes")).forEach(WebElement::click);
        press("Save");

        expect("Saved:", "Before the evaluation", "Wren Kestler", "To do first");
        assertThat(find(".steps").getText()).doesNotContain("Yearly evaluation");
        // from one subject to the next without a mouse
        find(".contents a").sendKeys(Keys.ENTER);
        new WebDriverWait(chromium.driver(), Duration.ofSeconds(10)).until(ExpectedConditions.urlContains("#subject-1"));
        assertThat(find("#subject-1").isDisplayed()).isTrue();
    }

    @Test
    void aMoveInMarchIsNotedAndTakenBack() {
        open(Visit.DEMO);
        link("Family");
        link("A move to another state");
        new Select(find("#choose-state")).selectByVisibleText("Vermont");
        press("Show its ways");
        expect("Which children");
        day("day", "2026-03-02");
        find("#pathway").click();
        chromium.driver().findElements(By.name("students")).forEach(WebElement::click);
        press("See what it brings first");
        expect("What the move brings Wren Kestler", "Worth keeping");
        press("Note it");

        expect("The move to Vermont is noted from March 2, 2026");
        find(".undo button").click();
        expect("Taken back: The move to Vermont");
    }

    @Test
    void theStateOfAnEarlierTimeComesBack() {
        open(Visit.DEMO);
        chromium.driver().get(visit.address() + "/log");
        type("did", "Painted the oars");
        press("Save");
        expect("Saved:");
        link("Keeping");
        link("Copies");
        press("Put back");
        expect("The book is as it was on");
        chromium.driver().get(visit.address() + "/log?words=painted+the+oars");

        expect("0 entries fit");
    }
}
