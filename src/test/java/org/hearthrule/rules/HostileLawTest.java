package org.hearthrule.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Text of a profile is only ever shown: whatever it says, the rules stay the same. */
class HostileLawTest {

    private static final String ASKS = """
            notice: {kind: file, title: "TEXT", to: "TEXT", states: ["TEXT"], due: {by: "10-01", note: "TEXT"}, next: "TEXT", note: "TEXT", cite: "code (B)"}
            days: {kind: time, title: "TEXT", shows: {any-of: [{as: "TEXT", time: {days: 3}}, {as: "TEXT", time: {hours: 900}}]}, next: "TEXT", cite: "code (E)"}
            list: {kind: subjects, title: "TEXT", list: [{name: "TEXT", shown-by: [geography]}], next: "TEXT", cite: "code (F)"}
            soft: {kind: standard, title: "TEXT", words: "TEXT", question: "TEXT", ask: "TEXT", next: "TEXT", cite: "code (N)"}
            """;

    private record Told(String id, Status status, String due, List<String> rules) { }

    private static List<Told> told(String text) {
        return Kit.law(ASKS.replace("TEXT", text.replace("\\", "\\\\").replace("\"", "\\\"").replace("\n", "\\n")))
                .year("2026-27", Kit.taught("2026-09-01", 3, 60, ", \"subjects\": [\"geography\"]")).judged("2026-11-25").findings()
                .stream().filter(finding -> finding.requirement().startsWith("us-xx/")).map(finding -> new Told(finding.id(), finding.status(), String.valueOf(finding.due()), finding.rules()))
                .toList();
    }

    /** Text that reached a compiler, a template or a pattern would change a rule, or stop the run. */
    @ParameterizedTest
    @ValueSource(strings = {
        "\") eval(System.exit(1)) //", "' || true || '", "end\nrule \"x\" when then System.exit(1); end", "${jndi:ldap://x}",
        "#{T(java.lang.Runtime)}", "{0} {99} {{", "$situation : Situation()", "a\\b\\u0000c", "%s %n %d", "<b>&amp;</b>", "/* */ -- ;"
    })
    void rulesStayTheSameWhateverTheTextSays(String hostile) {
        assertThat(told(hostile)).isEqualTo(told("plain words"));
    }
}
