package org.hearthrule.law;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hearthrule.input.Listing;
import org.hearthrule.input.Mapping;
import org.hearthrule.input.Node;
import org.hearthrule.input.Problem;
import org.hearthrule.input.Problems;
import org.hearthrule.input.Scalar;
import org.hearthrule.input.YamlText;
import org.hearthrule.terms.Subjects;

/** The profiles below {@code test-fixtures/profiles}, read by the reader and, apart from it, by the schema. */
final class ProfileFixtures {

    static final Path PROFILES = Path.of("test-fixtures", "profiles");
    static final Path ANNOTATED = PROFILES.resolve("us-xx.yaml");
    static final Path SCHEMA = Path.of("shared", "schema", "jurisdiction.schema.json");
    /** The name every fixture is read under, because the code in it is US-XX. */
    static final String FILE = "us-xx.yaml";

    private static final Schema JUDGE = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_7)
            .getSchema(text(SCHEMA), InputFormat.JSON);

    private ProfileFixtures() { }

    static List<Path> yaml(Path folder) {
        try (Stream<Path> found = Files.list(folder)) {
            return found.filter(file -> file.toString().endsWith(".yaml")).sorted().collect(Collectors.toList());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Optional<Profile> read(String content, Problems problems) {
        return new ProfileReader(Subjects::known, Subjects.ids()).read(FILE, content, problems);
    }

    static String words(Problems problems) {
        return problems.all().stream().map(problem -> problem.toText() + "\n").collect(Collectors.joining());
    }

    static List<String> codes(Problems problems) {
        return problems.all().stream().map(Problem::code).distinct().collect(Collectors.toList());
    }

    /** @return what the schema has against a text; empty when there is no tree to show it */
    static Optional<List<String>> schemaErrors(String content) {
        return YamlText.read(FILE, content, new Problems())
                .map(root -> JUDGE.validate(json(root)).stream().map(Error::toString).collect(Collectors.toList()));
    }

    /** What a reader of YAML 1.2, as editors use, makes of a value: text in quotes stays text. */
    static JsonNode json(Node node) {
        JsonNodeFactory make = JsonNodeFactory.instance;
        if (node instanceof Mapping mapping) {
            ObjectNode object = make.objectNode();
            for (Mapping.Entry entry : mapping.entries()) {
                object.set(entry.key().text(), json(entry.value()));
            }
            return object;
        }
        if (node instanceof Listing listing) {
            ArrayNode array = make.arrayNode();
            listing.items().forEach(item -> array.add(json(item)));
            return array;
        }
        Scalar scalar = (Scalar) node;
        if (scalar.form() != Scalar.Form.PLAIN) {
            return make.textNode(scalar.text());
        }
        if (scalar.text().matches("[-+]?[0-9]+")) {
            return make.numberNode(Long.parseLong(scalar.text()));
        }
        if (scalar.text().matches("[-+]?[0-9]+\\.[0-9]+")) {
            return make.numberNode(new BigDecimal(scalar.text()));
        }
        switch (scalar.text()) {
            case "true":
                return make.booleanNode(true);
            case "false":
                return make.booleanNode(false);
            case "":
            case "~":
            case "null":
                return make.nullNode();
            default:
                return make.textNode(scalar.text());
        }
    }
}
