package org.hearthrule.input;

/** How bad a problem is. */
public enum Severity {
    /** The input cannot be used. */
    ERROR,
    /** The input can be used, but someone should look at it. */
    WARNING
}
