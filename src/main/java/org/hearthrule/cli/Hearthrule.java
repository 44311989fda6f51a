package org.hearthrule.cli;

import java.util.concurrent.Callable;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The command line's entrance. */
@Command(name = "hearthrule",
        description = "Checks a home-educating family's record book against the law of their state.",
        mixinStandardHelpOptions = true,
        versionProvider = Hearthrule.Version.class)
public final class Hearthrule implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    public static void main(String[] args) {
        System.exit(new CommandLine(new Hearthrule()).execute(args));
    }

    @Override
    public Integer call() {
        spec.commandLine().usage(spec.commandLine().getOut());
        return CommandLine.ExitCode.OK;
    }

    /** Reads the version from the jar's manifest. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            String version = Hearthrule.class.getPackage().getImplementationVersion();
            return new String[] {"Hearthrule " + (version == null ? "(not packaged)" : version)};
        }
    }
}
