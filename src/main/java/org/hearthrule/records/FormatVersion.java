package org.hearthrule.records;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import org.hearthrule.input.Fields;
import org.hearthrule.input.Node;
import org.hearthrule.input.Scalar;

/** Checks the format version of a file of a book: the number under {@code hearthrule}. */
final class FormatVersion {

    static final String KEY = "hearthrule";

    /** Stands for a version that is missing or no number. */
    static final int UNKNOWN = 0;

    private static final int SURELY_TOO_LONG = 9;

    private FormatVersion() { }

    /**
     * Returns whether this program can read on. A newer version is one problem, after which nothing else should be
     * looked at; a missing or senseless one is recorded too, but the rest can be read.
     */
    static boolean isReadable(Fields root) {
        return isReadable(root, KEY, Book.VERSION);
    }

    /** The same for another key and its newest version. */
    static boolean isReadable(Fields root, String key, int newest) {
        Node node = root.optionalNode(key).orElse(null);
        if (node instanceof Scalar scalar && scalar.form() == Scalar.Form.NUMBER && number(scalar.text()) > newest) {
            root.error(key, "NEWER-VERSION", "format version " + scalar.text() + ", written by a newer Hearthrule",
                    "version " + newest + ", the newest that this Hearthrule reads; nothing was changed",
                    "install the newer Hearthrule");
            return false;
        }
        root.integer(key, 1, newest);
        return true;
    }

    /** Returns the version that a file states, without reading more of it than needed. */
    static int of(byte[] content) {
        try (JsonParser parser = new JsonFactory().createParser(content)) {
            if (parser.nextToken() != JsonToken.START_OBJECT) {
                return UNKNOWN;
            }
            while (parser.nextToken() == JsonToken.FIELD_NAME) {
                boolean found = parser.currentName().equals(KEY);
                JsonToken value = parser.nextToken();
                if (found) {
                    return value == JsonToken.VALUE_NUMBER_INT ? number(parser.getText()) : UNKNOWN;
                }
                parser.skipChildren();
            }
            return UNKNOWN;
        } catch (IOException e) {
            return UNKNOWN;
        }
    }

    private static int number(String digits) {
        for (int i = 0; i < digits.length(); i++) {
            if (digits.charAt(i) < '0' || digits.charAt(i) > '9') {
                return UNKNOWN;
            }
        }
        return digits.length() > SURELY_TOO_LONG ? Integer.MAX_VALUE : Integer.parseInt(digits);
    }
}
