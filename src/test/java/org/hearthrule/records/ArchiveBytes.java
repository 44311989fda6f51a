package org.hearthrule.records;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;

/** Builds copies of a book that lie: what the manifest says and what is packed are set one by one. */
final class ArchiveBytes {

    static final String FAMILY = Fixtures.family("");

    private static final int LINK = 0120777;

    private final Map<String, String> manifest = new LinkedHashMap<>();
    private final List<ZipArchiveEntry> entries = new ArrayList<>();
    private final List<byte[]> contents = new ArrayList<>();
    private String version = "1";

    /** Returns a copy that is fine: a book of two children. */
    static ArchiveBytes fine() {
        return new ArchiveBytes().with("family.json", FAMILY);
    }

    /** Adds a file as it should be. */
    ArchiveBytes with(String path, String content) {
        return packed("book/" + path, content).promised(path, content);
    }

    /** Adds a file to what the manifest says, once for each path. */
    ArchiveBytes promised(String path, String content) {
        byte[] bytes = content.getBytes(StandardCharsets.UTF_8);
        return promised(path, bytes.length, Hash.of(bytes).hex());
    }

    ArchiveBytes promised(String path, long bytes, String hash) {
        String quoted = path.replace("\\", "\\\\").replace("\0", "\\u0000").replace("\u0007", "\\u0007");
        manifest.put(path + "#" + manifest.size(), "{\"path\": \"" + quoted + "\", \"bytes\": " + bytes + ", \"sha-256\": \"" + hash + "\"}");
        return this;
    }

    /** Packs an entry under this very name. */
    ArchiveBytes packed(String name, String content) {
        return packed(new ZipArchiveEntry(name), content);
    }

    /** Packs a link that leads to a path. */
    ArchiveBytes link(String name, String target) {
        ZipArchiveEntry entry = new ZipArchiveEntry(name);
        entry.setUnixMode(LINK);
        return packed(entry, target);
    }

    ArchiveBytes packed(ZipArchiveEntry entry, String content) {
        entries.add(entry);
        contents.add(content.getBytes(StandardCharsets.UTF_8));
        return this;
    }

    ArchiveBytes version(String number) {
        version = number;
        return this;
    }

    String manifest() {
        return "{\"hearthrule-copy\": " + version + ", \"program\": \"0.1.0\", \"made\": \"2026-06-01T18:30:00Z\", \"files\": ["
                + String.join(", ", manifest.values()) + "]}";
    }

    Path write(Path zip) {
        return write(zip, manifest());
    }

    /** Writes the ZIP with this text as its manifest; without one when it is null. */
    Path write(Path zip, String manifestText) {
        try (ZipArchiveOutputStream out = new ZipArchiveOutputStream(zip)) {
            for (int i = 0; i < entries.size(); i++) {
                put(out, entries.get(i), contents.get(i));
            }
            if (manifestText != null) {
                put(out, new ZipArchiveEntry("manifest.json"), manifestText.getBytes(StandardCharsets.UTF_8));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return zip;
    }

    private static void put(ZipArchiveOutputStream out, ZipArchiveEntry entry, byte[] content) throws IOException {
        entry.setSize(content.length);
        out.putArchiveEntry(entry);
        if (!entry.isDirectory()) {
            out.write(content);
        }
        out.closeArchiveEntry();
    }
}
