package org.hearthrule.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.hearthrule.checklist.LintReport;
import org.hearthrule.input.BadInputException;
import org.hearthrule.law.ProfileReader;
import org.hearthrule.law.Profiles;
import org.hearthrule.terms.Wording;
import picocli.CommandLine.Model.CommandSpec;

/** {@code lint [FILES|--all]}: every problem of profiles, for whoever changes one. */
final class LintCommand implements Command {

    @Override
    public void describe(CommandSpec spec) {
        Options.parameters(spec, "FILES");
        Options.flag(spec, "--all");
        Options.option(spec, "--format", "FORMAT");
    }

    @Override
    public int run(Given given, Terminal terminal) throws BadInputException, IOException {
        String format = given.oneOf("--format", List.of("text", "json"));
        List<String> files = given.texts("FILES");
        List<Path> paths = paths(files, given);
        Profiles profiles = Laws.open(given);
        given.throwIfErrors();
        int read = files.isEmpty() || given.is("--all") ? all(profiles, given) : 0;
        ProfileReader reader = Laws.reader();
        for (Path path : paths) {
            reader.read(path, given.problems());
        }
        LintReport report = new LintReport(given.problems().all(), read + paths.size());
        if (format.equals("json")) {
            terminal.printUtf8(report.json());
        } else {
            terminal.print(report.text(Wording.english(), terminal.style()));
        }
        return given.problems().hasErrors() ? Exit.BAD_INPUT : Exit.OK;
    }

    private static int all(Profiles profiles, Given given) {
        List<String> codes = profiles.codes();
        codes.forEach(code -> Laws.find(profiles, code, given));
        return codes.size();
    }

    /** A folder stands for the profiles in it. */
    private static List<Path> paths(List<String> files, Given given) throws IOException {
        List<Path> paths = new ArrayList<>();
        for (String file : files) {
            try {
                Path path = Path.of(file);
                if (Files.isDirectory(path)) {
                    try (Stream<Path> inside = Files.list(path)) {
                        inside.filter(p -> p.toString().endsWith(".yaml")).sorted().forEach(paths::add);
                    }
                } else {
                    paths.add(path);
                }
            } catch (InvalidPathException e) {
                given.problem(file, "NOT-A-PATH", '"' + file + '"', "the name of a file or folder", null);
            }
        }
        return paths;
    }
}
