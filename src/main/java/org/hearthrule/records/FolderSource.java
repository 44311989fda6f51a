package org.hearthrule.records;

import java.io.ByteArrayInputStream;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthrule.input.JsonText;
import org.hearthrule.input.Node;
import org.hearthrule.input.Place;
import org.hearthrule.input.Problems;

/** A book in a folder. */
final class FolderSource implements BookSource {

    private final Path folder;
    private final List<String> names;
    private final Map<String, Hash> hashes;

    private FolderSource(Path folder, List<String> names, Map<String, Hash> hashes) {
        this.folder = folder;
        this.names = names;
        this.hashes = hashes;
    }

    /** Returns the same, which also puts the hash of each file it reads into a map. */
    FolderSource hashing(Map<String, Hash> into) {
        return new FolderSource(folder, names, into);
    }

    /** Opens a folder; empty after recording that it is none. */
    static Optional<FolderSource> open(Path folder, Problems problems) {
        if (BookArchiveSwap.isPending(folder) && !isFinished(folder, problems)) {
            return Optional.empty();
        }
        File[] found = asFile(folder).listFiles();
        if (found != null) {
            List<String> names = new ArrayList<>(found.length);
            for (File file : found) {
                if (!file.isDirectory()) {
                    names.add(file.getName());
                }
            }
            names.sort(null);
            return Optional.of(new FolderSource(folder, names, null));
        }
        noFolder(folder, problems);
        return Optional.empty();
    }

    /** A restore that goes on, or was cut off, must come to its end before the book is whole. */
    private static boolean isFinished(Path folder, Problems problems) {
        try {
            FolderLock.take(folder).close();
            return true;
        } catch (IOException e) {
            problems.error(new Place(folder.toString(), 1, 1), "RESTORE-UNDER-WAY", "a restore that is not finished",
                    "a book that is whole", "another program is still at it: try again in a moment");
            return false;
        }
    }

    /** The way to the folder we stand in may be empty, which a File takes for nothing at all. */
    private static File asFile(Path folder) {
        return folder.toString().isEmpty() ? new File(".") : folder.toFile();
    }

    private static void noFolder(Path folder, Problems problems) {
        boolean exists = Files.exists(folder);
        boolean file = Files.isRegularFile(folder);
        Path parent = folder.getParent() == null ? Path.of(".") : folder.getParent();
        String perhaps = file ? "you meant the folder it lies in, " + parent
                : exists ? null : "the name is mistyped, or the folder was moved";
        problems.error(new Place(folder.toString(), 1, 1), "NOT-A-FOLDER",
                file ? "a file" : exists ? "a folder that cannot be opened" : "nothing of that name",
                "the folder of a record book", perhaps);
    }

    @Override
    public List<String> names() {
        return names;
    }

    @Override
    public String shown(String name) {
        return folder.resolve(name).toString();
    }

    @Override
    public Optional<String> bookBelow() {
        File[] books = asFile(folder).listFiles(child -> new File(child, BookNames.FAMILY).isFile());
        return books == null || books.length != 1 ? Optional.empty() : Optional.of(shown(books[0].getName()));
    }

    @Override
    public Optional<Node> read(String name, Problems problems) {
        return hashes == null ? JsonText.read(folder.resolve(name), shown(name), problems)
                : readAndHash(name, problems);
    }

    /** Hashes the very bytes that are parsed: the file may change between two readings. */
    private Optional<Node> readAndHash(String name, Problems problems) {
        Path file = folder.resolve(name);
        try {
            if (Files.size(file) <= JsonText.MAX_SIZE) {
                byte[] bytes = Files.readAllBytes(file);
                Reader text = new InputStreamReader(new ByteArrayInputStream(bytes),
                        StandardCharsets.UTF_8.newDecoder());
                hashes.put(name, Hash.of(bytes));
                problems.register(shown(name), file);
                return JsonText.read(shown(name), text, problems);
            }
        } catch (IOException e) {
            hashes.remove(name); // read once more below, which says what is wrong
        }
        return JsonText.read(file, shown(name), problems);
    }
}
