package org.hearthrule.checklist;

import java.util.ArrayList;
import java.util.List;
import org.hearthrule.checklist.Sheet.Block;
import org.hearthrule.checklist.Sheet.Hint;
import org.hearthrule.checklist.Sheet.Item;
import org.hearthrule.checklist.Sheet.Link;
import org.hearthrule.checklist.Sheet.Mark;
import org.hearthrule.checklist.Sheet.Paragraph;
import org.hearthrule.checklist.Sheet.Span;
import org.hearthrule.checklist.Sheet.Tone;
import org.hearthrule.checklist.Sheet.Words;

/** Puts a sheet together, block by block: paragraphs that follow each other are one passage, items one list. */
final class SheetBuilder {

    private final List<Block> blocks = new ArrayList<>();
    private final List<Paragraph> passage = new ArrayList<>();
    private final List<Item> items = new ArrayList<>();
    private int foot = -1;

    /** @return what was put together, under a title */
    Sheet sheet(String title) {
        List<Block> all = blocks();
        int end = foot < 0 ? all.size() : foot;
        return new Sheet(title, all.subList(0, end), all.subList(end, all.size()));
    }

    List<Block> blocks() {
        apart();
        return List.copyOf(blocks);
    }

    /** What follows is said of the whole, at its foot. */
    SheetBuilder foot() {
        apart();
        foot = blocks.size();
        return this;
    }

    /** Ends the passage or list: what follows begins another. */
    SheetBuilder apart() {
        if (!passage.isEmpty()) {
            blocks.add(new Sheet.Passage(List.copyOf(passage)));
            passage.clear();
        }
        if (!items.isEmpty()) {
            blocks.add(new Sheet.Items(List.copyOf(items)));
            items.clear();
        }
        return this;
    }

    SheetBuilder add(Block block) {
        apart();
        blocks.add(block);
        return this;
    }

    SheetBuilder addAll(List<Block> more) {
        more.forEach(this::add);
        return this;
    }

    SheetBuilder heading(String text) {
        return add(new Sheet.Heading(2, text, "", null));
    }

    SheetBuilder heading(String text, String anchor) {
        return add(new Sheet.Heading(2, text, "", anchor));
    }

    /** The head of a part within a part. */
    SheetBuilder within(String text) {
        return add(new Sheet.Heading(3, text, "", null));
    }

    SheetBuilder say(String text) {
        return say(text, Tone.PLAIN);
    }

    SheetBuilder small(String text) {
        return say(text, Tone.SMALL);
    }

    SheetBuilder caution(String text) {
        return say(text, Tone.CAUTION);
    }

    SheetBuilder say(Span... spans) {
        return paragraph(new Words(List.of(spans), Tone.PLAIN));
    }

    private SheetBuilder say(String text, Tone tone) {
        return paragraph(new Words(List.of(new Sheet.Text(text)), tone));
    }

    SheetBuilder hint(String typed, Link... links) {
        return paragraph(new Hint(typed, List.of(links)));
    }

    private SheetBuilder paragraph(Paragraph paragraph) {
        if (!items.isEmpty()) {
            apart();
        }
        passage.add(paragraph);
        return this;
    }

    SheetBuilder dash(String text) {
        return item(Item.of(Sheet.Plain.DASH, text));
    }

    SheetBuilder item(Mark mark, String text) {
        return item(Item.of(mark, text));
    }

    SheetBuilder item(Item item) {
        if (!passage.isEmpty()) {
            apart();
        }
        items.add(item);
        return this;
    }
}
