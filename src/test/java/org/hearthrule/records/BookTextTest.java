package org.hearthrule.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.hearthrule.input.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BookTextTest {

    static List<Path> readable() {
        return Fixtures.readable();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("readable")
    void whatIsWrittenReadsBackEqual(Path folder) {
        // given
        Book book = read(Fixtures.texts(folder));

        // when
        Book again = read(BookText.files(book));

        // then
        assertThat(again).isEqualTo(book);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("readable")
    void sameBookGivesTheSameText(Path folder) {
        // given
        Map<String, String> texts = BookText.files(read(Fixtures.texts(folder)));

        // then
        assertThat(BookText.files(read(texts))).isEqualTo(texts);
    }

    @Test
    void familyFileIsEasyToRead() {
        // when
        String text = BookText.family(read(Fixtures.texts(Fixtures.ANNOTATED)));

        // then
        assertThat(text).isEqualTo("""
                {
                  "hearthrule": 1,
                  "family": {"name": "Example family"},
                  "students": [
                    {"id": "ada", "name": "Ada Example", "born": "2015-04-09",
                     "schools": [{"kind": "public-school", "state": "us-xx", "from": "2021-08-30", "to": "2024-06-12"}]}
                  ],
                  "persons": [
                    {"id": "mo", "name": "Mo Example", "roles": ["parent", "teacher"],
                     "credentials": [{"kind": "high-school-diploma", "state": "us-xx", "date": "2004-06-11"}]}
                  ],
                  "placements": [
                    {"student": "ada", "jurisdiction": "us-xx", "pathway": "home-instruction", "from": "2024-08-26",
                     "district": "Example Valley", "city": "Example City", "county": "Example County"}
                  ],
                  "events": [
                    {"kind": "left-school", "date": "2024-06-12", "students": ["ada"], "note": "last day of grade 3"}
                  ],
                  "facts": [
                    {"fact": "parent-has-diploma", "about": "mo", "is": true, "date": "2024-08-20"}
                  ],
                  "answers": [
                    {"doubt": "us-xx/doubts/start-in-spring", "answer": "Does not concern us.", "from": "the superintendent",
                     "date": "2024-09-02"}
                  ]
                }
                """);
    }

    /** Whoever keeps no scans finds her file as it was: not even an empty key comes in. */
    @Test
    void whatNamesNoScanIsWrittenWithoutTheKey() {
        // given
        String more = "\"tests\": [{\"student\": \"ada\", \"date\": \"2027-04-20\"}], \"evaluations\": [{\"student\": \"ada\","
                + " \"date\": \"2027-06-01\", \"method\": \"narrative\", \"file\": \"\"}], \"health\": [{\"student\": \"ada\","
                + " \"kind\": \"immunization-record\", \"date\": \"2026-07-01\", \"file\": null}]";

        // when
        String text = BookText.files(read(Map.of("family.json", Fixtures.family(""), "2026-27.json",
                Fixtures.year("2026-27", more)))).get("2026-27.json");

        // then
        assertThat(text).isEqualTo("""
                {
                  "hearthrule": 1,
                  "year": "2026-27",
                  "tests": [
                    {"id": "test-1", "student": "ada", "date": "2027-04-20", "method": "standardized-test"}
                  ],
                  "evaluations": [
                    {"id": "evaluation-1", "student": "ada", "date": "2027-06-01", "method": "narrative"}
                  ],
                  "health": [
                    {"id": "health-1", "student": "ada", "kind": "immunization-record", "date": "2026-07-01"}
                  ]
                }
                """);
    }

    @Test
    void onlyALongTextMakesALongLine() {
        // given
        String words = "long ".repeat(60).strip();
        String more = "\"log\": [{\"date\": \"2026-09-01\", \"students\": [\"ada\"], \"did\": \"" + words
                + "\", \"place\": \"home\"}]";

        // when
        String text = BookText.files(read(Map.of("family.json", Fixtures.family(""), "2026-27.json",
                Fixtures.year("2026-27", more)))).get("2026-27.json");

        // then
        assertThat(text.lines().filter(line -> line.length() > 120)).containsExactly(
                "     \"did\": \"" + words + "\",");
        assertThat(text).contains("\n    {\"id\": \"log-1\", \"date\": \"2026-09-01\", \"students\": [\"ada\"],\n")
                .endsWith("\n     \"place\": \"home\"}\n  ]\n}\n");
    }

    @Test
    void longListIsFilledLikeAParagraph() {
        // given
        StringBuilder days = new StringBuilder("\"2026-11-01\"");
        for (int day = 2; day <= 30; day++) {
            days.append(", \"2026-11-").append(day < 10 ? "0" : "").append(day).append('"');
        }

        // when
        String text = BookText.files(read(Map.of("family.json", Fixtures.family(""), "2026-27.json",
                Fixtures.year("2026-27", "\"calendar\": {\"schoolClosed\": [" + days + "]}")))).get("2026-27.json");

        // then
        assertThat(text.lines()).hasSize(9).allMatch(line -> line.length() <= 120);
    }

    private static Book read(Map<String, String> texts) {
        Problems problems = new Problems();
        Book book = BookReader.read(texts, problems).orElse(null);
        assertThat(problems.hasErrors()).as(Fixtures.words(problems)).isFalse();
        return book;
    }
}
