package org.hearthrule.page.frame;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Where a calendar program on this machine fetches the dates; it has no cookie, and a secret in the address instead. The
 * secret lies with the book, so that the address stays the same.
 */
public final class CalendarKey {

    public static final String PATH = "/calendar/";
    public static final String ENDING = ".ics";

    private CalendarKey() { }

    static boolean isItsPath(String path) {
        return path.startsWith(PATH) && path.endsWith(ENDING);
    }

    /** @return the secret of a book; made when there is none yet */
    public static synchronized String of(Path folder) throws IOException {
        Path file = OwnFolder.of(folder).resolve("calendar-key");
        if (Files.isRegularFile(file)) {
            String word = Files.readString(file).strip();
            if (word.matches("[A-Za-z0-9_-]{43}")) {
                return word;
            }
        }
        String word = Secret.fresh().word();
        Files.writeString(file, word + '\n');
        return word;
    }
}
