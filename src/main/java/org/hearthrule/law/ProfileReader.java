package org.hearthrule.law;

import java.nio.file.Path;
import java.util.Collection;
import java.util.Optional;
import java.util.function.Predicate;
import org.hearthrule.input.Node;
import org.hearthrule.input.Problem;
import org.hearthrule.input.Problems;
import org.hearthrule.input.Severity;
import org.hearthrule.input.YamlText;

/**
 * Reads a profile strictly and checks it as a whole. Every problem is recorded, none is thrown; the kinds of problems
 * are those of {@link ProfileFault}.
 *
 * <p>Safe for use by several threads when the predicate is.
 */
public final class ProfileReader {

    private final Predicate<String> subjectKnown;
    private final Collection<String> subjects;

    /**
     * Makes a reader.
     *
     * @param subjectKnown whether an id belongs to the common vocabulary of subjects
     * @param subjects     the ids that are suggested for a mistyped one
     */
    public ProfileReader(Predicate<String> subjectKnown, Collection<String> subjects) {
        this.subjectKnown = subjectKnown;
        this.subjects = subjects;
    }

    /**
     * Reads and checks one profile.
     *
     * @param file     name of the file as problems show it; its last part must be the code in small letters and
     *                 {@code .yaml}
     * @param content  text of the file
     * @param problems takes every problem
     * @return the profile; empty when there is an error (warnings leave it whole)
     */
    public Optional<Profile> read(String file, String content, Problems problems) {
        // problems of other files must not count against this one
        Problems own = new Problems();
        Node root = YamlText.read(file, content, own).orElse(null);
        Profile profile = null;
        if (root != null) {
            profile = new TopReader(new Scope(own, subjectKnown, subjects)).read(root, file, content);
        }
        if (!own.isEmpty()) {
            problems.register(file, content);
            for (Problem problem : own.all()) {
                hand(problem, problems);
            }
        }
        return own.hasErrors() ? Optional.empty() : Optional.ofNullable(profile);
    }

    /**
     * Reads and checks the profile in a file.
     *
     * @param file     the file; its name must be the code in small letters and {@code .yaml}
     * @param problems takes every problem
     * @return the profile; empty when there is an error
     */
    public Optional<Profile> read(Path file, Problems problems) {
        String content = ProfileText.of(file, file.toString(), problems);
        return content == null ? Optional.empty() : read(file.toString(), content, problems);
    }

    private static void hand(Problem problem, Problems problems) {
        if (problem.severity() == Severity.ERROR) {
            problems.error(problem.place(), problem.code(), problem.found(), problem.expected(), problem.perhaps());
        } else {
            problems.warning(problem.place(), problem.code(), problem.found(), problem.expected(),
                    problem.perhaps());
        }
    }
}
