package org.hearthrule.cli;

import java.nio.file.Path;
import java.util.Optional;
import org.hearthrule.input.BadInputException;
import org.hearthrule.law.Profile;
import org.hearthrule.law.ProfileReader;
import org.hearthrule.law.Profiles;
import org.hearthrule.law.UnknownJurisdictionException;
import org.hearthrule.terms.Subjects;

/** The laws a command works with: those that come with the program, and before them those of {@code --jurisdictions}. */
final class Laws {

    private Laws() { }

    static ProfileReader reader() {
        return new ProfileReader(Subjects::known, Subjects.ids());
    }

    static Profiles open(Given given) throws BadInputException {
        Profiles packaged = Profiles.packaged(reader());
        Path folder = given.path("--jurisdictions");
        return folder == null ? packaged : packaged.with(folder);
    }

    /** @return the law of a jurisdiction named on the command line; empty with a problem when there is none */
    static Optional<Profile> find(Profiles profiles, String asked, Given given) {
        try {
            return profiles.find(asked, given.problems());
        } catch (UnknownJurisdictionException e) {
            String perhaps = e.nearest().map(code -> "you meant " + e.known().get(code) + " (" + code + ')').orElse(null);
            given.problem(asked, "UNKNOWN-JURISDICTION", '"' + asked + '"', known(e), perhaps);
            return Optional.empty();
        }
    }

    private static String known(UnknownJurisdictionException e) {
        return e.known().isEmpty() ? "a jurisdiction there is a profile of (there is none at all)"
                : "one of " + String.join(", ", e.known().keySet());
    }
}
