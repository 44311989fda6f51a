package org.hearthrule.suggest;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.hearthrule.input.Problem;
import org.hearthrule.input.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The vocabulary is read strictly: a word that could never be found is refused, not passed over in silence. */
class VocabularyReaderTest {

    private static final String GOOD = """
            small-words: [the, of, up]
            forms: {draw: [drew, drawn]}
            kept-whole: [business]
            read-as-one: [day off, spelling bee]
            strikes-what-follows: ["no"]
            strikes-all-around: [cancel]
            subjects:
              spelling:
                surely: [spelling bee]
              drawing:
                surely: [draw]
                perhaps: [pencil]
                with: [shade, copy]
            """;

    @Test
    void packagedVocabularyHasNoProblem() throws IOException {
        Problems problems = new Problems();

        VocabularyReader.read(Suggester.RESOURCE, Files.readString(Path.of(Suggester.RESOURCE)), problems);

        assertThat(problems.all()).extracting(Problem::toText).isEmpty();
    }

    @Test
    void takesEveryKeyOfTheFormat() {
        Problems problems = new Problems();
        Optional<Vocabulary> vocabulary = VocabularyReader.read("good.yaml", GOOD, problems);

        assertThat(problems.all()).isEmpty();
        Suggester suggester = new Suggester(vocabulary.orElseThrow());
        assertThat(suggester.of("drew; no drawing; day off; pencil, shaded")).containsExactly(
                new Suggestion("drawing", List.of("drew", "pencil", "shaded"), false));
        assertThat(suggester.of("drawing canceled, spelling bee")).extracting(Suggestion::subject)
                .containsExactly("spelling");
    }

    @ParameterizedTest(name = "{2}")
    @CsvSource(delimiter = '|', value = {
        "surely: [draw]        | surly: [draw]              | 11:5 UNKNOWN-KEY | you meant `surely`",
        "  drawing:            |   drawings:                | 10:3 UNKNOWN-SUBJECT | you meant `drawing`",
        "surely: [draw]        | surely: [draw, sketch, drawing] | 11:28 REPEATED-ITEM | remove one of the two",
        "surely: [draw]        | surely: [draw, copy]       | 13:19 REPEATED-ITEM | remove one of the two",
        "surely: [draw]        | surely: [draw, draw]       | 11:20 REPEATED-ITEM | remove one of the two",
        "surely: [draw]        | surely: [draw, the]        | 11:20 NO-WORD | ",
        "surely: [draw]        | surely: [draw, up of]      | 11:20 NO-WORD | ",
        "surely: [draw]        | surely: [draw, the sketch] | 11:20 SMALL-WORDS | write `sketch`, or another phrase",
        "surely: [draw]        | surely: [a b c d e]        | 11:14 TOO-MANY-WORDS | ",
        "surely: [draw]        | surely: ['ink, pen']       | 11:14 TOO-MANY-WORDS | ",
        "surely: [draw]        | surely: draw               | 11:13 NOT-A-LIST | ",
        "surely: [draw]        | surely: []                 | 11:13 EMPTY-LIST | ",
        "surely: [draw]        | surely: [no]               | 11:14 UNQUOTED | write \"no\"",
        "surely: [draw]        | surely: [draw, {a: b}]     | 11:20 NOT-TEXT | ",
        "perhaps: [pencil]     | surely2: [pencil]          | 13:11 WITH-NOTHING | ",
        "with: [shade, copy]   | surely3: [shade]           | 12:14 PERHAPS-NEVER | ",
        "[day off,             | [day, the day,             | 4:15 ONE-WORD | ",
        "[cancel]              | [cancel, call it off]      | 6:30 NOT-ONE-WORD | put the phrase under `read-as-one` too",
        "[drew, drawn]         | [drew, drawn up]           | 2:22 NOT-ONE-WORD | ",
        "{draw: [drew, drawn]} | {draw: [drew], row: [drew]} | 2:29 REPEATED-FORM | ",
        "kept-whole: [business] | kept-whole: [drew]        | 2:16 REPEATED-FORM | ",
        "subjects:             | topics:                    | 7:1 UNKNOWN-KEY | ",
    })
    void refusesWithThePlace(String good, String bad, String expected, String perhaps) {
        // given
        assertThat(GOOD).contains(good);
        Problems problems = new Problems();

        // when
        Optional<Vocabulary> vocabulary = VocabularyReader.read("bad.yaml", GOOD.replace(good, bad), problems);

        // then
        assertThat(vocabulary).isEmpty();
        assertThat(problems.all()).anySatisfy(problem -> {
            assertThat(problem.place().line() + ":" + problem.place().column() + " " + problem.code()).isEqualTo(expected);
            assertThat(problem.perhaps()).isEqualTo(perhaps);
        });
    }

    /** A volunteer mends a file once, not once for each mistake. */
    @Test
    void showsEveryProblemAtOnce() {
        Problems problems = new Problems();

        VocabularyReader.read("bad.yaml", GOOD.replace("[draw]", "[the]").replace("[pencil]", "pencil")
                .replace("spelling:", "speling:"), problems);

        assertThat(problems.all()).extracting(Problem::code)
                .contains("UNKNOWN-SUBJECT", "NO-WORD", "NOT-A-LIST", "WITH-NOTHING");
    }

    @Test
    void refusesWhatIsNoVocabulary() {
        for (String text : List.of("", "- a", "subjects: [a]", "subjects: {drawing: [a]}", "a: b: c", "subjects: {drawing: {}}")) {
            Problems problems = new Problems();
            assertThat(VocabularyReader.read("bad.yaml", text, problems)).as(text).isEmpty();
            assertThat(problems.hasErrors()).as(text).isTrue();
        }
    }
}
