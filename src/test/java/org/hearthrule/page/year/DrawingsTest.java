package org.hearthrule.page.year;

import static org.assertj.core.api.Assertions.assertThat;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.hearthrule.checklist.year.YearView;
import org.hearthrule.input.Problems;
import org.hearthrule.law.Packaged;
import org.hearthrule.page.frame.PageWords;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookReader;
import org.hearthrule.records.YearLabel;
import org.hearthrule.rules.Judge;
import org.hearthrule.rules.Status;
import org.hearthrule.terms.Wording;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** What is drawn of the demo family's year says the same as the tables beneath it. */
class DrawingsTest {

    private static final LocalDate MAY = LocalDate.of(2026, 5, 20);
    private static final TemplateEngine TEMPLATES = TemplateEngine.createPrecompiled(null, ContentType.Html,
            DrawingsTest.class.getClassLoader(), "org.hearthrule.page.templates");

    private static Book demo() throws Exception {
        return BookReader.read(Path.of("test-fixtures", "books", "tennick-landing"), new Problems()).orElseThrow();
    }

    private static YearView view(String student) throws Exception {
        Book demo = demo();
        return YearView.of(demo, new Judge(List.of(Packaged.profiles().find(demo.placements().get(0).jurisdiction())))
                .judge(demo, MAY), student, YearLabel.of(MAY));
    }

    /** @return the page's drawings, read as a browser that forgives nothing */
    private static Document page(String student) throws Exception {
        StringOutput out = new StringOutput();
        TEMPLATES.render("year/drawings.jte", Map.of("drawings", Drawings.of(view(student), demo()), "checklist", "/checklist", "over", false), out);
        return DocumentBuilderFactory.newInstance().newDocumentBuilder()
                .parse(new InputSource(new StringReader("<main>" + out + "</main>")));
    }

    private static List<Element> all(Element within, String tag) {
        NodeList found = within.getElementsByTagName(tag);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) {
            elements.add((Element) found.item(i));
        }
        return elements;
    }

    private static List<Element> ofClass(Element within, String tag, String name) {
        return all(within, tag).stream().filter(one -> Arrays.asList(one.getAttribute("class").split(" ")).contains(name)).toList();
    }

    private static List<String> texts(Element within, String tag) {
        return all(within, tag).stream().map(one -> one.getTextContent().strip()).toList();
    }

    /** A drawing without words is nothing at all to somebody who listens. */
    @Test
    void everyDrawingHasTitleAndDescription() throws Exception {
        Element page = page(null).getDocumentElement();
        List<Element> drawings = all(page, "svg").stream().filter(svg -> !svg.getAttribute("aria-hidden").equals("true")).toList();
        Set<String> ids = new HashSet<>();

        assertThat(drawings).hasSizeGreaterThan(12 + 3 + 10).allSatisfy(svg -> {
            assertThat(svg.getAttribute("role")).isEqualTo("img");
            String id = svg.getAttribute("aria-labelledby").split(" ")[0];
            assertThat(svg.getAttribute("aria-labelledby").split(" ")).containsExactly(
                    all(svg, "title").get(0).getAttribute("id"), all(svg, "desc").get(0).getAttribute("id"));
            assertThat(texts(svg, "title").get(0)).isNotBlank();
            assertThat(texts(svg, "desc").get(0)).isNotBlank();
            assertThat(ids.add(id)).as(id).isTrue();
        });
    }

    /** An inline style or script is cut off by the page's own policy, and the drawing would stand there without it. */
    @Test
    void nothingNeedsAStyleOrScriptOfItsOwn() throws Exception {
        Element page = page(null).getDocumentElement();

        assertThat(all(page, "*")).noneMatch(element -> element.hasAttribute("style") || element.hasAttribute("onclick")
                || element.getTagName().equals("style") || element.getTagName().equals("script")
                || element.hasAttribute("fill") || element.hasAttribute("stroke"));
    }

    /** 286 of the 320 points of a narrow telephone are left for a drawing; letters are to be 11 high there at least. */
    @Test
    void lettersCanBeReadOnANarrowScreen() throws Exception {
        String css = Files.readString(Path.of("src", "main", "resources", "page", "year.css"));
        Matcher sizes = Pattern.compile("(?:font: |font-size: )([0-9.]+)px").matcher(css);
        double smallest = 99;
        while (sizes.find()) {
            smallest = Math.min(smallest, Double.parseDouble(sizes.group(1)));
        }
        double width = all(page(null).getDocumentElement(), "svg").stream().filter(svg -> svg.hasAttribute("role"))
                .mapToDouble(svg -> Double.parseDouble(svg.getAttribute("viewBox").split(" ")[2])).max().orElseThrow();

        assertThat(smallest).isBetween(11.0, 12.0);
        assertThat(12 * 286 / width).isGreaterThanOrEqualTo(11);
        assertThat(smallest * 286 / SubjectDrawing.WIDTH).isGreaterThanOrEqualTo(11);
    }

    @Test
    void aMonthsMarksAreItsTablesRows() throws Exception {
        List<Element> months = ofClass(page(null).getDocumentElement(), "div", "month");

        assertThat(months).hasSize(12).allSatisfy(month -> {
            Element svg = ofClass(month, "svg", "weeks").get(0);
            List<Element> rows = all(month, "tbody").isEmpty() ? List.of() : all(all(month, "tbody").get(0), "tr");
            long logged = rows.stream().filter(row -> !ofClass(row, "span", "log").isEmpty()).count();
            assertThat(ofClass(svg, "circle", "disc").size() + ofClass(svg, "circle", "no-time").size()).isEqualTo((int) logged);
            long due = rows.stream().filter(row -> row.getTextContent().contains(", due: ")).count();
            assertThat(ofClass(svg, "text", "due")).hasSize((int) due);
        });
    }

    @Test
    void everyDayLeadsToItsLog() throws Exception {
        List<String> links = ofClass(page("wren").getDocumentElement(), "div", "reach").stream()
                .flatMap(reach -> all(reach, "a").stream()).map(link -> link.getAttribute("href")).toList();

        assertThat(links).hasSize(365).startsWith("/log?day=2025-07-01&child=wren").endsWith("/log?day=2026-06-30&child=wren");
    }

    @Test
    void todayIsRingedOnce() throws Exception {
        List<Element> rings = ofClass(page(null).getDocumentElement(), "svg", "weeks").stream()
                .flatMap(svg -> ofClass(svg, "circle", "today").stream()).toList();

        assertThat(rings).hasSize(1);
        assertThat(texts((Element) rings.get(0).getParentNode(), "text")).containsExactly("20");
    }

    @Test
    void theNumbersAtACurveAreThoseOfItsTable() throws Exception {
        List<Element> curves = ofClass(page(null).getDocumentElement(), "div", "curve");

        assertThat(curves).hasSize(5).allSatisfy(curve -> {
            List<String> drawn = texts(ofClass(curve, "svg", "course").get(0), "text");
            List<String> heads = texts(all(curve, "tbody").get(0), "th");
            List<String> cells = texts(all(curve, "tbody").get(0), "td");
            assertThat(drawn).contains(cells.get(heads.indexOf("By May 20, 2026")));
            assertThat(drawn.get(1)).startsWith(cells.get(heads.indexOf("Asked")) + " ");
            for (String key : List.of("By", "Reached on", "There at this pace")) {
                if (heads.contains(key) && cells.get(heads.indexOf(key)).endsWith("2026")) {
                    assertThat(drawn).contains(cells.get(heads.indexOf(key)).replace(", 2026", ""));
                }
            }
        });
    }

    @Test
    void theNumbersUnderASubjectAreThoseOfItsTable() throws Exception {
        Element section = ofClass(page(null).getDocumentElement(), "section", "by-month").get(0);
        List<Element> drawings = ofClass(section, "svg", "months");
        List<Element> rows = all(section, "tbody").stream().flatMap(body -> all(body, "tr").stream()).toList();

        assertThat(drawings).hasSameSizeAs(rows).hasSizeGreaterThan(20);
        for (int i = 0; i < drawings.size(); i++) {
            List<String> drawn = texts(drawings.get(i), "text").stream().filter(text -> !text.matches("[A-Z]")).toList();
            List<String> told = new ArrayList<>();
            for (Element cell : all(rows.get(i), "td").subList(0, 12)) {
                texts(cell, "span").stream().filter(line -> !line.contains("entr")).map(line -> line.replaceAll("[ \u00a0].*", "")).forEach(told::add);
            }
            assertThat(drawn).isEqualTo(told);
        }
    }

    /** Twice the time is twice the area, not four times. */
    @Test
    void theAreaOfADiscGrowsWithTheMinutes() {
        double small = Double.parseDouble(MonthDrawer.radius(90, 360));
        double large = Double.parseDouble(MonthDrawer.radius(360, 360));

        assertThat(large * large / (small * small)).isBetween(3.8, 4.2);
        assertThat(MonthDrawer.radius(900, 360)).isEqualTo(MonthDrawer.radius(360, 360));
    }

    /** Told apart without colour: each status has its own outline, or its own filling. */
    @Test
    void everyStatusHasAShapeOfItsOwn() {
        assertThat(Arrays.stream(Status.values()).filter(status -> status != Status.MET).map(StatusShape::path)).doesNotHaveDuplicates();
    }

    /** A sentence whose key is mistyped would only be missed when a parent first meets it; one that nothing asks for grows stale. */
    @Test
    void everySentenceIsThereAndAskedFor() throws Exception {
        Set<String> keys = new TreeSet<>(Wording.load(PageWords.FILE).keys());
        keys.removeIf(key -> !key.startsWith("year."));
        Set<String> asked = new TreeSet<>();
        Pattern literal = Pattern.compile("\"(year\\.[a-z.-]+)\"");
        try (Stream<Path> files = Files.walk(Path.of("src", "main", "java", "org", "hearthrule", "page", "year"))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Matcher found = literal.matcher(Files.readString(file));
                while (found.find()) {
                    asked.add(found.group(1));
                }
            }
        }

        assertThat(asked).filteredOn(one -> keys.stream().noneMatch(key -> isFor(key, one))).isEmpty();
        assertThat(keys).filteredOn(key -> asked.stream().noneMatch(one -> isFor(key, one))).isEmpty();
    }

    private static boolean isFor(String key, String asked) {
        return key.equals(asked) || key.equals(asked + ".one") || key.equals(asked + ".many")
                || asked.endsWith(".") && key.startsWith(asked);
    }
}
