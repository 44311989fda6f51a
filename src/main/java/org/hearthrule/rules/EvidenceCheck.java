package org.hearthrule.rules;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hearthrule.law.Evidence;
import org.hearthrule.law.Requirement;
import org.hearthrule.records.Person;
import org.hearthrule.terms.Prose;

/** Compares the facts accumulated for a requirement with the evidence it asks for. */
final class EvidenceCheck {

    private final Requirement requirement;
    private final Situation situation;
    private final Occasion occasion;
    private final List<RecordFact> facts;
    private final PaperCheck papers;
    private final AssessmentCheck assessments;

    private EvidenceCheck(Requirement requirement, Situation situation, Occasion occasion, List<RecordFact> facts) {
        this.requirement = requirement;
        this.situation = situation;
        this.occasion = occasion;
        this.facts = facts;
        this.papers = new PaperCheck(requirement, situation, occasion, facts);
        this.assessments = new AssessmentCheck(requirement, situation, occasion, facts);
    }

    static Shown of(Requirement requirement, Situation situation, Occasion occasion, List<RecordFact> facts) {
        return new EvidenceCheck(requirement, situation, occasion, facts).check(requirement.shows());
    }

    private Shown check(Evidence evidence) {
        if (evidence instanceof Evidence.AllOf all) {
            return Shown.all(open(all.parts()).stream().map(this::check).toList());
        }
        if (evidence instanceof Evidence.AnyOf any) {
            return anyOf(any);
        }
        if (evidence instanceof Evidence.Option option) {
            return option(option);
        }
        if (evidence instanceof Evidence.Time time) {
            return new TimeCheck(requirement, situation, facts).check(time);
        }
        if (evidence instanceof Evidence.Subjects subjects) {
            return new SubjectsCheck(situation, facts).check(subjects);
        }
        if (evidence instanceof Evidence.Test test) {
            return assessments.check(test);
        }
        if (evidence instanceof Evidence.Evaluation evaluation) {
            return assessments.check(evaluation);
        }
        if (evidence instanceof Evidence.Credential credential) {
            return credential(credential);
        }
        if (evidence instanceof Evidence.Fact fact) {
            return fact(fact);
        }
        if (evidence instanceof Evidence.Words words) {
            return Shown.unknown(Map.of(), List.of(), null, words.words(), null);
        }
        if (evidence instanceof Evidence.Visits visits) {
            return new VisitCheck(situation, facts).check(visits);
        }
        return papers.check(evidence);
    }

    /** @return parts whose own condition does not rule them out */
    private List<Evidence> open(List<Evidence> parts) {
        List<Evidence> open = new ArrayList<>();
        for (Evidence part : parts) {
            if (!(part instanceof Evidence.Option option) || !when(option).isNo()) {
                open.add(part);
            }
        }
        return open;
    }

    private Truth when(Evidence.Option option) {
        java.time.LocalDate day = occasion.due().date() != null ? occasion.due().date() : situation.thatDay();
        return Conditions.holds(option.when(), situation, day, occasion.testDay());
    }

    private Shown anyOf(Evidence.AnyOf any) {
        List<Shown> shown = new ArrayList<>();
        List<String> inWords = new ArrayList<>();
        Shown preferred = null;
        for (Evidence part : open(any.parts())) {
            if (part instanceof Evidence.Words words) {
                inWords.add(words.words());
                continue;
            }
            Shown result = check(part);
            shown.add(result);
            if (part instanceof Evidence.Option option && option.name() != null && situation.isChosen(option.name())) {
                preferred = result;
            }
        }
        Shown best = Shown.any(shown, preferred);
        return inWords.isEmpty() || best.isYes() ? best : best.opened(inWords);
    }

    private Shown option(Evidence.Option option) {
        Truth when = when(option);
        Shown shown = check(option.part());
        if (when.isUnknown() && !shown.isYes()) {
            return Shown.unknown(shown.counted(), shown.records(), null, when.reason(), when.questions().get(0))
                    .along(shown.courses());
        }
        if (option.as() == null || shown.isYes()) {
            return shown;
        }
        String none = Say.it("lacks.none", "");
        String nothing = none.substring(0, none.length() - 1);
        List<String> lacks = shown.lacks().stream().map(lack -> lack.startsWith(nothing)
                ? Say.it("lacks.none", option.as()) : Prose.upperFirst(option.as()) + ": " + lack).distinct().toList();
        return new Shown(shown.value(), shown.on(), shown.counted(), shown.records(), shown.sums(), lacks, shown.questions(),
                shown.courses());
    }

    private Shown credential(Evidence.Credential credential) {
        List<Person> people = situation.book().persons().stream()
                .filter(person -> person.roles().contains(credential.of())).toList();
        String kinds = words(credential.kinds());
        for (Person person : people) {
            for (Person.Credential held : person.credentials()) {
                if (credential.kinds().contains(held.kind())) {
                    Map<String, Object> counted = new LinkedHashMap<>();
                    counted.put("credential", held.kind());
                    return Shown.yes(held.date(), counted, List.of(new RecordRef("family", person.id(), held.date(),
                            person.name() + ": " + held.kind().replace('-', ' '))), Say.it("credential.held", person.name(),
                            held.kind().replace('-', ' ')));
                }
            }
        }
        return Shown.unknown(Map.of(), List.of(), null, Say.it("credential.lack", kinds, credential.of()),
                Say.it("credential.ask", credential.of(), kinds));
    }

    private Shown fact(Evidence.Fact fact) {
        Truth answer = situation.fact(fact.name());
        if (answer.isUnknown()) {
            return Shown.unknown(Map.of(), List.of(), null, answer.reason(), answer.questions().get(0));
        }
        Map<String, Object> counted = new LinkedHashMap<>();
        counted.put(fact.name(), answer.isYes() ? "yes" : "no");
        return answer.isYes() == fact.is() ? Shown.yes(null, counted, List.of(), answer.reason())
                : Shown.no(counted, List.of(), answer.reason(), Say.it("fact.other", fact.is() ? "yes" : "no"));
    }

    static String words(List<String> slugs) {
        return String.join(Say.it("lacks.or"), slugs.stream().map(slug -> slug.replace('-', ' ')).toList());
    }
}
