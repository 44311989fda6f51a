package org.hearthrule.checklist;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hearthrule.checklist.Sheet.Reference;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Requirement;
import org.hearthrule.terms.Wording;

/** A state's law for a parent in one or two screens: the ways there are, and what one of them asks of most families. */
public final class LawGuide {

    private final Profile profile;
    private final Pathway pathway;
    private final LocalDate asOf;
    private final Wording wording;
    private final LawParts law;
    private final SheetBuilder sheet = new SheetBuilder();

    private LawGuide(Profile profile, Pathway pathway, LocalDate asOf, Wording wording) {
        this.profile = profile;
        this.pathway = pathway;
        this.asOf = asOf;
        this.wording = wording;
        this.law = new LawParts(profile, asOf, wording);
    }

    /** @param pathway the way that is told in full */
    public static Sheet of(Profile profile, Pathway pathway, LocalDate asOf, Wording wording) {
        return new LawGuide(profile, pathway, asOf, wording).write();
    }

    private Sheet write() {
        law.head(sheet);
        sheet.say(String.join(" ", new AgeText(wording, profile).sentences(pathway, asOf)));
        law.ways(sheet, pathway);
        asked();
        notAsked();
        notices();
        law.confirm(sheet.apart());
        sheet.hint(wording.say("law.guide.more", law.code()), law.link("law.to.ways", new Reference.OtherWays(law.code())),
                law.link("law.to.whole", new Reference.WholeLaw(law.code())), law.dates());
        return sheet.sheet(law.title());
    }

    /** @return a sentence when the way is not open on that day */
    static Optional<String> notInForce(Pathway way, LocalDate day, Wording wording) {
        if (way.validity().inForceOn(day)) {
            return Optional.empty();
        }
        LocalDate from = way.validity().from();
        LocalDate until = way.validity().until();
        if (until != null && until.isBefore(day)) {
            return Optional.of(wording.say("law.way.over", wording.date(until)));
        }
        if (way.validity().announced()) {
            return Optional.of(from == null ? wording.say("law.way.announced") : wording.say("law.way.announced-from", wording.date(from)));
        }
        return Optional.of(wording.say("law.way.not-yet", wording.date(from)));
    }

    private void asked() {
        sheet.heading(pathway.name());
        notInForce(pathway, asOf, wording).ifPresent(sheet::say);
        sheet.say(String.join(" ", law.openTo(pathway)));
        DutyInShort duty = new DutyInShort(wording, profile, pathway);
        int special = 0;
        Topic shown = null;
        for (Topic topic : Topic.values()) {
            for (Requirement asked : pathway.asks()) {
                if (Topic.of(asked.kind()) != topic || !asked.validity().inForceOn(asOf)) {
                    continue;
                }
                if (DutyInShort.isSpecial(asked)) {
                    special++;
                    continue;
                }
                if (topic != shown) {
                    sheet.within(topic.words(wording));
                    shown = topic;
                }
                sheet.dash(duty.of(asked));
            }
        }
        if (special > 0) {
            sheet.add(new Sheet.Remark(wording.count("law.guide.special", special)));
        }
    }

    private void notAsked() {
        List<String> not = pathway.doesNotAskOn(asOf).stream().map(Pathway.NotAsked::what).toList();
        if (!not.isEmpty()) {
            sheet.within(wording.say("law.not-asked"));
            sheet.say(String.join(" ", not));
        }
    }

    private void notices() {
        law.later(sheet);
        law.part(sheet, "law.announced", "announced", profile.announced().stream()
                .map(coming -> law.from(coming.from(), coming.what())).distinct().toList());
        sheet.foot();
        int open = Reading.of(profile).doubts();
        if (open > 0) {
            sheet.hint(wording.count("law.guide.doubts", open), law.link("law.to.doubts", new Reference.Doubts(law.code())));
        }
    }
}
