package org.hearthrule.checklist;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.hearthrule.input.BadInputException;
import org.hearthrule.input.Problems;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Profiles;
import org.hearthrule.law.UnknownJurisdictionException;
import org.hearthrule.records.Book;
import org.hearthrule.records.Placement;
import org.hearthrule.rules.BookPlacements;
import org.hearthrule.rules.Judge;
import org.hearthrule.rules.Judgement;

/** Lays a book beside the laws it names. */
public final class Checkup {

    private Checkup() { }

    /**
     * @param problems takes what is wrong with the book's placements and with the laws they name
     * @throws BadInputException when something is
     */
    public static Judgement judge(Book book, Profiles profiles, LocalDate asOf, Problems problems) throws BadInputException {
        List<Profile> laws = laws(book, profiles, problems);
        BookPlacements.check(book, laws, problems);
        problems.throwIfErrors();
        return new Judge(laws).judge(book, asOf);
    }

    private static List<Profile> laws(Book book, Profiles profiles, Problems problems) {
        List<Profile> laws = new ArrayList<>();
        for (String code : BookPlacements.jurisdictions(book)) {
            try {
                profiles.find(code, problems).ifPresent(laws::add);
            } catch (UnknownJurisdictionException e) {
                unknown(book, code, e, problems);
            }
        }
        return laws;
    }

    private static void unknown(Book book, String code, UnknownJurisdictionException e, Problems problems) {
        List<String> known = e.known().keySet().stream().map(one -> one.toLowerCase(Locale.ROOT)).toList();
        for (Placement placement : book.placements()) {
            if (placement.jurisdiction().equals(code) && placement.where() != null) {
                problems.error(placement.where().jurisdiction(), "UNKNOWN-JURISDICTION", '"' + code + '"',
                        "one of " + String.join(", ", known), e.nearest()
                        .map(near -> "you meant \"" + near.toLowerCase(Locale.ROOT) + '"').orElse(null));
            }
        }
    }
}
