package org.hearthrule.page.records;

import java.util.List;
import java.util.Map;
import org.hearthrule.page.frame.Field;

/** The one thing to do next about a line of the checklist, doable where it stands. */
public sealed interface NextStep {

    /**
     * A small form.
     *
     * @param action where it is sent
     * @param asks   what it asks, in words
     * @param hidden what is known already
     * @param button what the button says
     */
    record Fill(String action, String asks, Map<String, String> hidden, List<Field> fields, String button) implements NextStep {

        /** @return whether a file may come along */
        public boolean takesFile() {
            return fields.stream().anyMatch(field -> field.type().equals("file"));
        }
    }

    /** A page where it is done. */
    record Go(String path, String words) implements NextStep { }
}
