package org.hearthrule.checklist;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hearthrule.law.Evidence;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Requirement;
import org.hearthrule.law.RequirementKind;
import org.hearthrule.terms.Basis;
import org.hearthrule.terms.Prose;
import org.hearthrule.terms.Wording;

/** Says in a few sentences what one requirement asks. */
final class Duty {

    private final Wording wording;
    private final Profile profile;

    Duty(Wording wording, Profile profile) {
        this.wording = wording;
        this.profile = profile;
    }

    /** @return the time or the subjects asked, as a sentence; empty where a duty counts neither */
    Optional<String> amount(Requirement asked, Pathway pathway) {
        boolean counted = asked.kind() == RequirementKind.TIME || asked.kind() == RequirementKind.SUBJECTS;
        return counted && asked.shows() != null
                ? Optional.of(Prose.ended(new EvidenceWords(wording, profile, pathway).of(asked.shows()))) : Optional.empty();
    }

    /** @return how it was read, in brackets, where that is less than in the law or at its agency */
    Optional<String> weakReading(Requirement asked) {
        return asked.basis().weakerThan(Basis.AGENCY) ? Optional.of(wording.say("compare.basis." + asked.basis().slug()))
                : Optional.empty();
    }

    /** @return when it is due, what shows it and what else there is to say; empty when the profile does not have it */
    Optional<String> note(String requirementId) {
        for (Pathway pathway : profile.pathways()) {
            for (Requirement asked : pathway.asks()) {
                if (asked.id().equals(requirementId)) {
                    return Optional.of(String.join(" ", sentences(asked, pathway)));
                }
            }
        }
        return Optional.empty();
    }

    /** @return condition and due date only */
    String inShort(Requirement asked, Pathway pathway) {
        String when = new ConditionWords(wording, profile, pathway).of(asked.when());
        String due = new DueWords(wording, profile, pathway).sentence(asked.due());
        String announced = asked.validity().announced() ? wording.say("law.asks.announced") + ' ' : "";
        return announced + (when.isEmpty() ? due : due + ' ' + wording.say("law.asks.if", when));
    }

    /** @return condition, due date, occasions, who and to whom, proof, contents, keeping, note, question */
    List<String> sentences(Requirement asked, Pathway pathway) {
        DueWords dues = new DueWords(wording, profile, pathway);
        List<String> said = new ArrayList<>();
        if (asked.validity().announced()) {
            said.add(wording.say("law.asks.announced"));
        }
        if (asked.validity().unclearFrom() != null) {
            said.add(wording.say("law.asks.unclear-from", wording.date(asked.validity().unclearFrom()), asked.confirmWith()));
        }
        String when = new ConditionWords(wording, profile, pathway).of(asked.when());
        if (!when.isEmpty()) {
            said.add(wording.say("law.asks.if", when));
        }
        said.add(dues.sentence(asked.due()));
        recurs(asked, said);
        owed(asked, said);
        if (asked.shows() != null && !(asked.shows() instanceof Evidence.Filing)) {
            said.add(asked.shows() instanceof Evidence.Words words ? words.words()
                    : wording.say("law.asks.shown", new EvidenceWords(wording, profile, pathway).of(asked.shows())));
        }
        paper(asked, dues, said);
        if (asked.note() != null) {
            said.add(asked.note());
        }
        if (asked.question() != null) {
            said.add(wording.say("law.asks.question", asked.question(),
                    asked.ask() == null ? asked.confirmWith() : asked.ask()));
        }
        return said;
    }

    private void recurs(Requirement asked, List<String> said) {
        switch (asked.recurs().each()) {
            case YEAR -> { }
            case ONCE -> said.add(wording.say("law.asks.once"));
            case EVENT -> said.add(wording.say("law.asks.each-event",
                    DueWords.events(wording, asked.recurs().events())));
        }
    }

    private void owed(Requirement asked, List<String> said) {
        switch (asked.owedFor()) {
            case CHILD -> { }
            case FAMILY -> said.add(wording.say("law.asks.for-family"));
            case SCHOOL -> said.add(wording.say("law.asks.for-school"));
        }
        if (!asked.by().equals("parent")) {
            said.add(wording.say("law.asks.by", asked.by()));
        }
        if (asked.to() != null) {
            said.add(wording.say("law.asks.to", asked.to()));
        }
    }

    private void paper(Requirement asked, DueWords dues, List<String> said) {
        if (!asked.states().isEmpty()) {
            said.add(wording.say("law.asks.states", String.join("; ", asked.states())));
        }
        if (!asked.attaches().isEmpty()) {
            said.add(wording.say("law.asks.attaches", String.join("; ", asked.attaches())));
        }
        if (asked.form() != null) {
            said.add(wording.say("law.asks.form", asked.form()));
        }
        if (asked.keepFor() != null) {
            String span = asked.keepFor().span() == null ? asked.keepFor().words()
                    : wording.say("law.asks.keep.span", dues.span(asked.keepFor().span()));
            said.add(wording.say("law.asks.keep", span));
        }
    }
}
