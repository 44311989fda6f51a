package org.hearthrule.checklist;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hearthrule.checklist.Sheet.Item;
import org.hearthrule.checklist.Sheet.Reference;
import org.hearthrule.law.Condition;
import org.hearthrule.law.Due;
import org.hearthrule.law.Evidence;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Requirement;
import org.hearthrule.law.RequirementKind;
import org.hearthrule.terms.Prose;
import org.hearthrule.terms.Wording;

/** A state's law for a parent in one or two screens: the ways there are, and what one of them asks of most families. */
public final class LawGuide {

    private static final int LONG_CONDITION = 60;
    private static final int LONG_DUE = 100;

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
        ways();
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

    private void ways() {
        List<Pathway> ways = law.standing();
        if (ways.isEmpty()) {
            sheet.apart().say(wording.say("law.not-then"));
        }
        if (ways.size() > 1) {
            sheet.heading(wording.say("law.guide.ways"));
            for (Pathway way : ways) {
                Sheet.Span name = new Sheet.See(way.slug(), new Sheet.Link(way.name(), new Reference.Law(law.code(), way.slug())));
                sheet.item(Item.of(way == pathway ? Sheet.Plain.HERE : Sheet.Plain.DASH,
                        List.of(name, new Sheet.Text(": " + way.inShort()))));
            }
        }
    }

    private void asked() {
        sheet.heading(pathway.name());
        notInForce(pathway, asOf, wording).ifPresent(sheet::say);
        sheet.say(String.join(" ", law.openTo(pathway)));
        int special = 0;
        Topic shown = null;
        for (Topic topic : Topic.values()) {
            for (Requirement asked : pathway.asks()) {
                if (Topic.of(asked.kind()) != topic || !asked.validity().inForceOn(asOf)) {
                    continue;
                }
                if (isSpecial(asked)) {
                    special++;
                    continue;
                }
                if (topic != shown) {
                    sheet.within(topic.words(wording));
                    shown = topic;
                }
                sheet.dash(duty(asked));
            }
        }
        if (special > 0) {
            sheet.add(new Sheet.Remark(wording.count("law.guide.special", special)));
        }
    }

    /**
     * Steps after a finding, duties of the other side and most rules in words concern few, or ask nothing to be done. A
     * rule in words that holds for everybody and leaves a question open may be the whole of what a state asks.
     */
    private static boolean isSpecial(Requirement asked) {
        return switch (asked.kind()) {
            case STEP, THEIRS -> true;
            case STANDARD -> asked.question() == null || !asked.when().equals(Condition.ALWAYS);
            default -> asked.recurs().each() == Requirement.Recurs.Each.EVENT && asked.kind() != RequirementKind.FILE;
        };
    }

    private String duty(Requirement asked) {
        Duty duty = new Duty(wording, profile);
        Optional<String> amount = duty.amount(asked, pathway);
        boolean always = asked.due() instanceof Due.None && Topic.of(asked.kind()) == Topic.TEACHER;
        List<String> said = new ArrayList<>(List.of(asked.title() + (always ? '.' : ':')));
        if (amount.isPresent()) {
            said.add(amount.get());
        } else if (asked.kind() == RequirementKind.STANDARD && asked.shows() instanceof Evidence.Words inWords) {
            said.add(Prose.ended(inWords.words()));
        } else if (!always) {
            said.add(due(asked.due()) + '.');
        }
        String when = new ConditionWords(wording, profile, pathway).of(asked.when());
        if (when.length() > LONG_CONDITION) {
            said.add(wording.say("law.guide.some"));
        } else if (!when.isEmpty()) {
            said.add(wording.say("law.asks.if", when));
        }
        if (asked.question() != null || asked.validity().unclearFrom() != null) {
            said.add(wording.say("law.guide.open"));
        }
        duty.weakReading(asked).ifPresent(said::add);
        return String.join(" ", said);
    }

    /** The day of most families and years; that there are others is said, not which. */
    private String due(Due due) {
        DueWords words = new DueWords(wording, profile, pathway);
        Due plain = due instanceof Due.Remarked remarked && words.of(due).length() > LONG_DUE ? remarked.due() : due;
        if (plain instanceof Due.Cases cases && words.of(plain).length() > LONG_DUE) {
            return due(cases.cases().get(cases.cases().size() - 1).due()) + wording.say("law.guide.other-days");
        }
        return words.of(plain);
    }

    private void notAsked() {
        List<String> not = pathway.doesNotAskOn(asOf).stream().map(Pathway.NotAsked::what).toList();
        if (!not.isEmpty()) {
            sheet.within(wording.say("law.not-asked"));
            sheet.say(String.join(" ", not));
        }
    }

    private void notices() {
        List<Requirement> later = profile.pathways().stream().flatMap(way -> way.asks().stream())
                .filter(asked -> !asked.validity().announced() && asked.validity().from() != null
                        && asked.validity().from().isAfter(asOf))
                .sorted(Comparator.comparing(asked -> asked.validity().from())).toList();
        law.part(sheet, "law.guide.later", "later", later.stream()
                .map(asked -> law.from(asked.validity().from(), asked.title() + '.')).distinct().toList());
        law.part(sheet, "law.announced", "announced", profile.announced().stream()
                .map(coming -> law.from(coming.from(), coming.what())).distinct().toList());
        sheet.foot();
        int open = Reading.of(profile).doubts();
        if (open > 0) {
            sheet.hint(wording.count("law.guide.doubts", open), law.link("law.to.doubts", new Reference.Doubts(law.code())));
        }
    }
}
