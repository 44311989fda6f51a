package org.hearthrule.records;

import java.util.List;
import org.hearthrule.input.Fields;
import org.hearthrule.input.Mapping;
import org.hearthrule.input.Node;
import org.hearthrule.input.Problems;
import org.hearthrule.input.Scalar;

/** Reads a value that has no key of its own, such as an entry of a list or a cell, as strictly as one that has. */
final class Single {

    /** The key under which the value is read. */
    static final String KEY = "value";

    private Single() { }

    static Fields of(Node node, Problems problems) {
        Scalar key = new Scalar(node.place(), KEY, Scalar.Form.QUOTED);
        return Fields.of(new Mapping(node.place(), List.of(new Mapping.Entry(key, node))), problems, "the value");
    }
}
