package org.hearthrule.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What WCAG 2.2 asks of a page's bones, as far as it can be read off its text; a browser's check goes further. */
public final class Accessible {

    private Accessible() { }

    /** Techniques H42 (headings), H39, H51 and H63 (tables), H44 (labels), H37 (pictures); criterion 4.1.1's ids. */
    public static void check(String html, String page) {
        List<Integer> levels = all(html, "<h([1-6])\\b", 1).stream().map(Integer::valueOf).toList();
        assertThat(levels).as(page + ": one h1 first").startsWith(1).containsOnlyOnce(1);
        for (int i = 1; i < levels.size(); i++) {
            assertThat(levels.get(i)).as(page + ": heading " + (i + 1)).isLessThanOrEqualTo(levels.get(i - 1) + 1);
        }
        assertThat(all(html, "<table\\b[^>]*>\\s*(<\\w+)", 1)).as(page + ": captions").allMatch("<caption"::equals);
        assertThat(all(html, "<th\\b([^>]*)>", 1)).as(page + ": scopes").allMatch(attributes -> attributes.contains("scope="));
        List<String> labels = all(html, "<label for=\"([^\"]+)\"", 1);
        assertThat(all(html, "<(?:input|select|textarea)\\b(?![^>]*type=\"hidden\")[^>]*\\bid=\"([^\"]+)\"", 1)).as(page + ": labels")
                .allMatch(labels::contains);
        assertThat(all(html, "<img\\b([^>]*)>", 1)).as(page + ": words for pictures").allMatch(attributes -> attributes.contains("alt="));
        assertThat(all(html, "\\bid=\"([^\"]+)\"", 1)).as(page + ": ids").doesNotHaveDuplicates();
        List<String> ids = all(html, "\\bid=\"([^\"]+)\"", 1);
        assertThat(all(html, "(?:aria-labelledby|aria-describedby)=\"([^\"]+)\"", 1)).as(page + ": what ids are meant")
                .allMatch(names -> ids.containsAll(List.of(names.split(" "))));
        assertThat(all(html, "href=\"#([^\"]+)\"", 1)).as(page + ": parts that are led to").allMatch(ids::contains);
    }

    private static List<String> all(String html, String pattern, int group) {
        List<String> found = new ArrayList<>();
        Matcher matcher = Pattern.compile(pattern).matcher(html);
        while (matcher.find()) {
            found.add(matcher.group(group));
        }
        return found;
    }
}
