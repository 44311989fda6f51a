package org.hearthrule.records;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.security.MessageDigest;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Writes the files of a copy one after the other, and the manifest last, when all lengths and hashes are known. */
final class BookArchiveWriter {

    /** No time of a file is kept, so that the same files give the same ZIP; this is the first that a ZIP can hold. */
    private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);
    private static final Set<String> PACKED_ALREADY = Set.of("jpg", "jpeg", "png", "gif", "webp", "pdf", "zip");
    private static final int BUFFER = 1 << 16;

    private final ZipOutputStream zip;
    private final byte[] buffer = new byte[BUFFER];

    private BookArchiveWriter(ZipOutputStream zip) {
        this.zip = zip;
    }

    static BookArchive.Written write(BookArchiveFiles files, OutputStream out, Clock clock) throws IOException {
        ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8);
        List<BookArchiveManifest.Entry> entries = new BookArchiveWriter(zip).entries(files);
        String program = BookArchive.class.getPackage().getImplementationVersion();
        byte[] manifest = new BookArchiveManifest(BookArchive.VERSION, program == null ? "" : program, clock.instant(), entries)
                .text().getBytes(StandardCharsets.UTF_8);
        begin(zip, BookArchiveManifest.NAME);
        zip.write(manifest);
        zip.closeEntry();
        zip.finish();
        zip.flush();
        long bytes = entries.stream().mapToLong(BookArchiveManifest.Entry::bytes).sum();
        return new BookArchive.Written(entries.size(), bytes, List.copyOf(files.leftOut()));
    }

    private List<BookArchiveManifest.Entry> entries(BookArchiveFiles files) throws IOException {
        Set<String> paths = new TreeSet<>(files.others());
        paths.addAll(files.records().keySet());
        List<BookArchiveManifest.Entry> entries = new ArrayList<>();
        for (String path : paths) {
            byte[] record = files.records().get(path);
            try (InputStream in = record != null ? new ByteArrayInputStream(record)
                    : Files.newInputStream(files.folder().resolve(path))) {
                entries.add(entry(path, in));
            } catch (NoSuchFileException e) {
                continue; // tidied away since it was listed
            }
        }
        return entries;
    }

    /** Writes one file. A file that grows meanwhile goes in as far as it was read: length and hash are of what went in. */
    private BookArchiveManifest.Entry entry(String path, InputStream in) throws IOException {
        begin(zip, BookArchive.BOOK + path);
        MessageDigest sum = Hash.sum();
        long bytes = 0;
        for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
            sum.update(buffer, 0, read);
            zip.write(buffer, 0, read);
            bytes += read;
        }
        zip.closeEntry();
        return new BookArchiveManifest.Entry(path, bytes, Hash.of(sum));
    }

    private static void begin(ZipOutputStream zip, String name) throws IOException {
        String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        zip.setLevel(PACKED_ALREADY.contains(ending) ? Deflater.NO_COMPRESSION : Deflater.DEFAULT_COMPRESSION);
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(NO_TIME);
        zip.putNextEntry(entry);
    }
}
