package org.hearthrule.page.law;

import java.time.LocalDate;
import org.hearthrule.checklist.LawFolio;
import org.hearthrule.checklist.Sheet;
import org.hearthrule.checklist.StateOutlook;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.sheet.Addresses;

/**
 * One state's law as the template sets it.
 *
 * @param pathway the way that is told
 * @param day     the day it is told for
 * @param form    in which another day is asked for
 */
public record LawView(Profile law, Pathway pathway, LocalDate day, LawFolio folio, StateOutlook outlook, Addresses addresses,
                      Form form) {

    public String code() {
        return law.slug();
    }

    /** @return whether a part is on the page, by the name under which it is found */
    public boolean has(String anchor) {
        return folio.notes().blocks().stream().anyMatch(block -> block instanceof Sheet.Heading heading
                && anchor.equals(heading.anchor()));
    }
}
