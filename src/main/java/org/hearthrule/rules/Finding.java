package org.hearthrule.rules;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.hearthrule.law.Cite;
import org.hearthrule.law.RequirementKind;

/**
 * What the rules say about one duty of one child, or of the family, in one year or on one occasion.
 *
 * @param id          stable over time: requirement, child, occasion, for example
 *                    {@code us-xx/home-instruction/yearly-notice/ada/2026-27}
 * @param requirement whole id of the requirement, which is also the name of the rule; for doubts about the records the
 *                    name of the rule in {@code rules/}
 * @param jurisdiction for example {@code us-xx}
 * @param pathway     slug
 * @param student     id of the child, or null for the family
 * @param studentName name as printed, or null for the family
 * @param kind        kind of requirement
 * @param title       short name
 * @param year        school year label such as {@code 2026-27}, or null
 * @param status      what is said
 * @param due         the day, or null
 * @param dueNote     why there is no day, or a remark on the day; or null
 * @param opens       first day it can be done, or null
 * @param theirs      true when the other side owes it
 * @param why         plain sentences: what was found, then why
 * @param next        one next step, or null when there is nothing to do
 * @param counted     numbers and words counted, in a stable order; values are numbers, text, or lists of text
 * @param records     the very records counted
 * @param arithmetic  the sums, a line each
 * @param wouldChange what would change the answer, a sentence each
 * @param rules       names of the rules that spoke: the requirement's own, then those of {@code rules/}
 * @param cites       sources; empty only for doubts about the records
 * @param confirmWith whom to confirm with; null for doubts about the records
 */
public record Finding(String id, String requirement, String jurisdiction, String pathway, String student,
                      String studentName, RequirementKind kind, String title, String year, Status status, LocalDate due,
                      String dueNote, LocalDate opens, boolean theirs, List<String> why, String next,
                      Map<String, Object> counted, List<RecordRef> records, List<String> arithmetic,
                      List<String> wouldChange, List<String> rules, List<Cite> cites, String confirmWith) {
}
