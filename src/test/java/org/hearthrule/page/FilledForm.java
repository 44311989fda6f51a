package org.hearthrule.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A form of a page as a browser sends it: what stands in its fields, and what somebody types or ticks instead. */
public final class FilledForm {

    private static final Pattern FORM = Pattern
            .compile("(?s)<form method=\"post\" action=\"([^\"]+)\"[^>]*>(.*?)</form>");
    private static final Pattern CONTROL = Pattern.compile("(?s)<input\\b([^>]*)>|<select\\b([^>]*)>(.*?)</select>"
            + "|<textarea\\b([^>]*)>(.*?)</textarea>");
    private static final Pattern OPTION = Pattern.compile("<option\\b([^>]*)>");
    private static final Pattern ATTRIBUTE = Pattern.compile("([a-z-]+)(?:=\"([^\"]*)\")?");

    private final String action;
    private final Map<String, List<String>> values = new LinkedHashMap<>();

    private FilledForm(String action, String content) {
        this.action = action;
        Matcher control = CONTROL.matcher(content);
        while (control.find()) {
            if (control.group(1) != null) {
                input(attributes(control.group(1)));
            } else if (control.group(2) != null) {
                add(attributes(control.group(2)).get("name"), selected(control.group(3)));
            } else {
                add(attributes(control.group(4)).get("name"), plain(control.group(5)));
            }
        }
        values.remove("token");
    }

    /**
     * @param holding name and value of a field that tells it from others with the same action; none: the only one
     */
    public static FilledForm of(Visit.Reply page, String action, String... holding) {
        List<FilledForm> found = new ArrayList<>();
        Matcher form = FORM.matcher(page.body());
        while (form.find()) {
            FilledForm one = new FilledForm(plain(form.group(1)), form.group(2));
            boolean meant = holding.length == 0 || List.of(holding[1]).equals(one.values.get(holding[0]));
            if (one.action.equals(action) && meant) {
                found.add(one);
            }
        }
        assertThat(found).as("forms to %s on\n%s", action, page.text()).hasSize(1);
        return found.get(0);
    }

    /** Types or ticks something in the place of what stands there; no value empties the field. */
    public FilledForm with(String name, String... typed) {
        assertThat(values).as("fields of the form").containsKey(name);
        values.put(name, List.of(typed));
        return this;
    }

    /** Presses a button that has a name. */
    public FilledForm press(String name, String value) {
        values.put(name, List.of(value));
        return this;
    }

    /** @return what stands in a field, or is ticked */
    public List<String> of(String name) {
        assertThat(values).as("fields of the form").containsKey(name);
        return values.get(name);
    }

    /** @return what the page answers */
    public Visit.Reply send(Visit visit) {
        List<String> all = new ArrayList<>();
        values.forEach((name, typed) -> typed.forEach(value -> all.addAll(List.of(name, value))));
        return visit.post(action, all.toArray(String[]::new));
    }

    private void input(Map<String, String> input) {
        boolean choice = "radio".equals(input.get("type")) || "checkbox".equals(input.get("type"));
        if (!choice || input.containsKey("checked")) {
            add(input.get("name"), input.get("value"));
        } else {
            values.computeIfAbsent(input.get("name"), name -> new ArrayList<>());
        }
    }

    private void add(String name, String value) {
        values.computeIfAbsent(name, one -> new ArrayList<>()).add(value);
    }

    private static String selected(String options) {
        Matcher option = OPTION.matcher(options);
        while (option.find()) {
            Map<String, String> attributes = attributes(option.group(1));
            if (attributes.containsKey("selected")) {
                return attributes.get("value");
            }
        }
        return "";
    }

    private static Map<String, String> attributes(String text) {
        Map<String, String> all = new LinkedHashMap<>();
        Matcher attribute = ATTRIBUTE.matcher(text);
        while (attribute.find()) {
            all.put(attribute.group(1), attribute.group(2) == null ? "" : plain(attribute.group(2)));
        }
        return all;
    }

    private static String plain(String html) {
        return html.replace("&lt;", "<").replace("&gt;", ">").replace("&#34;", "\"").replace("&#39;", "'")
                .replace("&amp;", "&");
    }
}
