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

    /** The id is enough, and there are many. */
    @Override
    public int hashCode() {
        return id.hashCode();
    }
}
