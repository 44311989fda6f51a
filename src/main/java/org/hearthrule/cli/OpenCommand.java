package org.hearthrule.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import org.hearthrule.input.BadInputException;
import org.hearthrule.page.PageServer;
import org.hearthrule.page.frame.Settings;
import org.hearthrule.terms.Wording;
import picocli.CommandLine.Model.CommandSpec;

/** {@code open [BOOK]}: the local page. Its first line is an address that opens it once. */
final class OpenCommand implements Command {

    /** Calendar programs remember the address, so it should be the same each time. From the range nobody owns by habit. */
    private static final int USUAL_PORT = 8614;
    private static final int LAST_PORT = 65_535;

    @Override
    public void describe(CommandSpec spec) {
        Options.optionalParameter(spec, 0, "BOOK");
        Options.option(spec, "--port", "N");
        Options.flag(spec, "--no-browser");
        Options.flag(spec, "--demo");
        Options.option(spec, "--as-of", "DATE");
    }

    @Override
    public int run(Given given, Terminal terminal) throws BadInputException, IOException {
        Places places = Places.ofProcess(terminal);
        Path book = given.text("BOOK") == null ? places.book() : given.path("BOOK");
        if (book != null && Files.exists(book) && !Files.isDirectory(book)) {
            given.problem(given.text("BOOK"), "NOT-A-FOLDER", "the file " + book, "the folder of a record book", null);
        }
        LocalDate asOf = given.date("--as-of");
        Integer port = port(given);
        var profiles = Laws.open(given);
        given.throwIfErrors();
        Settings settings = new Settings(book, places.demo(), given.is("--demo"), profiles, Clock.systemDefaultZone(),
                asOf, port == null ? USUAL_PORT : port, Hearthrule.version());
        try (PageServer server = start(settings, port == null, terminal)) {
            tell(server, given, terminal);
            return Exit.OK;
        }
    }

    /** The usual port may be taken by another book that is open: then any free one will do. */
    private static PageServer start(Settings settings, boolean anyPort, Terminal terminal) throws IOException {
        try {
            return PageServer.start(settings);
        } catch (IOException e) {
            if (!anyPort) {
                throw e;
            }
            PageServer server = PageServer.start(new Settings(settings.book(), settings.demo(), settings.startInDemo(),
                    settings.profiles(), settings.clock(), settings.asOf(), 0, settings.version()));
            terminal.error(Wording.english().say("open.other-port", Integer.toString(USUAL_PORT)) + '\n');
            return server;
        }
    }

    private static void tell(PageServer server, Given given, Terminal terminal) {
        Wording wording = Wording.english();
        String address = server.newStartAddress();
        terminal.print(address + '\n');
        if (!given.is("--no-browser")) {
            Browser.open(address);
        }
        terminal.print(wording.say("open.running", server.house().ownFolder()) + '\n');
        // a line typed asks for a new address; the end of the input leaves it running until it is stopped
        while (terminal.readLine() != null) {
            String next = server.newStartAddress();
            terminal.print(next + '\n');
            if (!given.is("--no-browser")) {
                Browser.open(next);
            }
        }
        try {
            Thread.currentThread().join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static Integer port(Given given) {
        String typed = given.text("--port");
        if (typed == null) {
            return null;
        }
        boolean digits = !typed.isEmpty() && typed.length() < 6 && typed.chars().allMatch(c -> c >= '0' && c <= '9');
        int port = digits ? Integer.parseInt(typed) : -1;
        if (port < 0 || port > LAST_PORT) {
            given.problem(typed, "WRONG-PORT", '"' + typed + '"', "a number from 0 (any free port) to " + LAST_PORT, null);
        }
        return port;
    }
}
