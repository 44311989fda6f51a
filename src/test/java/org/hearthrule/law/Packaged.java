package org.hearthrule.law;

import java.util.ArrayList;
import java.util.List;
import org.hearthrule.terms.Subjects;

/** The laws that come with the program, read as it reads them. */
public final class Packaged {

    private Packaged() { }

    public static Profiles profiles() {
        return Profiles.packaged(new ProfileReader(Subjects::known, Subjects.ids()));
    }

    /** @return every law, in the order of codes */
    public static List<Profile> all() throws Exception {
        Profiles profiles = profiles();
        List<Profile> all = new ArrayList<>();
        for (String code : profiles.codes()) {
            all.add(profiles.find(code));
        }
        return all;
    }
}
