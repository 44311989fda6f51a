package org.hearthrule.law;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.hearthrule.input.Problem;
import org.hearthrule.input.Problems;
import org.hearthrule.terms.Subjects;

/** Reads the profiles given as arguments and prints every problem; for whoever writes a profile. */
public final class LintMain {

    private LintMain() { }

    /** @param files paths of profiles; the exit code is 1 when one of them has an error */
    public static void main(String[] files) {
        Problems problems = new Problems();
        ProfileReader reader = new ProfileReader(Subjects::known, Subjects.ids());
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
