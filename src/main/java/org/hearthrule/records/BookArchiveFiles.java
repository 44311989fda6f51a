package org.hearthrule.records;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.hearthrule.input.BadInputException;
import org.hearthrule.input.Place;
import org.hearthrule.input.Problems;

/**
 * The files that go into a copy of a book, found at one moment. Those that are records are read right away, since they
 * change together; others are only listed.
 *
 * @param folder  of the book
 * @param records content by path
 * @param others  paths, sorted
 * @param leftOut paths that cannot go into a copy, sorted
 */
record BookArchiveFiles(Path folder, SortedMap<String, byte[]> records, List<String> others, List<String> leftOut) {

    /** Finds them; to be called while nobody writes. */
    static BookArchiveFiles of(Path folder, BookArchiveLimits limits) throws IOException, BadInputException {
        SortedMap<String, byte[]> records = new TreeMap<>();
        List<String> others = new ArrayList<>();
        List<String> leftOut = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        long all = 0;
        for (String path : sortedPaths(folder)) {
            Path file = folder.resolve(path);
            // a record may be a link to where the family's own drive keeps it; anything else only within the book
            boolean record = BookNames.isPart(path) && Files.isRegularFile(file);
            boolean fits = (record || isInside(folder, file)) && BookArchivePath.fault(path) == null
                    && Files.size(file) <= limits.file() && seen.add(BookArchivePath.folded(path));
            if (!fits) {
                leftOut.add(path);
                continue;
            }
            all += Files.size(file);
            if (record) {
                records.put(path, Files.readAllBytes(file));
            } else {
                others.add(path);
            }
        }
        refuseTooMuch(folder, records.size() + others.size(), all, limits);
        return new BookArchiveFiles(folder, records, others, leftOut);
    }

    private static void refuseTooMuch(Path folder, int files, long bytes, BookArchiveLimits limits) throws BadInputException {
        Problems problems = new Problems();
        if (files > limits.files() || bytes > limits.all()) {
            problems.error(new Place(folder.toString(), 1, 1), "TOO-LARGE", files + " files of " + bytes + " bytes together",
                    "at most " + limits.files() + " files of " + limits.all() + " bytes together",
                    "the folder holds other things besides the book");
        }
        problems.throwIfErrors();
    }

    /** Returns the paths of all files and links that are not hidden. */
    private static List<String> sortedPaths(Path folder) throws IOException {
        List<String> paths = new ArrayList<>();
        Files.walkFileTree(folder, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path each, BasicFileAttributes attributes) {
                return !each.equals(folder) && isHidden(each) ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFile(Path each, BasicFileAttributes attributes) {
                if (!isHidden(each)) {
                    paths.add(folder.relativize(each).toString().replace(each.getFileSystem().getSeparator(), "/"));
                }
                return FileVisitResult.CONTINUE;
            }
        });
        paths.sort(null);
        return paths;
    }

    private static boolean isHidden(Path path) {
        return path.getFileName().toString().startsWith(".");
    }

    private static boolean isInside(Path folder, Path file) throws IOException {
        if (!Files.isRegularFile(file)) {
            return false;
        }
        Path root = folder.toRealPath();
        Path real = file.toRealPath();
        if (!real.startsWith(root)) {
            return false;
        }
        for (Path part : root.relativize(real)) {
            if (part.toString().startsWith(".")) {
                return false;
            }
        }
        return true;
    }
}
