package org.hearthrule.terms;

import java.util.Locale;

/** How a source was read, from the strongest to the weakest. */
public enum Basis {
    /** The law's own words were read. */
    TEXT("read in the law's own words"),
    /** A page or form of the state's education agency was read. */
    AGENCY("read on a page of the state agency"),
    /** A restatement by somebody else was read. */
    SECONDARY("read in a restatement, not in the law itself"),
    /** Recalled, not seen. */
    MEMORY("from memory, not read: unconfirmed");

    private final String words;

    Basis(String words) {
        this.words = words;
    }

    /** @return how it was read, in plain words */
    public String words() {
        return words;
    }

    /** @return the spelling used in files, for example {@code secondary} */
    public String slug() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** @return true when this was read less directly than {@code other} */
    public boolean weakerThan(Basis other) {
        return ordinal() > other.ordinal();
    }
}
