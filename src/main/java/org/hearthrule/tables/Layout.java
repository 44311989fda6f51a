package org.hearthrule.tables;

/** How a table is written. */
public sealed interface Layout {

    /** @return the same in plain words */
    String words();

    /**
     * A table as text.
     *
     * @param separator     what parts the cells
     * @param byteOrderMark whether it begins with a byte-order mark
     * @param crLf          whether its lines end with CR LF
     */
    record Text(char separator, boolean byteOrderMark, boolean crLf) implements Layout {
        @Override
        public String words() {
            return "a table with cells parted by " + name() + "s" + (crLf ? ", lines ended by CR LF" : "")
                    + (byteOrderMark ? ", a byte-order mark first" : "");
        }

        /** Returns the name of the separator. */
        String name() {
            return switch (separator) {
                case ',' -> "comma";
                case ';' -> "semicolon";
                case '\t' -> "tab";
                default -> "\"" + separator + '"';
            };
        }
    }

    /**
     * A sheet of a spreadsheet.
     *
     * @param name       of the sheet
     * @param hiddenRows how many of its rows are hidden, by a filter perhaps; they are read like the others
     */
    record Sheet(String name, int hiddenRows) implements Layout {
        @Override
        public String words() {
            return "the sheet \"" + name + '"';
        }
    }
}
