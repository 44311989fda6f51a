package org.hearthrule.cli;

import java.io.IOException;
import org.hearthrule.input.BadInputException;
import picocli.CommandLine.Model.CommandSpec;

/** One command of the program. */
interface Command {

    /** Adds the command's parameters and options. */
    void describe(CommandSpec spec);

    /**
     * Does it.
     *
     * @return an exit code
     * @throws BadInputException with every problem of what was given
     */
    int run(Given given, Terminal terminal) throws BadInputException, IOException;
}
