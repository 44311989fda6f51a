package org.hearthrule.page.welcome;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.hearthrule.page.frame.Choices;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Option;
import org.hearthrule.terms.Grades;

/** A child as it is entered, for a new book and for one that there is. */
public record EnteredChild(String name, LocalDate born, String grade) {

    private static final int OLDEST = 25;

    /** @return the child; whatever when the form has complaints */
    public static EnteredChild read(Form form, LocalDate today) {
        return read(form, "", today);
    }

    /** @param after stands behind the name of each field, where one form carries several children */
    static EnteredChild read(Form form, String after, LocalDate today) {
        String name = form.must("name" + after, "Type the child's name, or what you call them.");
        LocalDate born = form.mustDay("born" + after, "Enter the birth date: laws count ages by it.");
        if (born != null && (born.isAfter(today) || born.isBefore(today.minusYears(OLDEST)))) {
            form.complain("born" + after, "Look at the year: that day is no birth date of a child who is taught now.");
        }
        String grade = form.mustOneOf("grade" + after, Choices.values(grades()),
                "Choose the grade of this school year.");
        return new EnteredChild(name, born, grade);
    }

    /** Complains of a first day of home instruction that cannot be; nothing when one of the two days is missing. */
    public void checkStart(Form form, LocalDate starts) {
        checkStart(form, "", starts);
    }

    void checkStart(Form form, String after, LocalDate starts) {
        if (starts != null && born != null && !starts.isAfter(born)) {
            form.complain("starts" + after, "This lies before the birth date.");
        }
    }

    public static List<Option> grades() {
        List<Option> grades = new ArrayList<>();
        for (int grade = Grades.KINDERGARTEN; grade <= Grades.LAST; grade++) {
            grades.add(Option.of(Grades.name(grade), grade == Grades.KINDERGARTEN ? "Kindergarten" : "Grade " + grade));
        }
        return grades;
    }
}
