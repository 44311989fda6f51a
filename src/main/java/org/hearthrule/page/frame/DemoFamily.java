package org.hearthrule.page.frame;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * The invented family that comes with the program. It lies in a place of its own, marked by a file, and nothing without
 * that mark is ever thrown away.
 */
final class DemoFamily {

    /** The day its book is looked at: shortly before the evaluation. */
    static final LocalDate DAY = LocalDate.of(2026, 5, 20);

    private static final String MARK = "this-is-the-demo.txt";
    private static final String RESOURCES = "demo/";

    private DemoFamily() { }

    static void layOut(Path folder) throws IOException {
        if (Files.exists(folder)) {
            if (!Files.isRegularFile(folder.resolve(MARK)) && !isEmpty(folder)) {
                throw new IOException("the place of the demo family holds something else");
            }
            clear(folder);
        }
        Files.createDirectories(folder);
        Files.writeString(folder.resolve(MARK), "An invented family, to try things out. Nothing here is kept for long.\n");
        for (String name : names()) {
            Path target = folder.resolve(name);
            Files.createDirectories(target.getParent());
            try (InputStream in = open(name)) {
                Files.copy(in, target);
            }
        }
    }

    private static List<String> names() throws IOException {
        try (InputStream in = open("files.txt")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().filter(line -> !line.isBlank()).toList();
        }
    }

    private static InputStream open(String name) throws IOException {
        InputStream in = DemoFamily.class.getClassLoader().getResourceAsStream(RESOURCES + name);
        if (in == null) {
            throw new IOException("the demo family is not in this program");
        }
        return in;
    }

    private static boolean isEmpty(Path folder) throws IOException {
        try (Stream<Path> inside = Files.list(folder)) {
            return inside.findAny().isEmpty();
        }
    }

    private static void clear(Path folder) throws IOException {
        try (Stream<Path> inside = Files.walk(folder)) {
            for (Path path : inside.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
