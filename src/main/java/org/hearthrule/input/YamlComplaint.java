package org.hearthrule.input;

import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/** Turns what the YAML parser complains of into a problem that says what to do. */
final class YamlComplaint {

    private YamlComplaint() {}

    static void record(MarkedYAMLException e, YamlSource source, Problems problems) {
        Mark mark = e.getProblemMark() == null ? e.getContextMark() : e.getProblemMark();
        String complaint = String.valueOf(e.getProblem());
        String context = String.valueOf(e.getContext());
        Place place = source.place(mark);
        String code = "WRONG-YAML";
        String found = source.found(mark);
        String expected;
        String perhaps = null;
        if (complaint.contains("(TAB)")) {
            code = "TAB-INDENT";
            found = "a tab";
            expected = "spaces";
            perhaps = "set the editor to indent with spaces";
        } else if (complaint.startsWith("mapping values are not allowed")) {
            expected = "one key on a line, or text in quotes";
            perhaps = "the text holds a colon and needs double quotes, or the line is indented wrongly";
        } else if (complaint.startsWith("could not find expected ':'")) {
            place = e.getContextMark() == null ? place : source.place(e.getContextMark());
            found = "text without a colon";
            expected = "`key: value`";
            perhaps = "a colon is missing, or the line is indented wrongly";
        } else if (complaint.startsWith("found unexpected end of stream") && context.contains("quoted")) {
            place = e.getContextMark() == null ? place : source.place(e.getContextMark());
            found = "a quote that is never closed";
            expected = "a closing quote";
            perhaps = "the closing quote is missing on this line";
        } else if (complaint.startsWith("expected <block end>")) {
            expected = "a line indented like the ones above it";
            perhaps = "the line is indented wrongly, or text begins with a quote and goes on after it";
        } else if (context.startsWith("while parsing a flow")) {
            expected = context.contains("mapping") ? "a comma or `}`" : "a comma or `]`";
            // a question mark within brackets ends plain text for the parser
            perhaps = found.equals("`?`")
                    ? "put the text with `?` in quotes"
                    : "a bracket is not closed; it opened on line "
                    + (e.getContextMark() == null ? place.line() : e.getContextMark().getLine() + 1);
        } else if (complaint.startsWith("found unknown escape")) {
            expected = "`\\\\`, `\\\"` or `\\n` after a backslash";
            perhaps = "use single quotes, in which a backslash is only a backslash";
        } else if (context.startsWith("while scanning an alias") || context.startsWith("while scanning an anchor")) {
            place = source.place(e.getContextMark());
            found = source.found(e.getContextMark());
            expected = "text, a key or a list item";
            perhaps = "put the text in double quotes";
        } else if (complaint.contains("that cannot start any token")) {
            expected = "text, a key or a list item";
            perhaps = "put the text in double quotes";
        } else {
            found = found + " (" + complaint + ")";
            expected = "YAML";
        }
        problems.error(place, code, found, expected, perhaps);
    }
}
