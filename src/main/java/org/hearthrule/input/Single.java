package org.hearthrule.input;

import java.util.List;

/** Reads a value that has no key of its own, such as an entry of a list or a cell, as strictly as one that has. */
public final class Single {

    /** The key under which the value is read. */
    public static final String KEY = "value";

    private Single() { }

    /** @return the value as the only field of a mapping, under {@link #KEY} */
    public static Fields of(Node node, Problems problems) {
        Scalar key = new Scalar(node.place(), KEY, Scalar.Form.QUOTED);
        return Fields.of(new Mapping(node.place(), List.of(new Mapping.Entry(key, node))), problems, "the value");
    }
}
