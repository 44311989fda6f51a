package org.hearthrule.pictures;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.locks.ReentrantLock;
import java.util.stream.Stream;
import org.hearthrule.records.Hash;
import org.hearthrule.terms.Wording;

/**
 * Small upright pictures of stored files, made when first asked for and kept below {@code .page/previews/} under the
 * content's hash, so that a file that changes gets a new one. They hold no notes of the camera, so no place either.
 *
 * <p>Safe for several threads. In the whole program one picture is unpacked at a time, since each takes up to 64 MB.
 */
public final class Previews {

    /** How large a preview is. */
    public enum Size {
        /** For lists: the longer side has 480 pixels. */
        SMALL(480),
        /** For looking and reading: the longer side has 1,600 pixels. */
        LARGE(1_600);

        private final int longest;

        Size(int longest) {
            this.longest = longest;
        }

        /** @return pixels of the longer side at most */
        public int longest() {
            return longest;
        }
    }

    private static final ReentrantLock ONE_AT_A_TIME = new ReentrantLock(true);
    private static final String FOLDER = ".page/previews";
    private static final String HALF = ".tmp";
    private static final int REMEMBERED = 20_000;
    private static final long MOST_KEPT = 400_000_000;
    private static final int LOOKED_AFTER_EVERY = 200;

    private final Attachments attachments;
    private final Path folder;
    private final long mostKept;
    private final Map<Version, Hash> hashes = remembering();
    private final Map<Hash, Preview.None> failed = remembering();
    private int made;

    /** @param attachments of the book */
    public Previews(Attachments attachments) {
        this(attachments, MOST_KEPT);
    }

    Previews(Attachments attachments, long mostKept) {
        this.attachments = attachments;
        this.folder = attachments.folder().resolve(FOLDER);
        this.mostKept = mostKept;
    }

    /**
     * Finds or makes a preview; takes up to some seconds when it must be made.
     *
     * @param path within the book, as the records write it
     * @throws IOException when the preview cannot be written
     */
    public Preview of(String path, Size size) throws IOException {
        Attachments.Opened opened = attachments.open(path).orElse(null);
        if (opened == null) {
            return none(Preview.Reason.NOT_THERE);
        }
        if (!opened.kind().hasPreview()) {
            return none(Preview.Reason.OF_THIS_KIND);
        }
        Hash hash = hash(opened);
        Path preview = folder.resolve(hash.hex() + '-' + size.longest() + ".jpg");
        if (Files.isRegularFile(preview)) {
            return new Preview.Ready(preview);
        }
        ONE_AT_A_TIME.lock();
        try {
            Preview.None before = failed.get(hash);
            if (before != null) {
                return before;
            }
            return Files.isRegularFile(preview) ? new Preview.Ready(preview) : make(opened, hash, size, preview);
        } finally {
            ONE_AT_A_TIME.unlock();
        }
    }

    private Preview make(Attachments.Opened opened, Hash hash, Size size, Path preview) throws IOException {
        byte[] content;
        try {
            content = Shrinking.of(opened.file(), opened.kind(), size.longest());
        } catch (Shrinking.TooLargeException e) {
            return failed(hash, Preview.Reason.TOO_LARGE);
        } catch (IOException e) {
            return failed(hash, Preview.Reason.DAMAGED);
        }
        Files.createDirectories(folder);
        Path half = Files.createFile(folder.resolve("half-" + UUID.randomUUID() + HALF));
        try {
            Files.write(half, content);
            Files.move(half, preview, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(half);
        }
        if (made++ % LOOKED_AFTER_EVERY == 0) {
            letGo();
        }
        return new Preview.Ready(preview);
    }

    private Preview failed(Hash hash, Preview.Reason reason) {
        Preview.None none = none(reason);
        failed.put(hash, none);
        return none;
    }

    private static Preview.None none(Preview.Reason reason) {
        return new Preview.None(reason, Wording.english().say("picture.preview." + switch (reason) {
            case OF_THIS_KIND -> "of-this-kind";
            case TOO_LARGE -> "too-large";
            case DAMAGED -> "damaged";
            case NOT_THERE -> "not-there";
        }));
    }

    /** The hash of a file is taken once for each version of it. */
    private Hash hash(Attachments.Opened opened) throws IOException {
        Version version = new Version(opened.file(), opened.bytes(), Files.getLastModifiedTime(opened.file()));
        Hash known = hashes.get(version);
        if (known == null) {
            known = Hash.of(opened.file());
            hashes.put(version, known);
        }
        return known;
    }

    /** Deletes the oldest previews when all together are too large, and what a program that died left behind. */
    private void letGo() throws IOException {
        Map<Path, FileTime> times = new HashMap<>();
        Map<Path, Long> sizes = new HashMap<>();
        try (Stream<Path> found = Files.list(folder)) {
            for (Path each : found.toList()) {
                times.put(each, Files.getLastModifiedTime(each));
                sizes.put(each, Files.size(each));
            }
        }
        long sum = sizes.values().stream().mapToLong(Long::longValue).sum();
        FileTime anHourAgo = FileTime.from(Instant.now().minus(Duration.ofHours(1)));
        List<Path> oldestFirst = times.keySet().stream().sorted(Comparator.comparing(times::get)).toList();
        for (Path each : oldestFirst) {
            boolean half = each.toString().endsWith(HALF);
            if (half ? times.get(each).compareTo(anHourAgo) < 0 : sum > mostKept) {
                Files.deleteIfExists(each);
                sum -= sizes.get(each);
            }
        }
    }

    private static <K, V> Map<K, V> remembering() {
        return Collections.synchronizedMap(new LinkedHashMap<>(64, 0.75f, true) {
            @Override
            protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
                return size() > REMEMBERED;
            }
        });
    }

    private record Version(Path file, long bytes, FileTime written) { }
}
