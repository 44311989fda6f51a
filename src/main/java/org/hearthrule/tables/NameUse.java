package org.hearthrule.tables;

import java.util.List;

/**
 * A name as it stands in the cells of a table, of a child or a subject.
 *
 * @param written as the table writes it first
 * @param rows    how often it stands there
 * @param known   whether it is clear what it stands for
 * @param ids     what it stands for; empty while that is not clear, or when somebody said that it is nothing
 * @param perhaps what was most likely meant when it is not clear; may be empty
 */
public record NameUse(String written, int rows, boolean known, List<String> ids, List<String> perhaps) { }
