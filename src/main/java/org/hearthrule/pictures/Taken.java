package org.hearthrule.pictures;

/** What became of a file that came in. */
public sealed interface Taken {

    /** @return the name it had at home, fit to be shown: without folders and unseen characters, at most 120 long */
    String name();

    /**
     * It lies in the book now; no record names it yet.
     *
     * @param path  within the book, for a record to name it
     * @param bytes how long it is
     */
    record Stored(String name, String path, long bytes, PictureFacts facts) implements Taken { }

    /**
     * The book holds the very same content already; nothing was stored.
     *
     * @param path where it lies within the book
     */
    record AlreadyThere(String name, String path, PictureFacts facts) implements Taken { }

    /**
     * It was not taken, and nothing of it is kept.
     *
     * @param words whole sentences for the parent: what it is, what is taken, what to do
     */
    record Refused(String name, Reason reason, String words) implements Taken { }

    /** Why a file was not taken. */
    enum Reason {
        /** Nothing was in it. */
        EMPTY,
        /** A HEIC or HEIF picture. */
        HEIC,
        /** Another kind that is not taken. */
        OTHER_KIND,
        /** Longer than the cap. */
        TOO_LARGE,
        /** It did not arrive whole. */
        CUT_SHORT
    }
}
