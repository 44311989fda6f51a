package org.hearthrule.page.frame;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** What the page keeps for itself beside a book, in {@code .page}: no record, and nothing is lost without it. */
final class OwnFolder {

    private OwnFolder() { }

    static Path of(Path book) throws IOException {
        return Files.createDirectories(book.resolve(".page"));
    }
}
