package org.hearthrule.records;

import java.util.Collections;
import java.util.List;
import java.util.Map;

/**
 * A book and what its files contained when it was read, so that a change made by somebody else meanwhile is noticed.
 *
 * @param book   what was read
 * @param hashes hash by name of file
 */
public record Snapshot(Book book, Map<String, Hash> hashes) {

    /** Takes a copy of the hashes. */
    public Snapshot {
        hashes = Map.copyOf(hashes);
    }

    /** @return what a folder holds before there is a book in it */
    public static Snapshot nothing() {
        Book empty = new Book(null, null, List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
                Collections.emptySortedMap());
        return new Snapshot(empty, Map.of());
    }

    /** @return the hash of a file, {@link Hash#NONE} when it was not there */
    public Hash hash(String name) {
        return hashes.getOrDefault(name, Hash.NONE);
    }
}
