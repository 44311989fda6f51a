package org.hearthrule.page.family;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.hearthrule.page.frame.Choices;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Option;
import org.hearthrule.records.Student;
import org.hearthrule.records.Student.FormerSchool;
import org.hearthrule.terms.Wording;

/** Where a child was taught before, a row of fields for each school or program and an empty one for another. */
public final class SchoolRows {

    private static final String NEVER = "never";
    private static final int MOST = 99;
    private static final List<Option> KINDS = List.of(Option.of("public-school", "In a public school"),
            Option.of("private-school", "In a private school"), Option.of("home-program", "Taught at home before"));

    private SchoolRows() { }

    /** @return what a row offers; that there was no school can be said in the first alone */
    public static List<Option> kinds(int row) {
        List<Option> kinds = new ArrayList<>(row == 0 ? List.of(Option.of(NEVER, "In no school yet")) : List.of());
        kinds.addAll(KINDS);
        return kinds;
    }

    static Form fill(Form form, List<FormerSchool> schools) {
        if (schools == null) {
            return form;
        }
        form.fill("school-0", schools.isEmpty() ? NEVER : null);
        for (int row = 0; row < schools.size(); row++) {
            FormerSchool one = schools.get(row);
            form.fill("school-" + row, one.kind()).fill("school-state-" + row, one.state())
                    .fill("entered-" + row, one.from()).fill("left-" + row, one.to());
        }
        return form;
    }

    /** @return how many rows hold something, those left empty between them among these */
    static int filled(Form form) {
        int filled = 0;
        for (int row = 0; row < MOST; row++) {
            if (form.is("school-" + row) || isDetailed(form, row)) {
                filled = row + 1;
            }
        }
        return filled;
    }

    private static boolean isDetailed(Form form, int row) {
        return form.is("school-state-" + row) || form.is("entered-" + row) || form.is("left-" + row);
    }

    /**
     * A row whose first field is emptied with the others is taken out.
     *
     * @param born or null
     * @return null while nothing is said of it; empty when the child was in no school
     */
    static List<FormerSchool> read(Form form, LocalDate born, List<Option> states) {
        List<FormerSchool> schools = new ArrayList<>();
        boolean never = form.raw("school-0").equals(NEVER);
        for (int row = 0; row < filled(form); row++) {
            String kind = form.oneOf("school-" + row, Choices.values(kinds(row)));
            LocalDate from = form.day("entered-" + row);
            LocalDate to = form.day("left-" + row);
            String state = form.oneOf("school-state-" + row, Choices.values(states));
            if (never && (row > 0 ? kind != null || isDetailed(form, row) : isDetailed(form, row))) {
                form.complain("school-0",
                        "Choose what the child was in first, or empty the other fields about schools.");
            } else if (kind == null && isDetailed(form, row)) {
                form.complain("school-" + row, "Choose what it was, or leave its state and days empty.");
            }
            checkDays(form, row, born, from, to);
            if (kind != null && !kind.equals(NEVER)) {
                schools.add(new FormerSchool(kind, state, from, to));
            }
        }
        return schools.isEmpty() && !never ? null : List.copyOf(schools);
    }

    private static void checkDays(Form form, int row, LocalDate born, LocalDate from, LocalDate to) {
        if (born != null && from != null && !from.isAfter(born)) {
            form.complain("entered-" + row, "This lies before the birth date.");
        }
        if (born != null && to != null && !to.isAfter(born)) {
            form.complain("left-" + row, "This lies before the birth date.");
        }
        if (from != null && to != null && to.isBefore(from)) {
            form.complain("left-" + row, "That school began on " + Wording.english().date(from)
                    + ". Enter a later day.");
        }
    }

    /** @return the schools of a child, in words; never empty */
    static List<String> words(Student child, List<Option> states) {
        if (child.schools() == null) {
            return List.of("nothing said of schools before");
        }
        List<String> words = new ArrayList<>();
        for (FormerSchool one : child.schools()) {
            String state = one.state() == null ? "" : ", " + words(one.state(), states);
            words.add(words(one.kind(), KINDS) + state + day(", from ", one.from()) + day(", until ", one.to()));
        }
        return words.isEmpty() ? List.of("in no school yet") : words;
    }

    private static String words(String value, List<Option> options) {
        return options.stream().filter(one -> one.value().equals(value)).map(Option::words).findFirst().orElse(value);
    }

    private static String day(String before, LocalDate day) {
        return day == null ? "" : before + Wording.english().date(day);
    }
}
