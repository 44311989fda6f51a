package org.hearthrule.records;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.hearthrule.input.JsonText;
import org.hearthrule.input.Node;
import org.hearthrule.input.Problems;
import org.hearthrule.input.Severity;

/**
 * Reads a record book: {@code family.json} and every {@code uuuu-yy.json} beside it; other files and folders do not
 * matter.
 *
 * <p>Every problem is recorded at its place, all at once. Besides those of {@link org.hearthrule.input.JsonText} and
 * {@link org.hearthrule.input.Fields} these are: {@code NOT-A-FOLDER}, {@code NO-FAMILY-FILE}, {@code BAD-FILE-NAME},
 * {@code NEWER-VERSION}, {@code WRONG-ID}, {@code REPEATED-ID}, {@code REPEATED-VALUE}, {@code UNKNOWN-STUDENT},
 * {@code UNKNOWN-PERSON}, {@code UNKNOWN-SUBJECT}, {@code NO-STUDENT}, {@code WRONG-GRADE}, {@code WRONG-YEAR},
 * {@code WRONG-TIME}, {@code NOT-A-NUMBER}, {@code NOT-TRUE-OR-FALSE}, {@code BACKWARDS}, {@code OVERLAP},
 * {@code TWO-CHOICES}, {@code PATH-OUTSIDE}; and, as warnings, {@code OUTSIDE-YEAR} and {@code SECOND-VERSION}.
 * Whether a jurisdiction or a pathway exists is not looked at here.
 */
public final class BookReader {

    private final BookSource source;
    private final Problems problems;

    private BookReader(BookSource source, Problems problems) {
        this.source = source;
        this.problems = problems;
    }

    /**
     * Reads a book from a folder. Never throws for what lies there.
     *
     * @param folder   as the reader knows it: names of files in problems begin with it
     * @param problems takes every problem
     * @return the book, or empty when there was an error
     */
    public static Optional<Book> read(Path folder, Problems problems) {
        return FolderSource.open(folder, problems)
                .flatMap(source -> new BookReader(source, problems).read())
                .map(book -> inFolder(book, folder));
    }

    /**
     * Reads a book from a folder and remembers what its files contained, for {@link BookWriter}.
     *
     * @param folder   as the reader knows it: names of files in problems begin with it
     * @param problems takes every problem
     * @return the book with hashes, or empty when there was an error
     */
    public static Optional<Snapshot> snapshot(Path folder, Problems problems) {
        Map<String, Hash> hashes = new HashMap<>();
        return FolderSource.open(folder, problems)
                .map(source -> source.hashing(hashes))
                .flatMap(source -> new BookReader(source, problems).read())
                .map(book -> new Snapshot(inFolder(book, folder), hashes));
    }

    /**
     * Reads a book from texts.
     *
     * @param files    text by name of file
     * @param problems takes every problem
     * @return the book, whose folder is null; or empty when there was an error
     */
    public static Optional<Book> read(Map<String, String> files, Problems problems) {
        return new BookReader(new TextSource(new TreeMap<>(files)), problems).read();
    }

    static Book inFolder(Book book, Path folder) {
        return new Book(folder, book.familyName(), book.students(), book.persons(), book.placements(), book.events(),
                book.facts(), book.answers(), book.years());
    }

    private Optional<Book> read() {
        // the caller's collection may hold errors of other files, which are not ours
        long before = errors();
        Names names = new Names();
        List<YearLabel> labels = BookNames.check(source, problems);
        Optional<Book> family = Optional.empty();
        if (source.names().contains(BookNames.FAMILY)) {
            Optional<Node> tree = source.read(BookNames.FAMILY, problems);
            family = tree.flatMap(node -> new FamilyReader(names, problems).read(node));
            if (tree.isPresent() && family.isEmpty()) {
                return Optional.empty();
            }
        }
        if (family.isEmpty()) {
            names.isIncomplete();
        }
        SortedMap<String, YearRecords> years = new TreeMap<>();
        for (YearLabel label : labels) {
            Optional<Node> tree = source.read(label.fileName(), problems);
            Optional<YearRecords> year = tree.flatMap(node -> new YearReader(label, names, problems).read(node));
            if (tree.isPresent() && year.isEmpty()) {
                break; // a newer version wrote it, which one problem says well enough
            }
            year.ifPresent(read -> years.put(read.label(), read));
        }
        return errors() > before ? Optional.empty() : family.map(book -> new Book(null, book.familyName(),
                book.students(), book.persons(), book.placements(), book.events(), book.facts(), book.answers(),
                Collections.unmodifiableSortedMap(years)));
    }

    private long errors() {
        return problems.hasErrors()
                ? problems.all().stream().filter(problem -> problem.severity() == Severity.ERROR).count()
                : 0;
    }

    /** A book in memory. */
    private record TextSource(SortedMap<String, String> files) implements BookSource {
        @Override
        public List<String> names() {
            return new ArrayList<>(files.keySet());
        }

        @Override
        public String shown(String name) {
            return name;
        }

        @Override
        public Optional<Node> read(String name, Problems problems) {
            return JsonText.read(name, files.get(name), problems);
        }
    }
}
