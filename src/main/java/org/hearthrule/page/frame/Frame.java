package org.hearthrule.page.frame;

import java.time.LocalDate;
import java.util.List;

/**
 * What stands around a page.
 *
 * @param title   of the window
 * @param part    the part of the navigation it belongs to
 * @param path    where this page is, with its query: where to come back to after an undo
 * @param family  as the family calls itself, or null
 * @param token   for the forms
 * @param notice  what was just done, or null
 * @param undo    what an undo would take back, or null
 * @param redo    what was taken back and can be done again, or null
 * @param demo    whether this is the invented family
 * @param hasBook whether a book is open
 * @param unreadable whether the files of the book cannot be read now
 * @param today   the day the page looks at
 * @param asOf    whether that is another day than the real one
 * @param version of the assets, so that a browser never keeps old ones
 */
public record Frame(String title, Part part, String path, String family, String token, String notice, String undo,
                    String redo, boolean demo, boolean hasBook, boolean unreadable, LocalDate today, boolean asOf, String version) {

    /** @return the parts that can be gone to */
    public List<Part> parts() {
        return hasBook ? List.of(Part.values()) : List.of(Part.values()).stream().filter(Part::needsNoBook).toList();
    }
}
