package org.hearthrule.rules;

import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.hearthrule.input.Node;
import org.hearthrule.law.Profile;
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
        Profile profile = profiles.find(lawCase.jurisdiction());
        Judgement judgement = new Judge(List.of(profile)).judge(lawCase.book(), lawCase.asOf());
        List<String> faults = new ArrayList<>();
        for (Map<String, Node> expected : lawCase.expected()) {
            List<Finding> candidates = candidates(expected, lawCase, judgement);
            if (candidates.stream().noneMatch(finding -> fits(expected, finding))) {
                faults.add("expected " + shown(expected) + "\n  found " + (candidates.isEmpty() ? "no such line"
                        : String.join("\n        ", candidates.stream().map(LawCasesTest::shown).toList())));
            }
        }
        if (!faults.isEmpty()) {
            fail(lawCase.section() + "\n" + String.join("\n", faults));
        }
    }

    private static List<Finding> candidates(Map<String, Node> expected, LawCase lawCase, Judgement judgement) {
        String localId = LawCase.text(expected.get("requirement"));
        List<Finding> same = judgement.findings().stream()
                .filter(finding -> finding.requirement().endsWith("/" + localId))
                .filter(finding -> finding.student() == null || finding.student().equals(LawCase.CHILD)).toList();
        if (expected.containsKey("occasion")) {
            String occasion = "/" + LawCase.text(expected.get("occasion"));
            same = same.stream().filter(finding -> finding.id().endsWith(occasion)).toList();
        }
        if (expected.containsKey("part")) {
            String part = "." + LawCase.text(expected.get("part"));
            same = same.stream().filter(finding -> finding.id().endsWith(part)).toList();
        }
        String year = expected.containsKey("year") ? LawCase.text(expected.get("year")) : LawCase.label(lawCase.asOf());
        List<Finding> ofYear = same.stream().filter(finding -> finding.year() == null || finding.id().endsWith("/once")
                || finding.year().equals(year)).toList();
        return ofYear;
    }

    private static boolean fits(Map<String, Node> expected, Finding finding) {
        boolean fits = true;
        for (Map.Entry<String, Node> each : expected.entrySet()) {
            String value = LawCase.text(each.getValue());
            fits &= switch (each.getKey()) {
                case "requirement", "year", "part", "occasion" -> true;
                case "status" -> finding.status().slug().equals(value);
                case "due" -> value.equals("null") ? finding.due() == null
                        : finding.due() != null && finding.due().toString().equals(value);
                case "due-note" -> finding.dueNote() != null && finding.dueNote().contains(value);
                case "opens" -> finding.opens() != null && finding.opens().toString().equals(value);
                case "why" -> String.join(" ", finding.why()).contains(value);
                case "next" -> finding.next() != null && finding.next().contains(value);
                default -> throw new IllegalArgumentException("no such expectation: " + each.getKey());
            };
        }
        return fits;
    }

    private static String shown(Map<String, Node> expected) {
        StringBuilder out = new StringBuilder();
        expected.forEach((key, value) -> out.append(key).append(": ").append(LawCase.text(value)).append("; "));
        return out.toString();
    }

    private static String shown(Finding finding) {
        return finding.id() + " " + finding.status().slug() + " due " + finding.due() + " (" + finding.dueNote() + ") "
                + finding.why() + " next: " + finding.next();
    }
}
