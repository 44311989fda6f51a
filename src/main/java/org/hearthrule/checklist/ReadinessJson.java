package org.hearthrule.checklist;

import java.util.Locale;
import org.hearthrule.terms.Wording;

/** Writes what lies ready for an evaluation as JSON. */
public final class ReadinessJson {

    private ReadinessJson() { }

    /** @return one JSON object, its last line ended */
    public static String of(Readiness ready, Wording wording) {
        return Json.write(json -> {
            json.writeStartObject();
            Json.text(json, "student", ready.student());
            Json.day(json, "asOf", ready.asOf());
            Json.text(json, "caution", wording.say("caution"));
            Json.text(json, "jurisdiction", ready.follows() == null ? null
                    : ready.follows().profile().slug());
            Json.text(json, "pathway", ready.follows() == null ? null : ready.follows().pathway().slug());
            Json.day(json, "first", ready.first());
            Json.day(json, "last", ready.last());
            Json.day(json, "before", ready.before());
            Json.text(json, "beforeWhat", ready.beforeWhat());
            json.writeArrayFieldStart("thirds");
            for (Readiness.Third third : ready.thirds()) {
                json.writeStartObject();
                Json.day(json, "from", third.from());
                Json.day(json, "to", third.to());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeArrayFieldStart("subjects");
            for (Readiness.SubjectRow row : ready.subjects()) {
                json.writeStartObject();
                Json.text(json, "name", row.name());
                json.writeBooleanField("asked", !row.may());
                json.writeNumberField("days", row.days());
                json.writeNumberField("minutes", row.minutes());
                json.writeArrayFieldStart("samplesByThird");
                for (int samples : row.counts()) {
                    json.writeNumber(samples);
                }
                json.writeEndArray();
                json.writeNumberField("samplesWithoutDate", row.undated().size());
                json.writeNumberField("books", row.books().size());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeArrayFieldStart("portfolio");
            for (Readiness.Item item : ready.items()) {
                json.writeStartObject();
                Json.text(json, "item", item.name());
                Json.text(json, "presence", item.presence().name().toLowerCase(Locale.ROOT).replace('_', '-'));
                Json.text(json, "found", item.found());
                json.writeEndObject();
            }
            json.writeEndArray();
            Json.texts(json, "assessments", ready.tests().stream().map(test -> test.line().id()).toList());
            Json.texts(json, "mayEvaluate", ready.evaluators());
            json.writeArrayFieldStart("steps");
            for (Readiness.Step step : ready.steps()) {
                json.writeStartObject();
                Json.day(json, "by", step.by());
                Json.text(json, "title", step.title());
                Json.text(json, "next", step.next());
                Json.text(json, "found", step.found());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        });
    }
}
