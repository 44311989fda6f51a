package org.hearthrule.input;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FieldsTest {

    private enum Kind {
        LOG,
        WORK_SAMPLE,
        NO
    }

    private final Problems problems = new Problems();

    // keys

    @Test
    void missingKeyIsReportedAtTheMapping() {
        yaml("a: x\n").text("due");

        assertThat(message())
                .isEqualTo("f:1:1: error: [MISSING-KEY] found no `due` in the duty, expected text for `due`.");
    }

    @Test
    void unknownKeyNamesTheNearestAndAllThatAreKnown() {
        // given
        Fields fields = yaml("name: x\ndues: y\n");
        fields.text("name");
        fields.optionalText("due");

        // when
        fields.done();

        // then
        assertThat(message())
                .isEqualTo("f:2:1: error: [UNKNOWN-KEY] found unknown key `dues` in the duty,"
                        + " expected one of `name` or `due`. Perhaps you meant `due`.");
    }

    @Test
    void nothingIsUnknownWhenEveryKeyWasAskedFor() {
        Fields fields = yaml("a: x\nb: y\n");
        fields.text("a");
        fields.has("b");

        fields.done();

        assertThat(problems.isEmpty()).isTrue();
    }

    @Test
    void hasTellsWhetherAKeyIsThere() {
        assertThat(yaml("a: x\n").has("a")).isTrue();
        assertThat(yaml("a: x\n").has("b")).isFalse();
    }

    @Test
    void placeOfAKeyIsThatOfItsValueOrOfTheMapping() {
        assertThat(yaml("a: x\n").place("a")).isEqualTo(new Place("f", 1, 4));
        assertThat(yaml("a: x\n").place("b")).isEqualTo(new Place("f", 1, 1));
    }

    @Test
    void entriesCountAsAskedForAndTheirKeysAreChecked() {
        Fields fields = yaml("010: x\nb: y\n");

        assertThat(fields.entries()).hasSize(2);
        fields.done();

        assertThat(message())
                .isEqualTo("f:1:1: error: [UNQUOTED] found unquoted 010, expected text in quotes."
                        + " Perhaps write \"010\".");
    }

    @Test
    void whatIsNoMappingIsReportedOnceAndNotForEachKey() {
        Fields fields = yaml("- x\n");

        fields.text("a");
        fields.date("b");
        fields.done();

        assertThat(fields.isMapping()).isFalse();
        assertThat(message())
                .isEqualTo("f:1:1: error: [NOT-A-MAPPING] found a list, expected keys with values for the duty.");
    }

    // text

    /** The plain forms of the YAML 1.1 type repository (bool, null, int, float, timestamp, merge, value). */
    @ParameterizedTest
    @ValueSource(strings = {
        "y", "Y", "yes", "Yes", "YES", "n", "N", "no", "No", "NO", "true", "True", "TRUE", "false", "False", "FALSE",
        "on", "On", "ON", "off", "Off", "OFF", "~", "null", "Null", "NULL", "685230", "+685_230", "02472256",
        "0x_0A_74_AE", "0b1010_0111_0100_1010_1110", "190:20:30", "6.8523015e+5", "685.230_15e+03", "685_230.15",
        "190:20:30.15", "-.inf", ".inf", ".NaN", "2001-12-15T02:59:43.1Z", "2001-12-14t21:59:43.10-05:00",
        "2001-12-14 21:59:43.10 -5", "2001-12-15 2:59:43.10", "2002-12-14", "=", "<<"
    })
    void plainTextThatYaml11ReadsAsAnotherTypeMustBeQuoted(String text) {
        yaml("a: " + text + "\n").text("a");

        assertThat(message())
                .isEqualTo("f:1:4: error: [UNQUOTED] found unquoted " + text
                        + ", expected text in quotes. Perhaps write \"" + text + "\".");
    }

    /** The examples of the YAML 1.2 core schema that YAML 1.1 does not have, and section numbers and times. */
    @ParameterizedTest
    @ValueSource(strings = {"0o14", "1e3", "-2E+05", "0.", "-0.0", "167.010", "012", "12:30", "0x1F", "_1", "2026-1-2"})
    void plainTextThatLooksLikeANumberMustBeQuoted(String text) {
        yaml("a: " + text + "\n").text("a");

        assertThat(codes()).containsExactly("UNQUOTED");
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "x", "yes!", "nO", "none", "true or false", "8-10 hours", "3 R's", "0xyz", "-", "1e", "2026-01", "2026-01-02x",
        "2026-01-02 to 2026-01-03", "+", "e3", "._", "167.010 RSMo", "12th", "0b2", "0o8"
    })
    void otherPlainTextNeedsNoQuotes(String text) {
        Node root = new Mapping(new Place("f", 1, 1), List.of(new Mapping.Entry(plain("a"), plain(text))));

        assertThat(Fields.of(root, problems, "the duty").text("a")).isEqualTo(text);
        assertThat(problems.isEmpty()).isTrue();
    }

    @Test
    void quotedTextIsTakenAsItStands() {
        assertThat(yaml("a: \"167.010\"\n").text("a")).isEqualTo("167.010");
        assertThat(problems.isEmpty()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"{\"a\": 12},the number 12,write \"12\"", "{\"a\": true},true,write \"true\"",
        "{\"a\": null},null,leave the key out", "{\"a\": []},a list,", "{\"a\": {}},keys with values,"})
    void whatIsNoTextInJsonIsRefused(String content, String found, String perhaps) {
        assertThat(json(content).text("a")).isNull();
        assertThat(problems.all())
                .extracting(Problem::code, Problem::found, Problem::perhaps)
                .containsExactly(tuple("NOT-TEXT", found, perhaps));
    }

    @ParameterizedTest
    @CsvSource({"'a:',nothing", "'a: \"\"',nothing", "'a: \"  \"',only space", "'a: \"\\_\"',only space"})
    void blankTextIsRefused(String content, String found) {
        assertThat(yaml(content).text("a")).isNull();
        assertThat(message()).startsWith("f:1:").endsWith("[BLANK] found " + found + ", expected text.");
    }

    @Test
    void textOfFourThousandCharactersIsRead() {
        assertThat(yaml("a: " + "x".repeat(4000)).text("a")).hasSize(4000);
        assertThat(problems.isEmpty()).isTrue();
    }

    @Test
    void longerTextIsRefused() {
        yaml("a: " + "x".repeat(4001)).text("a");

        assertThat(message())
                .endsWith("[TOO-LONG] found text of 4001 characters, expected at most 4000 characters.");
    }

    @Test
    void textMayHaveALimitOfItsOwn() {
        yaml("a: abcd\n").text("a", 3);

        assertThat(codes()).containsExactly("TOO-LONG");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0000", "0009", "001B", "007F", "0085", "200E", "200F", "202A", "202E", "2066", "2069", "D800",
        "DC00"})
    void hiddenCharacterIsRefused(String code) {
        json("{\"a\": \"x\\u" + code + "y\"}").text("a");

        assertThat(message())
                .isEqualTo("f:1:7: error: [HIDDEN-CHARACTER] found the hidden character U+" + code
                        + ", expected characters that can be seen."
                        + " Perhaps delete it; it may have come along with copied text.");
    }

    @Test
    void lineEndsAccentsAndEmojiAreText() {
        assertThat(json("{\"a\": \"Zoë\\n😀\"}").text("a")).isEqualTo("Zoë\n😀");
        assertThat(problems.isEmpty()).isTrue();
    }

    @Test
    void missingOptionalTextIsEmpty() {
        assertThat(yaml("b: x\n").optionalText("a")).isEmpty();
        assertThat(problems.isEmpty()).isTrue();
    }

    @Test
    void textsAreAListOrASingleText() {
        assertThat(yaml("a: [x, z]\n").texts("a")).containsExactly("x", "z");
        assertThat(yaml("a: x\n").texts("a")).containsExactly("x");
        assertThat(yaml("b: x\n").texts("a")).isEmpty();
    }

    @Test
    void everyWrongItemOfTextsIsReported() {
        assertThat(yaml("a: [no, x, 12]\n").texts("a")).containsExactly("x");
        assertThat(codes()).containsExactly("UNQUOTED", "UNQUOTED");
    }

    // dates

    @Test
    void readsADate() {
        assertThat(yaml("a: \"2028-02-29\"\n").date("a")).isEqualTo(LocalDate.of(2028, 2, 29));
        assertThat(problems.isEmpty()).isTrue();
    }

    @Test
    void plainDateMustBeQuoted() {
        assertThat(yaml("a: 2026-01-02\n").optionalDate("a")).isEmpty();
        assertThat(message())
                .isEqualTo("f:1:4: error: [UNQUOTED] found unquoted 2026-01-02, expected text in quotes."
                        + " Perhaps write \"2026-01-02\".");
    }

    /** ISO 8601 and RFC 3339 know only the first form, and only days that exist. */
    @ParameterizedTest
    @CsvSource({
        "2026-02-30,'the last day of that month, 2026-02-28'",
        "2026-06-31,'the last day of that month, 2026-06-30'",
        "2026-13-01,", "2026-01-00,", "2026-01-32,", "2026-00-10,",
        "2026-2-3,write \"2026-02-03\"",
        "2026/02/03,write \"2026-02-03\"",
        "02/03/2026,",
        "02/02/2026,write \"2026-02-02\"",
        "02/13/2026,write \"2026-02-13\"",
        "13/02/2026,write \"2026-02-13\"",
        "13.2.2026,write \"2026-02-13\"",
        "13/13/2026,", "02/13/26,", "2026-02/03,", "2026-2-30,", "20260203,", "2026-02-03T00:00,", "+2026-02-03,",
        "٢٠٢٦-٠٢-٠٣,", "soon,", "--,", "2026-2-,"
    })
    void wrongDateIsRefusedAndGuessedOnlyWhenClear(String text, String perhaps) {
        assertThat(yaml("a: \"" + text + "\"\n").date("a")).isNull();
        assertThat(message())
                .isEqualTo("f:1:4: error: [WRONG-DATE] found \"" + text + "\", expected a date such as \"2026-09-01\"."
                        + (perhaps == null ? "" : " Perhaps " + perhaps + "."));
    }

    @Test
    void readsAMonthAndDay() {
        assertThat(yaml("a: \"12-31\"\n").monthDay("a")).isEqualTo(MonthDay.of(12, 31));
    }

    @Test
    void plainMonthAndDayMustBeQuoted() {
        yaml("a: 07-01\n").monthDay("a");

        assertThat(codes()).containsExactly("UNQUOTED");
    }

    @Test
    void leapDayIsReadWhereItIsAllowed() {
        assertThat(yaml("a: \"02-29\"\n").monthDay("a", true)).isEqualTo(MonthDay.of(2, 29));
    }

    @ParameterizedTest
    @CsvSource({
        "02-29,'use \"02-28\", which every year has'", "02-30,'the last day of that month, \"02-29\"'",
        "04-31,'the last day of that month, \"04-30\"'", "7-1,write \"07-01\"", "07/01,", "13-01,", "00-10,", "01-00,"
    })
    void wrongMonthAndDayIsRefused(String text, String perhaps) {
        assertThat(yaml("a: \"" + text + "\"\n").optionalMonthDay("a")).isEmpty();
        assertThat(message())
                .isEqualTo("f:1:4: error: [WRONG-MONTH-DAY] found \"" + text
                        + "\", expected a month and day such as \"09-01\"."
                        + (perhaps == null ? "" : " Perhaps " + perhaps + "."));
    }

    // numbers

    @ParameterizedTest
    @CsvSource({"0,0", "7,7", "180,180"})
    void readsAWholeNumber(String text, int number) {
        assertThat(yaml("a: " + text + "\n").integer("a", 0, 180)).isEqualTo(number);
        assertThat(problems.isEmpty()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"012,write 12", "1_000,write 1000", "+5,write 5", "-5,", "1.5,", "1e3,", "0x1F,", "many,", "٣,"})
    void numberInAnotherFormIsRefused(String text, String perhaps) {
        assertThat(yaml("a: " + text + "\n").optionalInteger("a", -9, 2000)).isEmpty();
        assertThat(message())
                .isEqualTo("f:1:4: error: [NOT-AN-INTEGER] found " + text
                        + ", expected a whole number in plain digits."
                        + (perhaps == null ? "" : " Perhaps " + perhaps + "."));
    }

    @Test
    void quotedNumberIsRefused() {
        yaml("a: \"5\"\n").integer("a", 0, 9);

        assertThat(message()).endsWith("found \"5\", expected a whole number in plain digits. Perhaps write 5.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "11", "2147483648", "99999999999999999999"})
    void numberOutOfRangeIsRefused(String text) {
        assertThat(yaml("a: " + text + "\n").integer("a", 1, 10)).isEqualTo(1);
        assertThat(message())
                .isEqualTo("f:1:4: error: [OUT-OF-RANGE] found " + text + ", expected a number from 1 to 10.");
    }

    @Test
    void negativeJsonNumberIsRead() {
        assertThat(json("{\"a\": -5}").integer("a", -9, 9)).isEqualTo(-5);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1.0", "1e1", "\"1\"", "true", "null", "-0.0"})
    void jsonValueThatIsNoWholeNumberIsRefused(String value) {
        json("{\"a\": " + value + "}").integer("a", 0, 9);

        assertThat(codes()).containsExactly("NOT-AN-INTEGER");
    }

    // yes or no

    @Test
    void readsYesAndNoInYaml() {
        assertThat(yaml("a: yes\n").yesNo("a")).isTrue();
        assertThat(yaml("a: no\n").optionalYesNo("a")).contains(false);
        assertThat(problems.isEmpty()).isTrue();
    }

    @Test
    void readsTrueAndFalseInJson() {
        assertThat(json("{\"a\": true}").yesNo("a")).isTrue();
        assertThat(json("{\"a\": false}").optionalYesNo("a")).contains(false);
    }

    @ParameterizedTest
    @CsvSource({"true,write yes", "NO,write no", "Yes,write yes", "off,write no", "1,", "maybe,", "'\"yes\"',write yes",
        "'\"true\"',write true (in JSON) or yes (in YAML)"})
    void otherWordsForYesOrNoAreRefused(String value, String perhaps) {
        assertThat(yaml("a: " + value + "\n").yesNo("a")).isFalse();
        assertThat(message())
                .isEqualTo("f:1:4: error: [NOT-YES-OR-NO] found " + value + ", expected yes or no, without quotes."
                        + (perhaps == null ? "" : " Perhaps " + perhaps + "."));
    }

    // one of a few words

    @Test
    void readsAConstantInKebabCase() {
        assertThat(yaml("a: work-sample\n").oneOf("a", Kind.class)).isEqualTo(Kind.WORK_SAMPLE);
        assertThat(json("{\"a\": \"log\"}").optionalOneOf("a", Kind.class)).contains(Kind.LOG);
        assertThat(problems.isEmpty()).isTrue();
    }

    @Test
    void unknownConstantNamesTheNearestAndAll() {
        assertThat(yaml("a: work_sample\n").oneOf("a", Kind.class)).isNull();
        assertThat(message())
                .isEqualTo("f:1:4: error: [UNKNOWN-VALUE] found work_sample, expected one of log, work-sample or no."
                        + " Perhaps you meant work-sample.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"LOG", "Log", "logs"})
    void constantIsMatchedExactly(String word) {
        assertThat(yaml("a: " + word + "\n").oneOf("a", Kind.class)).isNull();
        assertThat(codes()).containsExactly("UNKNOWN-VALUE");
    }

    @Test
    void constantThatYaml11ReadsAsABooleanMustBeQuoted() {
        yaml("a: no\n").oneOf("a", Kind.class);

        assertThat(codes()).containsExactly("UNQUOTED");
    }

    @Test
    void readsOneOfGivenWords() {
        assertThat(yaml("a: MO\n").oneOf("a", List.of("MO", "TX"))).isEqualTo("MO");
    }

    @Test
    void moreThanTwelveWordsAreOnlyCounted() {
        List<String> words = List.of("a", "b", "c", "d", "e", "f", "g", "h", "i", "j", "k", "l", "m");

        yaml("a: xyz\n").oneOf("a", words);

        assertThat(message()).endsWith("[UNKNOWN-VALUE] found xyz, expected one of 13 known words.");
    }

    // mappings and lists

    @Test
    void missingMappingGivesFieldsThatReportNothingMore() {
        Fields child = yaml("b: x\n").fields("a", "the child");

        child.text("name");
        child.done();

        assertThat(message())
                .isEqualTo("f:1:1: error: [MISSING-KEY] found no `a` in the duty, expected keys with values for `a`.");
    }

    @Test
    void problemsInAChildNameTheChild() {
        yaml("a: {b: x}\n").fields("a", "the child").text("name");

        assertThat(message())
                .isEqualTo("f:1:4: error: [MISSING-KEY] found no `name` in the child, expected text for `name`.");
    }

    @Test
    void optionalMappingThatIsNoneIsEmptyAndReported() {
        assertThat(yaml("a: x\n").optionalFields("a", "the child")).isEmpty();
        assertThat(codes()).containsExactly("NOT-A-MAPPING");
    }

    @Test
    void listKeepsItsMappingsAndReportsTheOthers() {
        List<Fields> list = yaml("a:\n  - b: x\n  - y\n  - b: z\n").listOfFields("a", "the child");

        assertThat(list).extracting(fields -> fields.text("b")).containsExactly("x", "z");
        assertThat(message())
                .isEqualTo("f:3:5: error: [NOT-A-MAPPING] found y, expected keys with values for the child.");
    }

    @Test
    void missingListIsEmpty() {
        assertThat(yaml("b: x\n").listOfFields("a", "the child")).isEmpty();
        assertThat(problems.isEmpty()).isTrue();
    }

    @Test
    void singleMappingIsNoList() {
        yaml("a: {b: x}\n").listOfFields("a", "the child");

        assertThat(message())
                .isEqualTo("f:1:4: error: [NOT-A-LIST] found keys with values, expected a list."
                        + " Perhaps each item needs `- ` before it.");
    }

    @Test
    void everyProblemOfAFileIsReportedAtOnce() {
        // given
        Fields fields = yaml("day: 2026-01-02\nhours: many\nkind: lgo\nextra: x\n");

        // when
        fields.date("day");
        fields.integer("hours", 0, 24);
        fields.oneOf("kind", Kind.class);
        fields.text("name");
        fields.done();

        // then
        assertThat(codes())
                .containsExactly("MISSING-KEY", "UNQUOTED", "NOT-AN-INTEGER", "UNKNOWN-VALUE", "UNKNOWN-KEY");
    }

    private Fields yaml(String content) {
        return Fields.of(YamlText.read("f", content, problems).orElseThrow(), problems, "the duty");
    }

    private Fields json(String content) {
        return Fields.of(JsonText.read("f", content, problems).orElseThrow(), problems, "the duty");
    }

    private static Scalar plain(String text) {
        return new Scalar(new Place("f", 1, 1), text, Scalar.Form.PLAIN);
    }

    /** The first line of the only problem. */
    private String message() {
        assertThat(problems.all()).hasSize(1);
        return problems.all().get(0).toText().lines().findFirst().orElseThrow();
    }

    private List<String> codes() {
        return problems.all().stream().map(Problem::code).toList();
    }
}
