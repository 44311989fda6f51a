package org.hearthrule.records;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/**
 * Thrown when a file of a book is not as it was when it was read: somebody else changed it meanwhile. Nothing was
 * overwritten; each version that could not be saved lies beside the file it was meant for.
 */
public final class ChangedMeanwhileException extends IOException {

    private static final long serialVersionUID = 1L;

    private final transient List<Path> changed;
    private final transient List<Path> kept;

    ChangedMeanwhileException(List<Path> changed, List<Path> kept) {
        super(names(changed) + " was changed by somebody else since it was read. Nothing was overwritten. Your version"
                + " was kept as " + names(kept) + ".");
        this.changed = List.copyOf(changed);
        this.kept = List.copyOf(kept);
    }

    /** @return the files that had changed */
    public List<Path> changed() {
        return changed;
    }

    /** @return the versions that were not saved, each in a file of its own */
    public List<Path> kept() {
        return kept;
    }

    private static String names(List<Path> files) {
        StringBuilder names = new StringBuilder();
        for (int i = 0; i < files.size(); i++) {
            names.append(i == 0 ? "" : i == files.size() - 1 ? " and " : ", ").append(files.get(i).getFileName());
        }
        return names.toString();
    }
}
