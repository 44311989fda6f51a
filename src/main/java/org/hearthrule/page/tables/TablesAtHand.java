package org.hearthrule.page.tables;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import org.hearthrule.tables.ListKind;

/** The tables that were chosen last; those before are forgotten, so that memory does not fill. Safe for several threads. */
final class TablesAtHand {

    private static final int MOST = 2;

    private final Deque<TableAtHand> tables = new ArrayDeque<>();
    private int last;

    synchronized TableAtHand put(String name, byte[] content, ListKind<?> kind) {
        TableAtHand table = new TableAtHand(++last, name, content, kind);
        tables.addLast(table);
        if (tables.size() > MOST) {
            tables.removeFirst();
        }
        return table;
    }

    synchronized Optional<TableAtHand> find(String number) {
        return tables.stream().filter(one -> Integer.toString(one.number()).equals(number)).findFirst();
    }

    synchronized void remove(TableAtHand table) {
        tables.remove(table);
    }
}
