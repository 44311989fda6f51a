package org.hearthrule.records;

import java.io.IOException;

/** A change cannot be taken back, since what it changed was changed again since. Nothing is changed. */
public final class UndoRefusedException extends IOException {

    private final String label;

    UndoRefusedException(String label) {
        super("changed again since");
        this.label = label;
    }

    /** @return what was to be taken back, in words */
    public String label() {
        return label;
    }
}
