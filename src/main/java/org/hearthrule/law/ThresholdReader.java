package org.hearthrule.law;

import java.math.BigDecimal;
import java.util.List;
import org.hearthrule.input.Fields;

/** Reads a comparison of scores with a number: {@code {measure: percentile, above: 33}}. */
final class ThresholdReader {

    private static final List<String> COMPARISONS = List.of("above", "at-least", "below", "at-most");

    private ThresholdReader() { }

    /** @return the threshold, whose number is null after recording why there is none */
    static Threshold read(Fields fields, Scope scope) {
        String measure = Forms.name(fields, "measure", scope);
        List<String> areas = Forms.names(fields, "areas", scope);
        String found = null;
        for (String key : COMPARISONS) {
            if (!fields.has(key)) {
                continue;
            }
            if (found != null) {
                scope.error(fields.place(key), ProfileFault.SEVERAL_COMPARISONS,
                        Say.code(key) + " beside " + Say.code(found), "one comparison", null);
            } else {
                found = key;
            }
        }
        if (found == null) {
            if (fields.isMapping()) {
                scope.error(fields.place(), ProfileFault.NO_COMPARISON, "no comparison", Say.oneOf(COMPARISONS),
                        null);
            }
            return new Threshold(measure, areas, Threshold.Comparison.ABOVE, null);
        }
        BigDecimal number = Forms.number(fields.node(found), true, scope);
        return new Threshold(measure, areas, Threshold.Comparison.values()[COMPARISONS.indexOf(found)], number);
    }
}
