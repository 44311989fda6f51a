package org.hearthrule.input;

import java.util.List;

/**
 * Values in an order.
 *
 * @param place where it begins
 * @param items the values; cannot be changed
 */
public record Listing(Place place, List<Node> items) implements Node {

    /** Takes a copy of the items. */
    public Listing {
        items = List.copyOf(items);
    }
}
