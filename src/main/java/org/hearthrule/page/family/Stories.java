package org.hearthrule.page.family;

import java.util.ArrayList;
import java.util.List;
import org.hearthrule.input.BadInputException;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Print;
import org.hearthrule.records.Placement;
import org.hearthrule.records.Placements;

/**
 * A form that ends something, or lets something else begin, is made from the children's stories: it carries the print
 * of each, and only the stories of those it is sent for count.
 */
final class Stories {

    private static final String PRINT = "print:";

    private Stories() { }

    private static String print(Household house, String student) {
        return Print.of(Placements.of(house.book(), student).stream().map(Placement::anywhere).toList());
    }

    /** Fills the prints of all children in. */
    static Form carry(Form form, Household house) {
        house.ids().forEach(student -> form.fill(PRINT + student, print(house, student)));
        return form;
    }

    /** @return what the book holds now of the children whose stories changed since the form was made */
    static List<String> changed(Form form, Household house, List<String> students) throws BadInputException {
        List<String> now = new ArrayList<>();
        for (String student : students) {
            if (!form.raw(PRINT + student).equals(print(house, student))) {
                for (String stretch : house.story(student)) {
                    now.add(house.names(List.of(student)) + ": " + stretch);
                }
            }
        }
        return now;
    }
}
