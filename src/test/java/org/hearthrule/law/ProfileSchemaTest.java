package org.hearthrule.law;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.hearthrule.input.Problems;
import org.hearthrule.input.YamlText;
import org.hearthrule.terms.EventKind;
import org.hearthrule.terms.Subjects;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The schema editors use is whole, and the annotated example shows every key of it, so that neither goes stale. */
class ProfileSchemaTest {

    private static final Set<String> SHARED = Set.of("days", "weeks", "months", "years", "business-days",
            "school-days", "rounding", "above", "at-least", "below", "at-most");

    private static JsonNode schema;

    @BeforeAll
    static void read() throws Exception {
        schema = new ObjectMapper().readTree(ProfileFixtures.SCHEMA.toFile());
    }

    @Test
    void annotatedExampleUsesEveryKeyOfTheSchema() {
        // given
        JsonNode example = ProfileFixtures.json(YamlText.read(ProfileFixtures.FILE,
                ProfileFixtures.text(ProfileFixtures.ANNOTATED), new Problems()).orElseThrow());
        Set<String> keys = new TreeSet<>();
        collectKeys(schema, "#", keys);

        // when
        Set<String> used = new TreeSet<>();
        follow(schema, "#", example, used);

        // then
        assertThat(keys).hasSizeGreaterThan(200);
        keys.removeAll(used);
        assertThat(keys).as("keys the example does not show").isEmpty();
    }

    @Test
    void annotatedExampleFitsTheSchema() {
        assertThat(ProfileFixtures.schemaErrors(ProfileFixtures.text(ProfileFixtures.ANNOTATED)))
                .hasValue(List.of());
    }

    @Test
    void everyKeyIsDescribed() {
        // given
        List<String> bare = new ArrayList<>();

        // when
        collectUndescribed(schema, "#", bare);

        // then
        assertThat(bare).isEmpty();
    }

    @Test
    void everyObjectIsClosed() {
        // given
        List<String> open = new ArrayList<>();

        // when
        collectOpen(schema, "#", open);

        // then
        assertThat(open).isEmpty();
    }

    @Test
    void eventsAreThoseOfTheProgram() {
        assertThat(enumOf("event")).containsExactlyElementsOf(
                Arrays.stream(EventKind.values()).map(EventKind::slug).toList());
    }

    @Test
    void subjectsAreThoseOfTheVocabulary() {
        assertThat(enumOf("subject")).containsExactlyElementsOf(Subjects.ids());
    }

    @Test
    void everyReferenceResolves() {
        for (JsonNode reference : schema.findValues("$ref")) {
            assertThat(target(reference.asText())).as(reference.asText()).isNotNull();
        }
    }

    private static List<String> enumOf(String definition) {
        List<String> values = new ArrayList<>();
        schema.at("/definitions/" + definition + "/enum").forEach(value -> values.add(value.asText()));
        return values;
    }

    private static JsonNode target(String reference) {
        return schema.get("definitions").get(reference.substring("#/definitions/".length()));
    }

    /** Names every key by where it stands in the schema. Conditions ("if", "then") only repeat keys. */
    private static void collectKeys(JsonNode node, String at, Set<String> keys) {
        if (node.has("additionalProperties") && node.has("properties")) {
            node.get("properties").fieldNames().forEachRemaining(key -> keys.add(where(at, key)));
        }
        for (Map.Entry<String, JsonNode> child : node.properties()) {
            collectKeys(child.getValue(), at + "/" + child.getKey(), keys);
        }
        for (int i = 0; node.isArray() && i < node.size(); i++) {
            collectKeys(node.get(i), at + "/" + i, keys);
        }
    }

    /** Units of time and comparisons mean the same wherever they stand; showing each once is enough. */
    private static String where(String at, String key) {
        return SHARED.contains(key) ? key : at + " " + key;
    }

    /** Walks schema and document together and notes each key the document uses. */
    private static void follow(JsonNode node, String at, JsonNode document, Set<String> used) {
        if (node.has("$ref")) {
            follow(target(node.get("$ref").asText()), node.get("$ref").asText(), document, used);
        }
        for (String word : List.of("allOf", "anyOf")) {
            for (int i = 0; node.has(word) && i < node.get(word).size(); i++) {
                follow(node.get(word).get(i), at + "/" + word + "/" + i, document, used);
            }
        }
        for (Map.Entry<String, JsonNode> entry : document.properties()) {
            JsonNode known = node.path("properties").get(entry.getKey());
            if (known != null) {
                used.add(where(at, entry.getKey()));
                follow(known, at + "/properties/" + entry.getKey(), entry.getValue(), used);
            } else if (node.path("additionalProperties").isObject()) {
                follow(node.get("additionalProperties"), at + "/additionalProperties", entry.getValue(), used);
            }
        }
        if (document.isArray() && node.has("items")) {
            document.forEach(item -> follow(node.get("items"), at + "/items", item, used));
        }
    }

    private static void collectUndescribed(JsonNode node, String at, List<String> bare) {
        if (node.has("additionalProperties") && node.has("properties")) {
            for (Map.Entry<String, JsonNode> key : node.get("properties").properties()) {
                if (key.getValue().path("description").asText().length() < 4) {
                    bare.add(at + " " + key.getKey());
                }
            }
        }
        for (Map.Entry<String, JsonNode> child : node.properties()) {
            collectUndescribed(child.getValue(), at + "/" + child.getKey(), bare);
        }
        node.forEach(child -> {
            if (node.isArray()) {
                collectUndescribed(child, at + "/-", bare);
            }
        });
    }

    private static void collectOpen(JsonNode node, String at, List<String> open) {
        if (node.path("type").asText().equals("object") && !node.has("additionalProperties") && !node.has("allOf")) {
            open.add(at);
        }
        for (Map.Entry<String, JsonNode> child : node.properties()) {
            collectOpen(child.getValue(), at + "/" + child.getKey(), open);
        }
        node.forEach(child -> {
            if (node.isArray()) {
                collectOpen(child, at + "/-", open);
            }
        });
    }
}
