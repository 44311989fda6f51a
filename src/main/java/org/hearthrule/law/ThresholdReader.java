package org.hearthrule.law;

import java.math.BigDecimal;
import java.util.List;
import org.hearthrule.input.Fields;
import org.hearthrule.input.Node;
import org.hearthrule.input.Scalar;

/**
 * Reads a comparison of scores with a number, {@code {measure: percentile, above: 33}}, or with the test before,
 * {@code {measure: percentile, below: test-before}}.
 */
final class ThresholdReader {

    private static final List<String> COMPARISONS = List.of("above", "at-least", "below", "at-most");
    private static final String TEST_BEFORE = "test-before";

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
        Node node = fields.node(found);
        boolean testBefore = node instanceof Scalar && ((Scalar) node).text().equals(TEST_BEFORE);
        BigDecimal number = testBefore ? null : Forms.number(node, true, scope);
        return new Threshold(measure, areas, Threshold.Comparison.values()[COMPARISONS.indexOf(found)], number);
    }
}
