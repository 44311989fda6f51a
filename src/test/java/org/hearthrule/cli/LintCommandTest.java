package org.hearthrule.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LintCommandTest {

    private static final Path ANNOTATED = Path.of("test-fixtures/profiles/us-xx.yaml");

    @TempDir
    private Path folder;
    private Path bad;

    @BeforeEach
    void spoilAProfile() throws IOException {
        bad = folder.resolve("us-xx.yaml");
        Files.writeString(bad, Files.readString(ANNOTATED).replace("\"2019-07-01\"", "\"2019-02-30\"")
                .replace("law-calls-it:", "law-cals-it:"));
    }

    @Test
    void findsNothingInTheAnnotatedProfile() {
        Run run = Run.of("lint", ANNOTATED.toString());

        assertThat(run.exit()).isZero();
        assertThat(run.out()).contains("One file read.").doesNotContain(": error:");
    }

    @Test
    void listsEveryProblemInOneRunWithItsPlaceAndLine() {
        Run run = Run.of("lint", bad.toString());

        assertThat(run.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(run.out()).contains(bad + ":", ": error: [WRONG-DATE] found \"2019-02-30\"",
                "[UNKNOWN-KEY] found unknown key `law-cals-it`", "Perhaps you meant `law-calls-it`", "- from: \"2019-02-30\"");
    }

    @Test
    void writesTheSameForPrograms() throws IOException {
        Run run = Run.of("lint", bad.toString(), "--format", "json");
        JsonNode json = new ObjectMapper().readTree(run.out());

        assertThat(run.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(json.get("files").asInt()).isEqualTo(1);
        assertThat(json.get("problems")).extracting(problem -> problem.get("code").asText())
                .contains("WRONG-DATE", "UNKNOWN-KEY");
        assertThat(json.get("problems").get(0).fieldNames()).toIterable().containsExactly("file", "line", "column",
                "severity", "code", "found", "expected", "perhaps", "excerpt");
    }

    @Test
    void looksAtAllThatCameAlongAndAtAFolderBeforeThem() {
        assertThat(Run.of("lint", "--all").exit()).isZero();
        assertThat(Run.of("lint", "--jurisdictions", folder.toString()).exit()).isEqualTo(Exit.BAD_INPUT);
    }

    @Test
    void saysWhatCannotBeRead() {
        Run run = Run.of("lint", folder.resolve("us-zz.yaml").toString());

        assertThat(run.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(run.out()).contains("us-zz.yaml:1:1: error:");
    }
}
