package org.hearthrule.law;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;

/** Thrown when somebody asks for a jurisdiction that there is no profile of. */
public final class UnknownJurisdictionException extends Exception {

    private static final long serialVersionUID = 1L;

    private final String asked;
    private final String nearest;
    private final transient SortedMap<String, String> known;

    /**
     * Makes one.
     *
     * @param asked   what was asked for
     * @param nearest code of the one most likely meant, or null
     * @param known   plain names of all by their codes
     */
    UnknownJurisdictionException(String asked, String nearest, SortedMap<String, String> known) {
        super(message(asked, nearest, known));
        this.asked = asked;
        this.nearest = nearest;
        this.known = Collections.unmodifiableSortedMap(known);
    }

    /** @return what was asked for */
    public String asked() {
        return asked;
    }

    /** @return code of the one most likely meant, for example {@code US-XX} */
    public Optional<String> nearest() {
        return Optional.ofNullable(nearest);
    }

    /** @return plain names of all by their codes; cannot be changed */
    public Map<String, String> known() {
        return known;
    }

    private static String message(String asked, String nearest, SortedMap<String, String> known) {
        StringBuilder out = new StringBuilder("There is no profile for ").append(Say.code(asked)).append('.');
        if (nearest != null) {
            out.append(" Perhaps you meant ").append(known.get(nearest)).append(" (").append(nearest).append(").");
        }
        if (known.isEmpty()) {
            return out.append(" There are no profiles at all.").toString();
        }
        out.append(" There are profiles for ");
        String comma = "";
        for (Map.Entry<String, String> one : known.entrySet()) {
            out.append(comma).append(one.getValue()).append(" (").append(one.getKey()).append(')');
            comma = ", ";
        }
        return out.append('.').toString();
    }
}
