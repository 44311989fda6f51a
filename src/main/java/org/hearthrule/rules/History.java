package org.hearthrule.rules;

import java.util.stream.Stream;
import org.hearthrule.law.Condition;
import org.hearthrule.law.Evidence;
import org.hearthrule.law.Requirement;
import org.hearthrule.records.YearRecords;

/** What an earlier school year holds. */
final class History {

    private History() {
    }

    /**
     * @return yes when the earlier year holds a test or evaluation by that method, or a paper when {@code was} is
     *     {@code met}, or when the requirement applied in it and {@code was} is {@code owed}; no when it does not, or
     *     when the program had not begun; unknown when its file is missing
     */
    static Truth was(Condition.History rule, Situation situation) {
        String label = situation.year().plus(-rule.yearsAgo()).fileLabel();
        if (situation.yearOfProgram() <= rule.yearsAgo()) {
            return Truth.no(Say.it("history.not-begun", label));
        }
        if (rule.was().equals("owed")) {
            return owed(rule, situation.earlier(rule.yearsAgo()), label);
        }
        YearRecords records = situation.book().years().get(label);
        if (records == null && rule.yearsAgo() == 0) {
            records = YearRecords.empty(label);
        }
        if (records == null) {
            return Truth.unknown(Say.it("history.no-file", label), Say.it("history.ask", label));
        }
        return switch (rule.was()) {
            case "met" -> filed(rule.requirement(), situation, records, label);
            case "missing" -> filed(rule.requirement(), situation, records, label).negated();
            default -> method(rule.was(), situation.earlier(rule.yearsAgo()), records, label);
        };
    }

    /** A chain over years: what applied last year decides what applies now. Before the program began nothing did. */
    private static Truth owed(Condition.History rule, Situation then, String label) {
        Requirement requirement = then.requirement(rule.requirement()).orElse(null);
        if (requirement == null) {
            return Truth.no("");
        }
        Truth applied = Truth.any(then.occasions(requirement).stream().map(Occasion::applies).toList());
        return applied.isUnknown() ? applied : applied.isYes() ? Truth.yes(Say.it("history.owed", requirement.title(), label))
                : Truth.no(Say.it("history.not-owed", requirement.title(), label));
    }

    private static Truth method(String method, Situation situation, YearRecords records, String label) {
        String child = situation.studentId();
        boolean used = TestsTaken.all(situation).stream().anyMatch(test -> test.method().equals(method)
                && TestsTaken.inYear(test, situation))
                || records.evaluations().stream().anyMatch(e -> e.student().equals(child) && e.method().equals(method))
                || records.choices().stream().anyMatch(choice -> method.equals(choice.value())
                && (choice.student() == null || choice.student().equals(child)));
        String words = method.replace('-', ' ');
        return used ? Truth.yes(Say.it("history.used", words, label)) : Truth.no(Say.it("history.not-used", words, label));
    }

    private static Truth filed(String localId, Situation situation, YearRecords records, String label) {
        Requirement requirement = situation.requirement(localId).orElse(null);
        Evidence shows = requirement == null ? null : requirement.shows();
        String paper = shows instanceof Evidence.Filing filing ? filing.paper()
                : shows instanceof Evidence.Approval approval ? approval.paper() : localId;
        boolean sent = ofYear(situation, records, label).anyMatch(filing -> filing.paper().equals(paper)
                && filing.sent() != null && !filing.sent().isAfter(situation.today())
                && situation.concerns(filing.students())
                && (!(shows instanceof Evidence.Approval) || granted(filing)));
        return sent ? Truth.yes(Say.it("history.sent", label)) : Truth.no(Say.it("history.not-sent", label));
    }

    /** Papers in the file of that year, and those in others that were sent for it. */
    private static Stream<YearRecords.Filing> ofYear(Situation situation, YearRecords records, String label) {
        return Stream.concat(records.filings().stream().filter(filing -> filing.year() == null || filing.year().equals(label)),
                situation.book().years().values().stream().filter(year -> !year.label().equals(label))
                        .flatMap(year -> year.filings().stream()).filter(filing -> label.equals(filing.year())));
    }

    private static boolean granted(YearRecords.Filing filing) {
        return filing.answers().stream().anyMatch(answer -> answer.kind().equals("approved"));
    }
}
