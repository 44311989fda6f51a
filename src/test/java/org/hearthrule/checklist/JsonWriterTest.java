package org.hearthrule.checklist;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.hearthrule.law.RequirementKind;
import org.hearthrule.rules.Judgement;
import org.hearthrule.rules.Status;
import org.hearthrule.terms.Wording;
import org.junit.jupiter.api.Test;

/** The contract of {@code shared/schema/checklist.schema.json}, checked by a second reader of JSON Schema. */
class JsonWriterTest {

    private static final Path SCHEMA = Path.of("shared/schema/checklist.schema.json");
    private final ObjectMapper mapper = new ObjectMapper();

    @Test
    void writesWhatTheSchemaAsksFor() throws IOException {
        assertThat(problems(json(SampleJudgement.judgement()))).isEmpty();
    }

    @Test
    void schemaRefusesAnUnknownKeyAndAMissingOne() throws IOException {
        // given
        ObjectNode more = (ObjectNode) mapper.readTree(json(SampleJudgement.judgement()));
        ObjectNode less = more.deepCopy();
        more.put("score", 7);
        ((ObjectNode) less.get("lines").get(0)).remove("due");

        // then
        assertThat(problems(more.toString())).isNotEmpty();
        assertThat(problems(less.toString())).isNotEmpty();
    }

    @Test
    void schemaNamesEveryKindStatusAndSection() throws IOException {
        JsonNode line = mapper.readTree(Files.readString(SCHEMA)).at("/definitions/line/properties");

        assertThat(line.at("/kind/enum")).extracting(JsonNode::asText)
                .containsExactly(slugs(RequirementKind.values(), RequirementKind::slug));
        assertThat(line.at("/status/enum")).extracting(JsonNode::asText)
                .containsExactlyInAnyOrder(slugs(Status.values(), Status::slug));
        assertThat(line.at("/section/enum")).extracting(JsonNode::asText)
                .containsExactly(slugs(Section.values(), Section::slug));
    }

    @Test
    void carriesEveryLineAlsoThoseNotDueAndNotAsked() throws IOException {
        JsonNode lines = mapper.readTree(json(SampleJudgement.judgement())).get("lines");

        assertThat(lines).hasSize(SampleJudgement.judgement().findings().size());
        assertThat(lines).extracting(line -> line.get("section").asText()).contains("not-due", "not-asked");
        assertThat(lines).filteredOn(line -> line.get("section").asText().equals("not-due"))
                .extracting(line -> line.get("why").asText())
                .containsExactly("It is asked in grades 3, 5 and 8; Bo is in grade 2.");
    }

    @Test
    void writesOneLineInFull() throws IOException {
        JsonNode lines = mapper.readTree(json(SampleJudgement.judgement())).get("lines");
        JsonNode time = null;
        for (JsonNode line : lines) {
            time = line.get("id").asText().contains("/time/") ? line : time;
        }

        assertThat(time).isEqualTo(mapper.readTree("""
                {"id": "us-xx/home-instruction/time/ada/2026-27", "requirement": "us-xx/home-instruction/time",
                 "jurisdiction": "us-xx", "pathway": "home-instruction", "student": "Ada Example", "year": "2026-27",
                 "kind": "time", "title": "Days of instruction", "section": "soon", "due": "2027-06-30", "dueNote": null,
                 "opens": null, "lawFrom": null, "lawUntil": null, "status": "open", "theirs": false, "next": "Keep logging",
                 "why": "Your records show 171 of 180 days. Nine more by June 30 would do it.",
                 "counted": {"days": 171, "needed": 180, "pace": "3.8 days a week", "missing": ["9 days"]},
                 "source": {"citation": "Example Code § 22-5 (E)", "address": "https://law.example/code/22-5",
                            "read": "2026-11-25", "basis": "text", "binding": "statute"},
                 "sources": [{"citation": "Example Code § 22-5 (E)", "address": "https://law.example/code/22-5",
                              "read": "2026-11-25", "basis": "text", "binding": "statute"}],
                 "confirmWith": "the superintendent of your school district"}"""));
    }

    @Test
    void namesTheWeakestReadingOfSeveralSources() throws IOException {
        JsonNode lines = mapper.readTree(json(SampleJudgement.judgement())).get("lines");

        assertThat(lines).filteredOn(line -> line.get("id").asText().contains("/results/"))
                .extracting(line -> line.get("source").get("basis").asText()).containsExactly("agency");
    }

    @Test
    void namesJurisdictionAndPathwayAboveWhenThereIsOne() throws IOException {
        JsonNode whole = mapper.readTree(json(SampleJudgement.judgement()));

        assertThat(whole.get("jurisdiction").asText()).isEqualTo("us-xx");
        assertThat(whole.get("pathway").asText()).isEqualTo("home-instruction");
        assertThat(whole.get("asOf").asText()).isEqualTo("2027-06-18");
        assertThat(whole.get("caution").asText()).contains("not legal advice");
    }

    private static String json(Judgement judgement) {
        return new JsonWriter(Wording.english()).write(Checklist.of(judgement, SampleJudgement.book()));
    }

    private static List<?> problems(String json) throws IOException {
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_7)
                .getSchema(Files.readString(SCHEMA));
        return schema.validate(json, InputFormat.JSON);
    }

    private static <T> String[] slugs(T[] values, java.util.function.Function<T, String> slug) {
        return List.of(values).stream().map(slug).toArray(String[]::new);
    }
}
