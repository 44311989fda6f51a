package org.hearthrule.cli;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.hearthrule.terms.Wording;

/** What is said when something goes wrong inside the program: one calm sentence, never a stack trace. */
final class Mishap {

    private static final String ASKED_FOR = "HEARTHRULE_DEBUG";

    private Mishap() { }

    /**
     * @return the sentence; a report for whoever mends the program is written only when HEARTHRULE_DEBUG is 1, and
     *         holds names of classes and lines of code, no message and no value, since those may be personal
     */
    static String report(Throwable mishap, Terminal terminal) {
        Wording wording = Wording.english();
        if (!"1".equals(terminal.environment(ASKED_FOR))) {
            return wording.say("mishap") + '\n';
        }
        try {
            Path report = Files.createTempFile("hearthrule-", ".txt");
            Files.writeString(report, trace(mishap));
            return wording.say("mishap.report", report) + '\n';
        } catch (IOException e) {
            return wording.say("mishap") + '\n';
        }
    }

    /** @return what is said when a file cannot be read or written */
    static String file(FileSystemException mishap) {
        Wording wording = Wording.english();
        return wording.say("mishap.file", mishap.getFile(), wording.say("mishap.file." + fileReason(mishap))) + '\n';
    }

    private static String fileReason(FileSystemException file) {
        if (file instanceof java.nio.file.NoSuchFileException) {
            return "missing";
        }
        return file instanceof java.nio.file.AccessDeniedException ? "denied" : "other";
    }

    private static String trace(Throwable mishap) {
        StringBuilder text = new StringBuilder("Hearthrule ").append(Hearthrule.version()).append(", Java ")
                .append(Runtime.version()).append('\n');
        for (Throwable t = mishap; t != null; t = t.getCause() == t ? null : t.getCause()) {
            text.append(t.getClass().getName()).append('\n');
            for (StackTraceElement element : t.getStackTrace()) {
                text.append("    at ").append(element).append('\n');
            }
        }
        return text.toString();
    }
}
