package org.hearthrule.checklist;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.hearthrule.checklist.Sheet.Item;
import org.hearthrule.law.Cite;
import org.hearthrule.law.Evidence;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Requirement;
import org.hearthrule.law.RequirementKind;
import org.hearthrule.terms.Wording;

/** The ways of one state side by side, in short words with their sections, so that a parent can choose. */
public final class WaysBeside {

    private static final List<Topic> TOPICS = List.of(Topic.TEACHER, Topic.PAPERS, Topic.SUBJECTS, Topic.TIME, Topic.RECORDS,
            Topic.RESULTS, Topic.HEALTH, Topic.OTHER);

    private final Profile law;
    private final LocalDate asOf;
    private final Wording wording;

    private WaysBeside(Profile law, LocalDate asOf, Wording wording) {
        this.law = law;
        this.asOf = asOf;
        this.wording = wording;
    }

    /** @return the ways open on a day, the usual one first; none when none was */
    public static Sheet.Beside of(Profile law, LocalDate asOf, Wording wording) {
        return new WaysBeside(law, asOf, wording).beside();
    }

    private Sheet.Beside beside() {
        List<Pathway> ways = law.pathwaysOn(asOf).stream()
                .sorted(Comparator.comparing(way -> !way.usual())).toList();
        List<Sheet.Topic> topics = new ArrayList<>();
        for (Topic topic : TOPICS) {
            List<List<Item>> cells = ways.stream().map(way -> cell(way, topic)).toList();
            if (cells.stream().anyMatch(cell -> !cell.isEmpty())) {
                List<Item> nothing = List.of(Item.of(Sheet.Plain.DASH, wording.say("compare.nothing")));
                topics.add(new Sheet.Topic(topic.words(wording), cells.stream().map(cell -> cell.isEmpty() ? nothing : cell).toList()));
            }
        }
        return new Sheet.Beside(wording.say("law.ways.title", law.name()), ways.stream()
                .map(way -> new Sheet.Side(way.name(), way.inShort())).toList(), topics);
    }

    private List<Item> cell(Pathway way, Topic topic) {
        List<Item> items = new ArrayList<>();
        if (topic == Topic.TEACHER) {
            String who = String.join(" ", new LawParts(law, asOf, wording).openTo(way));
            items.add(Item.of(Sheet.Plain.DASH, who).over(source(way.cites())));
        }
        DutyInShort duty = new DutyInShort(wording, law, way);
        way.asks().stream().filter(asked -> Topic.of(asked.kind()) == topic && asked.validity().inForceOn(asOf)
                && !DutyInShort.isSpecial(asked)).forEach(asked -> items.add(item(asked, duty)));
        return items;
    }

    private Item item(Requirement asked, DutyInShort duty) {
        String whole = asked.kind() == RequirementKind.SUBJECTS ? duty.of(asked, subjects(asked)) : duty.of(asked);
        Sheet.Link rule = new Sheet.Link(asked.title(), new Sheet.Reference.Rule(asked.id()));
        return Item.of(Sheet.Plain.DASH, List.of(new Sheet.See(asked.title(), rule),
                new Sheet.Text(whole.substring(asked.title().length())))).over(source(asked.cites()));
    }

    /** How many there are tells two ways apart; their names stand at the rule. */
    private String subjects(Requirement asked) {
        long named = Evidence.leaves(asked.shows(), Evidence.Subjects.class).stream().flatMap(list -> list.items().stream())
                .filter(item -> !item.may()).count();
        return wording.count("law.ways.subjects", named);
    }

    private static Sheet.Text source(List<Cite> cites) {
        return new Sheet.Text(cites.stream().map(Cite::words).distinct().collect(Collectors.joining("; ")));
    }
}
