package org.hearthrule.records;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.hearthrule.input.Problems;
import org.hearthrule.terms.EventKind;
import org.hearthrule.terms.Subjects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Runs another program's check of our JSON Schemas over the same files as the reader, so that what an editor says while
 * one types and what the reader says afterwards cannot drift apart.
 */
class BookSchemaTest {

    private static final Path SCHEMAS = Path.of("shared", "schema");
    private static final Schema FAMILY = schema("family.schema.json");
    private static final Schema YEAR = schema("school-year.schema.json");

    static List<Path> bad() {
        return Fixtures.folders("bad");
    }

    static List<Path> good() {
        return Fixtures.readable();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("bad")
    void schemaRefusesWhatTheReaderRefusesExceptWhatIsListed(Path folder) throws IOException {
        // when
        List<String> complaints = complaints(Fixtures.texts(folder));

        // then
        String name = folder.getFileName().toString();
        if (readerOnly().containsKey(name)) {
            assertThat(complaints).isEmpty();
        } else {
            assertThat(complaints).isNotEmpty();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("good")
    void schemaPassesWhatTheReaderPasses(Path folder) {
        assertThat(complaints(Fixtures.texts(folder))).isEmpty();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("good")
    void schemaPassesWhatTheProgramWrites(Path folder) {
        Book book = BookReader.read(Fixtures.texts(folder), new Problems()).orElseThrow();

        assertThat(complaints(BookText.files(book))).isEmpty();
    }

    @Test
    void everyListedFolderIsThereWithAReason() throws IOException {
        List<String> folders = bad().stream().map(path -> path.getFileName().toString()).collect(Collectors.toList());

        assertThat(readerOnly()).isNotEmpty().allSatisfy((name, reason) -> {
            assertThat(folders).contains(name);
            assertThat(reason).isNotBlank();
        });
    }

    @Test
    void schemaKnowsTheSameSubjectsAndEvents() {
        assertThat(words(YEAR.getSchemaNode().at("/definitions/subjects/items/enum")))
                .containsExactlyElementsOf(Subjects.ids());
        assertThat(words(FAMILY.getSchemaNode().at("/properties/events/items/properties/kind/enum")))
                .containsExactlyElementsOf(Arrays.stream(EventKind.values()).map(EventKind::slug)
                        .collect(Collectors.toList()));
    }

    @Test
    void everyObjectOfTheSchemasIsClosed() throws IOException {
        for (String name : List.of("family.schema.json", "school-year.schema.json", "book.schema.json")) {
            JsonNode schema = new ObjectMapper().readTree(SCHEMAS.resolve(name).toFile());
            List<JsonNode> open = new ArrayList<>();
            collectOpenObjects(schema, open);
            assertThat(open).isEmpty();
        }
    }

    private static void collectOpenObjects(JsonNode node, List<JsonNode> open) {
        if (node.path("type").asText().equals("object") && !node.has("additionalProperties")) {
            open.add(node);
        }
        node.forEach(child -> collectOpenObjects(child, open));
    }

    private static List<String> words(JsonNode list) {
        List<String> words = new ArrayList<>();
        list.forEach(word -> words.add(word.asText()));
        return words;
    }

    /** Returns what the schemas say of the files of a book, each under the schema its name asks for. */
    private static List<String> complaints(Map<String, String> texts) {
        List<String> complaints = new ArrayList<>();
        texts.forEach((name, text) -> {
            Schema schema = name.equals(BookNames.FAMILY) ? FAMILY : BookNames.year(name).isPresent() ? YEAR : null;
            if (schema != null) {
                try {
                    schema.validate(text, InputFormat.JSON).forEach(error -> complaints.add(name + ": " + error));
                } catch (UncheckedIOException e) {
                    complaints.add(name + ": not JSON");
                }
            }
        });
        return complaints;
    }

    private static Map<String, String> readerOnly() throws IOException {
        Map<String, String> reasons = new TreeMap<>();
        for (String line : Files.readAllLines(Fixtures.BOOKS.resolve("bad").resolve("reader-only.txt"))) {
            int colon = line.indexOf(": ");
            if (!line.startsWith("#") && colon > 0) {
                reasons.put(line.substring(0, colon), line.substring(colon + 2));
            }
        }
        return reasons;
    }

    private static Schema schema(String name) {
        try {
            return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_7)
                    .getSchema(Files.readString(SCHEMAS.resolve(name)), InputFormat.JSON);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
