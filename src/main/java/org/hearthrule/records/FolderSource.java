package org.hearthrule.records;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hearthrule.input.JsonText;
import org.hearthrule.input.Node;
import org.hearthrule.input.Place;
import org.hearthrule.input.Problems;

/** A book in a folder. */
final class FolderSource implements BookSource {

    private final Path folder;
    private final List<String> names;

    private FolderSource(Path folder, List<String> names) {
        this.folder = folder;
        this.names = names;
    }

    /** Opens a folder; empty after recording that it is none. */
    static Optional<FolderSource> open(Path folder, Problems problems) {
        File[] found = asFile(folder).listFiles();
        if (found != null) {
            List<String> names = new ArrayList<>(found.length);
            for (File file : found) {
                if (!file.isDirectory()) {
                    names.add(file.getName());
                }
            }
            names.sort(null);
            return Optional.of(new FolderSource(folder, names));
        }
        noFolder(folder, problems);
        return Optional.empty();
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
        return JsonText.read(folder.resolve(name), shown(name), problems);
    }
}
