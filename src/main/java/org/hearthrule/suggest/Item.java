package org.hearthrule.suggest;

import java.util.ArrayList;
import java.util.List;
import org.hearthrule.input.Fields;
import org.hearthrule.input.Listing;
import org.hearthrule.input.Node;
import org.hearthrule.input.Place;

/** A text of a list, with its place. */
record Item(String text, Place place) {

    /**
     * Reads a list. Recorded: what is no list, an empty list, items that are no text or stand twice.
     *
     * @return its texts; empty when the key is missing
     */
    static List<Item> list(Fields fields, String key) {
        Node node = fields.optionalNode(key).orElse(null);
        if (node == null) {
            return List.of();
        }
        if (!(node instanceof Listing listing)) {
            fields.error(key, "NOT-A-LIST", "no list under `" + key + "`", "a list in brackets, such as [tide, wave]", null);
            return List.of();
        }
        List<String> texts = fields.texts(key);
        if (listing.items().isEmpty()) {
            fields.error(key, "EMPTY-LIST", "an empty list under `" + key + "`", "at least one item", null);
        }
        List<Item> items = new ArrayList<>();
        if (texts.size() < listing.items().size()) {
            // an item is no text, and recorded: which place belongs to which text can no longer be told
            return items;
        }
        for (int i = 0; i < texts.size(); i++) {
            Item item = new Item(texts.get(i), listing.items().get(i).place());
            if (texts.indexOf(item.text()) < i) {
                fields.problems().error(item.place(), "REPEATED-ITEM", "a second " + item.shown(), "each item once",
                        "remove one of the two");
            } else {
                items.add(item);
            }
        }
        return items;
    }

    String shown() {
        return "`" + text + "`";
    }
}
