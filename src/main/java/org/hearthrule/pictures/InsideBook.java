package org.hearthrule.pictures;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Finds files within a book's folder and nowhere else. Text is only a first sieve: what counts is where the path really
 * leads once every link has been followed.
 */
final class InsideBook {

    private InsideBook() { }

    /**
     * Returns whether a path has only plain parts with slashes between: none empty, none hidden and so none that leads
     * up, no drive, no backslash, no NUL.
     */
    static boolean isPlain(String path) {
        if (path.indexOf('\\') >= 0 || path.indexOf(':') >= 0 || path.indexOf('\0') >= 0) {
            return false;
        }
        for (String part : path.split("/", -1)) {
            if (part.isEmpty() || part.startsWith(".")) {
                return false;
            }
        }
        return true;
    }

    /** Returns the file itself, not a link to it; empty unless it really lies in the folder and in no hidden one. */
    static Optional<Path> file(Path folder, String path) {
        if (path == null || !isPlain(path)) {
            return Optional.empty();
        }
        try {
            Path real = folder.resolve(path).toRealPath();
            return isBelow(folder.toRealPath(), real) && Files.isRegularFile(real) ? Optional.of(real) : Optional.empty();
        } catch (IOException | InvalidPathException e) {
            return Optional.empty();
        }
    }

    /** Returns whether a real path lies in a real folder, and in no hidden one below it. */
    static boolean isBelow(Path realFolder, Path real) {
        if (!real.startsWith(realFolder)) {
            return false;
        }
        for (Path part : realFolder.relativize(real)) {
            if (part.toString().startsWith(".")) {
                return false;
            }
        }
        return true;
    }

    /** Returns a file's path within the folder, with slashes. */
    static String path(Path folder, Path file) {
        return folder.relativize(file).toString().replace(file.getFileSystem().getSeparator(), "/");
    }
}
