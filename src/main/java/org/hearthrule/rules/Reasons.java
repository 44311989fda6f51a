package org.hearthrule.rules;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.hearthrule.law.Evidence;
import org.hearthrule.law.Requirement;
import org.hearthrule.law.RequirementKind;
import org.hearthrule.law.Span;

/** The sentences of a finding. What was found comes first, why comes after. */
final class Reasons {

    private Reasons() {
    }

    static List<String> of(Claim claim, Verdict verdict, List<Remark> remarks) {
        Set<String> why = new LinkedHashSet<>();
        Requirement requirement = claim.requirement();
        Shown shown = claim.shown();
        switch (verdict.status()) {
            case MET -> why.addAll(shown.sums());
            case OPEN, LATE, THIN -> {
                why.addAll(shown.lacks());
                if (claim.due() != null) {
                    day(claim, verdict.status(), why);
                }
            }
            case UNCLEAR -> unclear(claim, why);
            case NOT_DUE -> notDue(claim, verdict, why);
        }
        remarks.forEach(remark -> why.add(remark.sentence()));
        if (verdict.status() != Status.UNCLEAR && verdict.status() != Status.NOT_DUE) {
            kept(claim, why);
        }
        if (requirement.question() != null && requirement.kind() != RequirementKind.STANDARD) {
            why.add(Say.it("why.question", requirement.question(), requirement.ask()));
        }
        if (requirement.note() != null) {
            why.add(requirement.note());
        }
        why.remove("");
        return List.copyOf(why);
    }

    /** What there is to say of a due day that is not shown to be met. */
    private static void day(Claim claim, Status status, Set<String> why) {
        if (status != Status.OPEN) {
            why.add(Say.it(status == Status.LATE ? "why.late" : "why.customary", claim.due()));
        } else if (!claim.isTheirs()) {
            if (claim.due().isBefore(claim.situation().today())) {
                why.add(Say.it("why.weekend", claim.due(), claim.graceDay()));
            }
            if (claim.isUsualDay()) {
                why.add(Say.it("why.usual-day"));
            }
        }
    }

    private static void unclear(Claim claim, Set<String> why) {
        if (claim.occasion().applies().isUnknown()) {
            why.add(claim.occasion().applies().reason());
        } else if (claim.occasion().due().isMissing()) {
            why.add(claim.occasion().due().note());
        } else if (claim.requirement().kind() == RequirementKind.STANDARD) {
            words(claim, why);
            why.add(Say.it("why.question", claim.requirement().question(), claim.requirement().ask()));
        } else {
            why.addAll(claim.shown().lacks());
            boolean once = claim.requirement().recurs().each() == Requirement.Recurs.Each.ONCE;
            if (claim.shown().value() == Truth.Value.NO && once && claim.situation().yearOfProgram() > 1) {
                why.add(Say.it("why.long-ago", claim.situation().programStart()));
            }
        }
    }

    private static void notDue(Claim claim, Verdict verdict, Set<String> why) {
        if (claim.outcome() == Claim.Outcome.IN_WORDS) {
            words(claim, why);
            why.add(Say.it("why.words"));
        } else if (claim.isVoluntary()) {
            why.add(Say.it("why.voluntary"));
        } else if (claim.isTheirs()) {
            why.add(Say.it("why.theirs", claim.requirement().by()));
        } else {
            why.add(Say.it("why.alternative"));
        }
    }

    /** How long a record is kept, counted from the end of its school year. */
    private static void kept(Claim claim, Set<String> why) {
        Requirement.Retention keep = claim.requirement().keepFor();
        if (keep == null) {
            return;
        }
        if (keep.span() == null || keep.span().unit() == Span.Unit.BUSINESS_DAYS || keep.span().unit() == Span.Unit.SCHOOL_DAYS) {
            why.add(Say.it("keep.words", keep.words() == null ? Spans.words(keep.span()) : keep.words()));
            return;
        }
        LocalDate until = Spans.plus(claim.situation().lastDay(), keep.span());
        why.add(Say.it("keep.until", until));
        if (claim.requirement().validity().unclearOn(until)) {
            why.add(Say.it("keep.unclear", claim.requirement().validity().unclearFrom(), claim.requirement().confirmWith()));
        }
    }

    private static void words(Claim claim, Set<String> why) {
        if (claim.requirement().shows() instanceof Evidence.Words words && words.words() != null) {
            why.add(words.words());
        }
    }

    /** @return the one next step, or null when there is nothing to do */
    static String next(Claim claim, Verdict verdict) {
        return switch (verdict.status()) {
            case MET -> null;
            case OPEN, LATE, THIN -> claim.requirement().next();
            case NOT_DUE -> claim.outcome() == Claim.Outcome.IN_WORDS ? claim.requirement().next() : null;
            case UNCLEAR -> question(claim);
        };
    }

    private static String question(Claim claim) {
        List<String> questions = new ArrayList<>(claim.occasion().applies().questions());
        questions.addAll(claim.occasion().due().questions());
        if (claim.shown() != null) {
            questions.addAll(claim.shown().questions());
        }
        boolean openInLaw = claim.shown() == null || claim.requirement().question() != null
                || claim.shown().value() == Truth.Value.UNKNOWN;
        if (claim.requirement().ask() != null && questions.isEmpty() && openInLaw) {
            return Say.it("doubt.ask", claim.requirement().ask());
        }
        return questions.isEmpty() ? claim.requirement().next() : Say.it("next.answer", questions.get(0));
    }

    static List<String> wouldChange(Claim claim, Verdict verdict) {
        List<String> changes = new ArrayList<>();
        switch (verdict.status()) {
            case MET -> changes.add(Say.it("change.met"));
            case OPEN, LATE, THIN -> changes.addAll(claim.shown().lacks().stream().map(lack -> Say.it("change.lack", lack)).toList());
            case UNCLEAR -> changes.add(Say.it("change.unclear"));
            case NOT_DUE -> changes.add(Say.it("change.not-due"));
        }
        return changes;
    }
}
