package org.hearthrule.records;

import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthrule.input.Fields;
import org.hearthrule.input.JsonText;
import org.hearthrule.input.Node;
import org.hearthrule.input.Phrases;
import org.hearthrule.input.Problems;
import org.hearthrule.input.Scalar;

/**
 * What a copy of a book says of itself: the first thing that is read, and what everything else is held against.
 *
 * @param version of the form of copies
 * @param program that made it, for people; empty when it does not say
 * @param made    when
 * @param files   in the order of their paths
 */
record BookArchiveManifest(int version, String program, Instant made, List<Entry> files) {

    static final String NAME = "manifest.json";
    private static final String VERSION = "hearthrule-copy";
    private static final String SHA_256 = "[0-9a-f]{64}";

    /**
     * @param path  within the book, with slashes
     * @param bytes how long it is
     */
    record Entry(String path, long bytes, Hash hash) { }

    String text() {
        List<Map<String, Object>> list = new ArrayList<>(files.size());
        for (Entry file : files) {
            Map<String, Object> values = new LinkedHashMap<>();
            values.put("path", file.path());
            values.put("bytes", Math.toIntExact(file.bytes()));
            values.put("sha-256", file.hash().hex());
            list.add(values);
        }
        Map<String, Object> root = new LinkedHashMap<>();
        root.put(VERSION, version);
        if (!program.isEmpty()) {
            root.put("program", program);
        }
        root.put("made", made.truncatedTo(ChronoUnit.SECONDS).toString());
        root.put("files", list);
        return JsonPrinter.print(root);
    }

    /** Reads a manifest of this version or an earlier one; empty after recording what is wrong. */
    static Optional<BookArchiveManifest> read(String shown, String text, Problems problems) {
        Node tree = JsonText.read(shown, text, problems).orElse(null);
        if (tree == null) {
            return Optional.empty();
        }
        Fields root = Fields.of(tree, problems, "the manifest");
        if (!FormatVersion.isReadable(root, VERSION, BookArchive.VERSION)) {
            return Optional.empty();
        }
        int version = root.integer(VERSION, 1, BookArchive.VERSION);
        String program = root.optionalText("program").orElse("");
        Instant made = time(root);
        List<Entry> files = new ArrayList<>();
        for (Fields file : root.listOfFields("files", "the file")) {
            files.add(entry(file));
            file.done();
        }
        root.done();
        return problems.hasErrors() ? Optional.empty()
                : Optional.of(new BookArchiveManifest(version, program, made, List.copyOf(files)));
    }

    private static Instant time(Fields root) {
        String text = root.text("made");
        try {
            return text == null ? null : Instant.parse(text);
        } catch (DateTimeParseException e) {
            root.error("made", "WRONG-TIME", Phrases.quoted(text), "a time such as \"2026-05-14T20:15:00Z\"", null);
            return null;
        }
    }

    private static Entry entry(Fields file) {
        // hidden characters and the like are looked for with the rest of a path's faults
        String path = file.node("path") instanceof Scalar scalar ? scalar.text() : "";
        String fault = BookArchivePath.fault(path);
        if (fault != null) {
            file.error("path", "PATH-OUTSIDE", fault + ": " + Phrases.quoted(path), "a file of the book, such as \"family.json\"", null);
        }
        int bytes = file.integer("bytes", 0, Integer.MAX_VALUE);
        String hash = file.text("sha-256");
        if (hash != null && !hash.matches(SHA_256)) {
            file.error("sha-256", "NOT-A-HASH", Phrases.quoted(hash), "64 digits and letters a to f", null);
        }
        return new Entry(path, bytes, new Hash(hash == null ? "" : hash));
    }
}
