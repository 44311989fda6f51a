package org.hearthrule.suggest;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.hearthrule.input.Problems;
import org.junit.jupiter.api.Test;

class VocabularyReaderTest {

    @Test
    void packagedVocabularyHasNoProblem() throws Exception {
        Problems problems = new Problems();
        VocabularyReader.read(Suggester.RESOURCE, Files.readString(Path.of(Suggester.RESOURCE)), problems);

        assertThat(problems.all()).extracting(problem -> problem.toText()).isEmpty();
    }
}
