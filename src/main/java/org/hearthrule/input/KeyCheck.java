package org.hearthrule.input;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Looks for repeated keys in one mapping while it is read. */
final class KeyCheck {

    private static final int FEW = 12;

    private final List<Mapping.Entry> entries;
    private Map<String, Scalar> byText;

    KeyCheck(List<Mapping.Entry> entries) {
        this.entries = entries;
    }

    /** Returns whether the key is new; a repeated one is recorded as a problem. */
    boolean isNew(Scalar key, Problems problems) {
        Scalar first = first(key);
        if (first == null) {
            return true;
        }
        problems.error(
                key.place(),
                "REPEATED-KEY",
                "a second `" + Shown.cut(key.text()) + "`",
                "each key once; the first is on line " + first.place().line(),
                "remove one of the two");
        return false;
    }

    private Scalar first(Scalar key) {
        if (entries.size() < FEW) {
            for (int i = 0; i < entries.size(); i++) {
                if (entries.get(i).key().text().equals(key.text())) {
                    return entries.get(i).key();
                }
            }
            return null;
        }
        if (byText == null) {
            byText = new HashMap<>();
            for (Mapping.Entry entry : entries) {
                byText.put(entry.key().text(), entry.key());
            }
        }
        return byText.putIfAbsent(key.text(), key);
    }
}
