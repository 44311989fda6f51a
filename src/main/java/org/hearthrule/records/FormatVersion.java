package org.hearthrule.records;

import java.util.OptionalInt;
import org.hearthrule.input.Fields;
import org.hearthrule.input.Mapping;
import org.hearthrule.input.Node;
import org.hearthrule.input.Scalar;

/** Checks the format version of a file of a book: the number under {@code hearthrule}. */
final class FormatVersion {

    static final String KEY = "hearthrule";

    private static final int SURELY_TOO_LONG = 9;

    private FormatVersion() { }

    /**
     * Returns whether this program can read on. A newer version is one problem, after which nothing else should be
     * looked at; a missing or senseless one is recorded too, but the rest can be read.
     */
    static boolean isReadable(Fields root) {
        Node node = root.optionalNode(KEY).orElse(null);
        if (node instanceof Scalar scalar && scalar.form() == Scalar.Form.NUMBER && isNewer(scalar.text())) {
            root.error(KEY, "NEWER-VERSION", "format version " + scalar.text() + ", written by a newer Hearthrule",
                    "version " + Book.VERSION + ", the newest that this Hearthrule reads; nothing was changed",
                    "install the newer Hearthrule");
            return false;
        }
        root.integer(KEY, 1, Book.VERSION);
        return true;
    }

    private static boolean isNewer(String digits) {
        for (int i = 0; i < digits.length(); i++) {
            if (digits.charAt(i) < '0' || digits.charAt(i) > '9') {
                return false;
            }
        }
        return digits.length() > SURELY_TOO_LONG || Integer.parseInt(digits) > Book.VERSION;
    }

    /** Returns the version at the top of a tree; empty when there is none. */
    static OptionalInt of(Node root) {
        if (root instanceof Mapping mapping) {
            for (Mapping.Entry entry : mapping.entries()) {
                if (entry.key().text().equals(KEY) && entry.value() instanceof Scalar scalar
                        && scalar.form() == Scalar.Form.NUMBER && scalar.text().length() <= SURELY_TOO_LONG
                        && scalar.text().chars().allMatch(c -> c >= '0' && c <= '9')) {
                    return OptionalInt.of(Integer.parseInt(scalar.text()));
                }
            }
        }
        return OptionalInt.empty();
    }
}
