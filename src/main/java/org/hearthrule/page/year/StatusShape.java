package org.hearthrule.page.year;

import org.hearthrule.rules.Status;

/** The shapes of {@link org.hearthrule.checklist.Line}s' statuses as lines in a square of 10 around the middle. */
public final class StatusShape {

    private static final String TILE = "M0-4.6L4.6 0 0 4.6-4.6 0z";

    private StatusShape() { }

    /** @return outline; a whole tile is filled besides */
    public static String path(Status status) {
        return switch (status) {
            case MET, OPEN -> TILE;
            case LATE -> "M3.6-4.4V4.4L-4.4 0z";
            case THIN -> TILE + "M0-1.9L1.9 0 0 1.9-1.9 0z";
            case UNCLEAR -> "M0-4.2A4.2 4.2 0 1 1 0 4.2A4.2 4.2 0 1 1 0-4.2z";
            case NOT_DUE -> "M-4 0H4";
        };
    }
}
