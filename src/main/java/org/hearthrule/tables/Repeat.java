package org.hearthrule.tables;

/** What a row says once more. */
public sealed interface Repeat {

    /** @return the same in plain words */
    String words();

    /**
     * A record of the book.
     *
     * @param year label of its school year
     * @param id   within the year
     */
    record OfBook(String year, String id) implements Repeat {
        @Override
        public String words() {
            return "already in the book as " + id;
        }
    }

    /**
     * A row above it in the table.
     *
     * @param row such as {@code line 7}
     */
    record OfRow(String row) implements Repeat {
        @Override
        public String words() {
            return "the same as " + row;
        }
    }
}
