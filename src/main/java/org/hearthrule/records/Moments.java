package org.hearthrule.records;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.hearthrule.input.BadInputException;
import org.hearthrule.input.Problems;

/**
 * The points in time a book can be put back to, all of its files together. A file is then as it was written last before
 * that time; one of which no such version is kept stays as it is.
 */
public final class Moments {

    private final Path folder;
    private final ZoneId zone;

    /** @param zone in which the times are told */
    public Moments(Path folder, ZoneId zone) {
        this.folder = folder;
        this.zone = zone;
    }

    /** @return the times, the newest first, without the present state */
    public List<LocalDateTime> all() throws IOException {
        TreeSet<LocalDateTime> times = new TreeSet<>();
        new Copies(folder).all().forEach(copy -> times.add(copy.time()));
        return List.copyOf(times.descendingSet());
    }

    /**
     * @param moment one of {@link #all()}
     * @param now    the book as it is
     * @return the book as it was then
     * @throws BadInputException when a version that is kept cannot be read
     */
    public Book at(LocalDateTime moment, Book now) throws IOException, BadInputException {
        Map<String, String> texts = new TreeMap<>();
        Map<String, String> present = BookText.files(now);
        for (String name : present.keySet()) {
            Optional<Path> version = version(name, moment);
            texts.put(name, version.isPresent() ? Files.readString(version.get(), StandardCharsets.UTF_8) : present.get(name));
        }
        Problems problems = new Problems();
        Optional<Book> book = BookReader.read(texts, problems);
        problems.throwIfErrors();
        Book then = book.orElseThrow();
        return new Book(now.folder(), then.familyName(), then.students(), then.persons(), then.placements(), then.events(),
                then.facts(), then.answers(), then.years());
    }

    /** The version written last before the moment or at it: a copy, or the file itself. Within one second the copy is meant. */
    private Optional<Path> version(String name, LocalDateTime moment) throws IOException {
        List<Copy> versions = new ArrayList<>(new Copies(folder).all(name));
        Path file = folder.resolve(name);
        if (Files.isRegularFile(file)) {
            LocalDateTime written = LocalDateTime.ofInstant(Files.getLastModifiedTime(file).toInstant(), zone)
                    .truncatedTo(ChronoUnit.SECONDS);
            versions.add(new Copy(name, written, file));
        }
        return versions.stream().filter(version -> !version.time().isAfter(moment)).max(Comparator.comparing(Copy::time)
                .thenComparing(version -> !version.path().equals(file)))
                .map(Copy::path);
    }
}
