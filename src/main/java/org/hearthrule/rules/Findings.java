package org.hearthrule.rules;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hearthrule.law.Cite;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Requirement;
import org.hearthrule.law.RequirementKind;
import org.hearthrule.records.AnsweredDoubt;
import org.hearthrule.records.Book;

/** Turns what a run of the rules left into findings, in a stable order, with what does not apply and why. */
final class Findings {

    private final Book book;
    private final LocalDate today;
    private final Map<String, Profile> profiles;
    private final Judge.Outcome outcome;
    /** By occasion; a situation works each of them out once. */
    private final Map<Occasion, Claim> claims = new IdentityHashMap<>();
    private final List<Finding> findings = new ArrayList<>();

    Findings(Book book, LocalDate today, Map<String, Profile> profiles, Judge.Outcome outcome) {
        this.book = book;
        this.today = today;
        this.profiles = profiles;
        this.outcome = outcome;
        for (Claim claim : outcome.verdicts().keySet()) {
            claims.put(claim.occasion(), claim);
        }
    }

    List<Finding> all() {
        for (Situation situation : outcome.situations()) {
            for (Requirement requirement : situation.pathway().asks()) {
                if (!Telling.worth(requirement, situation)) {
                    continue;
                }
                for (Occasion occasion : situation.occasions(requirement)) {
                    Claim claim = claims.get(occasion);
                    if (claim == null) {
                        addNotDue(requirement, situation, occasion);
                    } else {
                        add(claim);
                    }
                }
            }
        }
        List<Finding> merged = FamilyDuties.merged(findings, profiles);
        for (Profile profile : profiles.values()) {
            merged.addAll(aboutLaw(profile));
        }
        outcome.doubts().stream().sorted(Comparator.comparing(RecordDoubt::student).thenComparing(RecordDoubt::rule)
                .thenComparing(RecordDoubt::about)).forEach(doubt -> merged.add(RecordFindings.of(doubt, book, outcome.situations())));
        return merged;
    }

    /** @return id of what is said of one child */
    static String id(Requirement requirement, Situation situation, Occasion occasion) {
        return requirement.id() + "/" + situation.studentId() + "/" + occasion.key();
    }

    private void addNotDue(Requirement requirement, Situation situation, Occasion occasion) {
        if (situation.year().start().isAfter(today)) {
            return;
        }
        findings.add(finding(requirement, situation, occasion, Status.NOT_DUE, null, occasion.due().note(),
                List.of(occasion.applies().reason()), null, null, List.of(requirement.id()),
                List.of(Say.it("change.not-due"))));
    }

    private void add(Claim claim) {
        Verdict verdict = outcome.verdicts().get(claim);
        boolean notYet = claim.situation().year().start().isAfter(today);
        if (notYet && verdict.status() == Status.MET && claim.requirement().kind() == RequirementKind.HEALTH) {
            return;
        }
        List<Remark> remarks = outcome.remarks().getOrDefault(claim, List.of());
        List<String> rules = new ArrayList<>(List.of(claim.requirement().id(), verdict.rule()));
        remarks.forEach(remark -> rules.add(remark.rule()));
        List<String> why = Reasons.of(claim, verdict, remarks);
        findings.add(finding(claim.requirement(), claim.situation(), claim.occasion(), verdict.status(), claim.due(),
                claim.occasion().due().note(), why, Reasons.next(claim, verdict), claim.shown(), rules,
                Reasons.wouldChange(claim, verdict)));
    }

    private Finding finding(Requirement requirement, Situation situation, Occasion occasion, Status status, LocalDate due,
                            String dueNote, List<String> why, String next, Shown shown, List<String> rules,
                            List<String> wouldChange) {
        String id = id(requirement, situation, occasion);
        LocalDate day = occasion.due().isMissing() ? null : due;
        return new Finding(id, requirement.id(), situation.profile().slug(),
                situation.pathway().slug(), situation.studentId(), situation.student().name(), requirement.kind(),
                requirement.title(), situation.year().label(), status, day, day == null && dueNote == null
                ? Say.it("due.none") : dueNote, occasion.due().opens(), Claim.theirs(requirement), why, next,
                shown == null ? Map.of() : shown.counted(), shown == null ? List.of() : shown.records(),
                shown == null ? List.of() : shown.sums(), wouldChange, rules, requirement.cites(), requirement.confirmWith());
    }

    /** Doubts, announced changes and what is not asked, for the pathways in use. */
    private List<Finding> aboutLaw(Profile profile) {
        List<Finding> found = new ArrayList<>();
        String code = profile.slug();
        List<Situation> current = outcome.situations().stream()
                .filter(s -> s.profile() == profile && s.year().holds(today)).toList();
        // by its slug: a pathway holds half of the profile, and to compare two of them is to look at all of it
        Map<String, Pathway> bySlug = new LinkedHashMap<>();
        current.forEach(situation -> bySlug.putIfAbsent(situation.pathway().slug(), situation.pathway()));
        List<Pathway> inUse = List.copyOf(bySlug.values());
        for (Profile.Doubt doubt : profile.doubts()) {
            if (doubt.validity().inForceOn(today) && touches(doubt, current)) {
                found.add(doubt(doubt, code, profile));
            }
        }
        for (Profile.Announced announced : profile.announced()) {
            String note = announced.from() == null ? Say.it("validity.announced")
                    : Say.it("validity.announced-from", announced.from());
            found.add(law(code + "/announced/" + (profile.announced().indexOf(announced) + 1), code, null, RequirementKind.STANDARD,
                    announced.what(), Status.NOT_DUE, note, List.of(announced.what()), null, List.of(announced.cite()), profile.confirmWith()));
        }
        for (Pathway pathway : inUse) {
            for (Pathway.NotAsked notAsked : pathway.doesNotAskOn(today)) {
                found.add(law(notAsked.id(), code, pathway.slug(), RequirementKind.NOT_REQUIRED, notAsked.what(),
                        Status.NOT_DUE, Say.it("not-asked.due"), List.of(Say.it("not-asked.why")), null, List.of(notAsked.cite()),
                        profile.confirmWith()));
            }
        }
        return found;
    }

    /** A doubt about certain duties matters only to those who may owe one of them. */
    private static boolean touches(Profile.Doubt doubt, List<Situation> current) {
        if (doubt.on().isEmpty()) {
            return !current.isEmpty();
        }
        for (Situation situation : current) {
            for (Requirement requirement : situation.pathway().asks()) {
                if (doubt.on().contains(requirement.id())
                        && !Conditions.holds(doubt.when(), situation, situation.thatDay()).isNo() && situation.occasions(requirement).stream()
                        .anyMatch(occasion -> !occasion.applies().isNo())) {
                    return true;
                }
            }
        }
        return false;
    }

    private Finding doubt(Profile.Doubt doubt, String code, Profile profile) {
        for (AnsweredDoubt answer : book.answers()) {
            if (answer.doubt().equals(doubt.id())) {
                String said = Say.it("doubt.answered", answer.from(), answer.date(), answer.answer());
                return law(doubt.id(), code, null, RequirementKind.STANDARD, doubt.about(), Status.MET,
                        Say.it("due.none"), List.of(said), null, doubt.cites(), doubt.ask());
            }
        }
        return law(doubt.id(), code, null, RequirementKind.STANDARD, doubt.about(), Status.UNCLEAR, Say.it("due.none"),
                List.of(Say.it(doubt.differ() ? "doubt.differ" : "doubt.open")), Say.it("doubt.ask", doubt.ask()), doubt.cites(), doubt.ask());
    }

    private static Finding law(String id, String code, String pathway, RequirementKind kind, String title, Status status,
                               String dueNote, List<String> why, String next, List<Cite> cites, String confirmWith) {
        return new Finding(id, id, code, pathway, null, null, kind, title, null, status, null, dueNote, null, false, why,
                next, new LinkedHashMap<>(), List.of(), List.of(), List.of(), List.of(id),
                cites, confirmWith);
    }
}
