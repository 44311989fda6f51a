package org.hearthrule.page.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.results.Rule;
import com.deque.html.axecore.selenium.AxeBuilder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.hearthrule.page.Visit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.openqa.selenium.JavascriptExecutor;

/** Every page, in a real browser: nothing that keeps people out (axe-core), nothing wider than a phone, no word on its console. */
class EveryPageTest {

    @TempDir
    private static Path folder;
    private static Visit visit;
    private static Chromium chromium;

    @BeforeAll
    static void open() throws IOException {
        visit = Visit.demo(folder);
        byte[] table = Files.readAllBytes(Path.of("test-fixtures", "tables", "year-of-days.xlsx"));
        assertThat(visit.upload("/tables", List.of(new Visit.FilePart("table", "year-of-days.xlsx", table)), "holds", "log")
                .header("Location")).endsWith("/tables/take?table=1");
        chromium = new Chromium();
        chromium.driver().get(visit.server().newStartAddress());
    }

    @AfterAll
    static void close() {
        chromium.close();
        visit.close();
    }

    static List<String> pages() {
        return List.of("/checklist", "/checklist?child=wren", "/welcome", "/welcome?state=us-pa", "/log", "/log/week", "/log/again",
                "/log/2025-26/log-2", "/year", "/records", "/books", "/books/new", "/work", "/work/photos", "/unsettled", "/tests",
                "/tests/new", "/evaluations", "/papers", "/papers/new", "/documents", "/health", "/requests", "/visits/new",
                "/readiness?child=wren", "/family", "/family/child", "/family/child?id=wren", "/family/person?id=pascoe",
                "/family/place?child=wren", "/family/place?place=new&child=wren&state=us-vt",
                "/family/child/out?id=wren", "/family/choice?choice=time-count", "/family/grades", "/family/move?state=us-vt", "/family/stop",
                "/family/event", "/law", "/law/us-vt", "/law/us-pa/ways", "/compare?here=us-pa&there=us-vt", "/keeping", "/keeping/files",
                "/copies", "/calendar", "/tables", "/tables/take?table=1", "/nowhere");
    }

    @ParameterizedTest
    @MethodSource("pages")
    void keepsNobodyOut(String page) {
        List<String> found = new ArrayList<>();
        for (String theme : List.of("light", "dark")) {
            chromium.size(1_000, 1_200);
            chromium.theme(theme);
            chromium.driver().get(visit.address() + page);
            // what is folded away is part of the page
            ((JavascriptExecutor) chromium.driver()).executeScript("document.querySelectorAll('details').forEach(d => d.open = true)");
            for (Rule rule : new AxeBuilder().withTags(List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"))
                    .analyze(chromium.driver()).getViolations()) {
                found.add(theme + ": " + rule.getId() + ": " + rule.getHelp() + ": " + rule.getNodes().stream().limit(3)
                        .map(node -> node.getHtml()).toList());
            }
        }

        assertThat(found).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("pages")
    void fitsAPhone(String page) {
        chromium.size(320, 800);
        chromium.driver().get(visit.address() + page);

        Object width = ((JavascriptExecutor) chromium.driver()).executeScript("return document.documentElement.scrollWidth");

        assertThat(((Number) width).intValue()).isLessThanOrEqualTo(320);
    }

    /** The tests above would pass for ever if nothing were looked at. */
    @Test
    void whatKeepsPeopleOutIsFound() {
        chromium.size(1_000, 1_200);
        chromium.driver().get(visit.address() + "/keeping");
        ((JavascriptExecutor) chromium.driver()).executeScript("document.querySelector('main').append(document.createElement('input'))");

        assertThat(new AxeBuilder().analyze(chromium.driver()).getViolations()).extracting(Rule::getId).contains("label");
    }
}
