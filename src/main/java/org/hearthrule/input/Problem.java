package org.hearthrule.input;

import java.util.Locale;

/**
 * One thing that is wrong in an input file.
 *
 * @param place where it is
 * @param severity how bad it is
 * @param code a stable name in capitals with hyphens, such as {@code UNKNOWN-KEY}
 * @param found what is there, as a phrase that follows "found"
 * @param expected what should be there, as a phrase that follows "expected"
 * @param perhaps a likely remedy, as a phrase that follows "Perhaps", without a full stop; or null
 * @param excerpt the whole source line at the place, as it stands in the file; or null
 */
public record Problem(
        Place place,
        Severity severity,
        String code,
        String found,
        String expected,
        String perhaps,
        String excerpt) {

    /** @return what was found and what was expected, without the place: {@code found X, expected Y. Perhaps Z.} */
    public String words() {
        return "found " + found + ", expected " + expected + '.' + (perhaps == null ? "" : " Perhaps " + perhaps + '.');
    }

    /**
     * Returns the problem as text for a terminal: {@code file:line:col: error: [CODE] found X,
     * expected Y. Perhaps Z.} (in a spreadsheet {@code file:sheet!cell}) and, where the source line is known, that line (at most 76 characters
     * of it, hidden characters as escapes) and a caret under the place. Lines are parted by {@code
     * \n}; there is none at the end.
     */
    public String toText() {
        StringBuilder text = new StringBuilder(200);
        text.append(Shown.escaped(place.toString())).append(": ");
        text.append(severity.name().toLowerCase(Locale.ROOT)).append(": [").append(code);
        text.append("] found ").append(Shown.escaped(found));
        text.append(", expected ").append(Shown.escaped(expected)).append('.');
        if (perhaps != null) {
            text.append(" Perhaps ").append(Shown.escaped(perhaps)).append('.');
        }
        if (excerpt != null && !excerpt.isBlank()) {
            Shown.appendExcerpt(text.append('\n'), excerpt, place.column());
        }
        return text.toString();
    }
}
