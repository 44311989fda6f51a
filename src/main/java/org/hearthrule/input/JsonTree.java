package org.hearthrule.input;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParseException;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/** Builds the tree from the parser's tokens. */
final class JsonTree {

    private static final JsonFactory FACTORY = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxStringLength(JsonText.MAX_SIZE)
                    .maxDocumentLength(JsonText.MAX_SIZE)
                    .build())
            .build();

    private final String file;
    private final CountingReader content;
    private final Problems problems;
    private final Deque<Place> open = new ArrayDeque<>();
    private JsonParser parser;
    private boolean finished;

    JsonTree(String file, CountingReader content, Problems problems) {
        this.file = file;
        this.content = content;
        this.problems = problems;
    }

    Optional<Node> read() throws IOException {
        try (JsonParser opened = FACTORY.createParser(content)) {
            parser = opened;
            JsonToken first = parser.nextToken();
            if (first == null) {
                error(place(parser.currentLocation()), "EMPTY-DOCUMENT", "nothing", "a JSON value", backups());
                return Optional.empty();
            }
            Node root = node(first);
            finished = true;
            if (parser.nextToken() != null) {
                trailing(place(parser.currentTokenLocation()));
            }
            return Optional.of(root);
        } catch (StopReading stop) {
            return Optional.empty();
        } catch (JsonEOFException e) {
            cutShort();
            return Optional.empty();
        } catch (StreamConstraintsException e) {
            error(place(parser.currentLocation()), "WRONG-JSON", e.getOriginalMessage(), "a smaller value", null);
            return Optional.empty();
        } catch (JsonParseException e) {
            wrong(e);
            return Optional.empty();
        }
    }

    private Node node(JsonToken token) throws IOException {
        Place place = place(parser.currentTokenLocation());
        switch (token) {
            case START_OBJECT:
                enter(place);
                return object(place);
            case START_ARRAY:
                enter(place);
                return array(place);
            case VALUE_STRING:
                return new Scalar(place, parser.getText(), Scalar.Form.QUOTED);
            case VALUE_NUMBER_INT:
            case VALUE_NUMBER_FLOAT:
                return new Scalar(place, parser.getText(), Scalar.Form.NUMBER);
            case VALUE_NULL:
                return new Scalar(place, "null", Scalar.Form.NULL);
            default:
                return new Scalar(place, parser.getText(), Scalar.Form.BOOLEAN);
        }
    }

    private void enter(Place place) {
        if (open.size() == JsonText.MAX_DEPTH) {
            error(place, "TOO-DEEP", "a value more than 60 levels deep", "at most 60 levels", null);
            throw new StopReading();
        }
        open.push(place);
    }

    private Node object(Place place) throws IOException {
        List<Mapping.Entry> entries = new ArrayList<>();
        KeyCheck keys = new KeyCheck(entries);
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            Place at = place(parser.currentTokenLocation());
            Scalar key = new Scalar(at, parser.currentName(), Scalar.Form.QUOTED);
            boolean usable = keys.isNew(key, problems);
            Node value = node(parser.nextToken());
            if (usable) {
                entries.add(new Mapping.Entry(key, value));
            }
        }
        open.pop();
        return new Mapping(place, entries);
    }

    private Node array(Place place) throws IOException {
        List<Node> items = new ArrayList<>();
        for (JsonToken token = parser.nextToken(); token != JsonToken.END_ARRAY; token = parser.nextToken()) {
            items.add(node(token));
        }
        open.pop();
        return new Listing(place, items);
    }

    private void wrong(JsonParseException e) {
        JsonLocation location = e.getLocation() == null ? parser.currentLocation() : e.getLocation();
        if (finished) {
            trailing(place(parser.currentLocation()));
        } else if (content.hasEnded() && parser.currentLocation().getCharOffset() >= content.count()) {
            cutShort();
        } else {
            JsonComplaint.record(e, place(location), !open.isEmpty(), problems);
        }
    }

    private void cutShort() {
        Place end = place(parser.currentLocation());
        String missing = open.isEmpty()
                ? "the rest of the value"
                : "the end of what began on line " + open.peek().line();
        error(end, "CUT-SHORT", "the end of the file on line " + end.line(), missing, backups());
    }

    private static String backups() {
        return "the file was cut short when it was written or copied; a copy may be in the backups";
    }

    private void trailing(Place place) {
        error(place, "TRAILING-CONTENT", "more after the end of the JSON value", "the end of the file", null);
    }

    private void error(Place place, String code, String found, String expected, String perhaps) {
        problems.error(place, code, found, expected, perhaps);
    }

    private Place place(JsonLocation location) {
        return new Place(file, location.getLineNr(), Math.max(1, location.getColumnNr()));
    }
}
