package org.hearthrule.page.tables;

import org.hearthrule.tables.ListKind;
import org.hearthrule.tables.TableFile;

/**
 * A file with a table that was chosen and is being looked at. It lies in memory alone.
 *
 * @param number  by which its page names it
 * @param name    as its sender names it
 * @param content its bytes
 * @param kind    the list its rows belong to
 */
record TableAtHand(int number, String name, byte[] content, ListKind<?> kind) {

    TableFile read(String sheet) {
        return TableFile.read(name, content, sheet == null ? TableFile.Choice.NONE : TableFile.Choice.ofSheet(sheet));
    }

    /** @return the address of the page where it is looked at */
    String path() {
        return "/tables/take?table=" + number;
    }
}
