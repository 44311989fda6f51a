package org.hearthrule.checklist;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Requirement;
import org.hearthrule.terms.Wording;

/** Writes a comparison of two laws for programs. */
public final class CompareJson {

    private CompareJson() { }

    /** @return the object, its last line ended */
    public static String write(Comparison comparison, Wording wording) {
        return Json.write(json -> {
            json.writeStartObject();
            Json.day(json, "asOf", comparison.asOf());
            Json.text(json, "caution", wording.say("caution"));
            json.writeFieldName("here");
            side(json, comparison.here(), comparison);
            json.writeFieldName("there");
            side(json, comparison.there(), comparison);
            if (comparison.move() != null) {
                json.writeFieldName("move");
                move(json, comparison.move());
            }
            json.writeEndObject();
        });
    }

    private static void side(JsonGenerator json, Comparison.Side side, Comparison comparison) throws IOException {
        json.writeStartObject();
        Json.text(json, "jurisdiction", side.law().slug());
        Json.text(json, "pathway", side.pathway().slug());
        Json.day(json, "lastRead", side.law().lastRead());
        json.writeArrayFieldStart("asks");
        for (Requirement asked : side.asked()) {
            json.writeStartObject();
            Json.text(json, "requirement", asked.id());
            Json.text(json, "topic", Topic.of(asked.kind()).slug());
            Json.text(json, "kind", asked.kind().slug());
            Json.text(json, "title", asked.title());
            Json.text(json, "basis", asked.basis().slug());
            if (side.lines() != null) {
                lines(json, "lines", side.lines().stream().filter(line -> line.isOf(asked)).toList());
            }
            json.writeEndObject();
        }
        json.writeEndArray();
        Json.texts(json, "doesNotAsk", side.pathway().doesNotAskOn(comparison.asOf()).stream()
                .map(Pathway.NotAsked::what).toList());
        json.writeEndObject();
    }

    private static void move(JsonGenerator json, Comparison.Move move) throws IOException {
        json.writeStartObject();
        Json.day(json, "day", move.day());
        lines(json, "owedHere", move.owed());
        lines(json, "ends", move.ends());
        lines(json, "toFileThere", move.toFile());
        json.writeArrayFieldStart("keep");
        for (Comparison.Kept kept : move.keep()) {
            json.writeStartObject();
            Json.text(json, "requirement", kept.asked().id());
            Json.text(json, "alsoThere", kept.alsoThere() == null ? null : kept.alsoThere().id());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void lines(JsonGenerator json, String name, List<Line> lines) throws IOException {
        json.writeArrayFieldStart(name);
        for (Line line : lines) {
            json.writeStartObject();
            Json.text(json, "id", line.id());
            Json.text(json, "title", line.finding().title());
            Json.day(json, "due", line.finding().due());
            Json.text(json, "dueNote", line.finding().dueNote());
            Json.text(json, "status", line.finding().status().slug());
            Json.text(json, "next", line.finding().next());
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
