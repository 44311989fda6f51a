package org.hearthrule.law;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.hearthrule.input.Problem;
import org.hearthrule.input.Problems;

/** Reads the profiles given as arguments and prints every problem; for whoever writes a profile. */
public final class LintMain {

    private LintMain() { }

    /** @param files paths of profiles; the exit code is 1 when one of them has an error */
    public static void main(String[] files) {
        Problems problems = new Problems();
        ProfileReader reader = new ProfileReader(id -> true, List.of());
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        for (String file : files) {
            reader.read(Path.of(file), problems);
        }
        for (Problem problem : problems.all()) {
            out.println(problem.toText());
        }
        out.println(problems.all().size() + " problems in " + files.length + " files");
        System.exit(problems.hasErrors() ? 1 : 0);
    }
}
