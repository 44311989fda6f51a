package org.hearthrule.input;

/** Ends the reading of a file after a problem, already recorded, that leaves nothing to go on with. */
final class StopReading extends RuntimeException {

    private static final long serialVersionUID = 1L;

    StopReading() {
        super(null, null, false, false);
    }
}
