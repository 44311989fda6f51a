package org.hearthrule.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The program as it is shipped, in a process of its own.
 *
 * <p>Tests have the rule compiler and more on their class path. A class that the program needs and does not bring would
 * be found there, and every other test would pass while the program falls over at its first start.
 */
class ShippedIT {

    private static final String BOOK = "test-fixtures/books/tennick-landing";

    private record Ended(int exit, String out, String err) { }

    @Test
    void checksABookAsItDoesInTheTests() throws Exception {
        Ended ended = start("check", BOOK, "--as-of", "2026-05-20");

        assertThat(ended.err()).doesNotContain("Exception", "at org.");
        assertThat(ended.out()).isEqualTo(Run.of("check", BOOK, "--as-of", "2026-05-20").out());
        assertThat(ended.exit()).isZero();
    }

    @Test
    void countsBusinessDaysAndWritesCalendars() throws Exception {
        Ended ended = start("deadlines", "vermont", "--born", "2016-03-02", "--grade", "5", "--starts", "2026-11-30",
                "--as-of", "2026-11-01", "--format", "ics");

        // November 30 less ten business days, without Thanksgiving (5 U.S.C. 6103)
        assertThat(ended.out()).startsWith("BEGIN:VCALENDAR").contains("DTSTART;VALUE=DATE:20261113");
        assertThat(ended.exit()).isZero();
    }

    @Test
    void importsALog() throws Exception {
        Ended ended = start("import", "log", "test-fixtures/csv/no-such-file.csv", BOOK);

        assertThat(ended.err()).contains("no-such-file.csv").doesNotContain("Exception", "at org.");
        assertThat(ended.exit()).isEqualTo(3);
    }

    @Test
    void copiesABookAndPutsItBack(@TempDir Path folder) throws Exception {
        Path book = Files.createDirectory(folder.resolve("ours"));
        Files.copy(Path.of(BOOK, "family.json"), book.resolve("family.json"));
        String zip = folder.resolve("copy.zip").toString();
        Ended copied = start("copy", book.toString(), "--out", zip);
        Ended restored = start("restore", folder.resolve("book").toString(), "--from", zip, "--yes");

        assertThat(copied.err() + restored.err()).isEmpty();
        assertThat(folder.resolve("book/family.json")).hasSameTextualContentAs(Path.of(BOOK, "family.json"));
    }

    private static Ended start(String... args) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Dfile.encoding=UTF-8", "-Dstdout.encoding=UTF-8", "-jar", "target/hearthrule.jar"));
        command.addAll(List.of(args));
        File out = File.createTempFile("hearthrule", ".out");
        File err = File.createTempFile("hearthrule", ".err");
        try {
            ProcessBuilder builder = new ProcessBuilder(command).redirectOutput(out).redirectError(err);
            builder.environment().put("LC_ALL", "C.UTF-8");
            Process process = builder.start();
            assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
            return new Ended(process.exitValue(), Files.readString(out.toPath(), StandardCharsets.UTF_8),
                    Files.readString(err.toPath(), StandardCharsets.UTF_8));
        } finally {
            assertThat(out.delete() & err.delete()).isTrue();
        }
    }
}
