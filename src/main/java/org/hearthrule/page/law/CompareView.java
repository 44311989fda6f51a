package org.hearthrule.page.law;

import java.util.ArrayList;
import java.util.List;
import org.hearthrule.checklist.Comparison;
import org.hearthrule.checklist.Sheet;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Option;
import org.hearthrule.page.sheet.Addresses;

/**
 * Two laws side by side as the template sets them.
 *
 * @param states     to choose from
 * @param children   of the open book, possibly none
 * @param comparison null while the two are not chosen
 * @param sheet      the same in words, or null
 */
public record CompareView(Form form, List<Option> states, List<Option> children, Comparison comparison, Sheet sheet,
                          Addresses addresses) {

    /**
     * The other ways of one of the two.
     *
     * @param law  its name
     * @param ways each with the address of the same comparison for it
     */
    public record Ways(String law, List<Option> ways) { }

    /** @return the ways of each side that can be told instead; none where there is only one */
    public List<Ways> otherWays() {
        List<Ways> all = new ArrayList<>();
        add(all, comparison.here(), "way-here", !form.raw("child").isEmpty());
        add(all, comparison.there(), "way-there", false);
        return all;
    }

    /** A child of the book is taught in the way that the book says. */
    private void add(List<Ways> all, Comparison.Side side, String name, boolean fixed) {
        List<Option> ways = side.law().pathwaysOn(comparison.asOf()).stream().filter(way -> !way.equals(side.pathway()))
                .map(way -> Option.of(address(name, way.slug()), way.name())).toList();
        if (!fixed && !ways.isEmpty()) {
            all.add(new Ways(side.law().name(), ways));
        }
    }

    private String address(String name, String way) {
        List<String> query = new ArrayList<>();
        query.add("here=" + comparison.here().law().slug());
        query.add("there=" + comparison.there().law().slug());
        for (String kept : List.of("child", "moves", "on", "way-here", "way-there")) {
            String value = kept.equals(name) ? way : form.raw(kept);
            if (value.matches("[A-Za-z0-9-]+")) {
                query.add(kept + '=' + value);
            }
        }
        return "/compare?" + String.join("&", query);
    }
}
