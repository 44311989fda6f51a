package org.hearthrule.input;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Reads typed values out of one mapping and records every problem instead of throwing.
 *
 * <p>A required value that is missing is {@code MISSING-KEY}. A value that cannot be used gives a
 * harmless fallback (null, empty, false or the least number), so that reading can go on: whoever
 * builds something of the values looks at {@link Problems#hasErrors()} first. After the last read
 * {@link #done()} refuses the keys that nobody asked for.
 *
 * <p>Text has no hidden characters ({@code HIDDEN-CHARACTER}), is not blank ({@code BLANK}) and at
 * most {@value #MAX_TEXT} characters ({@code TOO-LONG}). In YAML, text that another reader could take
 * for a number, date, boolean or null must stand in quotes ({@code UNQUOTED}).
 *
 * <p>Not safe for use by several threads at once.
 */
public final class Fields {

    /** The most characters (UTF-16 units) of a text for which no other limit is given. */
    public static final int MAX_TEXT = 4_000;

    private final Place place;
    private final List<Mapping.Entry> entries;
    private final boolean[] used;
    private final List<String> asked = new ArrayList<>();
    private final Problems problems;
    private final String what;
    private final boolean broken;

    private Fields(Node node, Place place, Problems problems, String what) {
        this.place = place;
        this.broken = !(node instanceof Mapping);
        this.entries = broken ? List.of() : ((Mapping) node).entries();
        this.used = new boolean[entries.size()];
        this.problems = problems;
        this.what = what;
    }

    /**
     * Begins to read a mapping. Anything else is {@code NOT-A-MAPPING} and gives fields that are all
     * missing, without a problem for each.
     *
     * @param node the mapping
     * @param problems takes every problem
     * @param what what the mapping describes, with its article, such as "the requirement"
     */
    public static Fields of(Node node, Problems problems, String what) {
        if (!(node instanceof Mapping)) {
            String expected = "keys with values for " + what;
            problems.error(node.place(), "NOT-A-MAPPING", Texts.kind(node), expected, null);
        }
        return new Fields(node, node.place(), problems, what);
    }

    /** Returns whether this really is a mapping. */
    public boolean isMapping() {
        return !broken;
    }

    /** Returns where the mapping begins. */
    public Place place() {
        return place;
    }

    /** Returns where the value of a key begins, or the mapping when the key is missing. */
    public Place place(String key) {
        int index = index(key);
        return index < 0 ? place : entries.get(index).value().place();
    }

    /** Returns whether a key is there. Counts as asking for it. */
    public boolean has(String key) {
        return find(key) != null;
    }

    /** Records an error at {@link #place(String)}; see {@link Problems#error}. */
    public void error(String key, String code, String found, String expected, String perhaps) {
        problems.error(place(key), code, found, expected, perhaps);
    }

    /** Returns the collection into which problems go. */
    public Problems problems() {
        return problems;
    }

    /** Returns all keys with their values, checks the keys as text and counts as asking for all. */
    public List<Mapping.Entry> entries() {
        for (int i = 0; i < used.length; i++) {
            used[i] = true;
            Texts.text(entries.get(i).key(), MAX_TEXT, problems);
        }
        return entries;
    }

    /** Returns a required value of any kind, or null. */
    public Node node(String key) {
        return required(key, "a value");
    }

    /** Returns a value of any kind. */
    public Optional<Node> optionalNode(String key) {
        return Optional.ofNullable(find(key));
    }

    /** Returns a required text of at most {@value #MAX_TEXT} characters, or null. */
    public String text(String key) {
        return text(key, MAX_TEXT);
    }

    /** Returns a required text of at most so many characters, or null. */
    public String text(String key, int limit) {
        Node node = required(key, "text");
        return node == null ? null : Texts.text(node, limit, problems);
    }

    /** Returns a text of at most {@value #MAX_TEXT} characters. */
    public Optional<String> optionalText(String key) {
        return optionalText(key, MAX_TEXT);
    }

    /** Returns a text of at most so many characters. */
    public Optional<String> optionalText(String key, int limit) {
        Node node = find(key);
        return node == null ? Optional.empty() : Optional.ofNullable(Texts.text(node, limit, problems));
    }

    /** Returns the texts of a list, or a single text as a list of one; empty when the key is missing. */
    public List<String> texts(String key) {
        Node node = find(key);
        if (node == null) {
            return List.of();
        }
        List<String> texts = new ArrayList<>();
        for (Node item : node instanceof Listing ? ((Listing) node).items() : List.of(node)) {
            String text = Texts.text(item, MAX_TEXT, problems);
            if (text != null) {
                texts.add(text);
            }
        }
        return List.copyOf(texts);
    }

    /** Returns a required date (ISO 8601, {@code 2026-09-01}, in quotes), or null: {@code WRONG-DATE}. */
    public LocalDate date(String key) {
        Node node = required(key, "a date");
        return node == null ? null : dateOf(node);
    }

    /** Returns a date (ISO 8601, {@code 2026-09-01}, in quotes): {@code WRONG-DATE}. */
    public Optional<LocalDate> optionalDate(String key) {
        Node node = find(key);
        return node == null ? Optional.empty() : Optional.ofNullable(dateOf(node));
    }

    private LocalDate dateOf(Node node) {
        Scalar scalar = Values.quoted(node, problems);
        return scalar == null ? null : Dates.date(scalar, problems);
    }

    /** Returns a required month and day ({@code 09-01}, in quotes) other than 29 February, or null. */
    public MonthDay monthDay(String key) {
        return monthDay(key, false);
    }

    /**
     * Returns a required month and day ({@code 09-01}, in quotes), or null: {@code WRONG-MONTH-DAY}.
     *
     * @param key the key
     * @param leapDay whether 29 February is allowed
     */
    public MonthDay monthDay(String key, boolean leapDay) {
        Node node = required(key, "a month and day");
        Scalar scalar = node == null ? null : Values.quoted(node, problems);
        return scalar == null ? null : Dates.monthDay(scalar, leapDay, problems);
    }

    /** Returns a month and day ({@code 09-01}, in quotes) other than 29 February. */
    public Optional<MonthDay> optionalMonthDay(String key) {
        return find(key) == null ? Optional.empty() : Optional.ofNullable(monthDay(key));
    }

    /**
     * Returns a required whole number written in plain digits: {@code NOT-AN-INTEGER}, {@code
     * OUT-OF-RANGE}. The fallback is the least number allowed.
     *
     * @param key the key
     * @param min the least number allowed
     * @param max the greatest number allowed
     */
    public int integer(String key, int min, int max) {
        Node node = required(key, "a whole number");
        return node == null ? min : Values.integer(node, min, max, problems).orElse(min);
    }

    /** Returns a whole number, as {@link #integer} does; empty when it is missing or wrong. */
    public OptionalInt optionalInteger(String key, int min, int max) {
        Node node = find(key);
        return node == null ? OptionalInt.empty() : Values.integer(node, min, max, problems);
    }

    /** Returns a required yes or no (YAML, unquoted) or true or false (JSON): {@code NOT-YES-OR-NO}. */
    public boolean yesNo(String key) {
        Node node = required(key, "yes or no");
        return node != null && Values.yesNo(node, problems).orElse(false);
    }

    /** Returns a yes or no, as {@link #yesNo} does; empty when it is missing or wrong. */
    public Optional<Boolean> optionalYesNo(String key) {
        Node node = find(key);
        return node == null ? Optional.empty() : Values.yesNo(node, problems);
    }

    /**
     * Returns a required constant, or null: {@code UNKNOWN-VALUE}. {@code TWO_WORDS} is written {@code
     * two-words}.
     */
    public <E extends Enum<E>> E oneOf(String key, Class<E> type) {
        Node node = required(key, "one of a few words");
        return node == null ? null : Values.oneOf(node, type, problems);
    }

    /** Returns a constant, as {@link #oneOf(String, Class)} does. */
    public <E extends Enum<E>> Optional<E> optionalOneOf(String key, Class<E> type) {
        Node node = find(key);
        return node == null ? Optional.empty() : Optional.ofNullable(Values.oneOf(node, type, problems));
    }

    /** Returns a required text that is one of those given, or null: {@code UNKNOWN-VALUE}. */
    public String oneOf(String key, Collection<String> known) {
        Node node = required(key, "one of a few words");
        return node == null ? null : Values.oneOf(node, known, problems);
    }

    /** Returns a text that is one of those given, as {@link #oneOf(String, Collection)} does. */
    public Optional<String> optionalOneOf(String key, Collection<String> known) {
        Node node = find(key);
        return node == null ? Optional.empty() : Optional.ofNullable(Values.oneOf(node, known, problems));
    }

    /**
     * Returns a required mapping; never null. When it is missing or no mapping, all its fields are
     * missing, without a problem for each.
     *
     * @param key the key
     * @param childWhat what the mapping describes, with its article
     */
    public Fields fields(String key, String childWhat) {
        Node node = required(key, "keys with values");
        return node == null ? new Fields(null, place, problems, childWhat) : of(node, problems, childWhat);
    }

    /** Returns a mapping; empty when it is missing or no mapping ({@code NOT-A-MAPPING}). */
    public Optional<Fields> optionalFields(String key, String childWhat) {
        Node node = find(key);
        Fields fields = node == null ? null : of(node, problems, childWhat);
        return fields == null || fields.broken ? Optional.empty() : Optional.of(fields);
    }

    /**
     * Returns the mappings of a list ({@code NOT-A-LIST}); empty when the key is missing. An item that
     * is no mapping is recorded and left out.
     *
     * @param key the key
     * @param childWhat what each mapping describes, with its article
     */
    public List<Fields> listOfFields(String key, String childWhat) {
        Node node = find(key);
        if (node == null) {
            return List.of();
        }
        if (!(node instanceof Listing)) {
            problems.error(
                    node.place(), "NOT-A-LIST", Texts.kind(node), "a list", "each item needs `- ` before it");
            return List.of();
        }
        List<Node> items = ((Listing) node).items();
        List<Fields> list = new ArrayList<>(items.size());
        for (int i = 0; i < items.size(); i++) {
            Fields fields = of(items.get(i), problems, childWhat);
            if (!fields.broken) {
                list.add(fields);
            }
        }
        return list;
    }

    /** Records each key that nobody asked for: {@code UNKNOWN-KEY}. */
    public void done() {
        for (int i = 0; i < used.length; i++) {
            if (!used[i]) {
                unknown(entries.get(i).key());
            }
        }
    }

    private void unknown(Scalar key) {
        List<String> known = new ArrayList<>();
        for (String name : asked) {
            if (!known.contains(name)) {
                known.add(name);
            }
        }
        String perhaps = Nearest.of(key.text(), known)
                .map(name -> "you meant `" + name + "`")
                .orElse(null);
        problems.error(
                key.place(),
                "UNKNOWN-KEY",
                "unknown key `" + Shown.cut(key.text()) + "` in " + what,
                Values.list(known, Integer.MAX_VALUE, "no keys", '`'),
                perhaps);
    }

    private Node required(String key, String expected) {
        Node node = find(key);
        if (node == null && !broken) {
            problems.error(place, "MISSING-KEY", "no `" + key + "` in " + what, expected + " for `" + key + "`", null);
        }
        return node;
    }

    private Node find(String key) {
        asked.add(key);
        int index = index(key);
        if (index < 0) {
            return null;
        }
        used[index] = true;
        return entries.get(index).value();
    }

    private int index(String key) {
        for (int i = 0; i < used.length; i++) {
            if (entries.get(i).key().text().equals(key)) {
                return i;
            }
        }
        return -1;
    }
}
