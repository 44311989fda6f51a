package org.hearthrule.law;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.hearthrule.input.Fields;
import org.hearthrule.input.Listing;
import org.hearthrule.input.Mapping;
import org.hearthrule.input.Node;
import org.hearthrule.input.Place;
import org.hearthrule.input.Scalar;

/** Reading that several parts of a profile share. Every method records what is wrong and returns a harmless value. */
final class Forms {

    static final int LONGEST_NAME = 60;
    static final int LONGEST_TITLE = 120;
    static final int LONGEST_LINE = 300;
    static final int LONGEST_REMARK = 600;
    static final int LONGEST_TEXT = 1_200;

    private static final int LONGEST_NUMBER = 9;

    private Forms() { }

    /**
     * Finds the one key, of those that exclude one another, that a mapping holds.
     *
     * @param node     the mapping {@code fields} were made of
     * @param forms    the keys that exclude one another
     * @param besides  other keys that may stand there
     * @param none     fault when there is none and no unknown key explains it
     * @param several  fault when there are several
     * @return the key, or null
     */
    static String only(Node node, Fields fields, List<String> forms, List<String> besides, ProfileFault none,
                       ProfileFault several, Scope scope) {
        String first = null;
        boolean alone = true;
        for (String form : forms) {
            if (!fields.has(form)) {
                continue;
            }
            if (first == null) {
                first = form;
            } else {
                alone = false;
                scope.error(fields.place(form), several, Say.code(form) + " beside " + Say.code(first),
                        "only one of the two", null);
            }
        }
        if (first == null && fields.isMapping() && allKnown((Mapping) node, besides)) {
            scope.error(fields.place(), none, "none of the keys that say what it is", Say.oneOf(forms), null);
        }
        if (first == null || !alone) {
            // what belongs to a form is not to be called unknown because the form cannot be told
            for (String beside : besides) {
                fields.has(beside);
            }
            return null;
        }
        return first;
    }

    private static boolean allKnown(Mapping mapping, List<String> besides) {
        for (Mapping.Entry entry : mapping.entries()) {
            if (!besides.contains(entry.key().text())) {
                return false;
            }
        }
        return true;
    }

    /** @return items of the list under a key that is there; {@code NOT-A-LIST}, {@code EMPTY-LIST} */
    static List<Node> items(Fields fields, String key, Scope scope) {
        Node node = fields.optionalNode(key).orElse(null);
        if (node instanceof Listing) {
            List<Node> items = ((Listing) node).items();
            if (items.isEmpty()) {
                empty(node.place(), key, scope);
            }
            return items;
        }
        if (node != null) {
            scope.error(node.place(), ProfileFault.NOT_A_LIST, "no list under " + Say.code(key), "a list",
                    "each item needs `- ` before it");
        }
        return List.of();
    }

    static void empty(Place place, String key, Scope scope) {
        scope.error(place, ProfileFault.EMPTY_LIST, "an empty list under " + Say.code(key), "at least one item", null);
    }

    /** @return texts of a list that must name something once its key is there */
    static List<String> texts(Fields fields, String key, Scope scope) {
        List<String> texts = fields.texts(key);
        Node node = fields.optionalNode(key).orElse(null);
        if (node instanceof Listing && ((Listing) node).items().isEmpty()) {
            empty(node.place(), key, scope);
        }
        for (int i = 1; i < texts.size(); i++) {
            if (texts.indexOf(texts.get(i)) < i) {
                scope.error(place(node, i), ProfileFault.REPEATED_ITEM, "a second " + Say.code(texts.get(i)),
                        "each item once", "remove one of the two");
            }
        }
        return texts;
    }

    /** @return texts of a list that must be there */
    static List<String> requiredTexts(Fields fields, String key, Scope scope) {
        if (!fields.has(key)) {
            fields.node(key);
            return List.of();
        }
        return texts(fields, key, scope);
    }

    /** @return texts of a list, each of them a name */
    static List<String> names(Fields fields, String key, Scope scope) {
        return checkNames(fields, key, texts(fields, key, scope), scope);
    }

    /** @return texts of a list that must be there, each of them a name */
    static List<String> requiredNames(Fields fields, String key, Scope scope) {
        return checkNames(fields, key, requiredTexts(fields, key, scope), scope);
    }

    private static List<String> checkNames(Fields fields, String key, List<String> texts, Scope scope) {
        Node node = fields.optionalNode(key).orElse(null);
        for (int i = 0; i < texts.size(); i++) {
            isName(place(node, i), texts.get(i), scope);
        }
        return texts;
    }

    /** @return place of the item of a list, or of the single value */
    static Place place(Node node, int index) {
        if (node instanceof Listing && index < ((Listing) node).items().size()) {
            return ((Listing) node).items().get(index).place();
        }
        return node.place();
    }

    /** @return a name under a key that must be there, or null */
    static String name(Fields fields, String key, Scope scope) {
        String name = fields.text(key, LONGEST_NAME);
        return name != null && isName(fields.place(key), name, scope) ? name : null;
    }

    /** @return a name, or null when it is missing or wrong */
    static String optionalName(Fields fields, String key, Scope scope) {
        return fields.has(key) ? name(fields, key, scope) : null;
    }

    static boolean isName(Place place, String name, Scope scope) {
        if (isName(name)) {
            return true;
        }
        String near = nameOf(name);
        scope.error(place, ProfileFault.WRONG_NAME, Say.code(name),
                "small letters, digits and single hyphens, beginning with a letter",
                isName(near) ? "write " + Say.code(near) : null);
        return false;
    }

    /** Makes a name of words. */
    private static String nameOf(String words) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < words.length(); i++) {
            char c = Character.toLowerCase(words.charAt(i));
            boolean keep = c >= 'a' && c <= 'z' || c >= '0' && c <= '9';
            if (keep) {
                out.append(c);
            } else if (out.length() > 0 && out.charAt(out.length() - 1) != '-' && i < words.length() - 1) {
                out.append('-');
            }
        }
        return out.toString();
    }

    /** Small letters, digits and single hyphens, beginning with a letter, at most 60 characters. */
    static boolean isName(String name) {
        if (name.length() > LONGEST_NAME) {
            return false;
        }
        char before = '-';
        for (int i = 0; i < name.length(); i++) {
            char c = name.charAt(i);
            boolean letter = c >= 'a' && c <= 'z';
            boolean digit = c >= '0' && c <= '9';
            boolean hyphen = c == '-' && before != '-';
            if (!letter && !(i > 0 && (digit || hyphen))) {
                return false;
            }
            before = c;
        }
        return before != '-';
    }

    /** @return entries of a mapping of named things whose names are right */
    static List<Mapping.Entry> named(Fields fields, Scope scope) {
        List<Mapping.Entry> entries = new ArrayList<>();
        for (Mapping.Entry entry : fields.entries()) {
            if (isName(entry.key().place(), entry.key().text(), scope)) {
                entries.add(entry);
            }
        }
        return entries;
    }

    static boolean isScalar(Node node) {
        return node instanceof Scalar;
    }

    /** @return true when the value is a single text that begins with a digit, as a date does */
    static boolean startsWithDigit(Fields fields, String key) {
        Node node = fields.optionalNode(key).orElse(null);
        if (!(node instanceof Scalar) || ((Scalar) node).text().isEmpty()) {
            return false;
        }
        char first = ((Scalar) node).text().charAt(0);
        return first >= '0' && first <= '9';
    }

    /** @return a number such as 180 or 4.5, more than 0 unless {@code zero}, or null */
    static BigDecimal number(Node node, boolean zero, Scope scope) {
        Scalar scalar = node instanceof Scalar ? (Scalar) node : null;
        if (scalar == null || scalar.form() != Scalar.Form.PLAIN || !isNumber(scalar.text())) {
            scope.error(node.place(), ProfileFault.NOT_A_NUMBER, scalar == null ? "no number" : Say.code(scalar.text()),
                    "a number in plain digits such as 180 or 4.5", null);
            return null;
        }
        BigDecimal number = new BigDecimal(scalar.text());
        if (number.signum() == 0 && !zero) {
            scope.error(node.place(), ProfileFault.OUT_OF_RANGE, "0", "more than 0", null);
            return null;
        }
        return number;
    }

    private static boolean isNumber(String text) {
        int point = text.indexOf('.');
        int whole = point < 0 ? text.length() : point;
        boolean leadingZero = whole > 1 && text.charAt(0) == '0';
        boolean behind = point < 0 || text.length() - point == 2 || text.length() - point == 3;
        if (whole == 0 || leadingZero || !behind || text.length() > LONGEST_NUMBER) {
            return false;
        }
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (i != point && (c < '0' || c > '9')) {
                return false;
            }
        }
        return true;
    }
}
