package org.hearthrule.records;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Set;

/** Which paths a copy of a book may hold: those that lead into the book and nowhere else, on every kind of computer. */
final class BookArchivePath {

    /** Names of devices on Windows, with any ending (Microsoft, Naming Files, Paths, and Namespaces; from memory). */
    private static final Set<String> DEVICES = Set.of("con", "prn", "aux", "nul", "com1", "com2", "com3", "com4", "com5", "com6",
            "com7", "com8", "com9", "lpt1", "lpt2", "lpt3", "lpt4", "lpt5", "lpt6", "lpt7", "lpt8", "lpt9");
    private static final int LONGEST = 1_000;

    private BookArchivePath() { }

    /** Returns what is wrong with a path, as a phrase that follows "found"; null when it is fine. */
    static String fault(String path) {
        if (path.isEmpty() || path.length() > LONGEST) {
            return "a path of " + path.length() + " characters";
        }
        if (path.chars().anyMatch(c -> c < ' ' || c >= 0x7F && c < 0xA0 || c == 0xFFFD)) {
            return "a path with a character that cannot be seen";
        }
        if (path.startsWith("/") || path.indexOf(':') >= 0) {
            return "a path that is absolute or names a drive";
        }
        if (path.indexOf('\\') >= 0) {
            return "a path with a backslash";
        }
        for (String part : path.split("/", -1)) {
            String fault = partFault(part);
            if (fault != null) {
                return fault;
            }
        }
        return null;
    }

    private static String partFault(String part) {
        if (part.equals("..")) {
            return "a path that leads up";
        }
        if (part.isEmpty()) {
            return "a path with an empty part, or a folder";
        }
        if (part.startsWith(".")) {
            return "a hidden file or folder";
        }
        String stem = part.indexOf('.') < 0 ? part : part.substring(0, part.indexOf('.'));
        boolean windowsDropsIt = part.endsWith(".") || part.endsWith(" ") || DEVICES.contains(stem.strip().toLowerCase(Locale.ROOT));
        return windowsDropsIt ? "a name that not every computer can have" : null;
    }

    /** Returns the same text for paths that one computer or another takes for the same. */
    static String folded(String path) {
        return Normalizer.normalize(path, Normalizer.Form.NFC).toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT);
    }
}
