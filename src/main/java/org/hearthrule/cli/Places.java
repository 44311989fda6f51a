package org.hearthrule.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/**
 * Where things lie on this kind of computer: a family's book among its documents, what the program keeps for itself in
 * the folder the system has for that (XDG on Linux).
 */
record Places(String system, Path home, java.util.Map<String, String> environment) {

    static Places ofProcess(Terminal terminal) {
        return new Places(System.getProperty("os.name"), Path.of(System.getProperty("user.home")), terminal.environment());
    }

    /** @return the folder of a book that nobody named */
    Path book() {
        Path documents = home.resolve("Documents");
        return (Files.isDirectory(documents) ? documents : home).resolve("Hearthrule");
    }

    /** @return a place of its own for the invented family */
    Path demo() {
        return ownData().resolve("demo-family");
    }

    private Path ownData() {
        String name = system.toLowerCase(Locale.ROOT);
        if (name.startsWith("windows")) {
            String local = environment.get("LOCALAPPDATA");
            return (local == null ? home.resolve("AppData").resolve("Local") : Path.of(local)).resolve("Hearthrule");
        }
        if (name.startsWith("mac")) {
            return home.resolve("Library").resolve("Application Support").resolve("Hearthrule");
        }
        String xdg = environment.get("XDG_DATA_HOME");
        boolean usable = xdg != null && Path.of(xdg).isAbsolute();
        return (usable ? Path.of(xdg) : home.resolve(".local").resolve("share")).resolve("hearthrule");
    }
}
