package org.hearthrule.input;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.StringReader;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Reads a JSON text (RFC 8259) strictly.
 *
 * <p>Refused, each at its place: {@code REPEATED-KEY}, {@code CUT-SHORT} (the text ends too early),
 * {@code EMPTY-DOCUMENT}, {@code TRAILING-CONTENT}, {@code TOO-DEEP} (more than 60 levels), {@code
 * TOO-BIG} (more than 200,000,000 bytes), {@code NOT-UTF-8}, {@code CANNOT-READ} and, for any other
 * wrong syntax, {@code WRONG-JSON}. A byte-order mark at the start is skipped.
 */
public final class JsonText {

    /** The most bytes of a file, or characters of a text, that are read. */
    public static final int MAX_SIZE = 200_000_000;

    /** The most objects and arrays that may lie within one another. */
    public static final int MAX_DEPTH = 60;

    private JsonText() {}

    /**
     * Reads a text. Never throws for what the text contains.
     *
     * @param file the name of the file as it is to be shown
     * @param content the text
     * @param problems takes every problem; the file is registered there
     * @return the tree; empty when the text is not JSON. Repeated keys leave a tree: see {@link
     *     Problems#hasErrors()}
     */
    public static Optional<Node> read(String file, String content, Problems problems) {
        problems.register(file, content);
        try {
            return read(file, new StringReader(content), problems);
        } catch (IOException e) {
            throw new IllegalStateException("a text in memory cannot fail to be read", e);
        }
    }

    /**
     * Reads from a reader to its end. Problems have no excerpt unless the caller registers the file.
     *
     * @param file the name of the file as it is to be shown
     * @param content the text; is not closed
     * @param problems takes every problem
     * @return the tree; empty when the text is not JSON
     * @throws IOException when the reader fails
     */
    public static Optional<Node> read(String file, Reader content, Problems problems) throws IOException {
        return new JsonTree(file, new CountingReader(content), problems).read();
    }

    /**
     * Reads a UTF-8 file. Never throws: a file that cannot be read is a problem {@code CANNOT-READ}.
     *
     * @param path where the file lies
     * @param shownName the name of the file as it is to be shown
     * @param problems takes every problem; the file is registered there
     * @return the tree; empty when the file is not JSON
     */
    public static Optional<Node> read(Path path, String shownName, Problems problems) {
        problems.register(shownName, path);
        Place top = new Place(shownName, 1, 1);
        try (InputStream bytes = Files.newInputStream(path)) {
            long size = Files.size(path);
            if (size > MAX_SIZE) {
                problems.error(top, "TOO-BIG", size + " bytes", "at most " + MAX_SIZE + " bytes", null);
                return Optional.empty();
            }
            return read(shownName, reader(bytes), problems);
        } catch (CharacterCodingException e) {
            problems.error(
                    Utf8.firstWrong(path, shownName),
                    "NOT-UTF-8",
                    "bytes that are not UTF-8",
                    "a text file in UTF-8",
                    "the file was saved in another encoding or is damaged; a copy may be in the backups");
        } catch (IOException e) {
            problems.error(
                    top,
                    "CANNOT-READ",
                    "a file that cannot be read (" + e.getClass().getSimpleName() + ")",
                    "a file that can be read",
                    null);
        }
        return Optional.empty();
    }

    private static Reader reader(InputStream bytes) {
        return new InputStreamReader(
                bytes,
                StandardCharsets.UTF_8
                        .newDecoder()
                        .onMalformedInput(CodingErrorAction.REPORT)
                        .onUnmappableCharacter(CodingErrorAction.REPORT));
    }
}
