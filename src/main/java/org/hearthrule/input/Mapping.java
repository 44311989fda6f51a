package org.hearthrule.input;

import java.util.List;

/**
 * Keys with values, in the order of the file. No key occurs twice.
 *
 * @param place where it begins
 * @param entries the keys with their values; cannot be changed
 */
public record Mapping(Place place, List<Entry> entries) implements Node {

    /** Takes a copy of the entries. */
    public Mapping {
        entries = List.copyOf(entries);
    }

    /**
     * One key and its value.
     *
     * @param key the key
     * @param value the value
     */
    public record Entry(Scalar key, Node value) {}
}
