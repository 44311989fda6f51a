package org.hearthrule.checklist;

import java.util.List;
import java.util.Locale;
import org.hearthrule.input.Problem;
import org.hearthrule.input.Severity;
import org.hearthrule.terms.Wording;

/**
 * What is wrong with profiles.
 *
 * @param problems in the order in which they are shown
 * @param files    how many files were read
 */
public record LintReport(List<Problem> problems, int files) {

    private long errors() {
        return problems.stream().filter(problem -> problem.severity() == Severity.ERROR).count();
    }

    /** @return each problem with its line, then how many there are */
    public String text(Wording wording, Style style) {
        TextPage page = new TextPage(style, wording);
        for (Problem problem : problems) {
            problem.toText().lines().forEach(line -> page.line(page.clean(line)));
        }
        long errors = errors();
        String read = wording.count("lint.files", files);
        if (problems.isEmpty()) {
            page.line(read + ' ' + wording.say("lint.nothing"));
        } else {
            page.line(read + ' ' + wording.count("lint.errors", errors) + ' '
                    + wording.count("lint.warnings", problems.size() - errors));
        }
        return page.toString();
    }

    /** @return {@code {"files":n,"errors":n,"warnings":n,"problems":[…]}}, its last line ended */
    public String json() {
        return Json.write(json -> {
            json.writeStartObject();
            json.writeNumberField("files", files);
            json.writeNumberField("errors", errors());
            json.writeNumberField("warnings", problems.size() - errors());
            json.writeArrayFieldStart("problems");
            for (Problem problem : problems) {
                json.writeStartObject();
                Json.text(json, "file", problem.place().file());
                json.writeNumberField("line", problem.place().line());
                json.writeNumberField("column", problem.place().column());
                Json.text(json, "severity", problem.severity().name().toLowerCase(Locale.ROOT));
                Json.text(json, "code", problem.code());
                Json.text(json, "found", problem.found());
                Json.text(json, "expected", problem.expected());
                Json.text(json, "perhaps", problem.perhaps());
                Json.text(json, "excerpt", problem.excerpt());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        });
    }
}
