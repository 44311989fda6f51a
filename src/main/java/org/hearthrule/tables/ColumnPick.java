package org.hearthrule.tables;

/** A column of a table, as somebody picked it. */
public sealed interface ColumnPick {

    /** By its header; capitals do not count. */
    record Header(String text) implements ColumnPick { }

    /** By its position, from 0. */
    record Position(int index) implements ColumnPick { }
}
