package org.hearthrule.cli;

import java.nio.file.FileSystemException;
import java.util.List;
import org.hearthrule.input.BadInputException;
import org.hearthrule.records.BookBusyException;
import org.hearthrule.records.ChangedMeanwhileException;
import org.hearthrule.records.UnknownVersionException;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/** The command line's entrance. */
public final class Hearthrule {

    static final String NAME = "hearthrule";

    private Hearthrule() { }

    public static void main(String[] args) {
        System.exit(run(args, Terminal.ofProcess()));
    }

    /**
     * Runs one command. Never ends the process and never throws.
     *
     * @return the exit code
     */
    public static int run(String[] args, Terminal terminal) {
        try {
            return dispatch(List.of(args), terminal);
        } catch (BadInputException e) {
            terminal.error(Complaints.of(e.problems()));
            return Exit.BAD_INPUT;
        } catch (BookBusyException | ChangedMeanwhileException | UnknownVersionException e) {
            terminal.error(e.getMessage() + '\n');
            return Exit.BAD_INPUT;
        } catch (FileSystemException e) {
            terminal.error(Mishap.file(e));
            return Exit.BAD_INPUT;
        } catch (Throwable e) {
            terminal.error(Mishap.report(e, terminal));
            return Exit.INTERNAL;
        }
    }

    private static int dispatch(List<String> words, Terminal terminal) throws Exception {
        if (words.isEmpty() || List.of("--help", "-h", "help").contains(words.get(0))) {
            return help(words, terminal);
        }
        if (words.get(0).equals("--version") || words.get(0).equals("-V")) {
            terminal.print("Hearthrule " + version() + '\n');
            return Exit.OK;
        }
        if (words.equals(List.of("rehearse"))) {
            return Rehearsal.run();
        }
        String name = commandName(words);
        if (name == null) {
            terminal.error(Usage.unknownCommand(words));
            return Exit.NOT_UNDERSTOOD;
        }
        List<String> rest = words.subList(name.indexOf(' ') < 0 ? 1 : 2, words.size());
        Command command = Commands.make(name);
        CommandLine line = commandLine(name, command);
        try {
            ParseResult result = line.parseArgs(rest.toArray(String[]::new));
            if (result.isUsageHelpRequested()) {
                terminal.print(Help.of(name, line.getCommandSpec(), terminal.style()));
                return Exit.OK;
            }
            return command.run(new Given(result, words), terminal);
        } catch (ParameterException e) {
            terminal.error(Usage.mistake(name, e));
            return Exit.NOT_UNDERSTOOD;
        }
    }

    static CommandLine commandLine(String name, Command command) {
        CommandSpec spec = CommandSpec.create().name(name);
        command.describe(spec);
        Options.common(spec);
        return new CommandLine(spec);
    }

    /** The command that the first words name, or null. A command may have two words. */
    private static String commandName(List<String> words) {
        String two = words.size() > 1 ? words.get(0) + ' ' + words.get(1) : "";
        return Commands.has(two) ? two : Commands.has(words.get(0)) ? words.get(0) : null;
    }

    private static int help(List<String> words, Terminal terminal) {
        List<String> about = words.isEmpty() ? words : words.subList(1, words.size());
        String name = about.isEmpty() ? null : commandName(about);
        if (!about.isEmpty() && name == null) {
            terminal.error(Usage.unknownCommand(about));
            return Exit.NOT_UNDERSTOOD;
        }
        terminal.print(name == null ? Help.all(terminal.style())
                : Help.of(name, commandLine(name, Commands.make(name)).getCommandSpec(), terminal.style()));
        return Exit.OK;
    }

    /** @return the version from the jar's manifest */
    static String version() {
        String version = Hearthrule.class.getPackage().getImplementationVersion();
        return version == null ? "(not packaged)" : version;
    }
}
