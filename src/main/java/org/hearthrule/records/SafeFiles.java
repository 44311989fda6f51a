package org.hearthrule.records;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;

/** Writes files so that a crash leaves either the old one or the new one, never a part of it. */
public final class SafeFiles {

    private static final String TEMPORARY = ".tmp";

    private SafeFiles() { }

    /** Writes a new file beside another, down to the disk; whoever may read the third file may read it too. */
    static Path writeBeside(Path target, Path like, byte[] content) throws IOException {
        Path temporary = unused(target.resolveSibling("." + target.getFileName() + TEMPORARY));
        try (FileChannel channel = FileChannel.open(temporary, StandardOpenOption.CREATE_NEW,
                StandardOpenOption.WRITE)) {
            copyPermissions(like, temporary);
            ByteBuffer bytes = ByteBuffer.wrap(content);
            while (bytes.hasRemaining()) {
                channel.write(bytes);
            }
            channel.force(true);
        } catch (IOException e) {
            Files.deleteIfExists(temporary);
            throw e;
        }
        return temporary;
    }

    /** Puts a file in the place of another, in one step. */
    public static void move(Path from, Path to) throws IOException {
        Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    /** Writes a file that must not be there yet, with a number in its name if it is; returns its path. */
    static Path writeNew(Path wish, Path like, byte[] content) throws IOException {
        Path temporary = writeBeside(wish, like, content);
        for (int number = 1;; number++) {
            Path target = number == 1 ? wish : numbered(wish, number);
            try {
                // a move could overwrite: take the name first
                Files.createFile(target);
                move(temporary, target);
                return target;
            } catch (FileAlreadyExistsException e) {
                continue;
            } catch (IOException e) {
                Files.deleteIfExists(temporary);
                throw e;
            }
        }
    }

    /** Makes the names in a folder as lasting as the files. */
    public static void force(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            // some systems cannot open a folder (Windows); they keep names safe by themselves
        }
    }

    /** Deletes what a writer that died left behind. Only while the folder is locked. */
    static void deleteLeftovers(Path folder) throws IOException {
        try (DirectoryStream<Path> found = Files.newDirectoryStream(folder, ".*" + TEMPORARY + "*")) {
            for (Path file : found) {
                String name = file.getFileName().toString();
                if (BookNames.isPart(name.substring(1, name.lastIndexOf(TEMPORARY)))) {
                    Files.deleteIfExists(file);
                }
            }
        }
    }

    private static Path unused(Path wish) {
        Path path = wish;
        for (int number = 2; Files.exists(path); number++) {
            path = wish.resolveSibling(wish.getFileName() + "-" + number);
        }
        return path;
    }

    private static Path numbered(Path wish, int number) {
        String name = wish.getFileName().toString();
        int dot = name.lastIndexOf('.');
        return wish.resolveSibling(name.substring(0, dot) + "-" + number + name.substring(dot));
    }

    private static void copyPermissions(Path from, Path to) throws IOException {
        PosixFileAttributeView view = Files.getFileAttributeView(to, PosixFileAttributeView.class);
        if (view != null && Files.exists(from)) {
            view.setPermissions(Files.getPosixFilePermissions(from));
        }
    }
}
