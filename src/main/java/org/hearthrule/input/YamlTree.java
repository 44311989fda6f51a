package org.hearthrule.input;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.events.AliasEvent;
import org.yaml.snakeyaml.events.CollectionStartEvent;
import org.yaml.snakeyaml.events.DocumentStartEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.NodeEvent;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.parser.Parser;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;

/**
 * Builds the tree from the parser's events. Events rather than composed nodes, because the composer
 * guesses types of plain text and replaces aliases before they can be refused.
 */
final class YamlTree {

    private final YamlSource source;
    private final Problems problems;
    private Parser parser;

    YamlTree(YamlSource source, Problems problems) {
        this.source = source;
        this.problems = problems;
    }

    Optional<Node> read() {
        try {
            LoaderOptions options = new LoaderOptions();
            options.setProcessComments(false);
            options.setCodePointLimit(Integer.MAX_VALUE);
            parser = new ParserImpl(new StreamReader(source.text()), options);
            return document();
        } catch (StopReading stop) {
            return Optional.empty();
        } catch (MarkedYAMLException e) {
            YamlComplaint.record(e, source, problems);
            return Optional.empty();
        } catch (YAMLException e) {
            problems.error(
                    source.place(new Mark("", 0, 0, 0, new int[0], 0)),
                    "WRONG-YAML",
                    "what is not YAML (" + e.getMessage() + ")",
                    "YAML",
                    null);
            return Optional.empty();
        }
    }

    private Optional<Node> document() {
        parser.getEvent();
        Event start = parser.getEvent();
        if (!(start instanceof DocumentStartEvent)) {
            empty(start);
            return Optional.empty();
        }
        directives((DocumentStartEvent) start);
        Event first = parser.getEvent();
        boolean nothing = isNothing(first);
        Node root = node(first, 0);
        parser.getEvent();
        Event next = parser.getEvent();
        if (next instanceof DocumentStartEvent) {
            error(next, "SEVERAL-DOCUMENTS", "a second document", "one document in a file", "remove the line `---`");
        } else if (nothing) {
            empty(first);
        }
        if (nothing) {
            return Optional.empty();
        }
        return Optional.ofNullable(root);
    }

    private static boolean isNothing(Event event) {
        return event instanceof ScalarEvent
                && ((ScalarEvent) event).getScalarStyle() == ScalarStyle.PLAIN
                && ((ScalarEvent) event).getValue().isEmpty();
    }

    private void empty(Event event) {
        error(event, "EMPTY-DOCUMENT", "nothing but space and comments", "keys with values", null);
    }

    private void directives(DocumentStartEvent start) {
        boolean tags = start.getTags() != null && !start.getTags().isEmpty();
        if (start.getVersion() != null || tags && start.getExplicit() && source.text().contains("%TAG")) {
            error(start, "DIRECTIVE", "a line that begins with `%`", "no directives", "remove that line");
        }
    }

    /** Builds one node; null where the node was refused. */
    private Node node(Event event, int depth) {
        if (event instanceof AliasEvent) {
            error(
                    event,
                    "ALIAS",
                    "the alias `*" + ((AliasEvent) event).getAnchor() + "`",
                    "each value written out",
                    "repeat the value here, or put text that begins with `*` in quotes");
            return null;
        }
        refuseProperties((NodeEvent) event);
        if (event instanceof ScalarEvent) {
            return scalar((ScalarEvent) event);
        }
        if (depth == YamlText.MAX_DEPTH) {
            error(event, "TOO-DEEP", "a value more than 60 levels deep", "at most 60 levels", null);
            throw new StopReading();
        }
        return event.is(Event.ID.MappingStart) ? mapping(event, depth + 1) : listing(event, depth + 1);
    }

    private void refuseProperties(NodeEvent event) {
        if (event.getAnchor() != null) {
            error(
                    event,
                    "ANCHOR",
                    "the anchor `&" + event.getAnchor() + "`",
                    "no anchors",
                    "put text that begins with `&` in quotes");
        }
        String tag = event instanceof ScalarEvent
                ? ((ScalarEvent) event).getTag()
                : ((CollectionStartEvent) event).getTag();
        if (tag != null) {
            String shown = tag.startsWith("tag:yaml.org,2002:") ? "!!" + tag.substring(18) : tag;
            error(event, "TAG", "the tag `" + shown + "`", "no tags", "put text that begins with `!` in quotes");
        }
    }

    private Scalar scalar(ScalarEvent event) {
        ScalarStyle style = event.getScalarStyle();
        Scalar.Form form = Scalar.Form.QUOTED;
        if (style == ScalarStyle.PLAIN) {
            form = Scalar.Form.PLAIN;
        } else if (style == ScalarStyle.LITERAL || style == ScalarStyle.FOLDED) {
            form = Scalar.Form.BLOCK;
        }
        return new Scalar(source.place(event.getStartMark()), event.getValue(), form);
    }

    private Listing listing(Event start, int depth) {
        List<Node> items = new ArrayList<>();
        for (Event event = parser.getEvent(); !event.is(Event.ID.SequenceEnd); event = parser.getEvent()) {
            Node item = node(event, depth);
            if (item != null) {
                items.add(item);
            }
        }
        return new Listing(source.place(start.getStartMark()), items);
    }

    private Mapping mapping(Event start, int depth) {
        List<Mapping.Entry> entries = new ArrayList<>();
        KeyCheck keys = new KeyCheck(entries);
        for (Event event = parser.getEvent(); !event.is(Event.ID.MappingEnd); event = parser.getEvent()) {
            Node key = node(event, depth);
            boolean usable = key instanceof Scalar && isUsableKey((Scalar) key, keys);
            if (key != null && !(key instanceof Scalar)) {
                error(event, "KEY-NOT-TEXT", "a list or mapping as a key", "text as a key", null);
            }
            Node value = node(parser.getEvent(), depth);
            if (usable && value != null) {
                entries.add(new Mapping.Entry((Scalar) key, value));
            }
        }
        return new Mapping(source.place(start.getStartMark()), entries);
    }

    private boolean isUsableKey(Scalar key, KeyCheck keys) {
        if (key.form() == Scalar.Form.PLAIN && key.text().equals("<<")) {
            problems.error(key.place(), "MERGE-KEY", "the merge key `<<`", "each key written out", null);
            return false;
        }
        return keys.isNew(key, problems);
    }

    private void error(Event event, String code, String found, String expected, String perhaps) {
        problems.error(source.place(event.getStartMark()), code, found, expected, perhaps);
    }
}
