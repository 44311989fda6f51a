package org.hearthrule.checklist;

import java.time.LocalDate;
import java.util.Locale;
import org.hearthrule.law.RequirementKind;
import org.hearthrule.rules.Finding;
import org.hearthrule.rules.Status;

/** A part of a checklist, in the order in which the parts are printed. */
public enum Section {
    LATE,
    /** Due within 30 days, or due on a day that has passed without being missed. */
    SOON,
    /** Due after that, or without a day. */
    LATER,
    DONE,
    /** There but less than is usual, or not to be said without a fact that is missing. */
    THIN_OR_UNCLEAR,
    /** Open questions about the law itself, and whom to ask. They concern everybody on the pathway. */
    LAW_UNCLEAR,
    /** Not owed now, with the reason. */
    NOT_DUE,
    /** What the law does not ask, said outright. */
    NOT_ASKED;

    /** Days after today that count as soon. */
    static final int SOON_DAYS = 30;

    /** @return the part a finding belongs to on a day */
    static Section of(Finding finding, LocalDate asOf) {
        if (finding.kind() == RequirementKind.NOT_REQUIRED) {
            return NOT_ASKED;
        }
        if (finding.status() == Status.UNCLEAR && finding.student() == null && finding.requirement().contains("/doubts/")) {
            return LAW_UNCLEAR;
        }
        return switch (finding.status()) {
            case LATE -> LATE;
            case OPEN -> finding.due() == null || finding.due().isAfter(asOf.plusDays(SOON_DAYS)) ? LATER : SOON;
            case MET -> DONE;
            case THIN, UNCLEAR -> THIN_OR_UNCLEAR;
            case NOT_DUE -> NOT_DUE;
        };
    }

    /** @return true when a reader must ask for it to see it */
    public boolean onlyOnRequest() {
        return this == NOT_DUE || this == NOT_ASKED;
    }

    /** @return the spelling used in files, for example {@code thin-or-unclear} */
    public String slug() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
