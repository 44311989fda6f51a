package org.hearthrule.page.year;

import java.util.ArrayList;
import java.util.List;
import org.hearthrule.page.frame.Field;
import org.hearthrule.page.frame.Form;
import org.hearthrule.records.YearLabel;

/**
 * The form for the days of a year.
 *
 * @param words    the year, such as {@code 2025–26}
 * @param path     where it is sent
 * @param back     the page of the year
 * @param own      first and last day of the family's own year
 * @param school   first and last day of the district's schools
 * @param quarters the two ends of each
 * @param terms    the two ends of each
 * @param closed   days on which schools are closed
 */
public record DaysPage(Form form, String words, String path, String back, List<Field> own, List<Field> school,
                       List<Pair> quarters, List<Pair> terms, Field closed) {

    /** Two ends of a stretch. */
    public record Pair(String name, Field from, Field to) { }

    static DaysPage of(Form form, YearLabel label) {
        return new DaysPage(form, YearPage.words(label), "/year/" + label + "/days", "/year/" + label,
                List.of(day(form, "first", "First day"), day(form, "last", "Last day")),
                List.of(day(form, "school-first", "First day of school"), day(form, "school-last", "Last day of school")),
                pairs(form, "quarter", "Quarter", YearDays.QUARTERS), pairs(form, "term", "Term", YearDays.TERMS),
                form.field("closed", "Days on which schools are closed")
                        .hint("One on each line, such as November 27, 2026, or December 21, 2026 to January 1, 2027."));
    }

    private static List<Pair> pairs(Form form, String what, String words, int most) {
        List<Pair> pairs = new ArrayList<>();
        for (int number = 1; number <= most; number++) {
            String name = words + ' ' + number;
            pairs.add(new Pair(name, day(form, what + '-' + number + "-from", name + " begins"),
                    day(form, what + '-' + number + "-to", name + " ends")));
        }
        return pairs;
    }

    private static Field day(Form form, String name, String label) {
        return form.field(name, label).type("date");
    }
}
