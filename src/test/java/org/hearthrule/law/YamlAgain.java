package org.hearthrule.law;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.hearthrule.input.Listing;
import org.hearthrule.input.Mapping;
import org.hearthrule.input.Node;
import org.hearthrule.input.Place;
import org.hearthrule.input.Scalar;

/** Writes a tree as YAML again, each value on a line of its own, and makes changed copies of trees. */
final class YamlAgain {

    private YamlAgain() { }

    static String write(Node node) {
        StringBuilder out = new StringBuilder();
        append(node, 0, out);
        return out.toString();
    }

    private static void append(Node node, int indent, StringBuilder out) {
        if (node instanceof Scalar scalar) {
            out.append(' ').append(scalar.form() == Scalar.Form.PLAIN ? scalar.text() : quoted(scalar.text()))
                    .append('\n');
        } else if (node instanceof Mapping mapping) {
            out.append(mapping.entries().isEmpty() ? " {}\n" : "\n");
            for (Mapping.Entry entry : mapping.entries()) {
                out.append(" ".repeat(indent)).append(entry.key().form() == Scalar.Form.PLAIN ? entry.key().text()
                        : quoted(entry.key().text())).append(':');
                append(entry.value(), indent + 2, out);
            }
        } else {
            Listing listing = (Listing) node;
            out.append(listing.items().isEmpty() ? " []\n" : "\n");
            for (Node item : listing.items()) {
                out.append(" ".repeat(indent)).append('-');
                append(item, indent + 2, out);
            }
        }
    }

    /** Writes text between double quotes, with escapes for all that is not plain ASCII. */
    private static String quoted(String text) {
        StringBuilder out = new StringBuilder("\"");
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"' || c == '\\') {
                out.append('\\').append(c);
            } else if (c < ' ' || c > '~') {
                out.append(String.format("\\u%04x", (int) c));
            } else {
                out.append(c);
            }
        }
        return out.append('"').toString();
    }

    /** @return a copy in which every single value, with the key it stands under, is what the change makes of it */
    static Node changed(Node node, String key, Change change) {
        if (node instanceof Scalar scalar) {
            return change.of(key, scalar);
        }
        if (node instanceof Mapping mapping) {
            List<Mapping.Entry> entries = new ArrayList<>();
            for (Mapping.Entry entry : mapping.entries()) {
                entries.add(new Mapping.Entry(entry.key(), changed(entry.value(), entry.key().text(), change)));
            }
            return new Mapping(mapping.place(), entries);
        }
        List<Node> items = new ArrayList<>();
        for (Node item : ((Listing) node).items()) {
            items.add(changed(item, key, change));
        }
        return new Listing(node.place(), items);
    }

    /** What becomes of a value that stands under a key, perhaps in a list. */
    interface Change {
        Node of(String key, Scalar value);
    }

    /** @return copies of a tree, in each of which another node is what the change makes of it */
    static List<Node> eachChanged(Node node, UnaryOperator<Node> change) {
        List<Node> copies = new ArrayList<>();
        copies.add(change.apply(node));
        if (node instanceof Mapping mapping) {
            for (int i = 0; i < mapping.entries().size(); i++) {
                for (Node value : eachChanged(mapping.entries().get(i).value(), change)) {
                    List<Mapping.Entry> entries = new ArrayList<>(mapping.entries());
                    entries.set(i, new Mapping.Entry(entries.get(i).key(), value));
                    copies.add(new Mapping(mapping.place(), entries));
                }
            }
        } else if (node instanceof Listing listing) {
            for (int i = 0; i < listing.items().size(); i++) {
                for (Node item : eachChanged(listing.items().get(i), change)) {
                    List<Node> items = new ArrayList<>(listing.items());
                    items.set(i, item);
                    copies.add(new Listing(listing.place(), items));
                }
            }
        }
        return copies;
    }

    static Scalar text(Place place, String text) {
        return new Scalar(place, text, Scalar.Form.QUOTED);
    }
}
