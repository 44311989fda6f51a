package org.hearthrule.rules;

import java.time.LocalDate;

/** The day a book is looked at. */
public record Today(LocalDate date) {
}
