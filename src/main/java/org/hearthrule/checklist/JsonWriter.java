package org.hearthrule.checklist;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.hearthrule.law.Cite;
import org.hearthrule.law.Source;
import org.hearthrule.rules.Finding;
import org.hearthrule.terms.Basis;
import org.hearthrule.terms.Binding;
import org.hearthrule.terms.Wording;

/**
 * Writes a checklist as JSON for programs, as {@code shared/schema/checklist.schema.json} describes it: every line,
 * also what is not due, with its reason, and what the law does not ask.
 */
public final class JsonWriter {

    private final Wording wording;

    public JsonWriter(Wording wording) {
        this.wording = wording;
    }

    /** @return one JSON object, its last line ended */
    public String write(Checklist checklist) {
        return Json.write(json -> {
            json.writeStartObject();
            Json.text(json, "jurisdiction", one(checklist.follows().stream()
                    .map(f -> f.profile().slug()).distinct().toList()));
            Json.text(json, "pathway", one(checklist.follows().stream().map(f -> f.pathway().slug()).distinct().toList()));
            Json.day(json, "asOf", checklist.asOf());
            Json.text(json, "caution", wording.say("caution"));
            json.writeArrayFieldStart("lines");
            for (Line line : checklist.lines()) {
                line(json, line);
            }
            json.writeEndArray();
            json.writeEndObject();
        });
    }

    private static String one(List<String> values) {
        return values.size() == 1 ? values.get(0) : null;
    }

    private static void line(JsonGenerator json, Line line) throws IOException {
        Finding finding = line.finding();
        json.writeStartObject();
        Json.text(json, "id", finding.id());
        Json.text(json, "requirement", finding.requirement());
        Json.text(json, "jurisdiction", finding.jurisdiction());
        Json.text(json, "pathway", finding.pathway());
        Json.text(json, "student", finding.studentName());
        Json.text(json, "year", finding.year());
        Json.text(json, "kind", finding.kind().slug());
        Json.text(json, "title", finding.title());
        Json.text(json, "section", line.section().slug());
        Json.day(json, "due", finding.due());
        Json.text(json, "dueNote", finding.dueNote());
        Json.day(json, "opens", finding.opens());
        Json.day(json, "lawFrom", line.asked() == null ? null : line.asked().validity().from());
        Json.day(json, "lawUntil", line.asked() == null ? null : line.asked().validity().until());
        Json.text(json, "status", finding.status().slug());
        json.writeBooleanField("theirs", finding.theirs());
        Json.text(json, "next", finding.next());
        Json.text(json, "why", String.join(" ", finding.why()));
        Json.counted(json, finding.counted());
        json.writeFieldName("source");
        if (finding.cites().isEmpty()) {
            json.writeNull();
        } else {
            source(json, String.join("; ", line.citations()), finding.cites().get(0).source(), line.read(),
                    line.basis(), line.binding());
        }
        json.writeArrayFieldStart("sources");
        for (Cite cite : finding.cites()) {
            source(json, cite.words(), cite.source(), cite.read(), cite.basis(), cite.source().binding());
        }
        json.writeEndArray();
        Json.text(json, "confirmWith", finding.confirmWith());
        json.writeEndObject();
    }

    private static void source(JsonGenerator json, String citation, Source source, LocalDate read, Basis basis,
                               Binding binding) throws IOException {
        json.writeStartObject();
        Json.text(json, "citation", citation);
        Json.text(json, "address", source.address());
        Json.day(json, "read", read);
        Json.text(json, "basis", basis.slug());
        Json.text(json, "binding", binding.name().toLowerCase(Locale.ROOT).replace('_', '-'));
        json.writeEndObject();
    }
}
