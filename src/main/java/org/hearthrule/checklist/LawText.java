package org.hearthrule.checklist;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.hearthrule.law.Cite;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Requirement;
import org.hearthrule.law.SchoolYear;
import org.hearthrule.law.Source;
import org.hearthrule.terms.Prose;
import org.hearthrule.terms.Wording;

/** Sets one state's law in plain words: its pathways, what each asks and does not ask, doubts, changes, sources. */
public final class LawText {

    private final Wording wording;
    private final Style style;
    private final Profile profile;
    private final LocalDate asOf;
    private final Sources sources;

    private LawText(Profile profile, LocalDate asOf, Wording wording, Style style) {
        this.wording = wording;
        this.style = style;
        this.profile = profile;
        this.asOf = asOf;
        this.sources = new Sources(wording);
    }

    /**
     * @return the law as it stands on a day, each line ended
     */
    public static String of(Profile profile, LocalDate asOf, Wording wording, Style style) {
        return new LawText(profile, asOf, wording, style).write();
    }

    private String write() {
        Page page = new Page(style, wording);
        page.line(style.bold(page.clean(wording.say("law.title", profile.name(), profile.lawCallsIt()))));
        page.paragraph(0, wording.say("law.as-of", wording.date(asOf), wording.date(profile.lastRead())));
        page.blank().paragraph(0, wording.say("caution"));
        new AgeText(wording, profile).add(page, asOf);
        List<Pathway> standing = profile.pathways().stream().filter(p -> p.validity().inForceOn(asOf)).toList();
        if (standing.isEmpty()) {
            page.blank().paragraph(0, wording.say("law.not-then"));
        }
        standing.forEach(pathway -> pathway(page, pathway));
        doubts(page);
        changes(page);
        optIns(page);
        sources(page);
        page.blank().paragraph(0, wording.say("law.confirm", profile.confirmWith(), profile.agency()));
        page.paragraph(0, wording.say("law.foot", profile.code().toLowerCase(Locale.ROOT)));
        return page.toString();
    }

    private void pathway(Page page, Pathway pathway) {
        page.blank().heading(wording.say(pathway.usual() ? "law.pathway.usual" : "law.pathway",
                pathway.name().toUpperCase(Locale.ROOT)));
        page.paragraph(0, pathway.inShort());
        List<String> facts = new ArrayList<>();
        facts.add(wording.say("law.pathway.open-to", pathway.openTo()));
        if (pathway.instructor() != null) {
            facts.add(wording.say("law.pathway.instructor", pathway.instructor()));
        }
        facts.add(year(pathway.year()));
        if (!pathway.excludes().isEmpty()) {
            facts.add(wording.say("law.pathway.excludes", wording.and(pathway.excludes().stream()
                    .map(slug -> profile.pathway(slug).map(Pathway::name).orElse(slug)).toList())));
        }
        page.paragraph(0, String.join(" ", facts));
        new AgeText(wording, profile).add(page, 0, pathway.attendance(), pathway, asOf);
        pathway.choices().values().forEach(choice -> page.paragraph(0, wording.say("law.choice", choice.question())));
        pathway.asks().stream().filter(this::standsOrComes).forEach(asked -> duty(page, asked, pathway));
        List<Pathway.NotAsked> not = pathway.doesNotAskOn(asOf);
        if (!not.isEmpty()) {
            page.blank().line("  " + style.bold(wording.say("law.not-asked")));
            not.forEach(n -> page.hanging(4, "- ", n.what() + ' ' + cites(List.of(n.cite()))));
        }
    }

    private boolean standsOrComes(Requirement asked) {
        return asked.validity().announced() || asked.validity().inForceOn(asOf);
    }

    private String cites(List<Cite> cites) {
        return '(' + Prose.unended(String.join(" ", sources.sentences(cites))) + ')';
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

    private void duty(Page page, Requirement asked, Pathway pathway) {
        List<String> from = new ArrayList<>(sources.sentences(asked.cites()));
        from.add(sources.binding(asked.binding()));
        from.removeIf(String::isEmpty);
        Duty duty = new Duty(wording, profile);
        page.blank();
        page.wrap(asked.title(), style.columns() - 2).forEach(line -> page.line("  " + style.bold(line)));
        page.paragraph(4, String.join(" ", duty.sentences(asked, pathway)));
        page.wrap(String.join(" ", from), style.columns() - 4).forEach(line -> page.line("    " + style.dim(line)));
    }

    private void doubts(Page page) {
        if (profile.doubts().isEmpty()) {
            return;
        }
        page.blank().heading(wording.say("law.doubts"));
        profile.doubts().forEach(doubt -> page.hanging(2, "- ", wording.say("law.doubt", doubt.about(), doubt.ask())));
    }

    private void changes(Page page) {
        if (!profile.changes().isEmpty()) {
            page.blank().heading(wording.say("law.changes"));
            profile.changes().forEach(change -> page.hanging(2, "- ", wording.say("law.change",
                    wording.date(change.effective().year(), change.effective().month(), change.effective().day()), change.what()) + ' ' + cites(List.of(change.cite()))));
        }
        if (!profile.announced().isEmpty()) {
            page.blank().heading(wording.say("law.announced"));
            profile.announced().forEach(coming -> page.hanging(2, "- ", (coming.from() == null
                    ? wording.say("law.announced.unknown", coming.what())
                    : wording.say("law.announced.from", wording.date(coming.from()), coming.what()))
                    + ' ' + cites(List.of(coming.cite()))));
        }
    }

    private void optIns(Page page) {
        if (!profile.optIns().isEmpty()) {
            page.blank().heading(wording.say("law.opt-ins"));
            profile.optIns().forEach(optIn -> page.hanging(2, "- ",
                    wording.say("law.opt-in", ConditionWords.slug(optIn.name()), optIn.what())));
        }
    }

    private void sources(Page page) {
        page.blank().heading(wording.say("law.sources"));
        for (Source source : profile.sources().values()) {
            page.hanging(2, "- ", sources.sentence(source));
            page.wrap(source.address(), style.columns() - 4).forEach(line -> page.line("    " + style.dim(line)));
        }
    }
}
