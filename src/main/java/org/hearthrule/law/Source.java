package org.hearthrule.law;

import java.time.LocalDate;
import org.hearthrule.input.Place;
import org.hearthrule.terms.Basis;
import org.hearthrule.terms.Binding;

/**
 * One text of a profile's sources.
 *
 * @param key     name used by citations
 * @param title   citation as lawyers write it, for example {@code Example Code § 22-5}
 * @param address where it was read; may be the name of a printed source
 * @param read    the day it was last read
 * @param basis   how it was read
 * @param binding what kind of rule it is
 */
public record Source(String key, String title, String address, LocalDate read, Basis basis, Binding binding, Place place) {
}
