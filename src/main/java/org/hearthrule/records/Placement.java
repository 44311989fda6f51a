package org.hearthrule.records;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.hearthrule.input.Place;

/**
 * A stretch of time in which a child followed one pathway in one jurisdiction.
 *
 * @param student      id
 * @param jurisdiction code in lower case, for example {@code us-xx}
 * @param pathway      slug
 * @param from         first day under this law: home instruction starts, or the family moves in
 * @param to           last day, or null while it goes on
 * @param ended        why it ended, for example {@code moved}, {@code entered-school}, {@code changed-pathway}; or null
 * @param started      day the program first started if it was before {@code from} (the family moved in with it), or
 *                     null
 * @param district     school district, or null
 * @param city         or null
 * @param county       or null
 * @param optIns       optional programs the family takes part in
 * @param where        where its names stand in the file, or null; does not count when two are compared
 */
public record Placement(String student, String jurisdiction, String pathway, LocalDate from, LocalDate to, String ended,
                        LocalDate started, String district, String city, String county, List<String> optIns,
                        Where where) {

    /** Places of the whole, and of the names that only a reader of laws can check. */
    public record Where(Place placement, Place jurisdiction, Place pathway) { }

    @Override
    public boolean equals(Object other) {
        return other instanceof Placement that && values().equals(that.values());
    }

    @Override
    public int hashCode() {
        return values().hashCode();
    }

    /** @return the same, wherever it stands in the file */
    public Placement anywhere() {
        return new Placement(student, jurisdiction, pathway, from, to, ended, started, district, city, county,
                optIns, null);
    }

    /** @return whether some day lies in both */
    public boolean meets(Placement other) {
        return (to == null || !to.isBefore(other.from)) && (other.to == null || !other.to.isBefore(from));
    }

    private List<Object> values() {
        return Arrays.asList(student, jurisdiction, pathway, from, to, ended, started, district, city, county, optIns);
    }
}
