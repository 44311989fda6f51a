package org.hearthrule.checklist;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.hearthrule.checklist.DueParts.Kind;
import org.hearthrule.law.Condition;
import org.hearthrule.law.Due;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Requirement;
import org.hearthrule.law.RequirementKind;
import org.hearthrule.terms.Wording;

/**
 * What a way to teach asks in the year that comes, of a family of whom nothing is known but its state.
 *
 * @param today     the day from which the year is counted
 * @param opening   a sentence when the way is not open on that day, or null
 * @param coming    with a day, in its order
 * @param hanging   whose day hangs on something: a start, a move, somebody's word
 * @param allYear   through the year, or without a day
 * @param once      once only, with or without a day
 * @param special   concerning few, or asking nothing to be done
 * @param notAsked  what the law does not ask, in sentences
 * @param ages      between which ages the law binds, in sentences
 * @param openTo    whom the way is open to and who teaches, in sentences
 */
public record StateOutlook(Profile law, Pathway pathway, LocalDate today, String opening, List<Entry> coming,
                           List<Entry> hanging, List<Entry> allYear, List<Entry> once, List<Entry> special,
                           List<String> notAsked, List<String> ages, List<String> openTo) {

    /**
     * One duty, or one of its days.
     *
     * @param opens  first day on which it can be done, or null
     * @param day    next day, or null
     * @param custom the day is no law's: somebody asks for it, or it is sensible
     * @param said   what is asked and when, in a sentence; empty where its title and day say it all
     * @param whose  for whom it is, in a sentence; empty when for everybody
     * @param doubts what is open about it, and how it was read where that is little; possibly none
     * @param source where it stands, when and how that was read
     */
    public record Entry(Requirement asked, LocalDate opens, LocalDate day, boolean custom, String said, String whose,
                        List<String> doubts, String source) { }

    /** @param today the day on which the year begins */
    public static StateOutlook of(Profile law, Pathway pathway, LocalDate today, Wording wording) {
        return new Gathering(law, pathway, today, wording).outlook();
    }

    private static final class Gathering {
        private final Profile law;
        private final Pathway pathway;
        private final LocalDate today;
        private final Wording wording;
        private final DutyInShort duty;
        private final DueWords dues;
        private final ConditionWords conditions;
        private final Sources sources;
        private final List<Entry> coming = new ArrayList<>();
        private final List<Entry> hanging = new ArrayList<>();
        private final List<Entry> allYear = new ArrayList<>();
        private final List<Entry> once = new ArrayList<>();
        private final List<Entry> special = new ArrayList<>();

        Gathering(Profile law, Pathway pathway, LocalDate today, Wording wording) {
            this.law = law;
            this.pathway = pathway;
            this.today = today;
            this.wording = wording;
            this.duty = new DutyInShort(wording, law, pathway);
            this.dues = new DueWords(wording, law, pathway);
            this.conditions = new ConditionWords(wording, law, pathway);
            this.sources = new Sources(wording);
        }

        StateOutlook outlook() {
            for (Topic topic : Topic.values()) {
                pathway.asks().stream().filter(asked -> Topic.of(asked.kind()) == topic && !asked.validity().announced())
                        .forEach(this::add);
            }
            // of those of one day the order of topics stays
            coming.sort(Comparator.comparing(Entry::day));
            once.sort(Comparator.comparing(Entry::day, Comparator.nullsLast(Comparator.naturalOrder())));
            LawParts parts = new LawParts(law, today, wording);
            return new StateOutlook(law, pathway, today, LawGuide.notInForce(pathway, today, wording).orElse(null),
                    List.copyOf(coming), List.copyOf(hanging), List.copyOf(allYear), List.copyOf(once), List.copyOf(special),
                    pathway.doesNotAskOn(today).stream().map(Pathway.NotAsked::what).toList(),
                    new AgeText(wording, law).sentences(pathway, today), List.copyOf(parts.openTo(pathway)));
        }

        private void add(Requirement asked) {
            for (DueParts.Part part : DueParts.joined(DueParts.of(asked, pathway, today))) {
                if (asked.validity().inForceOn(part.day() == null ? today : part.day())) {
                    Entry entry = entry(asked, part);
                    list(asked, entry.day() == null ? part.kind() : Kind.DAY).add(entry);
                }
            }
        }

        private List<Entry> list(Requirement asked, Kind kind) {
            if (DutyInShort.isSpecial(asked)) {
                return special;
            }
            return switch (asked.recurs().each()) {
                case ONCE -> once;
                case EVENT -> hanging;
                case YEAR -> kind == Kind.HANGS ? hanging : kind == Kind.THROUGH ? allYear : coming;
            };
        }

        private Entry entry(Requirement asked, DueParts.Part part) {
            boolean yearEnds = part.due() instanceof Due.YearEnd && asked.kind() == RequirementKind.ASSESS;
            LocalDate day = yearEnds ? DueParts.next(pathway.year().to(), today) : part.day();
            return new Entry(asked, part.opens(), day, yearEnds || part.kind() == Kind.CUSTOM, said(asked, part), whose(asked, part),
                    duty.doubts(asked), String.join(" ", sources.sentences(asked.cites())));
        }

        private String said(Requirement asked, DueParts.Part part) {
            boolean told = DutyInShort.isAlways(asked) || part.due() instanceof Due.By by && by.year() == Due.YearOf.THIS_YEAR;
            return duty.what(asked).orElseGet(() -> told ? "" : dues.sentence(part.due()));
        }

        /** Cases are told apart by their whole condition: shortened, two of them would read alike. */
        private String whose(Requirement asked, DueParts.Part part) {
            List<Condition> all = new ArrayList<>(List.of(asked.when()));
            all.addAll(part.when());
            String joined = String.join(wording.say("if.and"), all.stream().map(conditions::of).filter(words -> !words.isEmpty())
                    .distinct().toList());
            String only = joined.isEmpty() ? "" : wording.say("law.asks.if", joined);
            return part.otherwise() && part.when().isEmpty() ? (only + ' ' + wording.say("law.outlook.otherwise")).strip() : only;
        }
    }
}
