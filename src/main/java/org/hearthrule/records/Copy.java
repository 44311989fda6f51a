package org.hearthrule.records;

import java.nio.file.Path;
import java.time.LocalDateTime;

/**
 * An earlier version of a file of a book, kept in the folder {@code .copies}.
 *
 * @param name name of the file it was, for example {@code 2026-27.json}
 * @param time when that version was written, by the clock of the computer
 * @param path where the copy lies
 */
public record Copy(String name, LocalDateTime time, Path path) {
}
