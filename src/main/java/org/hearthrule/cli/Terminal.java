package org.hearthrule.cli;

import java.io.BufferedReader;
import java.io.Console;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Map;
import org.hearthrule.checklist.Style;
import org.hearthrule.input.Problems;

/**
 * Where a command reads and writes, what that place can show, and what day it is.
 *
 * <p>Not safe for use by several threads at once.
 */
public final class Terminal {

    private static final int JAVA_WITH_IS_TERMINAL = 22;

    private final InputStream in;
    private final OutputStream out;
    private final OutputStream err;
    private final Charset charset;
    private final boolean interactive;
    private final Map<String, String> environment;
    private final LocalDate today;
    private BufferedReader lines;

    /**
     * @param charset     of text; JSON and calendars are UTF-8 in any case
     * @param interactive a person sits at it: weight and a colour may be used
     * @param environment environment variables
     */
    public Terminal(InputStream in, OutputStream out, OutputStream err, Charset charset, boolean interactive,
                    Map<String, String> environment, LocalDate today) {
        this.in = in;
        this.out = out;
        this.err = err;
        this.charset = charset;
        this.interactive = interactive;
        this.environment = environment;
        this.today = today;
    }

    /** @return the terminal this process was started on */
    static Terminal ofProcess() {
        String encoding = System.getProperty("stdout.encoding", System.getProperty("sun.stdout.encoding"));
        Charset charset = encoding == null ? Charset.defaultCharset() : charset(encoding);
        return new Terminal(System.in, System.out, System.err, charset, isTerminal(System.console()), System.getenv(),
                LocalDate.now());
    }

    /** From Java 22 on there is a console even where nobody sits at it, and a method that says so. */
    private static boolean isTerminal(Console console) {
        if (console == null || Runtime.version().feature() < JAVA_WITH_IS_TERMINAL) {
            return console != null;
        }
        try {
            return (Boolean) Console.class.getMethod("isTerminal").invoke(console);
        } catch (ReflectiveOperationException e) {
            return false;
        }
    }

    private static Charset charset(String name) {
        try {
            return Charset.forName(name);
        } catch (IllegalArgumentException e) {
            return Charset.defaultCharset();
        }
    }

    LocalDate today() {
        return today;
    }

    /** @return an environment variable, or null */
    String environment(String name) {
        return environment.get(name);
    }

    Map<String, String> environment() {
        return environment;
    }

    /** @return what text may use here; NO_COLOR (any value that is not empty) turns weight and colour off */
    Style style() {
        String noColor = environment.get("NO_COLOR");
        String term = environment.get("TERM");
        boolean weight = interactive && (noColor == null || noColor.isEmpty()) && !"dumb".equals(term);
        return new Style(Style.COLUMNS, unicode(), weight);
    }

    private boolean unicode() {
        return charset.name().startsWith("UTF");
    }

    void print(String text) {
        write(out, text.getBytes(charset));
    }

    /** Prints a file's text: UTF-8, whatever the terminal shows. */
    void printUtf8(String text) {
        write(out, text.getBytes(StandardCharsets.UTF_8));
    }

    void error(String text) {
        write(err, text.getBytes(charset));
    }

    /** Tells of what can be used but should be looked at. */
    void warn(Problems problems) {
        if (!problems.isEmpty()) {
            error(Complaints.of(problems.all()));
        }
    }

    private static void write(OutputStream stream, byte[] bytes) {
        try {
            stream.write(bytes);
            stream.flush();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** @return the next line typed or piped in, or null at the end */
    String readLine() {
        if (lines == null) {
            lines = new BufferedReader(new InputStreamReader(in, charset));
        }
        try {
            return lines.readLine();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
