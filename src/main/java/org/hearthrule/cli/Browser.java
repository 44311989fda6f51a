package org.hearthrule.cli;

import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** Asks the system to open an address in the browser of whoever sits here. The address stands on the terminal too. */
final class Browser {

    private Browser() { }

    static void open(String address) {
        try {
            // its words are for nobody, and it goes on when we end
            new ProcessBuilder(command(System.getProperty("os.name").toLowerCase(Locale.ROOT), address))
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD).redirectError(ProcessBuilder.Redirect.DISCARD).start();
        } catch (IOException e) {
            return; // there is none; the address on the terminal can be opened by hand
        }
    }

    private static List<String> command(String system, String address) {
        if (system.startsWith("windows")) {
            return List.of("rundll32", "url.dll,FileProtocolHandler", address);
        }
        return List.of(system.startsWith("mac") ? "open" : "xdg-open", address);
    }
}
