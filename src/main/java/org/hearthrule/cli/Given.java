package org.hearthrule.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.hearthrule.input.BadInputException;
import org.hearthrule.input.Fields;
import org.hearthrule.input.Mapping;
import org.hearthrule.input.Place;
import org.hearthrule.input.Problems;
import org.hearthrule.input.Scalar;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/**
 * What was given on the command line, read as strictly as a file: problems carry the place in the line as it was
 * typed, and all are reported in one run. Not safe for use by several threads at once.
 */
final class Given {

    private static final String FILE = "command line";

    private final ParseResult result;
    private final List<String> words;
    private final Problems problems = new Problems();
    private Fields fields;

    Given(ParseResult result, List<String> words) {
        this.result = result;
        this.words = words;
        problems.register(FILE, typed(words.size()));
    }

    /** The line as it was typed, up to a word. */
    private String typed(int end) {
        StringBuilder line = new StringBuilder("hearthrule");
        for (String word : words.subList(0, end)) {
            boolean plain = !word.isEmpty() && word.indexOf(' ') < 0;
            line.append(' ').append(plain ? word : '"' + word + '"');
        }
        return line.toString();
    }

    Problems problems() {
        return problems;
    }

    void throwIfErrors() throws BadInputException {
        problems.throwIfErrors();
    }

    boolean is(String flag) {
        return result.hasMatchedOption(flag);
    }

    /** @return the value of an option or, by its label, of a parameter; null when it was not given */
    String text(String name) {
        List<String> all = texts(name);
        return all.isEmpty() ? null : all.get(all.size() - 1);
    }

    /** @return all values of an option or parameter, in the order of typing */
    List<String> texts(String name) {
        ArgSpec spec = spec(name);
        return spec == null ? List.of() : spec.stringValues();
    }

    private ArgSpec spec(String name) {
        if (name.startsWith("-")) {
            return result.matchedOption(name);
        }
        for (PositionalParamSpec parameter : result.matchedPositionals()) {
            if (parameter.paramLabel().equals(name)) {
                return parameter;
            }
        }
        return null;
    }

    /** @return the day of an option; null when it was not given or is none, which is then a problem */
    LocalDate date(String option) {
        return fields().optionalDate(option).orElse(null);
    }

    /** @return the day of {@code --as-of}, or today */
    LocalDate asOf(Terminal terminal) {
        LocalDate day = date("--as-of");
        return day == null ? terminal.today() : day;
    }

    /** @return the value of an option that must be one of a few words; the first of them when it was not given */
    String oneOf(String option, List<String> words) {
        return fields().optionalOneOf(option, words).orElse(words.get(0));
    }

    /** @return a date written inside another value; null when it is none, which is then a problem */
    LocalDate date(String value, String dateText) {
        Scalar scalar = new Scalar(place(value), dateText, Scalar.Form.QUOTED);
        Mapping mapping = new Mapping(place(value), List.of(new Mapping.Entry(scalar("date"), scalar)));
        return Fields.of(mapping, problems, "the value").date("date");
    }

    /** @return the path of an option or parameter; null when it was not given or is none, which is then a problem */
    Path path(String name) {
        String text = text(name);
        if (text == null) {
            return null;
        }
        try {
            return Path.of(text);
        } catch (InvalidPathException e) {
            problem(text, "NOT-A-PATH", '"' + text + '"', "the name of a file or folder", null);
            return null;
        }
    }

    /** Adds a problem at the place of a value. */
    void problem(String value, String code, String found, String expected, String perhaps) {
        problems.error(place(value), code, found, expected, perhaps);
    }

    /** Adds the problem of a word that is none of those known. */
    void unknown(String value, String code, String what, Collection<String> known) {
        String nearest = org.hearthrule.input.Nearest.of(value, known).map(word -> "you meant " + word).orElse(null);
        problem(value, code, "the " + what + " \"" + value + '"', "one of " + String.join(", ", known), nearest);
    }

    /** @return where a value stands in the line as it was typed */
    Place place(String value) {
        for (int i = 0; i < words.size(); i++) {
            String word = words.get(i);
            if (word.equals(value) || word.endsWith("=" + value)) {
                int column = typed(i).length() + 2 + word.length() - value.length() + (word.indexOf(' ') < 0 ? 0 : 1);
                return new Place(FILE, 1, column);
            }
        }
        return new Place(FILE, 1, 1);
    }

    private Fields fields() {
        if (fields == null) {
            List<Mapping.Entry> entries = new ArrayList<>();
            for (OptionSpec option : result.matchedOptions()) {
                if (option.stringValues().size() == 1) {
                    String value = option.stringValues().get(0);
                    entries.add(new Mapping.Entry(scalar(option.longestName()),
                            new Scalar(place(value), value, Scalar.Form.QUOTED)));
                }
            }
            fields = Fields.of(new Mapping(new Place(FILE, 1, 1), entries), problems, "the options");
        }
        return fields;
    }

    private static Scalar scalar(String text) {
        return new Scalar(new Place(FILE, 1, 1), text, Scalar.Form.QUOTED);
    }
}
