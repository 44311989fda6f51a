package org.hearthrule.page.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.io.StringReader;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import org.hearthrule.checklist.Comparison;
import org.hearthrule.checklist.CompareSheet;
import org.hearthrule.checklist.LawGuide;
import org.hearthrule.checklist.LawInFull;
import org.hearthrule.checklist.LawList;
import org.hearthrule.checklist.Sheet;
import org.hearthrule.law.Packaged;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Requirement;
import org.hearthrule.law.Source;
import org.hearthrule.terms.Wording;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** The sheets that a terminal shows, set for a browser. */
class SheetPageTest {

    private static final LocalDate DAY = LocalDate.of(2026, 9, 1);
    private static final TemplateEngine TEMPLATES = TemplateEngine.createPrecompiled(null, ContentType.Html,
            SheetPageTest.class.getClassLoader(), "org.hearthrule.page.templates");

    private static String html(Sheet sheet) {
        StringOutput out = new StringOutput();
        TEMPLATES.render("sheet/sheet.jte", Map.of("sheet", sheet, "addresses", Addresses.TODAY), out);
        return out.toString();
    }

    /** A fragment that closes what it opens is XML too, and read as strictly. */
    private static Document parsed(Sheet sheet) throws Exception {
        String whole = "<main>" + html(sheet) + "</main>";
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(whole)));
    }

    private static List<Element> all(Document page, String name) {
        List<Element> found = new ArrayList<>();
        NodeList nodes = page.getElementsByTagName(name);
        for (int i = 0; i < nodes.getLength(); i++) {
            found.add((Element) nodes.item(i));
        }
        return found;
    }

    private static String text(Document page) {
        return page.getDocumentElement().getTextContent().replaceAll("\\s+", " ");
    }

    @Test
    void everyLawInFullNamesEachDutyWithItsSection() throws Exception {
        for (Profile law : Packaged.all()) {
            String text = text(parsed(LawInFull.of(law, DAY, Wording.english())));
            for (Pathway pathway : law.pathways()) {
                for (Requirement asked : pathway.asks()) {
                    if (pathway.validity().inForceOn(DAY) && asked.validity().inForceOn(DAY)) {
                        assertThat(text).contains(asked.title(), asked.cite().words());
                    }
                }
            }
        }
    }

    /** WCAG 2.2, technique H42: a level that is left out tells somebody who listens of a part that is not there. */
    @Test
    void headingsAreInOrder() throws Exception {
        for (Profile law : Packaged.all()) {
            Document page = parsed(LawInFull.of(law, DAY, Wording.english()));
            int before = 0;
            NodeList nodes = page.getElementsByTagName("*");
            for (int i = 0; i < nodes.getLength(); i++) {
                String name = nodes.item(i).getNodeName();
                if (name.matches("h[1-6]")) {
                    int level = name.charAt(1) - '0';
                    assertThat(level).as(law.code()).isLessThanOrEqualTo(before + 1);
                    before = level;
                }
            }
            assertThat(all(page, "h1")).hasSize(1);
        }
    }

    /** A browser that followed an address would tell the other side where it came from. */
    @Test
    void addressesOfSourcesAreLinksThatTellNothing() throws Exception {
        Profile law = Packaged.profiles().find("al");
        List<Element> out = all(parsed(LawInFull.of(law, DAY, Wording.english())), "a").stream()
                .filter(a -> a.getAttribute("href").startsWith("http")).toList();

        assertThat(out).hasSizeGreaterThanOrEqualTo((int) law.sources().values().stream().map(Source::address)
                .filter(address -> address.contains("http")).count());
        assertThat(out).extracting(a -> a.getAttribute("href")).as("the address in a sentence, without its comma")
                .contains("https://law.justia.com/codes/alabama/title-16/chapter-6j/");
        assertThat(out).allMatch(a -> a.getAttribute("rel").equals("noreferrer"));
    }

    /** What is typed on a terminal is of no use in a browser. */
    @Test
    void guideLeadsWithLinksInsteadOfCommands() throws Exception {
        Profile law = Packaged.profiles().find("pa");
        Document page = parsed(LawGuide.of(law, law.usualPathway(), DAY, Wording.english()));

        assertThat(text(page)).doesNotContain("--", "hearthrule ", "private-tutor").contains("Private tutor: ");
        assertThat(all(page, "a")).extracting(a -> a.getAttribute("href")).contains("/law/us-pa?pathway=private-tutor",
                "/law/us-pa#doubts", "/law/us-pa#year");
    }

    /** WCAG 2.2, techniques H39, H51 and H63: a table with a caption, and heads that say what they head. */
    @Test
    void tablesHaveCaptionsAndHeads() throws Exception {
        Profile here = Packaged.profiles().find("oh");
        Profile there = Packaged.profiles().find("vt");
        Comparison two = new Comparison(DAY, Comparison.Side.of(here, here.usualPathway(), DAY),
                Comparison.Side.of(there, there.usualPathway(), DAY), null);
        for (Sheet sheet : List.of(LawList.sheet(Packaged.all(), Wording.english()), CompareSheet.of(two, Wording.english()))) {
            Document page = parsed(sheet);

            assertThat(all(page, "table")).hasSize(1);
            assertThat(all(page, "caption")).hasSize(1).noneMatch(caption -> caption.getTextContent().isBlank());
            assertThat(all(page, "th")).isNotEmpty().allMatch(head -> head.getAttribute("scope").matches("row|col"));
        }
    }

    /** A law file comes from volunteers; its words must not become the page's own. */
    @Test
    void wordsOfALawAreNeverMarkup() throws Exception {
        Sheet sheet = new Sheet("<b>Title</b>", List.of(new Sheet.Heading(2, "<script>alert(1)</script>", "", "a\"b"),
                new Sheet.Items(List.of(new Sheet.Item(Sheet.Plain.DASH, List.of(new Sheet.Address("https://a.example\"onclick=\"b"),
                        new Sheet.Address("javascript:alert(1)")), List.of(), List.of(), null)))), List.of());

        Document page = parsed(sheet);

        assertThat(all(page, "*")).extracting(Element::getNodeName).containsOnly("main", "h1", "h2", "ul", "li", "a");
        assertThat(all(page, "a")).extracting(a -> a.getAttribute("href")).containsExactly("https://a.example");
        assertThat(text(page)).contains("<script>alert(1)</script>", "javascript:alert(1)");
    }
}
