package org.hearthrule.records;

import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.hearthrule.input.Phrases;
import org.hearthrule.input.Place;
import org.hearthrule.input.Problems;

/**
 * Reads a copy of a book, which may come from anywhere. Nothing it says is believed before it is checked, and no path of
 * it is used before all are known to lead into the book. Not safe for use by several threads at once.
 */
final class BookArchiveReader implements Closeable {

    private static final int MOST_MANIFEST = 32_000_000;
    private static final int HEAD = 1 << 16;
    private static final int BUFFER = 1 << 16;

    private final String shown;
    private final ZipFile zip;
    private final BookArchiveLimits limits;
    private final Problems problems;
    private final Map<String, ZipArchiveEntry> entries = new HashMap<>();
    private BookArchiveManifest manifest;

    private BookArchiveReader(String shown, ZipFile zip, BookArchiveLimits limits, Problems problems) {
        this.shown = shown;
        this.zip = zip;
        this.limits = limits;
        this.problems = problems;
    }

    /**
     * Opens a copy.
     *
     * @param problems takes every problem that {@link #check} finds; holds no error yet
     * @throws IOException when it is no ZIP
     */
    static BookArchiveReader open(Path path, BookArchiveLimits limits, Problems problems) throws IOException {
        // a second name beside the first is a way to show one path and mean another
        ZipFile zip = ZipFile.builder().setPath(path).setUseUnicodeExtraFields(false).setIgnoreLocalFileHeader(true).get();
        return new BookArchiveReader(path.toString(), zip, limits, problems);
    }

    BookArchive.Contents contents() {
        long bytes = manifest.files().stream().mapToLong(BookArchiveManifest.Entry::bytes).sum();
        return new BookArchive.Contents(manifest.version(), manifest.program(), manifest.made(), manifest.files().size(), bytes);
    }

    List<BookArchiveManifest.Entry> files() {
        return manifest.files();
    }

    /** Checks everything, content too; returns whether there was no error. */
    boolean check() throws IOException {
        if (!checkNames()) {
            return false;
        }
        for (BookArchiveManifest.Entry file : manifest.files()) {
            copy(file, OutputStream.nullOutputStream());
        }
        return !problems.hasErrors();
    }

    /** Checks all but the content; returns whether there was no error. */
    boolean checkNames() throws IOException {
        int count = 0;
        for (ZipArchiveEntry entry : Collections.list(zip.getEntries())) {
            if (++count > limits.files() + 1) {
                error("TOO-MANY", "more than " + limits.files() + " files", "at most so many", null);
                return false;
            }
            String fault = fault(entry);
            String name = name(entry).orElse("?");
            if (fault != null) {
                error("PATH-OUTSIDE", fault + ": " + Phrases.quoted(name), "files below " + BookArchive.BOOK + " only", null);
            } else if (entries.put(BookArchivePath.folded(name), entry) != null) {
                error("REPEATED-FILE", "a second " + Phrases.quoted(name), "each file once, capitals or not", null);
            }
        }
        manifest = readManifest().orElse(null);
        if (manifest != null) {
            compare();
        }
        return !problems.hasErrors();
    }

    private String fault(ZipArchiveEntry entry) {
        String name = name(entry).orElse(null);
        if (name == null) {
            return "a name that cannot be read";
        }
        if (entry.isUnixSymlink()) {
            return "a link";
        }
        if (!zip.canReadEntryData(entry)) {
            return "an entry that is locked by a password or packed in another way";
        }
        if (name.equals(BookArchiveManifest.NAME)) {
            return null;
        }
        String inside = name.startsWith(BookArchive.BOOK) ? name.substring(BookArchive.BOOK.length()) : null;
        String fault = BookArchivePath.fault(inside == null ? name : inside);
        return fault != null ? fault : inside == null ? "an entry beside the book" : null;
    }

    /** The name as it stands there, not as a library would mend it. */
    private static Optional<String> name(ZipArchiveEntry entry) {
        try {
            return Optional.of(StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(entry.getRawName())).toString());
        } catch (CharacterCodingException e) {
            return Optional.empty();
        }
    }

    private Optional<BookArchiveManifest> readManifest() throws IOException {
        ZipArchiveEntry entry = entries.get(BookArchiveManifest.NAME);
        if (entry == null) {
            error("NOT-A-COPY", "no " + BookArchiveManifest.NAME, "a copy that Hearthrule made of a book",
                    "another program packed it: unpack it by hand, and keep the folder that holds family.json");
            return Optional.empty();
        }
        ByteArrayOutputStream text = new ByteArrayOutputStream();
        if (copy(entry, text, MOST_MANIFEST, null) > MOST_MANIFEST) {
            error("TOO-LARGE", "a " + BookArchiveManifest.NAME + " of more than " + MOST_MANIFEST + " bytes", "a shorter one", null);
            return Optional.empty();
        }
        Problems found = new Problems();
        Optional<BookArchiveManifest> read = BookArchiveManifest.read(shown + "/" + BookArchiveManifest.NAME,
                text.toString(StandardCharsets.UTF_8), found);
        BookArchive.addAll(found, problems);
        return read;
    }

    /** Holds the entries against the manifest. */
    private void compare() {
        Set<String> promised = new HashSet<>();
        Set<String> folders = new HashSet<>();
        long all = 0;
        for (BookArchiveManifest.Entry file : manifest.files()) {
            String folded = BookArchivePath.folded(BookArchive.BOOK + file.path());
            ZipArchiveEntry entry = entries.get(folded);
            if (!promised.add(folded)) {
                error("REPEATED-FILE", "a second " + Phrases.quoted(file.path()) + " in the manifest", "each file once", null);
            } else if (entry == null || !name(entry).orElse("").equals(BookArchive.BOOK + file.path())) {
                error("MISSING-FILE", "no file " + Phrases.quoted(file.path()), "each file that the manifest names", null);
            }
            if (file.bytes() > limits.file()) {
                error("TOO-LARGE", Phrases.quoted(file.path()) + " of " + file.bytes() + " bytes", "at most " + limits.file(), null);
            }
            for (int slash = folded.indexOf('/'); slash >= 0; slash = folded.indexOf('/', slash + 1)) {
                folders.add(folded.substring(0, slash));
            }
            all += file.bytes();
        }
        if (all > limits.all()) {
            error("TOO-LARGE", all + " bytes when unpacked", "at most " + limits.all(), null);
        }
        Set<String> unknown = new TreeSet<>(entries.keySet());
        unknown.removeAll(promised);
        unknown.remove(BookArchiveManifest.NAME);
        unknown.forEach(name -> error("NOT-IN-MANIFEST", "a file that the manifest does not name: "
                + Phrases.quoted(name), "only files that it names", null));
        folders.retainAll(promised);
        folders.forEach(name -> error("REPEATED-FILE", Phrases.quoted(name) + " as a file and as a folder", "one of the two", null));
        if (manifest.files().stream().noneMatch(file -> BookNames.isPart(file.path()))) {
            error("NOT-A-COPY", "no file of records", "family.json and a file for each year", null);
        }
    }

    /**
     * Copies the content of a file, and records what is wrong with it: it stops at the first byte that is too many.
     *
     * @return whether it is what the manifest says
     */
    boolean copy(BookArchiveManifest.Entry file, OutputStream out) throws IOException {
        MessageDigest sum = Hash.sum();
        ByteArrayOutputStream head = new ByteArrayOutputStream();
        ZipArchiveEntry entry = entries.get(BookArchivePath.folded(BookArchive.BOOK + file.path()));
        long bytes;
        try {
            bytes = copy(entry, new OutputStream() {
                @Override
                public void write(int b) {
                    throw new UnsupportedOperationException();
                }

                @Override
                public void write(byte[] buffer, int from, int length) throws IOException {
                    out.write(buffer, from, length);
                    head.write(buffer, from, Math.max(0, Math.min(length, HEAD - head.size())));
                }
            }, file.bytes(), sum);
        } catch (Unreadable e) {
            error("WRONG-CONTENT", Phrases.quoted(file.path()) + ", which cannot be unpacked", "a file that can", null);
            return false;
        }
        if (bytes != file.bytes() || !Hash.of(sum).equals(file.hash())) {
            error("WRONG-CONTENT", Phrases.quoted(file.path()) + " with another content than the manifest says",
                    "the content it had when the copy was made", "the copy was damaged on its way: take another");
            return false;
        }
        if (BookNames.isPart(file.path()) && FormatVersion.of(head.toByteArray()) > Book.VERSION) {
            error("NEWER-VERSION", Phrases.quoted(file.path()) + ", written by a newer Hearthrule",
                    "version " + Book.VERSION + ", the newest that this Hearthrule reads; nothing was changed",
                    "install the newer Hearthrule");
            return false;
        }
        return true;
    }

    /** Copies at most so many bytes; returns their number, or one more when there are more. */
    private long copy(ZipArchiveEntry entry, OutputStream out, long most, MessageDigest sum) throws IOException {
        byte[] buffer = new byte[BUFFER];
        long bytes = 0;
        try (InputStream in = unpacked(entry)) {
            for (int read = read(in, buffer); read >= 0; read = read(in, buffer)) {
                if (bytes + read > most) {
                    return most + 1;
                }
                bytes += read;
                out.write(buffer, 0, read);
                if (sum != null) {
                    sum.update(buffer, 0, read);
                }
            }
        }
        return bytes;
    }

    /** What fails here is the copy's fault; what fails when the content is written is not. */
    private InputStream unpacked(ZipArchiveEntry entry) throws Unreadable {
        try {
            return zip.getInputStream(entry);
        } catch (IOException | RuntimeException e) {
            throw new Unreadable();
        }
    }

    private static int read(InputStream in, byte[] buffer) throws Unreadable {
        try {
            return in.read(buffer);
        } catch (IOException | RuntimeException e) {
            throw new Unreadable();
        }
    }

    private static final class Unreadable extends IOException {
        private static final long serialVersionUID = 1L;
    }

    private void error(String code, String found, String expected, String perhaps) {
        problems.error(new Place(shown, 1, 1), code, found, expected, perhaps);
    }

    @Override
    public void close() throws IOException {
        zip.close();
    }
}
