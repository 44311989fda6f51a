package org.hearthrule.records;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.YearMonth;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Keeps earlier versions of a book's files: three of the same day, then one a day for ten days, then one a month. A
 * version counts by the day it was written, so that a day of much work does not push out how the day before ended.
 */
final class Copies {

    static final String FOLDER = ".copies";

    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HHmmss");
    private static final int STAMP_LENGTH = 17;
    private static final int SAME_DAY = 3;
    private static final int DAYS = 10;
    private static final String JSON = ".json";

    private final Path folder;

    Copies(Path book) {
        this.folder = book.resolve(FOLDER);
    }

    /** Returns a time as it stands in the name of a file. */
    static String stamp(LocalDateTime time) {
        return STAMP.format(time);
    }

    /** Keeps a version; does nothing when the same one is kept already. */
    void keep(String name, Path file, byte[] content, ZoneId zone) throws IOException {
        Files.createDirectories(folder);
        LocalDateTime written = LocalDateTime.ofInstant(Files.getLastModifiedTime(file).toInstant(), zone)
                .truncatedTo(ChronoUnit.SECONDS);
        for (Copy copy : all(name)) {
            if (copy.time().equals(written) && Arrays.equals(content, Files.readAllBytes(copy.path()))) {
                return;
            }
        }
        String stem = name.substring(0, name.length() - JSON.length());
        SafeFiles.writeNew(folder.resolve(stem + "." + stamp(written) + JSON), file, content);
        SafeFiles.force(folder);
    }

    /** Returns the copies of a file, the newest first. */
    List<Copy> all(String name) throws IOException {
        List<Copy> copies = new ArrayList<>();
        if (!Files.isDirectory(folder)) {
            return copies;
        }
        String stem = name.substring(0, name.length() - JSON.length());
        try (DirectoryStream<Path> found = Files.newDirectoryStream(folder, stem + ".*" + JSON)) {
            for (Path path : found) {
                LocalDateTime time = time(path.getFileName().toString().substring(stem.length() + 1));
                if (time != null) {
                    copies.add(new Copy(name, time, path));
                }
            }
        }
        copies.sort(Comparator.comparing(Copy::time).thenComparing(copy -> copy.path().toString().length())
                .thenComparing(Copy::path).reversed());
        return copies;
    }

    /** Returns the copies of all files, the newest first. */
    List<Copy> all() throws IOException {
        List<Copy> copies = new ArrayList<>();
        if (!Files.isDirectory(folder)) {
            return copies;
        }
        try (DirectoryStream<Path> found = Files.newDirectoryStream(folder, "*" + JSON)) {
            for (Path path : found) {
                String file = path.getFileName().toString();
                String name = file.indexOf('.') < 0 ? file : file.substring(0, file.indexOf('.')) + JSON;
                LocalDateTime time = time(file.substring(file.indexOf('.') + 1));
                if (time != null && BookNames.isPart(name)) {
                    copies.add(new Copy(name, time, path));
                }
            }
        }
        copies.sort(Comparator.comparing(Copy::time).thenComparing(Copy::name).thenComparing(Copy::path).reversed());
        return copies;
    }

    /** Deletes the copies of a file that need not be kept any longer. To keep too many does no harm. */
    void pruneIfPossible(String name, LocalDate today) {
        try {
            List<Copy> copies = all(name);
            List<Copy> kept = worthKeeping(copies, today);
            for (Copy copy : copies) {
                if (!kept.contains(copy)) {
                    Files.deleteIfExists(copy.path());
                }
            }
        } catch (IOException e) {
            // the book is written, which is what was asked; the next time prunes again
        }
    }

    /** Returns the copies to be kept, of copies that come newest first. */
    static List<Copy> worthKeeping(List<Copy> copies, LocalDate today) {
        Map<Object, Integer> used = new HashMap<>();
        List<Copy> kept = new ArrayList<>();
        for (Copy copy : copies) {
            LocalDate day = copy.time().toLocalDate();
            boolean sameDay = !day.isBefore(today);
            Object slot = sameDay || !day.isBefore(today.minusDays(DAYS)) ? day : YearMonth.from(day);
            if (used.merge(slot, 1, Integer::sum) <= (sameDay ? SAME_DAY : 1)) {
                kept.add(copy);
            }
        }
        return kept;
    }

    private static LocalDateTime time(String rest) {
        boolean numbered = rest.matches(".{" + STAMP_LENGTH + "}(-\\d+)?\\.json");
        try {
            return numbered ? LocalDateTime.parse(rest.substring(0, STAMP_LENGTH), STAMP) : null;
        } catch (DateTimeParseException e) {
            return null;
        }
    }
}
