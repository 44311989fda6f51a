package org.hearthrule.checklist;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.hearthrule.input.Problems;
import org.hearthrule.law.Packaged;
import org.hearthrule.law.Profile;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookReader;
import org.hearthrule.records.YearRecords;
import org.hearthrule.rules.Judge;
import org.hearthrule.terms.Wording;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * One invented family in every state's usual pathway, on three days of a school year: a change of a law's file, of the
 * rules or of a sentence shows up here as a difference to be read. Nothing has been sent and nobody tested, so every
 * duty shows; the log ends on the day it is looked at.
 *
 * <p>After a wanted change run {@code mvn -o test -Dtest=EveryStateTest -Drewrite-expected=true} and read the
 * difference: what stands in these files was read, not derived, and says no more than that nothing else has moved.
 */
class EveryStateTest {

    private static final Path FOLDER = Path.of("test-fixtures", "every-state");
    private static final List<LocalDate> DAYS =
            List.of(LocalDate.of(2026, 8, 1), LocalDate.of(2027, 1, 20), LocalDate.of(2027, 6, 10));

    static List<String> codes() {
        return Packaged.profiles().codes();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("codes")
    void checklistIsAsItWasRead(String code) throws Exception {
        Profile law = Packaged.profiles().find(code);
        StringBuilder found = new StringBuilder();
        for (LocalDate day : DAYS) {
            Book book = asItStood(book(law), day);
            Checklist checklist = Checklist.of(new Judge(List.of(law)).judge(book, day), book);
            found.append(TextWriter.write(checklist, false, Wording.english(), Style.PLAIN)).append("\n\n");
        }
        Path expected = FOLDER.resolve(law.slug() + ".txt");
        if (Boolean.getBoolean("rewrite-expected")) {
            Files.writeString(expected, found);
        }
        assertThat(found).hasToString(Files.readString(expected));
    }

    private static Book book(Profile law) throws IOException {
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> paths = Files.list(FOLDER.resolve("family"))) {
            for (Path path : paths.toList()) {
                files.put(path.getFileName().toString(), Files.readString(path)
                        .replace("\"us-xx\"", '"' + law.slug() + '"')
                        .replace("\"usual\"", '"' + law.usualPathway().slug() + '"'));
            }
        }
        Problems problems = new Problems();
        Book book = BookReader.read(files, problems).orElseThrow();
        assertThat(problems.isEmpty()).as(problems.all().toString()).isTrue();
        return book;
    }

    /** @return the book as it stood on the evening of a day, without what was written later */
    private static Book asItStood(Book book, LocalDate day) {
        SortedMap<String, YearRecords> years = new TreeMap<>();
        book.years().forEach((label, year) -> years.put(label, year.withLog(new ArrayList<>(year.log().stream()
                .filter(entry -> !entry.date().isAfter(day)).toList()))));
        return new Book(book.folder(), book.familyName(), book.students(), book.persons(), book.placements(),
                book.events(), book.facts(), book.answers(), years);
    }
}
