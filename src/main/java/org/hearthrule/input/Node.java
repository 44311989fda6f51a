package org.hearthrule.input;

/** A value in a YAML or JSON text. */
public sealed interface Node permits Scalar, Mapping, Listing {

    /** Returns where the value begins. */
    Place place();
}
