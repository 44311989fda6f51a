package org.hearthrule.terms;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WordingTest {

    private static final LocalDate TODAY = LocalDate.of(2027, 6, 18);

    private final Wording wording = Wording.english();

    @Test
    void fillsArgumentsByNumberAndByName() {
        assertThat(wording.say("checklist.follows", "Ada", "Example", "home instruction"))
                .isEqualTo("Ada: Example, home instruction");
        assertThat(wording.say("line.confirm", Map.of("0", "the office"))).isEqualTo("Confirm with the office.");
    }

    @Test
    void refusesAMissingKeyOrArgument() {
        assertThatThrownBy(() -> wording.say("no.such.key")).hasMessageContaining("no.such.key");
        assertThatThrownBy(() -> wording.say("line.confirm")).hasMessageContaining("{0}");
    }

    @Test
    void writesDatesInWords() {
        assertThat(wording.date(LocalDate.of(2027, 6, 30))).isEqualTo("June 30, 2027");
        assertThat(wording.date(MonthDay.of(2, 29))).isEqualTo("February 29");
    }

    @ParameterizedTest
    @CsvSource({"2027-06-18,today", "2027-06-19,tomorrow", "2027-06-17,yesterday", "2027-06-30,in 12 days",
        "2027-06-15,3 days ago", "2027-09-16,in 90 days", "2027-12-18,in 6 months", "2026-08-15,10 months ago",
        "2029-06-18,in 2 years", "2024-06-18,3 years ago"})
    void tellsHowFarADayIs(LocalDate day, String words) {
        assertThat(wording.distance(day, TODAY)).isEqualTo(words);
    }

    @Test
    void joinsListsAsEnglishDoes() {
        assertThat(wording.and(List.of())).isEmpty();
        assertThat(wording.and(List.of("reading"))).isEqualTo("reading");
        assertThat(wording.and(List.of("reading", "writing", "spelling"))).isEqualTo("reading, writing and spelling");
        assertThat(wording.or(List.of("days", "hours"))).isEqualTo("days or hours");
    }

    @Test
    void countsWithOneFormForOneAndAnotherForAllOthers() {
        assertThat(wording.count("span.days", 1)).isEqualTo("1 day");
        assertThat(wording.count("span.days", 0)).isEqualTo("0 days");
        assertThat(wording.count("span.days", 6480)).isEqualTo("6,480 days");
    }

    /** A sentence whose key is mistyped would only be missed when a parent first meets it. */
    @Test
    void everySentenceThatTheCodeAsksForIsThere() throws IOException {
        Set<String> missing = new TreeSet<>();
        Set<String> keys = wording.keys();
        for (String asked : askedFor()) {
            boolean known = keys.contains(asked) || keys.contains(asked + ".one")
                    || asked.endsWith(".") && keys.stream().anyMatch(key -> key.startsWith(asked))
                    || keys.stream().anyMatch(key -> key.startsWith(asked + "."));
            if (!known) {
                missing.add(asked);
            }
        }
        assertThat(missing).isEmpty();
    }

    /** A sentence that nothing asks for grows stale unseen. */
    @Test
    void everySentenceIsAskedFor() throws IOException {
        Set<String> asked = askedFor();
        Set<String> idle = new TreeSet<>();
        for (String key : wording.keys()) {
            boolean used = asked.stream().anyMatch(one -> key.equals(one) || key.startsWith(one + ".")
                    || one.endsWith(".") && key.startsWith(one));
            if (!used) {
                idle.add(key);
            }
        }
        assertThat(idle).isEmpty();
    }

    private static Set<String> askedFor() throws IOException {
        Pattern literal = Pattern.compile("\"([a-z]+(?:\\.[a-z0-9-]+)*\\.?)\"");
        Set<String> asked = new TreeSet<>();
        for (String name : List.of("terms", "pictures", "tables", "checklist", "cli")) {
            try (Stream<Path> files = Files.walk(Path.of("src/main/java/org/hearthrule", name))) {
                for (Path file : files.filter(path -> path.toString().endsWith(".java")).toList()) {
                    Matcher found = literal.matcher(Files.readString(file));
                    while (found.find()) {
                        String key = found.group(1);
                        boolean first = SENTENCE_GROUPS.contains(key.split("\\.")[0]);
                        if (first && key.contains(".") || key.equals("caution") || key.equals("date")
                                || key.equals("problems") || key.equals("mishap")) {
                            asked.add(key);
                        }
                    }
                }
            }
        }
        return asked;
    }

    private static final Set<String> SENTENCE_GROUPS = Set.of("open", "date", "month", "distance", "list", "caution", "status",
            "section", "checklist", "line", "register", "compare", "calendar", "due", "period", "span", "if", "evidence", "law", "explain",
            "deadlines", "problems", "usage", "mishap", "lint", "ready", "new", "import", "restore", "copy", "export", "picture");
}
