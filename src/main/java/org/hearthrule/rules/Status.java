package org.hearthrule.rules;

import java.util.Locale;

/** What a finding says. The records show something or they do not; nothing more is claimed. */
public enum Status {
    /** The records show it. */
    MET,
    /** Not shown yet, and time remains. */
    OPEN,
    /** Its day has passed and the records do not show it. */
    LATE,
    /** There, but less than common practice expects. Never presented as law. */
    THIN,
    /** A named fact is missing, or the law is not clear. */
    UNCLEAR,
    /** Not owed, with the reason. */
    NOT_DUE;

    public String slug() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
