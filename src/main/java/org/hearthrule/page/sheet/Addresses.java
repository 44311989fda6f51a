package org.hearthrule.page.sheet;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.hearthrule.checklist.Sheet.Reference;

/**
 * Where on the page a sheet's references lead.
 *
 * @param on the day the law is looked at, or null for today
 */
public record Addresses(LocalDate on) {

    public static final Addresses TODAY = new Addresses(null);

    /** @return an address within the page; null where there is nothing to go to */
    public String of(Reference to) {
        if (to instanceof Reference.Law law) {
            return law(law.code(), law.pathway(), "");
        }
        if (to instanceof Reference.WholeLaw whole) {
            return law(whole.code(), null, "");
        }
        if (to instanceof Reference.OtherWays ways) {
            return law(ways.code(), null, "#ways");
        }
        if (to instanceof Reference.Doubts doubts) {
            return law(doubts.code(), null, "#doubts");
        }
        if (to instanceof Reference.Dates dates) {
            return law(dates.code(), null, "#year");
        }
        if (to instanceof Reference.WaysBeside ways) {
            return "/law/" + ways.code() + "/ways" + (on == null ? "" : "?on=" + on);
        }
        if (to instanceof Reference.File file) {
            return ofFile(file.path());
        }
        if (to instanceof Reference.Rule rule) {
            String[] parts = rule.id().split("/");
            return law(parts[0], parts[1], '#' + parts[2]);
        }
        return to instanceof Reference.Mistake mistake ? mistake(mistake.id()) : null;
    }

    /** @return the address of a photo or scan of the book */
    public static String ofFile(String path) {
        return "/attachment?path=" + path(path);
    }

    /** @return the address of a picture of a file of the book, as large as a page sets it */
    public static String ofPicture(String path) {
        return "/preview?path=" + encoded(path);
    }

    /** @return the address of a small picture of a file of the book */
    public static String ofSmallPicture(String path) {
        return "/preview?size=small&path=" + path(path);
    }

    /** @return a value as it stands in the query of an address */
    public static String encoded(String value) {
        return URLEncoder.encode(value, StandardCharsets.UTF_8);
    }

    /** Slashes may stand in a query as they are (RFC 3986, 3.4). */
    private static String path(String path) {
        return encoded(path).replace("%2F", "/");
    }

    private static String mistake(String id) {
        String[] parts = id.split("/");
        return "/law/" + parts[0] + "/mistake/" + parts[1] + '/' + parts[2];
    }

    private String law(String code, String pathway, String anchor) {
        List<String> query = new ArrayList<>();
        if (pathway != null) {
            query.add("pathway=" + encoded(pathway));
        }
        if (on != null) {
            query.add("on=" + on);
        }
        return "/law/" + code + (query.isEmpty() ? "" : '?' + String.join("&", query)) + anchor;
    }
}
