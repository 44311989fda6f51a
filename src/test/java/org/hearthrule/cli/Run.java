package org.hearthrule.cli;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Map;

/** A command run in this process, and what came of it. */
record Run(int exit, String out, String err) {

    static final LocalDate TODAY = LocalDate.of(2027, 3, 1);

    static Run of(String... args) {
        return with("", Map.of(), false, StandardCharsets.UTF_8, args);
    }

    static Run typing(String typed, String... args) {
        return with(typed, Map.of(), false, StandardCharsets.UTF_8, args);
    }

    static Run with(String typed, Map<String, String> environment, boolean interactive, Charset charset, String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Terminal terminal = new Terminal(new ByteArrayInputStream(typed.getBytes(charset)), out, err, charset, interactive,
                environment, TODAY);
        int exit = Hearthrule.run(args, terminal);
        return new Run(exit, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }
}
