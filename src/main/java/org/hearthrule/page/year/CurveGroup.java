package org.hearthrule.page.year;

import java.util.List;
import org.hearthrule.rules.Status;

/**
 * One line of the checklist that asks for time, with a drawing for each amount in it.
 *
 * @param id      unique in the page
 * @param heading title of the line
 * @param whose   first name of the child; null where only one is looked at or the family owes it
 * @param status  of the line
 * @param word    the same in words
 * @param line    id of the line
 * @param next    one next step, or null when nothing is missing
 * @param curves  at least one
 */
public record CurveGroup(String id, String heading, String whose, Status status, String word, String line, String next,
                         List<CurveDrawing> curves) { }
