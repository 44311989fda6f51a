package org.hearthrule.cli;

import java.time.LocalDate;
import java.util.List;
import org.hearthrule.input.Fields;
import org.hearthrule.input.Mapping;
import org.hearthrule.input.Place;
import org.hearthrule.input.Problem;
import org.hearthrule.input.Problems;
import org.hearthrule.input.Scalar;
import org.hearthrule.terms.Wording;

/** Checks an answer that was typed, as strictly as a value in a file, and says kindly what is wrong. */
final class AnswerCheck {

    private static final Place PLACE = new Place("answer", 1, 1);
    private static final int LONGEST_NAME = 100;

    private AnswerCheck() { }

    /** A day, or what is wrong with it. */
    record Day(LocalDate date, String complaint) { }

    static Day day(String answer) {
        Problems problems = new Problems();
        LocalDate date = fields(answer, problems).date("answer");
        if (date != null) {
            return new Day(date, null);
        }
        Wording wording = Wording.english();
        List<Problem> found = problems.all();
        String perhaps = found.isEmpty() ? null : found.get(0).perhaps();
        return new Day(null, wording.say("new.date.wrong")
                + (perhaps == null ? "" : ' ' + wording.say("new.date.perhaps", perhaps)));
    }

    /** @return null, or what is wrong with a name */
    static String name(String answer) {
        Problems problems = new Problems();
        String name = fields(answer, problems).text("answer", LONGEST_NAME);
        return name == null ? Wording.english().say("new.name.wrong", LONGEST_NAME) : null;
    }

    private static Fields fields(String answer, Problems problems) {
        Scalar value = new Scalar(PLACE, answer, Scalar.Form.QUOTED);
        Scalar key = new Scalar(PLACE, "answer", Scalar.Form.QUOTED);
        return Fields.of(new Mapping(PLACE, List.of(new Mapping.Entry(key, value))), problems, "the answer");
    }
}
