package org.hearthrule.checklist;

import java.time.LocalDate;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.terms.Wording;

/** One state's whole law in plain words: its pathways, what each asks and does not ask, doubts, changes, sources. */
public final class LawInFull {

    private LawInFull() { }

    /** @return the law as it stands on a day */
    public static Sheet of(Profile profile, LocalDate asOf, Wording wording) {
        LawParts law = new LawParts(profile, asOf, wording);
        SheetBuilder sheet = new SheetBuilder();
        law.head(sheet);
        new AgeText(wording, profile).add(sheet, asOf);
        if (law.standing().isEmpty()) {
            sheet.apart().say(wording.say("law.not-then"));
        }
        law.standing().forEach(pathway -> pathway(sheet, pathway, law, wording));
        law.doubts(sheet);
        law.changes(sheet);
        law.announced(sheet);
        law.optIns(sheet);
        law.sources(sheet);
        law.confirm(sheet.foot());
        sheet.hint(wording.say("law.foot", law.code()), law.dates());
        return sheet.sheet(law.title());
    }

    private static void pathway(SheetBuilder sheet, Pathway pathway, LawParts law, Wording wording) {
        String aside = pathway.usual() ? wording.say("law.pathway.usual") : "";
        sheet.add(new Sheet.Heading(2, pathway.name(), aside, pathway.slug()));
        law.about(sheet, pathway);
        pathway.asks().stream().filter(law::standsOrComes).forEach(asked -> {
            sheet.within(asked.title());
            law.duty(sheet, asked, pathway);
        });
        law.notAsked(sheet, pathway);
    }
}
