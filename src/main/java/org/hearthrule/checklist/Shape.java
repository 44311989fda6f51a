package org.hearthrule.checklist;

import org.hearthrule.rules.Status;

/**
 * The small shape beside a status word: a hearth tile, empty, half laid or whole; one that points back for a day that
 * has passed, one in dots for what is not known. The word says it all; the shape only helps the eye.
 */
public final class Shape {

    private Shape() { }

    public static String of(Status status, boolean unicode) {
        return switch (status) {
            case MET -> unicode ? "◆" : "*";
            case OPEN -> unicode ? "◇" : "o";
            case LATE -> unicode ? "◁" : "<";
            case THIN -> unicode ? "◈" : "+";
            case UNCLEAR -> unicode ? "◌" : "?";
            case NOT_DUE -> unicode ? "–" : "-";
        };
    }
}
