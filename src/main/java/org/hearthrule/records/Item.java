package org.hearthrule.records;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.Set;
import org.hearthrule.input.Fields;
import org.hearthrule.input.Listing;
import org.hearthrule.input.Node;
import org.hearthrule.input.Phrases;
import org.hearthrule.input.Place;
import org.hearthrule.input.Problems;
import org.hearthrule.input.Scalar;
import org.hearthrule.input.Single;

/**
 * One object of a book's file: {@link Fields} in the manner of the book. A value that may be left out may also be
 * {@code null}, and a text that may be left out may be {@code ""}; both mean that nothing was entered.
 */
final class Item {

    private static final int LONGEST_NUMBER = 20;

    private final Fields fields;
    private final Names names;

    Item(Fields fields, Names names) {
        this.fields = fields;
        this.names = names;
    }

    Fields fields() {
        return fields;
    }

    Place place() {
        return fields.place();
    }

    Place place(String key) {
        return fields.place(key);
    }

    Problems problems() {
        return fields.problems();
    }

    void done() {
        fields.done();
    }

    /** Returns a required text, or null. */
    String text(String key) {
        return fields.text(key);
    }

    /** Returns a text, or null when nothing was entered. */
    String textOrNull(String key) {
        Node node = fields.optionalNode(key).orElse(null);
        boolean nothing = node == null || node instanceof Scalar scalar
                && (scalar.form() == Scalar.Form.NULL || scalar.text().isEmpty());
        return nothing ? null : fields.optionalText(key).orElse(null);
    }

    /** Returns a text that must be one of a few words when it is entered, or null. */
    String oneOf(String key, Collection<String> known) {
        return fields.oneOf(key, known);
    }

    LocalDate date(String key) {
        return fields.date(key);
    }

    LocalDate dateOrNull(String key) {
        return isGiven(key) ? fields.optionalDate(key).orElse(null) : null;
    }

    /** Returns a day and time of day, or null. */
    LocalDateTime timeOrNull(String key) {
        if (!isGiven(key)) {
            return null;
        }
        String text = fields.text(key);
        LocalDateTime time = text == null ? null : Times.parse(text);
        if (text != null && time == null) {
            fields.error(key, "WRONG-TIME", Phrases.quoted(text), "a day and time such as \"2026-09-01T20:15\"", null);
        }
        return time;
    }

    /** Returns a whole number in a range; empty when nothing was entered or it is wrong. */
    OptionalInt integer(String key, int min, int max) {
        return isGiven(key) ? fields.optionalInteger(key, min, max) : OptionalInt.empty();
    }

    /** Returns a required number, or null. */
    BigDecimal number(String key) {
        Node node = fields.node(key);
        if (node == null) {
            return null;
        }
        String text = node instanceof Scalar scalar ? scalar.text() : "";
        boolean number = node instanceof Scalar scalar && scalar.form() == Scalar.Form.NUMBER;
        boolean plain = text.length() <= LONGEST_NUMBER && text.indexOf('e') < 0 && text.indexOf('E') < 0;
        if (number && plain) {
            return new BigDecimal(text);
        }
        boolean quoted = !number && text.matches("-?(0|[1-9][0-9]{0,8})(\\.[0-9]{1,8})?");
        fields.error(key, "NOT-A-NUMBER", found(node), "a number such as 54 or 3.5, without quotes",
                quoted ? "write " + text : null);
        return null;
    }

    /** Returns a required true or false; false when it is wrong. */
    boolean yesNo(String key) {
        return fields.node(key) != null && Boolean.TRUE.equals(yesNoOrNull(key));
    }

    /** Returns true or false, or null when nothing was entered. */
    Boolean yesNoOrNull(String key) {
        if (!isGiven(key)) {
            return null;
        }
        Node node = fields.node(key);
        if (node instanceof Scalar scalar && scalar.form() == Scalar.Form.BOOLEAN) {
            return scalar.text().equals("true");
        }
        String text = node instanceof Scalar scalar ? scalar.text().toLowerCase(Locale.ROOT) : "";
        String meant = switch (text) {
            case "true", "yes", "y" -> "write true";
            case "false", "no", "n" -> "write false";
            default -> null;
        };
        fields.error(key, "NOT-TRUE-OR-FALSE", found(node), "true or false, without quotes", meant);
        return null;
    }

    /** Returns the texts of a list; empty when it is left out. */
    List<String> texts(String key) {
        return list(key) == null ? List.of() : fields.texts(key);
    }

    /** Returns the dates of a list; empty when it is left out. */
    List<LocalDate> dates(String key) {
        Listing list = list(key);
        if (list == null) {
            return List.of();
        }
        List<LocalDate> dates = new ArrayList<>(list.items().size());
        for (Node node : list.items()) {
            LocalDate date = Single.of(node, problems()).date(Single.KEY);
            if (date != null) {
                dates.add(date);
            }
        }
        return List.copyOf(dates);
    }

    /** Returns the objects of a list, null when it is left out. An entry that is no object is recorded and left out. */
    List<Item> itemsOrNull(String key, String what) {
        Listing list = list(key);
        if (list == null) {
            return null;
        }
        List<Item> items = new ArrayList<>(list.items().size());
        for (Node node : list.items()) {
            Fields entry = Fields.of(node, problems(), what);
            if (entry.isMapping()) {
                items.add(new Item(entry, names));
            }
        }
        return items;
    }

    /** Returns the objects of a list; empty when it is left out. */
    List<Item> items(String key, String what) {
        List<Item> items = itemsOrNull(key, what);
        return items == null ? List.of() : items;
    }

    /** Returns a required student's id, or null. */
    String student(String key) {
        String id = fields.text(key);
        if (id != null) {
            names.checkStudent(id, fields.place(key), problems());
        }
        return id;
    }

    /** Returns a student's id, or null when nothing was entered. */
    String studentOrNull(String key) {
        return textOrNull(key) == null ? null : student(key);
    }

    /** Returns ids of students; empty when they are left out. */
    List<String> students(String key) {
        return checked(key, names::checkStudent);
    }

    /** Returns ids of at least one student. */
    List<String> atLeastOneStudent(String key) {
        List<String> ids = fields.node(key) == null ? List.of() : students(key);
        if (ids.isEmpty() && fields.has(key) && list(key) != null && list(key).items().isEmpty()) {
            fields.error(key, "NO-STUDENT", "an empty list", "the id of at least one student", null);
        }
        return ids;
    }

    List<String> subjects(String key) {
        return checked(key, names::checkSubject);
    }

    /** Returns a file within the book's folder, or null when nothing was entered. */
    String fileOrNull(String key) {
        String path = textOrNull(key);
        if (path != null) {
            BookPaths.isInside(path, fields.place(key), problems());
        }
        return path;
    }

    List<String> files(String key) {
        return checked(key, BookPaths::isInside);
    }

    /** Returns the id of a person, or null when nothing was entered. */
    String personOrNull(String key) {
        String id = textOrNull(key);
        if (id != null) {
            names.checkPerson(id, fields.place(key), problems());
        }
        return id;
    }

    /** Returns the id of a student or a person, or null when nothing was entered. */
    String anybodyOrNull(String key) {
        String id = textOrNull(key);
        if (id != null) {
            names.checkAnybody(id, fields.place(key), problems());
        }
        return id;
    }

    private List<String> checked(String key, Check check) {
        Listing list = list(key);
        if (list == null) {
            return List.of();
        }
        List<String> texts = fields.texts(key);
        Set<String> seen = texts.size() < 2 ? null : new HashSet<>();
        for (Node node : list.items()) {
            if (!(node instanceof Scalar scalar) || !texts.contains(scalar.text())) {
                continue;
            }
            check.check(scalar.text(), scalar.place(), problems());
            if (seen != null && !seen.add(scalar.text())) {
                problems().error(scalar.place(), "REPEATED-VALUE", "a second " + Phrases.quoted(scalar.text()),
                        "each value once", "remove one of the two");
            }
        }
        return texts;
    }

    private Listing list(String key) {
        Node node = fields.optionalNode(key).orElse(null);
        if (node == null || node instanceof Listing) {
            return (Listing) node;
        }
        boolean text = node instanceof Scalar scalar && scalar.form() == Scalar.Form.QUOTED;
        boolean nothing = node instanceof Scalar scalar && scalar.form() == Scalar.Form.NULL;
        fields.error(key, "NOT-A-LIST", found(node), "a list in square brackets",
                text ? "write [" + found(node) + "]" : nothing ? "leave the key out" : null);
        return null;
    }

    private boolean isGiven(String key) {
        Node node = fields.optionalNode(key).orElse(null);
        return node != null && !(node instanceof Scalar scalar && scalar.form() == Scalar.Form.NULL);
    }

    private static String found(Node node) {
        if (node instanceof Scalar scalar) {
            return scalar.form() == Scalar.Form.QUOTED ? Phrases.quoted(scalar.text()) : scalar.text();
        }
        return node instanceof Listing ? "a list" : "keys with values";
    }

    /** Records what is wrong with one text of a list. */
    private interface Check {
        void check(String text, Place place, Problems problems);
    }
}
