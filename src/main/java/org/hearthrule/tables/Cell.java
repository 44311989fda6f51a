package org.hearthrule.tables;

import org.hearthrule.input.Place;

/** A cell of a table: what it holds, and where. */
public record Cell(Place place, CellValue value) {

    /** @return the value as it is shown, without space around it */
    public String text() {
        return value.shown();
    }

    /** @return whether nothing stands in the cell */
    public boolean isEmpty() {
        return value.shown().isEmpty();
    }
}
