package org.hearthrule.checklist;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Requirement;
import org.hearthrule.rules.Status;
import org.hearthrule.terms.Prose;
import org.hearthrule.terms.Wording;

/** Sets two laws in two columns, and what a move between them brings below. */
public final class CompareText {

    private static final int GAP = 2;
    private static final String AGES = "compare.ages";
    private static final String NOT_ASKED = "compare.not-asked";

    private final Comparison comparison;
    private final Wording wording;
    private final Style style;
    private final Page page;
    private final int column;

    private CompareText(Comparison comparison, Wording wording, Style style) {
        this.comparison = comparison;
        this.wording = wording;
        this.style = style;
        this.page = new Page(style, wording);
        this.column = (style.columns() - GAP) / 2;
    }

    /** @return the comparison, each line ended */
    public static String write(Comparison comparison, Wording wording, Style style) {
        return new CompareText(comparison, wording, style).write();
    }

    private String write() {
        Comparison.Side here = comparison.here();
        Comparison.Side there = comparison.there();
        page.line(style.bold(page.clean(wording.say("compare.title", here.law().name(), there.law().name()))));
        page.paragraph(0, wording.say("law.as-of", wording.date(comparison.asOf()), wording.date(read())));
        page.blank().paragraph(0, wording.say("caution"));
        if (here.lines() == null) {
            page.paragraph(0, wording.say("compare.no-child"));
        }
        page.blank();
        columns(page.wrap(name(here), column), page.wrap(name(there), column), true);
        columns(notInForce(here), notInForce(there), false);
        topic(AGES, ages(here), ages(there));
        for (Topic topic : Topic.values()) {
            topic("compare." + topic.slug(), duties(here, topic), duties(there, topic));
        }
        topic(NOT_ASKED, notAsked(here), notAsked(there));
        if (comparison.move() != null) {
            move(comparison.move());
        }
        page.blank().paragraph(0, wording.say("compare.foot", command(here), command(there)));
        page.paragraph(0, wording.say("caution.foot"));
        return page.toString();
    }

    private LocalDate read() {
        LocalDate one = comparison.here().law().lastRead();
        LocalDate other = comparison.there().law().lastRead();
        return one.isBefore(other) ? one : other;
    }

    private static String command(Comparison.Side side) {
        String way = side.pathway().usual() ? "" : " --pathway " + side.pathway().slug();
        return side.law().code().toLowerCase(Locale.ROOT) + way;
    }

    private String name(Comparison.Side side) {
        return side.law().name() + ", " + Prose.lowerFirst(side.pathway().name());
    }

    private List<String> notInForce(Comparison.Side side) {
        return LawGuide.notInForce(side.pathway(), comparison.asOf(), wording).map(said -> page.wrap(said, column)).orElse(List.of());
    }

    private void topic(String key, List<String> here, List<String> there) {
        if (!here.isEmpty() || !there.isEmpty()) {
            page.blank().heading(wording.say(key));
            columns(cell(here, key), cell(there, key), false);
        }
    }

    /** Nothing in one of two columns is said, so that it does not look forgotten. */
    private List<String> cell(List<String> items, String key) {
        List<String> lines = new ArrayList<>();
        boolean ofAll = comparison.here().lines() == null || key.equals(AGES) || key.equals(NOT_ASKED);
        String nothing = wording.say(ofAll ? "compare.nothing" : "compare.nothing.child");
        for (String item : items.isEmpty() ? List.of(nothing) : items) {
            List<String> wrapped = page.wrap(item, column - 2);
            for (int i = 0; i < wrapped.size(); i++) {
                lines.add((i == 0 ? "- " : "  ") + wrapped.get(i));
            }
        }
        return lines;
    }

    private void columns(List<String> left, List<String> right, boolean bold) {
        for (int i = 0; i < Math.max(left.size(), right.size()); i++) {
            String l = i < left.size() ? left.get(i) : "";
            String r = i < right.size() ? right.get(i) : "";
            String space = " ".repeat(Math.max(GAP, column + GAP - Width.of(l)));
            page.line((bold ? style.bold(l) : l) + space + (bold ? style.bold(r) : r));
        }
    }

    private List<String> ages(Comparison.Side side) {
        return new AgeText(wording, side.law()).sentences(side.pathway(), comparison.asOf());
    }

    private List<String> notAsked(Comparison.Side side) {
        return side.pathway().doesNotAskOn(comparison.asOf()).stream().map(Pathway.NotAsked::what).toList();
    }

    private List<String> duties(Comparison.Side side, Topic topic) {
        return side.of(topic).stream().map(asked -> duty(side, asked)).toList();
    }

    private String duty(Comparison.Side side, Requirement asked) {
        Duty duty = new Duty(wording, side.law());
        Optional<String> amount = duty.amount(asked, side.pathway());
        List<String> said = new ArrayList<>(List.of(asked.title() + (amount.isPresent() ? ':' : '.')));
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
        return String.join(" ", said);
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
        page.blank().heading(wording.say("compare.move.keep"));
        page.paragraph(0, wording.say(move.keep().isEmpty() ? "compare.move.keep.none" : "compare.move.keep.about"));
        for (Comparison.Kept kept : move.keep()) {
            List<String> said = new ArrayList<>(List.of(kept.asked().title() + '.'));
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
            page.hanging(2, "- ", String.join(" ", said));
        }
    }

    private void lines(String key, String where, Comparison.Move move, List<Line> lines) {
        page.blank().heading(wording.say(key, where.toUpperCase(Locale.ROOT)));
        page.paragraph(0, wording.say(lines.isEmpty() ? key + ".none" : key + ".about", where, wording.date(move.day())));
        for (Line line : lines) {
            List<String> said = new ArrayList<>(List.of(line.finding().title() + '.'));
            said.add(when(line));
            boolean ends = key.equals("compare.move.ends");
            if (!ends && line.finding().status() == Status.UNCLEAR && !line.finding().why().isEmpty()) {
                said.add(Prose.ended(line.finding().why().get(0)));
            }
            if (!ends && line.finding().next() != null) {
                said.add(Prose.ended(line.finding().next()));
            }
            said.removeIf(String::isEmpty);
            page.hanging(2, "- ", String.join(" ", said.stream().distinct().toList()));
        }
    }
}
