package org.hearthrule.records;

import java.util.List;
import java.util.Optional;
import org.hearthrule.input.Node;
import org.hearthrule.input.Problems;

/** Where the files of a book come from. */
interface BookSource {

    /** Returns the plain names of the files, sorted. */
    List<String> names();

    /** Returns a name as it is to be shown. */
    String shown(String name);

    /** Returns the only folder right below that holds a book, as it is to be shown; empty unless there is just one. */
    default Optional<String> bookBelow() {
        return Optional.empty();
    }

    /** Reads one file; empty when it is not JSON. */
    Optional<Node> read(String name, Problems problems);
}
