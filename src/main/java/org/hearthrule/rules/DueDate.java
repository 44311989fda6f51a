package org.hearthrule.rules;

import java.time.LocalDate;
import java.util.List;

/**
 * A day worked out for one occasion, or the reason why there is none.
 *
 * @param date      the day, or null
 * @param opens     first day on which it can be done, or null
 * @param note      remark for the reader, or null
 * @param questions what would give the day; not empty means that the day hangs on something missing
 */
record DueDate(LocalDate date, LocalDate opens, String note, List<String> questions) {

    static DueDate on(LocalDate date, String note) {
        return new DueDate(date, null, note, List.of());
    }

    static DueDate undated(String note) {
        return new DueDate(null, null, note, List.of());
    }

    static DueDate missing(String note, String question) {
        return new DueDate(null, null, note, List.of(question));
    }

    boolean isMissing() {
        return !questions.isEmpty();
    }

    DueDate withNote(String more) {
        String joined = note == null ? more : note + " " + more;
        return new DueDate(date, opens, joined, questions);
    }

    DueDate opening(LocalDate day) {
        return new DueDate(date, day, note, questions);
    }
}
