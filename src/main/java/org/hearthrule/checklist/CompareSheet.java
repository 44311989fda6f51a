package org.hearthrule.checklist;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hearthrule.checklist.Sheet.Item;
import org.hearthrule.checklist.Sheet.Reference;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Requirement;
import org.hearthrule.rules.Status;
import org.hearthrule.terms.Prose;
import org.hearthrule.terms.Wording;

/** Two laws side by side, and what a move between them brings below. */
public final class CompareSheet {

    private final Comparison comparison;
    private final Wording wording;
    private final SheetBuilder sheet = new SheetBuilder();
    private String anchor = "";

    private CompareSheet(Comparison comparison, Wording wording) {
        this.comparison = comparison;
        this.wording = wording;
    }

    public static Sheet of(Comparison comparison, Wording wording) {
        return new CompareSheet(comparison, wording).write();
    }

    /**
     * What a move brings, without the two laws.
     *
     * @param anchor stands before the names of the headings, so that the moves of several children fit in one page
     */
    public static Sheet ofMove(Comparison comparison, String anchor, Wording wording) {
        CompareSheet sheet = new CompareSheet(comparison, wording);
        sheet.anchor = anchor;
        sheet.move(comparison.move());
        return sheet.sheet.sheet("");
    }

    private Sheet write() {
        Comparison.Side here = comparison.here();
        Comparison.Side there = comparison.there();
        String title = wording.say("compare.title", here.law().name(), there.law().name());
        sheet.say(wording.say("law.as-of", wording.date(comparison.asOf()), wording.date(read())));
        sheet.apart().caution(wording.say("caution"));
        if (here.lines() == null) {
            sheet.hint(wording.say("compare.no-child"), new Sheet.Link(wording.say("compare.to.child"), new Reference.ForAChild()));
        }
        sheet.add(new Sheet.Beside(title, List.of(side(here), side(there)), topics(here, there)));
        if (comparison.move() != null) {
            move(comparison.move());
        }
        sheet.foot().hint(wording.say("compare.foot", command(here), command(there)), law(here), law(there));
        sheet.say(wording.say("caution.foot"));
        return sheet.sheet(title);
    }

    private Sheet.Side side(Comparison.Side side) {
        return new Sheet.Side(name(side), LawGuide.notInForce(side.pathway(), comparison.asOf(), wording).orElse(""));
    }

    private Sheet.Link law(Comparison.Side side) {
        return new Sheet.Link(wording.say("law.to.law", side.law().name()),
                new Reference.Law(side.law().slug(), side.pathway().slug()));
    }

    private List<Sheet.Topic> topics(Comparison.Side here, Comparison.Side there) {
        boolean child = here.lines() != null;
        List<Sheet.Topic> topics = new ArrayList<>();
        topic(topics, "compare.ages", ages(here), ages(there), false);
        for (Topic topic : Topic.values()) {
            topic(topics, "law.topic." + topic.slug(), duties(here, topic), duties(there, topic), child);
        }
        topic(topics, "law.not-asked", notAsked(here), notAsked(there), false);
        return topics;
    }

    /** Nothing in one of two columns is said, so that it does not look forgotten. */
    private void topic(List<Sheet.Topic> topics, String key, List<Item> here, List<Item> there, boolean child) {
        if (!here.isEmpty() || !there.isEmpty()) {
            List<Item> nothing = dashed(List.of(wording.say(child ? "compare.nothing.child" : "compare.nothing")));
            topics.add(new Sheet.Topic(wording.say(key), List.of(here.isEmpty() ? nothing : here, there.isEmpty() ? nothing : there)));
        }
    }

    private static List<Item> dashed(List<String> texts) {
        return texts.stream().map(text -> Item.of(Sheet.Plain.DASH, text)).toList();
    }

    private LocalDate read() {
        LocalDate one = comparison.here().law().lastRead();
        LocalDate other = comparison.there().law().lastRead();
        return one.isBefore(other) ? one : other;
    }

    private static String command(Comparison.Side side) {
        String way = side.pathway().usual() ? "" : " --pathway " + side.pathway().slug();
        return side.law().slug() + way;
    }

    private String name(Comparison.Side side) {
        return side.law().name() + ", " + Prose.lowerFirst(side.pathway().name());
    }

    private List<Item> ages(Comparison.Side side) {
        return dashed(new AgeText(wording, side.law()).sentences(side.pathway(), comparison.asOf()));
    }

    private List<Item> notAsked(Comparison.Side side) {
        return dashed(side.pathway().doesNotAskOn(comparison.asOf()).stream().map(Pathway.NotAsked::what).toList());
    }

    private List<Item> duties(Comparison.Side side, Topic topic) {
        return side.of(topic).stream().map(asked -> duty(side, asked)).toList();
    }

    private Item duty(Comparison.Side side, Requirement asked) {
        Duty duty = new Duty(wording, side.law());
        Optional<String> amount = duty.amount(asked, side.pathway());
        List<String> said = new ArrayList<>();
        amount.ifPresent(said::add);
        if (side.lines() != null) {
            List<Line> lines = side.lines().stream().filter(line -> line.isOf(asked)).toList();
            String first = lines.stream().map(line -> line.finding().year()).min(String::compareTo).orElse("");
            lines.stream().filter(line -> line.finding().year().equals(first)).map(this::when)
                    .filter(when -> !when.isEmpty()).distinct().forEach(said::add);
        } else if (amount.isEmpty()) {
            said.add(Prose.ended(duty.inShort(asked, side.pathway())));
        }
        duty.weakReading(asked).ifPresent(said::add);
        String end = amount.isPresent() ? ":" : ".";
        Sheet.Link rule = new Sheet.Link(asked.title(), new Reference.Rule(asked.id()));
        return Item.of(Sheet.Plain.DASH, List.of(new Sheet.See(asked.title(), rule),
                new Sheet.Text(end + (said.isEmpty() ? "" : " " + String.join(" ", said)))));
    }

    private String when(Line line) {
        if (line.finding().due() != null) {
            return Prose.ended(wording.date(line.finding().due()));
        }
        return line.finding().dueNote() == null || line.finding().dueNote().isEmpty() ? "" : Prose.ended(line.finding().dueNote());
    }

    private void move(Comparison.Move move) {
        String here = comparison.here().law().name();
        String there = comparison.there().law().name();
        lines("compare.move.owed", here, move, move.owed());
        lines("compare.move.ends", here, move, move.ends());
        lines("compare.move.file", there, move, move.toFile());
        sheet.heading(wording.say("compare.move.keep"), anchor + "keep");
        sheet.say(wording.say(move.keep().isEmpty() ? "compare.move.keep.none" : "compare.move.keep.about"));
        for (Comparison.Kept kept : move.keep()) {
            List<String> said = new ArrayList<>();
            if (kept.asked().keepFor() != null) {
                String span = kept.asked().keepFor().span() == null ? kept.asked().keepFor().words()
                        : wording.say("law.asks.keep.span", new DueWords(wording, comparison.here().law(),
                        comparison.here().pathway()).span(kept.asked().keepFor().span()));
                said.add(wording.say("compare.move.keep.span", here, span));
            }
            if (kept.asked().keepFor() == null) {
                said.add(wording.say("compare.move.keep.no-span", here));
            }
            if (kept.alsoThere() != null) {
                said.add(wording.say("compare.move.keep.also", there, kept.alsoThere().title()));
            }
            named(kept.asked().title(), said);
        }
    }

    private void lines(String key, String where, Comparison.Move move, List<Line> lines) {
        sheet.heading(wording.say(key, where), anchor + key.substring(key.lastIndexOf('.') + 1));
        sheet.say(wording.say(lines.isEmpty() ? key + ".none" : key + ".about", where, wording.date(move.day())));
        for (Line line : lines) {
            List<String> said = new ArrayList<>();
            said.add(when(line));
            boolean ends = key.equals("compare.move.ends");
            if (!ends && line.finding().status() == Status.UNCLEAR && !line.finding().why().isEmpty()) {
                said.add(Prose.ended(line.finding().why().get(0)));
            }
            if (!ends && line.finding().next() != null) {
                said.add(Prose.ended(line.finding().next()));
            }
            said.removeIf(String::isEmpty);
            named(line.finding().title(), said.stream().distinct().toList());
        }
    }

    private void named(String title, List<String> said) {
        sheet.item(Item.of(Sheet.Plain.DASH, List.of(new Sheet.Name(title),
                new Sheet.Text(said.isEmpty() ? "." : ". " + String.join(" ", said)))));
    }
}
