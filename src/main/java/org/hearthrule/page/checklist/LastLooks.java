package org.hearthrule.page.checklist;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.hearthrule.page.frame.Desk;
import org.hearthrule.records.SafeFiles;

/**
 * Remembers beside each book what stood on its checklist at the last look. All looks of one run and day are one, so that
 * what has changed stays to be read until it was said to be seen. Safe for several threads.
 */
final class LastLooks {

    private final Map<Path, Kept> kept = new HashMap<>();

    /**
     * @param before the look of an earlier run or day; null when there is none, or it was said to be seen
     * @param last   what is written
     */
    private record Kept(LocalDate day, Look before, Look last) { }

    /** @return the last look before those of today */
    synchronized Optional<Look> before(Desk desk, Look now) {
        Kept one = kept.get(desk.folder());
        if (one == null || !one.day().equals(now.day())) {
            Look before = one == null ? read(desk) : one.last();
            one = new Kept(now.day(), before, before);
        }
        keep(desk, one, now);
        return Optional.ofNullable(one.before());
    }

    /** What has changed up to now is said no more. */
    synchronized void seen(Desk desk, Look now) {
        keep(desk, new Kept(now.day(), null, null), now);
    }

    private void keep(Desk desk, Kept one, Look now) {
        if (!now.equals(one.last())) {
            write(desk, now);
        }
        kept.put(desk.folder(), new Kept(one.day(), one.before(), now));
    }

    private static Look read(Desk desk) {
        try {
            Path file = file(desk);
            return Files.isRegularFile(file) ? Look.of(Files.readString(file)).orElse(null) : null;
        } catch (IOException e) {
            return null;
        }
    }

    /** A book that cannot be written beside is looked at without a memory. */
    private static void write(Desk desk, Look look) {
        try {
            Path file = file(desk);
            Path beside = file.resolveSibling("last-look.new");
            Files.writeString(beside, look.text());
            SafeFiles.move(beside, file);
        } catch (IOException e) {
            return;
        }
    }

    private static Path file(Desk desk) throws IOException {
        return desk.ownFolder().resolve("last-look");
    }
}
