package org.hearthrule.cli;

/** Exit codes. */
final class Exit {

    static final int OK = 0;
    /** With {@code --strict}: a line is late, thin or unclear. */
    static final int NEEDS_CARE = 1;
    /** The command line itself was not understood. */
    static final int NOT_UNDERSTOOD = 2;
    /** A file, or a value on the command line, cannot be used as it is. */
    static final int BAD_INPUT = 3;
    /** Something went wrong inside the program. */
    static final int INTERNAL = 70;

    private Exit() { }
}
