package org.hearthrule.cli;

import java.util.ArrayList;
import java.util.List;
import org.hearthrule.input.Nearest;
import org.hearthrule.terms.Wording;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** What is said when a command line is not understood: what, a suggestion, and one line of usage. */
final class Usage {

    private Usage() { }

    static String unknownCommand(List<String> words) {
        Wording wording = Wording.english();
        boolean option = words.get(0).startsWith("-");
        String typed = words.get(0);
        List<String> known = new ArrayList<>(Commands.names());
        known.add("import");
        String found = typed.equals("import") && words.size() > 1 ? typed + ' ' + words.get(1) : typed;
        String first = wording.say(option ? "usage.unknown-option" : "usage.unknown-command", found);
        String perhaps = option ? "" : Nearest.of(found, known)
                .map(name -> ' ' + wording.say("usage.perhaps", name.equals("import") ? "import log" : name)).orElse("");
        return first + perhaps + '\n' + wording.say("usage.program", String.join(", ", Commands.names())) + '\n';
    }

    static String mistake(String name, ParameterException mistake) {
        Wording wording = Wording.english();
        CommandSpec spec = mistake.getCommandLine().getCommandSpec();
        return what(wording, spec, mistake) + '\n' + wording.say("usage.line", Help.usage(name)) + '\n'
                + wording.say("usage.more", name) + '\n';
    }

    private static String what(Wording wording, CommandSpec spec, ParameterException mistake) {
        if (mistake instanceof UnmatchedArgumentException unmatched && !unmatched.getUnmatched().isEmpty()) {
            return unmatched(wording, spec, unmatched.getUnmatched().get(0));
        }
        if (mistake instanceof MissingParameterException missing && !missing.getMissing().isEmpty()) {
            List<String> labels = missing.getMissing().stream().map(Usage::label).toList();
            return wording.say("usage.missing", wording.and(labels));
        }
        if (mistake.getArgSpec() instanceof OptionSpec option) {
            return wording.say(option.arity().max() == 0 ? "usage.no-value" : "usage.once-with-value",
                    option.longestName());
        }
        return wording.say("usage.not-understood");
    }

    private static String label(ArgSpec missing) {
        return missing instanceof OptionSpec option ? option.longestName() + ' ' + option.paramLabel()
                : missing.paramLabel();
    }

    private static String unmatched(Wording wording, CommandSpec spec, String word) {
        if (!word.startsWith("-")) {
            return wording.say("usage.too-much", word);
        }
        int equals = word.indexOf('=');
        String option = equals < 0 ? word : word.substring(0, equals);
        List<String> known = spec.options().stream().map(OptionSpec::longestName).toList();
        String perhaps = Nearest.of(option, known).map(name -> ' ' + wording.say("usage.perhaps", name)).orElse("");
        return wording.say("usage.unknown-option", option) + perhaps;
    }
}
