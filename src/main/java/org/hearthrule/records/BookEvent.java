package org.hearthrule.records;

import java.time.LocalDate;
import java.util.List;
import org.hearthrule.terms.EventKind;

/**
 * A dated happening.
 *
 * @param students whom it is about; empty: the whole family
 * @param note     the parent's remark, or null
 */
public record BookEvent(EventKind kind, LocalDate date, List<String> students, String note) {
}
