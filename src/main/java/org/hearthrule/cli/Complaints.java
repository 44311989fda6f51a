package org.hearthrule.cli;

import java.util.List;
import org.hearthrule.input.Problem;
import org.hearthrule.input.Severity;
import org.hearthrule.terms.Wording;

/** Problems as text. */
final class Complaints {

    private Complaints() { }

    /** @return each problem with its line, then how many there are */
    static String of(List<Problem> problems) {
        StringBuilder text = new StringBuilder();
        problems.forEach(problem -> text.append(problem.toText()).append('\n'));
        long errors = problems.stream().filter(problem -> problem.severity() == Severity.ERROR).count();
        if (errors > 0) {
            text.append(Wording.english().count("problems", errors)).append('\n');
        }
        return text.toString();
    }
}
