package org.hearthrule.rules;

import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.hearthrule.law.Packaged;
import org.hearthrule.law.Profiles;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Every case of {@code test-fixtures/cases/}; the section that gives the expected value stands beside each. */
class LawCasesTest {

    @TestFactory
    Stream<DynamicContainer> casesFromTheLaw() throws IOException {
        Profiles profiles = Packaged.profiles();
        List<DynamicContainer> files = new ArrayList<>();
        for (Path file : LawCase.files()) {
            files.add(DynamicContainer.dynamicContainer(file.getFileName().toString(), LawCase.read(file).stream()
                    .map(lawCase -> DynamicTest.dynamicTest(lawCase.name() + " (" + lawCase.section() + ")",
                            () -> check(lawCase, profiles)))));
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
