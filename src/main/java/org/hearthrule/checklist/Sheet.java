package org.hearthrule.checklist;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hearthrule.rules.Status;

/**
 * A text in its parts: what is said, not how it is set. {@link SheetText} sets it for a terminal, the local page sets
 * it for a browser.
 *
 * @param title of the whole; empty when a heading says it
 * @param foot  what is said of the whole at its end
 */
public record Sheet(String title, List<Block> blocks, List<Block> foot) {

    public Sheet {
        blocks = List.copyOf(blocks);
        foot = List.copyOf(foot);
    }

    public sealed interface Block { }

    /**
     * The head of a part, or of a part within one.
     *
     * @param level  2, or 3 within a part
     * @param aside  words after it of less weight, or empty
     * @param anchor name by which the part is found, or null
     */
    public record Heading(int level, String text, String aside, String anchor) implements Block { }

    /** Paragraphs that belong together. */
    public record Passage(List<Paragraph> paragraphs) implements Block { }

    /** A word on a whole part, after the parts within it. */
    public record Remark(String text) implements Block { }

    public record Items(List<Item> items) implements Block { }

    /**
     * Rows of cells, the last row possibly their sum.
     *
     * @param caption said where no heading stands above
     */
    public record Table(String caption, List<Column> columns, List<List<Span>> rows, boolean sum) implements Block {

        /** @return a column's head where nothing stands above it */
        public String headOf(Column column) {
            return column.group().isEmpty() ? column.head() : column.group() + ", " + column.head();
        }
    }

    /**
     * Two or more things side by side, topic by topic.
     *
     * @param caption said where no heading stands above
     * @param topics  each with as many cells as there are sides
     */
    public record Beside(String caption, List<Side> sides, List<Topic> topics) implements Block { }

    public sealed interface Paragraph { }

    public record Words(List<Span> spans, Tone tone) implements Paragraph { }

    /**
     * How to come to something else.
     *
     * @param typed what to type on a terminal; empty: a terminal leaves it out
     * @param links the same for a browser, possibly none
     */
    public record Hint(String typed, List<Link> links) implements Paragraph { }

    public enum Tone {
        PLAIN, SMALL,
        /** What the local page says at the foot of every page. */
        CAUTION
    }

    /**
     * One of a list.
     *
     * @param beneath small print below it, possibly none
     * @param opens   what it opens to on a page; a terminal leaves it out
     * @param anchor  name by which it is found, or null
     */
    public record Item(Mark mark, List<Span> spans, List<Span> beneath, List<Block> opens, String anchor) {

        static Item of(Mark mark, String text) {
            return of(mark, List.of(new Text(text)));
        }

        static Item of(Mark mark, List<Span> spans) {
            return new Item(mark, List.copyOf(spans), List.of(), List.of(), null);
        }

        /** @return the same with small print */
        Item over(Span... small) {
            return over(List.of(small));
        }

        /** @return the same with small print */
        Item over(List<Span> small) {
            return new Item(mark, spans, List.copyOf(small), opens, anchor);
        }

        /** @return the same, found by a name and opening to more */
        Item opening(String name, List<Block> more) {
            return new Item(mark, spans, beneath, List.copyOf(more), name);
        }
    }

    /** What stands before an item. */
    public sealed interface Mark { }

    public enum Plain implements Mark {
        NONE, DASH,
        /** The one that is told. */
        HERE,
        /** Its place in the list, from 1. */
        NUMBER
    }

    /** The shape of a status. */
    public record Tile(Status status) implements Mark, Span {
        public String shape() {
            return Shape.of(status, true);
        }
    }

    /** A day; null: nobody noted it. */
    public record Day(LocalDate day) implements Mark { }

    /**
     * A column of a table.
     *
     * @param head  possibly empty
     * @param group words over several columns side by side that share them, or empty
     * @param width columns of a terminal
     */
    public record Column(String head, String group, int width, Align align) {
        public enum Align {
            LEFT,
            /** As {@link #LEFT}; long words are set on several lines. */
            WRAPPED,
            RIGHT
        }
    }

    /** @param remark on this side as a whole, or empty */
    public record Side(String head, String remark) { }

    /** @param cells what each side has to say, never empty */
    public record Topic(String name, List<List<Item>> cells) { }

    /** A stretch of text. */
    public sealed interface Span { }

    public record Text(String text) implements Span { }

    /** What an item is called, before what is said of it. */
    public record Name(String text) implements Span { }

    /**
     * Words that lead somewhere.
     *
     * @param typed as a terminal shows them: what can be typed
     */
    public record See(String typed, Link link) implements Span { }

    /** What a reader of a page sees, and where it leads. */
    public record Link(String words, Reference to) { }

    /** Where a source was read: an address, several in a sentence, or the name of a printed one. */
    public record Address(String address) implements Span {

        private static final Pattern ON_THE_WEB = Pattern.compile("https?://[^\\s,;()\"<>]*[^\\s,;()\"<>.]");

        /** @return the text in pieces, those that a browser can go to by themselves */
        public List<Piece> pieces() {
            List<Piece> pieces = new ArrayList<>();
            Matcher found = ON_THE_WEB.matcher(address);
            int from = 0;
            while (found.find()) {
                pieces.add(new Piece(address.substring(from, found.start()), false));
                pieces.add(new Piece(found.group(), true));
                from = found.end();
            }
            pieces.add(new Piece(address.substring(from), false));
            pieces.removeIf(piece -> piece.text().isEmpty());
            return pieces;
        }

        public record Piece(String text, boolean onTheWeb) { }
    }

    /** Something that is told elsewhere. */
    public sealed interface Reference {

        /** @param pathway slug of the way that is told, or null for the usual one */
        record Law(String code, String pathway) implements Reference { }

        /** Every rule of a law with its section. */
        record WholeLaw(String code) implements Reference { }

        record OtherWays(String code) implements Reference { }

        record WaysBeside(String code) implements Reference { }

        record Doubts(String code) implements Reference { }

        /** @param id whole id of a requirement */
        record Rule(String id) implements Reference { }

        /** A text to report a mistake in a requirement. */
        record Mistake(String id) implements Reference { }

        /** What is due and when. */
        record Dates(String code) implements Reference { }

        /** One law for one child only. */
        record ForAChild() implements Reference { }

        /** A photo or scan of the book; {@code path} lies in the book's folder. */
        record File(String path) implements Reference { }

        /** Every record that was counted. */
        record AllRecords() implements Reference { }
    }
}
