package org.hearthrule.records;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/**
 * Replaces many files of a book so that a program that dies on the way leaves all the old ones or all the new ones.
 *
 * <p>In the folder {@code .restoring} lie {@code new}, files in the making, and {@code old}, what made room for them. One
 * step decides: when {@code new} is renamed to {@code in}. Before it, what lies in {@code old} goes back; after it, what
 * lies in {@code in} goes on its way. Whoever takes the lock of the book next sees to that. Only while the folder is locked.
 */
final class BookArchiveSwap {

    private static final String FOLDER = ".restoring";
    private static final String ASIDE = ".copies/set-aside";

    private final Path folder;
    private final Path made;
    private final Path old;
    private final Path in;
    private final Step step;

    /** @param step runs before each thing that changes the disk */
    BookArchiveSwap(Path folder, Step step) {
        this.folder = folder;
        this.made = folder.resolve(FOLDER).resolve("new");
        this.old = folder.resolve(FOLDER).resolve("old");
        this.in = folder.resolve(FOLDER).resolve("in");
        this.step = step;
    }

    /** Returns whether the book stands between old and new, so that it must not be read before the lock was taken. */
    static boolean isPending(Path folder) {
        return Files.exists(folder.resolve(FOLDER)) && (Files.exists(folder.resolve(FOLDER).resolve("old"))
                || Files.exists(folder.resolve(FOLDER).resolve("in")));
    }

    /** Brings what was cut off to its end, or takes it back. */
    static void finish(Path folder) throws IOException {
        if (Files.exists(folder.resolve(FOLDER))) {
            new BookArchiveSwap(folder, what -> { }).finish();
        }
    }

    /** Returns where new files are to be written, at their path within the book; makes the folder they go in. */
    Path staging(String path) throws IOException {
        step.before("stage " + path);
        Path file = made.resolve(path);
        Files.createDirectories(file.getParent());
        return file;
    }

    /**
     * Replaces.
     *
     * @param leaving paths of files, links or folders that make room
     */
    void swap(Collection<String> leaving) throws IOException {
        try {
            Files.createDirectories(made);
            forceAll(made);
            for (String path : leaving) {
                step.before("out " + path);
                Files.createDirectories(old.resolve(path).getParent());
                SafeFiles.move(folder.resolve(path), old.resolve(path));
            }
            SafeFiles.force(folder);
            step.before("decide");
            SafeFiles.move(made, in);
            SafeFiles.force(in.getParent());
        } catch (IOException | RuntimeException e) {
            takeBack(e);
            throw e;
        }
        finish();
    }

    /** Forgets what was made so far; the book is as it was. */
    void drop() throws IOException {
        finish();
    }

    private void takeBack(Exception cause) {
        try {
            finish();
        } catch (IOException e) {
            cause.addSuppressed(e); // whoever takes the lock next tries again
        }
    }

    private void finish() throws IOException {
        moveAll(Files.exists(in) ? in : old);
        // in this order: while the new files' folder is there, the old ones would not be put back
        deleteAll(old);
        SafeFiles.force(old.getParent());
        deleteAll(made);
        deleteAll(in);
        deleteAll(folder.resolve(FOLDER));
        SafeFiles.force(folder);
    }

    /** Moves what lies below a folder to the same path of the book. */
    private void moveAll(Path from) throws IOException {
        for (Path file : filesBelow(from)) {
            Path path = from.relativize(file);
            Path target = folder.resolve(path);
            step.before("move " + path);
            Files.createDirectories(target.getParent());
            if (Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
                setAside(path);
            }
            SafeFiles.move(file, target);
            SafeFiles.force(target.getParent());
        }
    }

    /** Somebody who knows no lock has put something in the way: it is kept. */
    private void setAside(Path path) throws IOException {
        Path aside = folder.resolve(ASIDE).resolve(path);
        for (int number = 2; Files.exists(aside, LinkOption.NOFOLLOW_LINKS); number++) {
            aside = folder.resolve(ASIDE + "-" + number).resolve(path);
        }
        Files.createDirectories(aside.getParent());
        SafeFiles.move(folder.resolve(path), aside);
    }

    private static List<Path> filesBelow(Path from) throws IOException {
        List<Path> files = new ArrayList<>();
        if (Files.exists(from)) {
            Files.walkFileTree(from, new SimpleFileVisitor<>() {
                @Override
                public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                    files.add(file);
                    return FileVisitResult.CONTINUE;
                }
            });
        }
        return files;
    }

    private static void forceAll(Path from) throws IOException {
        Files.walkFileTree(from, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult postVisitDirectory(Path each, IOException e) {
                SafeFiles.force(each);
                return FileVisitResult.CONTINUE;
            }
        });
    }

    private void deleteAll(Path from) throws IOException {
        if (!Files.exists(from)) {
            return;
        }
        Files.walkFileTree(from, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                return delete(file);
            }

            @Override
            public FileVisitResult postVisitDirectory(Path each, IOException e) throws IOException {
                return delete(each);
            }
        });
    }

    private FileVisitResult delete(Path path) throws IOException {
        step.before("delete " + folder.relativize(path));
        Files.delete(path);
        return FileVisitResult.CONTINUE;
    }

    /** Runs before a thing that changes the disk; tests let the program die here. */
    interface Step {
        void before(String what) throws IOException;
    }
}
