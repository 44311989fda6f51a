package org.hearthrule.pictures;

import java.nio.file.Path;

/** A small upright picture of a file, or why there is none. */
public sealed interface Preview {

    /**
     * A JPEG that holds pixels and nothing else.
     *
     * @param file where it lies; may go at any time and is then made again
     */
    record Ready(Path file) implements Preview { }

    /**
     * There is none. The file itself is unharmed.
     *
     * @param words a whole sentence for the parent
     */
    record None(Reason reason, String words) implements Preview { }

    /** Why there is no preview. */
    enum Reason {
        /** A kind that has none: PDF and WebP. */
        OF_THIS_KIND,
        /** More pixels than are taken on. */
        TOO_LARGE,
        /** It cannot be read. */
        DAMAGED,
        /** There is no such file in the book. */
        NOT_THERE
    }
}
