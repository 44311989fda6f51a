package org.hearthrule.cli;

import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** Parameters and options as the commands share them. All values are taken as text and read by {@link Given}. */
final class Options {

    private Options() { }

    /** A parameter that must be there. */
    static void parameter(CommandSpec spec, int index, String label) {
        spec.addPositional(PositionalParamSpec.builder().index(Integer.toString(index)).arity("1").required(true)
                .type(String.class).paramLabel(label).build());
    }

    /** A parameter that may be left out. */
    static void optionalParameter(CommandSpec spec, int index, String label) {
        spec.addPositional(PositionalParamSpec.builder().index(Integer.toString(index)).arity("0..1")
                .type(String.class).paramLabel(label).build());
    }

    /** Parameters, any number of them. */
    static void parameters(CommandSpec spec, String label) {
        spec.addPositional(PositionalParamSpec.builder().index("0..*").arity("0..*").type(List.class)
                .auxiliaryTypes(String.class).paramLabel(label).build());
    }

    static void option(CommandSpec spec, String name, String label) {
        spec.addOption(OptionSpec.builder(name).arity("1").type(String.class).paramLabel(label).build());
    }

    static void required(CommandSpec spec, String name, String label) {
        spec.addOption(OptionSpec.builder(name).arity("1").type(String.class).paramLabel(label).required(true).build());
    }

    /** An option that may be given several times, or once with several values. */
    static void repeated(CommandSpec spec, String name, String label) {
        spec.addOption(OptionSpec.builder(name).arity("1..*").type(List.class).auxiliaryTypes(String.class)
                .paramLabel(label).build());
    }

    static void flag(CommandSpec spec, String... names) {
        spec.addOption(OptionSpec.builder(names).arity("0").type(boolean.class).build());
    }

    /** {@code --jurisdictions} and {@code --help}: on every command. */
    static void common(CommandSpec spec) {
        option(spec, "--jurisdictions", "DIR");
        spec.addOption(OptionSpec.builder("--help", "-h").arity("0").type(boolean.class).usageHelp(true).build());
    }
}
