package org.hearthrule.cli;

import java.io.IOException;
import org.hearthrule.checklist.CalendarFile;
import org.hearthrule.checklist.CalendarWriter;
import org.hearthrule.checklist.Checklist;
import org.hearthrule.checklist.JsonWriter;
import org.hearthrule.checklist.TextWriter;
import org.hearthrule.input.BadInputException;
import org.hearthrule.terms.Wording;
import picocli.CommandLine.Model.CommandSpec;

/** Hands over a checklist in the format that was asked for. Shared by {@code check} and {@code deadlines}. */
final class Delivery {

    private Delivery() { }

    static void options(CommandSpec spec) {
        Options.option(spec, "--format", "FORMAT");
        Options.option(spec, "--out", "FILE");
        Options.flag(spec, "--all");
        Options.flag(spec, "--strict");
    }

    /**
     * @param key what tells this family's calendar from others
     * @return the exit code
     */
    static int of(Checklist checklist, String key, Given given, Output output) throws BadInputException, IOException {
        Wording wording = Wording.english();
        switch (output.format()) {
            case "json" -> output.data(new JsonWriter(wording).write(checklist));
            case "ics" -> {
                CalendarFile previous = output.previousCalendar();
                given.throwIfErrors();
                output.data(new CalendarWriter(wording, given.is("--names")).write(checklist, key, previous));
            }
            default -> output.text(TextWriter.write(checklist, given.is("--all"), wording, output.style()));
        }
        return given.is("--strict") && checklist.needsCare() ? Exit.NEEDS_CARE : Exit.OK;
    }
}
