package org.hearthrule.page.bench;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Finds the pages by going from link to link, as somebody does who clicks on everything. Addresses that differ in a
 * year, a child, a record or a state only are variants of one page, and of each page some are kept.
 */
final class Walk {

    /** More than there are years in the book. */
    private static final int VARIANTS = 20;
    private static final Pattern LINK = Pattern.compile("(?:href|src)=\"(/[^\"#]*)");
    private static final Pattern VARYING = Pattern.compile("/(us-[a-z]{2}|\\d{4}-\\d{2}|[a-z]+-\\d+)(?=/|$)");
    private static final Pattern RULE = Pattern.compile("(/mistake)/[^/]+/[^/]+");
    private static final Pattern CALENDAR = Pattern.compile("/calendar/[^/]+");
    private static final Pattern ASSET = Pattern.compile("/assets/[^?]+");

    private final Map<String, List<String>> pages = new TreeMap<>();
    private final Set<String> seen = new HashSet<>();
    private final Deque<String> next = new ArrayDeque<>();
    private final Opened page;

    private Walk(Opened page) {
        this.page = page;
    }

    /**
     * @param also addresses to begin with, such as searches, to which no link leads
     * @return the variants of each page, by what the page is called in the table
     */
    static Map<String, List<String>> of(Opened page, List<String> also) {
        Walk walk = new Walk(page);
        also.forEach(walk::found);
        while (!walk.next.isEmpty()) {
            walk.look(walk.next.poll());
        }
        walk.pages.values().removeIf(List::isEmpty);
        return walk.pages;
    }

    private void look(String path) {
        Opened.Reply reply = page.get(path);
        if (reply.location() != null) {
            pages.get(name(path)).remove(path);
            found(reply.location());
        } else if (reply.status() == 404) {
            pages.get(name(path)).remove(path);
            System.out.println("A link leads nowhere: " + path);
        } else if (reply.status() != 200) {
            throw new IllegalStateException(path + " is answered with " + reply.status());
        } else {
            Matcher links = LINK.matcher(reply.body());
            while (links.find()) {
                found(links.group(1).replace("&amp;", "&"));
            }
        }
    }

    private void found(String path) {
        List<String> variants = pages.computeIfAbsent(name(path), name -> new ArrayList<>());
        if (variants.size() < VARIANTS && seen.add(path)) {
            variants.add(path);
            next.add(path);
        }
    }

    /** @return for example {@code /log/{}/{}?back} */
    private static String name(String address) {
        String[] halves = address.split("\\?", 2);
        String path = VARYING.matcher(halves[0]).replaceAll("/{}");
        path = RULE.matcher(path).replaceAll("$1/{}/{}");
        path = ASSET.matcher(CALENDAR.matcher(path).replaceAll("/calendar/{}")).replaceAll("/assets/{}");
        if (halves.length == 1 || path.startsWith("/assets")) {
            return path;
        }
        List<String> names = new ArrayList<>();
        for (String one : halves[1].split("&")) {
            if (!one.endsWith("=")) {
                names.add(one.split("=", 2)[0]);
            }
        }
        return path + '?' + String.join("&", names.stream().distinct().sorted().toList());
    }
}
