package org.hearthrule.law;

import java.util.Locale;

/** What kind of duty a requirement is. */
public enum RequirementKind {
    FILE("file a paper"),
    APPROVAL("be approved"),
    RECORD("keep a record"),
    SHOW("show on request"),
    TIME("teach for a time"),
    SUBJECTS("cover subjects"),
    ASSESS("have progress assessed"),
    QUALIFY("hold a qualification"),
    HEALTH("have health papers"),
    STANDING("be so"),
    CONTACT("meet somebody"),
    STEP("take the next step"),
    THEIRS("the other side's duty"),
    STANDARD("a standard in words"),
    NOT_REQUIRED("not asked");

    private final String words;

    RequirementKind(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** @return the spelling used in files, for example {@code not-required} */
    public String slug() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
