package org.hearthrule.rules;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hearthrule.input.Nearest;
import org.hearthrule.input.Problems;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.records.Book;
import org.hearthrule.records.Placement;

/** Checks that a book's placements name pathways that exist. */
public final class BookPlacements {

    private BookPlacements() {
    }

    /** @return the codes that the book names, in lower case, each once */
    public static List<String> jurisdictions(Book book) {
        return book.placements().stream().map(Placement::jurisdiction).distinct().toList();
    }

    /** Reports every placement whose pathway its jurisdiction does not have. */
    public static void check(Book book, Collection<Profile> profiles, Problems problems) {
        Map<String, Profile> byCode = new LinkedHashMap<>();
        profiles.forEach(profile -> byCode.put(profile.slug(), profile));
        for (Placement placement : book.placements()) {
            Profile profile = byCode.get(placement.jurisdiction());
            if (profile == null || profile.pathway(placement.pathway()).isPresent()) {
                continue;
            }
            List<String> known = new ArrayList<>(profile.pathways().stream().map(Pathway::slug).toList());
            problems.error(placement.where().pathway(), "UNKNOWN-PATHWAY", "pathway \"" + placement.pathway() + "\"",
                    "one of " + String.join(", ", known),
                    Nearest.of(placement.pathway(), known).map(near -> "you meant `" + near + "`").orElse(null));
        }
    }
}
