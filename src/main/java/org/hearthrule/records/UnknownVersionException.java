package org.hearthrule.records;

import java.io.IOException;
import java.nio.file.Path;

/** Thrown instead of overwriting a file that a newer program wrote, or of restoring one whose version is not known. */
public final class UnknownVersionException extends IOException {

    private static final long serialVersionUID = 1L;

    UnknownVersionException(Path file, String why) {
        super(file + " " + why + ". Nothing was changed.");
    }
}
