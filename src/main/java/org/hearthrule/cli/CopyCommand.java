package org.hearthrule.cli;

import java.io.IOException;
import org.hearthrule.input.BadInputException;
import picocli.CommandLine.Model.CommandSpec;

/** {@code copy BOOK --out FILE.zip}: the whole book, with its photos and scans, as one file. */
final class CopyCommand implements Command {

    @Override
    public void describe(CommandSpec spec) {
        Options.parameter(spec, 0, "BOOK");
        Options.required(spec, "--out", "FILE.zip");
    }

    @Override
    public int run(Given given, Terminal terminal) throws BadInputException, IOException {
        return WholeCopy.write(given, terminal);
    }
}
