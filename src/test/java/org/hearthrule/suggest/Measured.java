package org.hearthrule.suggest;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.hearthrule.terms.Subjects;

/**
 * How well suggestions fit lines whose subjects were decided beforehand, over all pairs of a line and a subject.
 *
 * <p>A suggested subject is <em>right</em> when the line expects it. It counts <em>neither way</em> when the line
 * accepts it, and when it is the area of an expected subject, or a sister that an expected subject also shows
 * ({@code science} where {@code physics} is expected, {@code visual-art} where {@code drawing} is): that is true, but
 * says less. Everything else is <em>wrong</em>, also a subject where only its area was expected: the line did not say
 * so much.
 * An expected subject is <em>found</em> when it is suggested, or when another expected or accepted subject that shows it
 * is: whoever ticks {@code physics} has {@code science} too. A bare area finds none of its subjects.
 * Precision is right / (right + wrong), recall is found / expected.
 */
record Measured(int lines, int right, int wrong, int neither, int expected, int found, List<String> misses) {

    private static final Path FOLDER = Path.of("test-fixtures", "suggest");

    record Line(String words, Set<String> expected, Set<String> acceptable) { }

    static Measured of(List<Line> lines, Suggester suggester) {
        int right = 0;
        int wrong = 0;
        int neither = 0;
        int expected = 0;
        int found = 0;
        List<String> misses = new ArrayList<>();
        for (Line line : lines) {
            Set<String> missing = new LinkedHashSet<>(line.expected());
            List<String> unexpected = new ArrayList<>();
            for (Suggestion suggestion : suggester.of(line.words())) {
                String subject = suggestion.subject();
                if (line.expected().contains(subject)) {
                    right++;
                } else if (line.acceptable().contains(subject)
                        || line.expected().stream().anyMatch(one -> Subjects.shows(one, subject))) {
                    neither++;
                } else {
                    wrong++;
                    unexpected.add(subject + " because of " + suggestion.because());
                    continue;
                }
                missing.removeIf(one -> Subjects.shows(subject, one));
            }
            expected += line.expected().size();
            found += line.expected().size() - missing.size();
            if (!missing.isEmpty() || !unexpected.isEmpty()) {
                misses.add(line.words() + "\n    missing " + missing + ", wrong " + unexpected);
            }
        }
        return new Measured(lines.size(), right, wrong, neither, expected, found, misses);
    }

    double precision() {
        return (double) right / (right + wrong);
    }

    double recall() {
        return (double) found / expected;
    }

    String figures() {
        return String.format(Locale.ROOT, "%d lines: precision %.3f (%d right, %d wrong, %d neither), recall %.3f (%d of %d)",
                lines, precision(), right, wrong, neither, recall(), found, expected);
    }

    static List<Line> read(String file) {
        try (CsvReader<NamedCsvRecord> rows = CsvReader.builder().commentStrategy(CommentStrategy.SKIP)
                .ofNamedCsvRecord(FOLDER.resolve(file))) {
            return rows.stream().map(row -> new Line(row.getField("words"), ids(row.getField("expected")),
                    ids(row.getField("acceptable")))).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Set<String> ids(String field) {
        return field.isEmpty() ? Set.of() : new LinkedHashSet<>(List.of(field.split(" ")));
    }
}
