package org.hearthrule.records;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hearthrule.input.Problem;
import org.hearthrule.input.Problems;

/** The record books below {@code test-fixtures/books}. */
final class Fixtures {

    static final Path BOOKS = Path.of("test-fixtures", "books");
    static final Path ANNOTATED = BOOKS.resolve("annotated");
    static final String EXPECTED = "expected.txt";

    private Fixtures() { }

    /** Returns the folders right below one, by name. */
    static List<Path> folders(String kind) {
        try (Stream<Path> found = Files.list(BOOKS.resolve(kind))) {
            return found.filter(Files::isDirectory).sorted().collect(Collectors.toList());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Returns every book that must be readable: the good ones and the families of the demonstration. */
    static List<Path> readable() {
        List<Path> books = new ArrayList<>(folders("good"));
        for (Path folder : folders(".")) {
            if (Files.exists(folder.resolve("family.json"))) {
                books.add(folder.normalize());
            }
        }
        return books;
    }

    /** Returns the text of each file of a book, by name. */
    static Map<String, String> texts(Path book) {
        try (Stream<Path> found = Files.list(book)) {
            Map<String, String> texts = new TreeMap<>();
            for (Path file : found.filter(Files::isRegularFile).collect(Collectors.toList())) {
                if (!file.endsWith(EXPECTED)) {
                    texts.put(file.getFileName().toString(), Files.readString(file));
                }
            }
            return texts;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String words(Problems problems) {
        return problems.all().stream().map(problem -> problem.toText() + "\n").collect(Collectors.joining());
    }

    static List<String> codes(Problems problems) {
        return problems.all().stream().map(Problem::code).collect(Collectors.toList());
    }

    /** Writes the three lines every test book begins with, then more keys. */
    static String family(String more) {
        return "{\"hearthrule\": 1, \"students\": [{\"id\": \"ada\", \"name\": \"Ada Rowe\"},"
                + " {\"id\": \"ben\", \"name\": \"Ben Rowe\"}]" + (more.isEmpty() ? "" : ", " + more) + "}";
    }

    static String year(String label, String more) {
        return "{\"hearthrule\": 1, \"year\": \"" + label + "\"" + (more.isEmpty() ? "" : ", " + more) + "}";
    }
}
