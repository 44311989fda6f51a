package org.hearthrule.law;

import java.time.LocalDate;
import org.hearthrule.terms.Basis;

/**
 * A source and the part of it that says so.
 *
 * @param source  the text
 * @param section part of the text such as {@code (b)(1)}, possibly empty
 * @param basis   how this statement was read; never stronger than the source's own
 */
public record Cite(Source source, String section, Basis basis) {

    /** @return citation as printed, for example {@code Example Code § 22-5 (b)(1)} */
    public String words() {
        return section.isEmpty() ? source.title() : source.title() + " " + section;
    }

    public LocalDate read() {
        return source.read();
    }
}
