package org.hearthrule.pictures;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthrule.records.Hash;

/** The files that lie in a book, by their length: only those of the same length need to be read to find the same. */
final class StoredBefore {

    private final Path folder;
    private final Map<Long, List<Path>> byLength = new HashMap<>();

    private StoredBefore(Path folder) {
        this.folder = folder;
    }

    static StoredBefore in(Path folder) throws IOException {
        StoredBefore before = new StoredBefore(folder);
        walk(folder, before::add);
        return before;
    }

    void add(long bytes, Path file) {
        byLength.computeIfAbsent(bytes, length -> new ArrayList<>()).add(file);
    }

    /** Returns the path within the book of a file with this content. */
    Optional<String> find(long bytes, Hash hash) throws IOException {
        for (Path file : byLength.getOrDefault(bytes, List.of())) {
            if (Hash.of(file).equals(hash)) {
                return Optional.of(InsideBook.path(folder, file));
            }
        }
        return Optional.empty();
    }

    /** Shows every file below a folder that is not hidden and in no hidden folder; follows no links. */
    static void walk(Path folder, Found found) throws IOException {
        Files.walkFileTree(folder, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path each, BasicFileAttributes attributes) {
                return isHidden(each) && !each.equals(folder) ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFile(Path each, BasicFileAttributes attributes) {
                if (attributes.isRegularFile() && !isHidden(each)) {
                    found.file(attributes.size(), each);
                }
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFileFailed(Path each, IOException e) {
                return FileVisitResult.CONTINUE; // what cannot be read is none of ours
            }
        });
    }

    private static boolean isHidden(Path path) {
        return path.getFileName() != null && path.getFileName().toString().startsWith(".");
    }

    /** Takes each file with its length in bytes. */
    interface Found {
        void file(long bytes, Path file);
    }
}
