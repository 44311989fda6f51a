package org.hearthrule.checklist;

import java.util.Locale;
import org.hearthrule.law.RequirementKind;
import org.hearthrule.terms.Wording;

/** What two laws are laid side by side by, in the order in which it is read. */
enum Topic {
    PAPERS, TIME, SUBJECTS, RECORDS, RESULTS, TEACHER, HEALTH, OTHER;

    static Topic of(RequirementKind kind) {
        return switch (kind) {
            case FILE, APPROVAL -> PAPERS;
            case TIME -> TIME;
            case SUBJECTS -> SUBJECTS;
            case RECORD, SHOW -> RECORDS;
            case ASSESS, STEP -> RESULTS;
            case QUALIFY, STANDING -> TEACHER;
            case HEALTH -> HEALTH;
            default -> OTHER;
        };
    }

    /** @return its heading */
    String words(Wording wording) {
        return wording.say("law.topic." + slug());
    }

    String slug() {
        return name().toLowerCase(Locale.ROOT);
    }
}
