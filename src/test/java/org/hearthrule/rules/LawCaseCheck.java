package org.hearthrule.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.hearthrule.input.Node;
import org.hearthrule.law.Profile;

/** Holds a checklist against what a case expects. */
final class LawCaseCheck {

    /** Expected status of a requirement for which no line may stand. */
    static final String NO_LINE = "no-line";

    private LawCaseCheck() {
    }

    /** @return what the case expects and the checklist does not say, with what it says instead */
    static List<String> faults(LawCase lawCase, Profile profile) {
        Judgement judgement = new Judge(List.of(profile)).judge(lawCase.book(), lawCase.asOf());
        List<String> faults = new ArrayList<>();
        for (Map<String, Node> expected : lawCase.expected()) {
            List<Finding> candidates = candidates(expected, lawCase, judgement);
            boolean as = NO_LINE.equals(status(expected)) ? candidates.isEmpty()
                    : candidates.stream().anyMatch(finding -> fits(expected, finding));
            if (!as) {
                faults.add("expected " + shown(expected) + "\n  found " + (candidates.isEmpty() ? "no such line"
                        : String.join("\n        ", candidates.stream().map(LawCaseCheck::shown).toList())));
            }
        }
        return faults;
    }

    /**
     * @return whether the duty reaches the family in this case. One that is put in words only, or that somebody else
     *     owes, is never due from the family; its line says so when it does apply.
     */
    static boolean applies(Map<String, Node> expected, LawCase lawCase, Profile profile) {
        if (!status(expected).equals("not-due")) {
            return !status(expected).equals(NO_LINE);
        }
        Judgement judgement = new Judge(List.of(profile)).judge(lawCase.book(), lawCase.asOf());
        return candidates(expected, lawCase, judgement).stream().filter(finding -> fits(expected, finding))
                .anyMatch(finding -> finding.why().contains(Say.it("why.words"))
                        || finding.why().stream().anyMatch(why -> why.startsWith(Say.it("why.theirs", "").split("\\(")[0])));
    }

    /** @return the expected status, or an empty text */
    static String status(Map<String, Node> expected) {
        return expected.containsKey("status") ? LawCase.text(expected.get("status")) : "";
    }

    private static List<Finding> candidates(Map<String, Node> expected, LawCase lawCase, Judgement judgement) {
        String localId = LawCase.text(expected.get("requirement"));
        List<Finding> same = judgement.findings().stream()
                .filter(finding -> finding.requirement().endsWith("/" + localId))
                .filter(finding -> finding.student() == null || finding.student().equals(LawCase.CHILD)).toList();
        if (expected.containsKey("occasion")) {
            String occasion = "/" + LawCase.text(expected.get("occasion"));
            same = same.stream().filter(finding -> finding.id().endsWith(occasion)).toList();
        }
        if (expected.containsKey("part")) {
            String part = "." + LawCase.text(expected.get("part"));
            same = same.stream().filter(finding -> finding.id().endsWith(part)).toList();
        }
        String year = expected.containsKey("year") ? LawCase.text(expected.get("year")) : LawCase.label(lawCase.asOf());
        List<Finding> ofYear = same.stream().filter(finding -> finding.year() == null || finding.id().endsWith("/once")
                || finding.year().equals(year)).toList();
        return ofYear;
    }

    private static boolean fits(Map<String, Node> expected, Finding finding) {
        boolean fits = true;
        for (Map.Entry<String, Node> each : expected.entrySet()) {
            String value = LawCase.text(each.getValue());
            fits &= switch (each.getKey()) {
                case "requirement", "year", "part", "occasion" -> true;
                case "status" -> finding.status().slug().equals(value);
                case "due" -> value.equals("null") ? finding.due() == null
                        : finding.due() != null && finding.due().toString().equals(value);
                case "due-note" -> finding.dueNote() != null && finding.dueNote().contains(value);
                case "opens" -> finding.opens() != null && finding.opens().toString().equals(value);
                case "why" -> String.join(" ", finding.why()).contains(value);
                case "next" -> finding.next() != null && finding.next().contains(value);
                default -> throw new IllegalArgumentException("no such expectation: " + each.getKey());
            };
        }
        return fits;
    }

    private static String shown(Map<String, Node> expected) {
        StringBuilder out = new StringBuilder();
        expected.forEach((key, value) -> out.append(key).append(": ").append(LawCase.text(value)).append("; "));
        return out.toString();
    }

    private static String shown(Finding finding) {
        return finding.id() + " " + finding.status().slug() + " due " + finding.due() + " (" + finding.dueNote() + ") "
                + finding.why() + " next: " + finding.next();
    }
}
