package org.hearthrule.rules;

import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.hearthrule.law.ProfileReader;
import org.hearthrule.law.Profiles;
import org.hearthrule.terms.Subjects;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Every case of {@code test-fixtures/cases/}, and the hardest rules of {@code test-fixtures/hardest/cases/}; the section
 * that gives the expected value stands beside each.
 */
class LawCasesTest {

    private static final Path FIXTURES = Path.of("test-fixtures");
    private static final Path HARDEST = FIXTURES.resolve("hardest");

    @TestFactory
    Stream<DynamicContainer> casesFromTheLaw() throws IOException {
        return cases(FIXTURES.resolve("cases"), packaged());
    }

    /** Some of these rules are of states that have no profile yet: these have one that holds no more than the rule. */
    @TestFactory
    Stream<DynamicContainer> hardestRules() throws Exception {
        return cases(HARDEST.resolve("cases"), packaged().with(HARDEST));
    }

    private static Profiles packaged() {
        return Profiles.packaged(new ProfileReader(Subjects::known, Subjects.ids()));
    }

    private static Stream<DynamicContainer> cases(Path folder, Profiles profiles) throws IOException {
        List<DynamicContainer> files = new ArrayList<>();
        try (Stream<Path> paths = Files.list(folder)) {
            for (Path file : paths.sorted().toList()) {
                files.add(DynamicContainer.dynamicContainer(file.getFileName().toString(), LawCase.read(file).stream()
                        .map(lawCase -> DynamicTest.dynamicTest(lawCase.name() + " (" + lawCase.section() + ")",
                                () -> check(lawCase, profiles)))));
            }
        }
        return files.stream();
    }

    private static void check(LawCase lawCase, Profiles profiles) throws Exception {
        List<String> faults = LawCaseCheck.faults(lawCase, profiles.find(lawCase.jurisdiction()));
        if (!faults.isEmpty()) {
            fail(lawCase.section() + "\n" + String.join("\n", faults));
        }
    }
}
