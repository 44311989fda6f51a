package org.hearthrule.tables;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.commons.compress.utils.SeekableInMemoryByteChannel;

/**
 * The parts of a spreadsheet (XLSX, an archive of XML files), weighed before any of them is read. The archive is read
 * with the library that the reader of spreadsheets uses, so that what was weighed is what is read.
 */
final class XlsxParts implements Closeable {

    private static final byte[] DOCUMENT_TYPE = "<!DOCTYPE".getBytes(StandardCharsets.US_ASCII);
    private static final int CHUNK = 1 << 16;

    private final ZipFile zip;
    private final List<ZipArchiveEntry> entries;

    XlsxParts(byte[] content) throws IOException {
        zip = ZipFile.builder().setSeekableByteChannel(new SeekableInMemoryByteChannel(content)).get();
        entries = Collections.list(zip.getEntries());
    }

    /** Returns the names of all parts. */
    List<String> names() {
        return entries.stream().map(ZipArchiveEntry::getName).toList();
    }

    /** Returns the bytes of a part as they are unpacked. */
    InputStream open(String name) throws IOException {
        return zip.getInputStream(zip.getEntry(name));
    }

    /**
     * Unpacks everything once and keeps nothing. What a part says of its own size is not believed.
     *
     * @return why the archive must not be read; null when nothing speaks against it
     */
    String objection(long mostBytes) throws IOException {
        Set<String> names = new HashSet<>();
        long bytes = 0;
        byte[] chunk = new byte[CHUNK];
        for (ZipArchiveEntry entry : entries) {
            if (!names.add(entry.getName().toLowerCase(Locale.ROOT))) {
                return "two parts of one name";
            }
            if (!zip.canReadEntryData(entry)) {
                return "a part that is locked or packed in an unknown way";
            }
            int matched = 0;
            try (InputStream in = zip.getInputStream(entry)) {
                for (int read = in.read(chunk); read >= 0; read = in.read(chunk)) {
                    bytes += read;
                    if (bytes > mostBytes) {
                        return "more than " + mostBytes + " bytes when unpacked";
                    }
                    matched = match(chunk, read, matched);
                    if (matched == DOCUMENT_TYPE.length) {
                        return "a declaration of a document type, through which XML reaches for other files";
                    }
                }
            }
        }
        return null;
    }

    /**
     * Looks for a declaration of a document type, which ECMA-376 part 2 (8.1.4) forbids in these files: only through
     * one can XML name entities of its own, or files elsewhere. Bytes of zero are passed over, so that text in UTF-16
     * is found as well.
     *
     * @param matched how many of its letters were found right before
     * @return how many letters are found now; all when it is there
     */
    private static int match(byte[] chunk, int length, int matched) {
        int found = matched;
        for (int i = 0; i < length && found < DOCUMENT_TYPE.length; i++) {
            byte one = chunk[i];
            if (one == DOCUMENT_TYPE[found]) {
                found++;
            } else if (one != 0 && found > 0) {
                found = one == DOCUMENT_TYPE[0] ? 1 : 0;
            }
        }
        return found;
    }

    @Override
    public void close() throws IOException {
        zip.close();
    }
}
