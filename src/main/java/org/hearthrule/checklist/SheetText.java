package org.hearthrule.checklist;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.hearthrule.checklist.Sheet.Block;
import org.hearthrule.checklist.Sheet.Column;
import org.hearthrule.checklist.Sheet.Item;
import org.hearthrule.checklist.Sheet.Mark;
import org.hearthrule.checklist.Sheet.Paragraph;
import org.hearthrule.checklist.Sheet.Span;
import org.hearthrule.checklist.Sheet.Tone;
import org.hearthrule.terms.Wording;

/** Sets a sheet for a terminal. */
public final class SheetText {

    private static final int GAP = 2;

    private final Wording wording;
    private final Style style;
    private final TextPage page;
    /** How far paragraphs and items are set in: more within a part of a part. */
    private int level = 2;

    private SheetText(Wording wording, Style style) {
        this.wording = wording;
        this.style = style;
        this.page = new TextPage(style, wording);
    }

    /** @return the sheet as text, each line ended */
    public static String of(Sheet sheet, Wording wording, Style style) {
        return new SheetText(wording, style).set(sheet);
    }

    private String set(Sheet sheet) {
        if (!sheet.title().isEmpty()) {
            page.wrap(sheet.title(), style.columns()).forEach(line -> page.line(style.bold(line)));
        }
        set(sheet.blocks(), sheet.title().isEmpty());
        level = 2;
        sheet.foot().forEach(block -> {
            page.blank();
            set(block);
        });
        return page.toString();
    }

    /** A blank line goes before a heading, and before all else that does not follow one; a list joins what is above it. */
    private void set(List<Block> blocks, boolean top) {
        boolean afterHead = true;
        for (Block block : blocks) {
            if (isOfPagesOnly(block)) {
                continue;
            }
            boolean head = block instanceof Sheet.Heading;
            if (head ? !top : !afterHead && !(block instanceof Sheet.Items)) {
                page.blank();
            }
            set(block);
            afterHead = head;
            top = false;
        }
    }

    private static boolean isOfPagesOnly(Block block) {
        return block instanceof Sheet.Passage passage && passage.paragraphs().stream()
                .allMatch(paragraph -> paragraph instanceof Sheet.Hint hint && hint.typed().isEmpty());
    }

    private void set(Block block) {
        if (block instanceof Sheet.Heading heading) {
            heading(heading);
        } else if (block instanceof Sheet.Passage passage) {
            passage.paragraphs().forEach(this::paragraph);
        } else if (block instanceof Sheet.Remark remark) {
            page.paragraph(2, remark.text());
        } else if (block instanceof Sheet.Items items) {
            items(items.items());
        } else if (block instanceof Sheet.Table table) {
            table(table);
        } else {
            beside((Sheet.Beside) block);
        }
    }

    /** Capitals for a part, weight for a part within. */
    private void heading(Sheet.Heading heading) {
        level = heading.level();
        String text = level == 2 ? heading.text().toUpperCase(Locale.ROOT) : heading.text();
        String whole = heading.aside().isEmpty() ? text : text + ' ' + heading.aside();
        if (level == 2) {
            page.heading(whole);
        } else {
            page.wrap(whole, style.columns() - 2).forEach(line -> page.line("  " + style.bold(line)));
        }
    }

    private int indent() {
        return level == 2 ? 0 : 4;
    }

    private void paragraph(Paragraph paragraph) {
        if (paragraph instanceof Sheet.Hint hint) {
            page.paragraph(indent(), hint.typed());
        } else if (paragraph instanceof Sheet.Words words && words.tone() == Tone.SMALL) {
            small(indent(), text(words.spans()));
        } else {
            page.paragraph(indent(), text(((Sheet.Words) paragraph).spans()));
        }
    }

    private void small(int indent, String text) {
        page.wrap(text, style.columns() - indent).forEach(line -> page.line(" ".repeat(indent) + style.dim(line)));
    }

    private String text(List<Span> spans) {
        return spans.stream().map(this::text).collect(Collectors.joining());
    }

    private String text(Span span) {
        if (span instanceof Sheet.Text text) {
            return text.text();
        }
        if (span instanceof Sheet.Name name) {
            return name.text();
        }
        if (span instanceof Sheet.See see) {
            return see.typed();
        }
        return span instanceof Sheet.Tile tile ? Shape.of(tile.status(), style.unicode()) : ((Sheet.Address) span).address();
    }

    private void items(List<Item> items) {
        for (int i = 0; i < items.size(); i++) {
            Item item = items.get(i);
            String mark = mark(item.mark(), i + 1);
            boolean outermost = item.mark() == Sheet.Plain.NUMBER || item.mark() instanceof Sheet.Tile;
            int indent = outermost ? 0 : Math.max(2, indent());
            page.hanging(indent, mark, text(item.spans()));
            if (!item.beneath().isEmpty()) {
                small(indent + Width.of(mark), text(item.beneath()));
            }
        }
    }

    private String mark(Mark mark, int number) {
        if (mark instanceof Sheet.Tile tile) {
            return text(tile) + ' ';
        }
        if (mark instanceof Sheet.Day day) {
            return (day.day() == null ? wording.say("explain.no-day") : day.day().toString()) + "  ";
        }
        return switch ((Sheet.Plain) mark) {
            case NONE -> "";
            case DASH -> "- ";
            case HERE -> "> ";
            case NUMBER -> (number < 10 ? " " : "") + number + "  ";
        };
    }

    private void table(Sheet.Table table) {
        List<Column> columns = table.columns();
        groups(columns);
        page.line(style.dim(row(columns, columns.stream().map(Column::head).toList())));
        for (int i = 0; i < table.rows().size(); i++) {
            List<String> cells = table.rows().get(i).stream().map(this::text).map(page::clean).toList();
            if (table.sum() && i == table.rows().size() - 1) {
                page.line(style.dim(row(columns, cells)));
            } else {
                wrappedRow(columns, cells);
            }
        }
    }

    private void groups(List<Column> columns) {
        StringBuilder line = new StringBuilder();
        int at = 0;
        String before = "";
        for (Column column : columns) {
            if (!column.group().isEmpty() && !column.group().equals(before)) {
                line.append(" ".repeat(Math.max(0, at + GAP - line.length()))).append(column.group());
            }
            before = column.group();
            at += column.width();
        }
        if (!line.isEmpty()) {
            page.line(style.dim(line.toString()));
        }
    }

    private void wrappedRow(List<Column> columns, List<String> cells) {
        if (columns.get(0).align() != Column.Align.WRAPPED) {
            page.line(row(columns, cells));
            return;
        }
        List<String> lines = page.wrap(cells.get(0), columns.get(0).width() - GAP);
        List<String> first = new ArrayList<>(cells);
        first.set(0, lines.get(0));
        page.line(row(columns, first));
        lines.subList(1, lines.size()).forEach(line -> page.line("  " + line));
    }

    private static String row(List<Column> columns, List<String> cells) {
        StringBuilder row = new StringBuilder();
        for (int i = 0; i < columns.size(); i++) {
            String cell = cells.get(i);
            String space = " ".repeat(Math.max(1, columns.get(i).width() - Width.of(cell)));
            row.append(columns.get(i).align() == Column.Align.RIGHT ? space + cell : cell + space);
        }
        return row.toString();
    }

    private void beside(Sheet.Beside beside) {
        int count = beside.sides().size();
        int column = (style.columns() - GAP * (count - 1)) / count;
        columns(beside.sides().stream().map(side -> page.wrap(side.head(), column)).toList(), column, true);
        columns(beside.sides().stream().map(side -> remark(side, column)).toList(), column, false);
        for (Sheet.Topic topic : beside.topics()) {
            page.blank();
            page.heading(topic.name().toUpperCase(Locale.ROOT));
            columns(topic.cells().stream().map(items -> cell(items, column)).toList(), column, false);
        }
    }

    private List<String> remark(Sheet.Side side, int column) {
        return side.remark().isEmpty() ? List.of() : page.wrap(side.remark(), column);
    }

    private List<String> cell(List<Item> items, int column) {
        List<String> lines = new ArrayList<>();
        for (Item item : items) {
            List<String> wrapped = page.wrap(text(item.spans()), column - GAP);
            for (int i = 0; i < wrapped.size(); i++) {
                lines.add((i == 0 ? mark(item.mark(), 0) : "  ") + wrapped.get(i));
            }
        }
        return lines;
    }

    private void columns(List<List<String>> cells, int column, boolean bold) {
        int height = cells.stream().mapToInt(List::size).max().orElse(0);
        for (int i = 0; i < height; i++) {
            StringBuilder line = new StringBuilder();
            for (int c = 0; c < cells.size(); c++) {
                String text = i < cells.get(c).size() ? cells.get(c).get(i) : "";
                line.append(bold ? style.bold(text) : text);
                line.append(c == cells.size() - 1 ? "" : " ".repeat(Math.max(GAP, column + GAP - Width.of(text))));
            }
            page.line(line.toString());
        }
    }
}
