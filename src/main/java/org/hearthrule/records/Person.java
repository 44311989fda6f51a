package org.hearthrule.records;

import java.time.LocalDate;
import java.util.List;

/**
 * A person other than the children.
 *
 * @param id          short name
 * @param name        as printed
 * @param roles       for example {@code parent}, {@code teacher}, {@code certified-teacher}, {@code spouse}
 * @param credentials diplomas, licences
 */
public record Person(String id, String name, List<String> roles, List<Credential> credentials) {

    /**
     * @param kind  slug, for example {@code high-school-diploma}
     * @param state jurisdiction code it is from, or null
     * @param date  day it was given, or null
     */
    public record Credential(String kind, String state, LocalDate date) { }
}
