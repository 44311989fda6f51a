package org.hearthrule.checklist;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.hearthrule.checklist.Sheet.Block;
import org.hearthrule.checklist.Sheet.Item;
import org.hearthrule.checklist.Sheet.Reference;
import org.hearthrule.law.Cite;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Requirement;
import org.hearthrule.terms.Wording;

/**
 * A state's law as pages that can be opened: the guide to one of its ways, where each rule opens to all there is to say
 * about it; what changes and what is not certain; the sources.
 *
 * @param ways    the ways there are; nothing where there is one
 * @param rules   between which ages the law binds, and what the way asks and does not ask
 * @param notes   changes, programs, doubts and sources
 */
public record LawFolio(Sheet ways, Sheet rules, Sheet notes) {

    /** @param pathway the way that is told in full */
    public static LawFolio of(Profile profile, Pathway pathway, LocalDate asOf, Wording wording) {
        Writer writer = new Writer(profile, pathway, asOf, wording);
        return new LawFolio(writer.ways(), writer.rules(), writer.notes());
    }

    private static final class Writer {

        private final Profile profile;
        private final Pathway pathway;
        private final LocalDate asOf;
        private final Wording wording;
        private final LawParts law;
        private final DutyInShort duty;
        private SheetBuilder sheet = new SheetBuilder();

        Writer(Profile profile, Pathway pathway, LocalDate asOf, Wording wording) {
            this.profile = profile;
            this.pathway = pathway;
            this.asOf = asOf;
            this.wording = wording;
            this.law = new LawParts(profile, asOf, wording);
            this.duty = new DutyInShort(wording, profile, pathway);
        }

        private Sheet taken() {
            Sheet whole = sheet.sheet("");
            sheet = new SheetBuilder();
            return whole;
        }

        Sheet ways() {
            law.ways(sheet, pathway);
            if (law.standing().size() > 1) {
                sheet.hint("", law.link("law.to.ways-beside", new Reference.WaysBeside(law.code())));
            }
            return taken();
        }

        Sheet rules() {
            new AgeText(wording, profile).add(sheet, asOf);
            asked();
            return taken();
        }

        Sheet notes() {
            law.later(sheet);
            law.announced(sheet);
            law.changes(sheet);
            law.optIns(sheet);
            law.doubts(sheet);
            questions();
            law.sources(sheet);
            law.confirm(sheet.foot());
            return taken();
        }

        private void asked() {
            sheet.heading(pathway.name(), "way");
            LawGuide.notInForce(pathway, asOf, wording).ifPresent(sheet::say);
            law.about(sheet, pathway);
            List<Requirement> inForce = pathway.asks().stream().filter(law::standsOrComes).toList();
            for (Topic topic : Topic.values()) {
                rules(topic.words(wording), inForce.stream()
                        .filter(asked -> Topic.of(asked.kind()) == topic && !isSpecial(asked)).toList());
            }
            rules(wording.say("law.special"), inForce.stream().filter(Writer::isSpecial).toList());
            law.notAsked(sheet, pathway);
        }

        private static boolean isSpecial(Requirement asked) {
            return DutyInShort.isSpecial(asked) || asked.validity().announced();
        }

        private void rules(String heading, List<Requirement> rules) {
            if (!rules.isEmpty()) {
                sheet.within(heading);
                rules.forEach(asked -> sheet.item(item(asked)));
            }
        }

        private Item item(Requirement asked) {
            String whole = duty.of(asked);
            return Item.of(Sheet.Plain.DASH, List.of(new Sheet.Name(asked.title()),
                    new Sheet.Text(whole.substring(asked.title().length())))).opening(asked.localId(), opened(asked));
        }

        /** All there is to say about a rule: a sentence a paragraph, then where it stands and how that was read. */
        private List<Block> opened(Requirement asked) {
            SheetBuilder opened = new SheetBuilder();
            new Duty(wording, profile).sentences(asked, pathway).forEach(opened::say);
            MistakeReport.inForce(asked.validity(), wording).forEach(opened::say);
            opened.say(wording.say("line.confirm", asked.confirmWith()));
            Sources sources = new Sources(wording);
            for (Cite cite : asked.cites()) {
                opened.item(Item.of(Sheet.Plain.NONE, String.join(" ", sources.sentences(List.of(cite))))
                        .over(new Sheet.Address(cite.source().address())));
            }
            opened.item(Sheet.Plain.NONE, wording.say("explain.binding", asked.binding().words()));
            opened.hint("", law.link("law.to.mistake", new Reference.Mistake(asked.id())));
            return opened.blocks();
        }

        /** Open questions of single rules, beside those about the law as a whole. */
        private void questions() {
            List<String> open = new ArrayList<>();
            for (Requirement asked : pathway.asks()) {
                if (asked.question() != null && law.standsOrComes(asked)) {
                    open.add(wording.say("register.question", asked.title(), asked.question(),
                            asked.ask() == null ? asked.confirmWith() : asked.ask()));
                }
            }
            if (!open.isEmpty() && profile.doubts().isEmpty()) {
                sheet.heading(wording.say("law.doubts"), "doubts");
            }
            open.stream().distinct().forEach(sheet::dash);
        }
    }
}
