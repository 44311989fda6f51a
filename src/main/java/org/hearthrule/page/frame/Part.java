package org.hearthrule.page.frame;

/** A part of the navigation. */
public enum Part {
    CHECKLIST("Checklist", "/checklist"),
    LOG("Log", "/log"),
    YEAR("Year", "/year"),
    RECORDS("Records", "/records"),
    READINESS("Readiness", "/readiness"),
    FAMILY("Family", "/family"),
    LAW("The law", "/law"),
    KEEPING("Keeping", "/keeping");

    private final String words;
    private final String path;

    Part(String words, String path) {
        this.words = words;
        this.path = path;
    }

    public String words() {
        return words;
    }

    public String path() {
        return path;
    }

    /** @return whether it can be looked at before there is a book */
    public boolean needsNoBook() {
        return this == LAW;
    }
}
