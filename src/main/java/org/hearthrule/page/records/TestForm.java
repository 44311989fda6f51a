package org.hearthrule.page.records;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.hearthrule.page.frame.Field;
import org.hearthrule.page.frame.Form;
import org.hearthrule.records.RecordKind;
import org.hearthrule.records.YearRecords.Score;
import org.hearthrule.records.YearRecords.TestTaken;

/** A test with its scores. Scores are typed a line each: {@code reading percentile 41}. */
final class TestForm extends RecordForm<TestTaken> {

    @Override
    RecordKind kind() {
        return RecordKind.TESTS;
    }

    @Override
    String path() {
        return "/tests";
    }

    @Override
    String one() {
        return "a test";
    }

    @Override
    String many() {
        return "Tests";
    }

    @Override
    String about() {
        return "Tests the law asks for, and free placement tests. Note who gave it and what the report says. "
                + "A scan of the result can lie beside it.";
    }

    @Override
    List<Field> fields(Form form, Offered offered) {
        List<Field> fields = new ArrayList<>();
        fields.add(form.field("student", "Who took it").options(offered.children()).type("one").must());
        fields.add(form.field("date", "On").type("date").must());
        fields.addAll(kindFields(form, "method", "What kind", offered.testMethods()));
        fields.add(form.field("name", "Its name").hint("As printed on it."));
        fields.add(form.field("edition", "Its edition or level"));
        fields.addAll(personFields(form, "givenBy", "Who gave it", "A role, such as school or testing center.", offered));
        fields.add(form.field("place", "Where"));
        fields.add(form.field("consent", "Who agreed to it beforehand"));
        fields.add(form.field("scores", "Scores").type("area")
                .hint("A line for each: what was tested, the measure, the figure. For example: reading percentile 41"));
        fields.add(form.field("scan", "A scan or photo of the result").type("file"));
        return fields;
    }

    @Override
    Form fill(TestTaken test) {
        return Form.empty().fill("method", test.method()).fill("student", test.student()).fill("date", test.date())
                .fill("name", test.name()).fill("edition", test.edition()).fill("givenBy", test.givenBy())
                .fill("place", test.place()).fill("consent", test.consent())
                .fill("scores", test.scores().stream().map(s -> s.area() + ' ' + s.measure() + ' ' + s.value().toPlainString())
                        .collect(Collectors.joining("\n")))
                .fill("copy", test.file());
    }

    @Override
    TestTaken read(Form form, Offered offered, String id, TestTaken before) {
        String method = kindOf(form, "method", offered.testMethods(), "Choose what kind of test it was, or name another.");
        return new TestTaken(id, form.mustOneOf("student", offered.childIds(), "Choose who took it."),
                form.mustDay("date", "Enter the day of the test."), method, form.text("name"), form.text("edition"),
                personOf(form, "givenBy", offered), form.text("place"), form.text("consent"), scores(form),
                form.text("copy"));
    }

    private static List<Score> scores(Form form) {
        List<Score> scores = new ArrayList<>();
        String text = form.text("scores", 2_000);
        for (String line : text == null ? List.<String>of() : text.lines().filter(l -> !l.isBlank()).toList()) {
            String[] words = line.strip().split("\\s+");
            boolean number = words.length >= 3 && words[words.length - 1].matches("-?\\d{1,6}(\\.\\d{1,4})?");
            if (!number) {
                form.complain("scores", "“" + line.strip() + "” is not understood. Type what was tested, the measure and the "
                        + "figure, for example: reading percentile 41");
                continue;
            }
            String area = String.join("-", List.of(words).subList(0, words.length - 2)).toLowerCase(java.util.Locale.ROOT);
            scores.add(new Score(area, words[words.length - 2].toLowerCase(java.util.Locale.ROOT), new BigDecimal(words[words.length - 1])));
        }
        return List.copyOf(scores);
    }

    @Override
    List<String> students(TestTaken test) {
        return List.of(test.student());
    }

    @Override
    String title(TestTaken test, Offered offered) {
        return org.hearthrule.terms.Prose.upperFirst(test.label());
    }

    @Override
    List<String> words(TestTaken test, Offered offered) {
        List<String> words = new ArrayList<>();
        words.add(Offered.plain(test.method()) + ", " + when(test.date())
                + (test.givenBy() == null ? "." : ", given by " + offered.person(test.givenBy()) + '.'));
        if (!test.scores().isEmpty()) {
            words.add(test.scores().stream().map(s -> Offered.plain(s.area()) + ": " + s.measure() + ' ' + s.value().toPlainString())
                    .collect(Collectors.joining("; ")) + '.');
        }
        return words;
    }

    @Override
    String scan(TestTaken test) {
        return test.file();
    }
}
