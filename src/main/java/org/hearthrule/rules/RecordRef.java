package org.hearthrule.rules;

import java.time.LocalDate;

/**
 * A record that was counted.
 *
 * @param year  school year label of its file, or {@code family}
 * @param id    id in that file
 * @param date  its day, or null
 * @param words short description for the reader
 */
public record RecordRef(String year, String id, LocalDate date, String words) {

    /** An id is unique in its file. (Generated comparisons cost a short-lived process several milliseconds.) */
    @Override
    public boolean equals(Object other) {
        return other instanceof RecordRef that && id.equals(that.id) && year.equals(that.year);
    }

    @Override
    public int hashCode() {
        return 31 * id.hashCode() + year.hashCode();
    }
}
