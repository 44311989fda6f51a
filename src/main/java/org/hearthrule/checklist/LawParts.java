package org.hearthrule.checklist;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.hearthrule.law.Cite;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Requirement;
import org.hearthrule.law.SchoolYear;
import org.hearthrule.law.Source;
import org.hearthrule.terms.Prose;
import org.hearthrule.terms.Wording;

/** The parts of one state's law in plain words, from which a sheet about it is put together. */
final class LawParts {

    private final Wording wording;
    private final Profile profile;
    private final LocalDate asOf;
    private final Sources sources;

    LawParts(Profile profile, LocalDate asOf, Wording wording) {
        this.wording = wording;
        this.profile = profile;
        this.asOf = asOf;
        this.sources = new Sources(wording);
    }

    String title() {
        return wording.say("law.title", profile.name(), profile.lawCallsIt());
    }

    String code() {
        return profile.slug();
    }

    void head(SheetBuilder sheet) {
        sheet.say(wording.say("law.as-of", wording.date(asOf), wording.date(profile.lastRead())));
        sheet.apart().caution(wording.say("caution")).apart();
    }

    /** @return the ways that were open on the day */
    List<Pathway> standing() {
        return profile.pathwaysOn(asOf);
    }

    /** The ways there are, where there are several. */
    void ways(SheetBuilder sheet, Pathway told) {
        if (standing().isEmpty()) {
            sheet.apart().say(wording.say("law.not-then"));
        }
        if (standing().size() > 1) {
            sheet.heading(wording.say("law.guide.ways"), "ways");
            for (Pathway way : standing()) {
                Sheet.Span name = new Sheet.See(way.slug(), new Sheet.Link(way.name(), new Sheet.Reference.Law(code(), way.slug())));
                sheet.item(Sheet.Item.of(way == told ? Sheet.Plain.HERE : Sheet.Plain.DASH,
                        List.of(name, new Sheet.Text(": " + way.inShort()))));
            }
        }
    }

    /** @return whom a way is open to and who teaches, in one paragraph */
    List<String> openTo(Pathway pathway) {
        List<String> facts = new ArrayList<>(List.of(wording.say("law.pathway.open-to", pathway.openTo())));
        if (pathway.instructor() != null) {
            facts.add(wording.say("law.pathway.instructor", pathway.instructor()));
        }
        return facts;
    }

    void about(SheetBuilder sheet, Pathway pathway) {
        sheet.say(pathway.inShort());
        List<String> facts = openTo(pathway);
        facts.add(year(pathway.year()));
        if (!pathway.excludes().isEmpty()) {
            facts.add(wording.say("law.pathway.excludes", wording.and(pathway.excludes().stream()
                    .map(slug -> profile.pathway(slug).map(Pathway::name).orElse(slug)).toList())));
        }
        sheet.say(String.join(" ", facts));
        new AgeText(wording, profile).add(sheet, pathway.attendance(), pathway, asOf);
        pathway.choices().values().forEach(choice -> sheet.say(wording.say("law.choice", choice.question())));
    }

    private String year(SchoolYear year) {
        String key = switch (year.given()) {
            case BY_LAW -> "law.pathway.year";
            case CUSTOMARY -> "law.pathway.year.customary";
            case FAMILY -> "law.pathway.year.family";
            case DISTRICT -> "law.pathway.year.district";
        };
        return wording.say(key, wording.date(year.from()), wording.date(year.to()));
    }

    boolean standsOrComes(Requirement asked) {
        return asked.validity().announced() || asked.validity().inForceOn(asOf);
    }

    /** What a duty asks, then where that stands and how it was read. */
    void duty(SheetBuilder sheet, Requirement asked, Pathway pathway) {
        List<String> from = new ArrayList<>(sources.sentences(asked.cites()));
        from.add(sources.binding(asked.binding()));
        from.removeIf(String::isEmpty);
        sheet.say(String.join(" ", new Duty(wording, profile).sentences(asked, pathway)));
        sheet.small(String.join(" ", from));
    }

    void notAsked(SheetBuilder sheet, Pathway pathway) {
        List<Pathway.NotAsked> not = pathway.doesNotAskOn(asOf);
        if (!not.isEmpty()) {
            sheet.within(wording.say("law.not-asked"));
            not.forEach(n -> sheet.dash(n.what() + ' ' + cites(n.cite())));
        }
    }

    private String cites(Cite cite) {
        return '(' + Prose.unended(String.join(" ", sources.sentences(List.of(cite)))) + ')';
    }

    void doubts(SheetBuilder sheet) {
        part(sheet, "law.doubts", "doubts", profile.doubts().stream()
                .map(doubt -> wording.say("law.doubt", doubt.about(), doubt.ask())).toList());
    }

    void changes(SheetBuilder sheet) {
        part(sheet, "law.changes", "changes", profile.changes().stream().map(change -> wording.say("law.change",
                wording.date(change.effective().year(), change.effective().month(), change.effective().day()),
                change.what()) + ' ' + cites(change.cite())).toList());
    }

    /** Rules that are enacted, and begin after the day. */
    void later(SheetBuilder sheet) {
        part(sheet, "law.guide.later", "later", profile.pathways().stream().flatMap(way -> way.asks().stream())
                .filter(asked -> !asked.validity().announced() && asked.validity().from() != null
                        && asked.validity().from().isAfter(asOf))
                .sorted(Comparator.comparing(asked -> asked.validity().from()))
                .map(asked -> from(asked.validity().from(), asked.title() + '.')).distinct().toList());
    }

    void announced(SheetBuilder sheet) {
        part(sheet, "law.announced", "announced", profile.announced().stream()
                .map(coming -> from(coming.from(), coming.what()) + ' ' + cites(coming.cite())).toList());
    }

    /** @return that something begins on a day; null: nobody knows when */
    String from(LocalDate day, String what) {
        return day == null ? wording.say("law.announced.unknown", what)
                : wording.say("law.announced.from", wording.date(day), what);
    }

    void optIns(SheetBuilder sheet) {
        part(sheet, "law.opt-ins", "programs", profile.optIns().stream()
                .map(optIn -> wording.say("law.opt-in", ConditionWords.slug(optIn.name()), optIn.what())).toList());
    }

    void sources(SheetBuilder sheet) {
        sheet.heading(wording.say("law.sources"), "sources");
        for (Source source : profile.sources().values()) {
            sheet.item(Sheet.Item.of(Sheet.Plain.DASH, sources.sentence(source)).over(new Sheet.Address(source.address())));
        }
    }

    Sheet.Link dates() {
        return link("law.to.dates", new Sheet.Reference.Dates(code()));
    }

    Sheet.Link link(String key, Sheet.Reference to) {
        return new Sheet.Link(wording.say(key, profile.name()), to);
    }

    void confirm(SheetBuilder sheet) {
        sheet.say(wording.say("law.confirm", profile.confirmWith(), profile.agency()));
    }

    /** A heading and its items; nothing where there are none. */
    void part(SheetBuilder sheet, String key, String anchor, List<String> items) {
        if (!items.isEmpty()) {
            sheet.heading(wording.say(key), anchor);
            items.forEach(sheet::dash);
        }
    }
}
