package org.hearthrule.terms;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hearthrule.input.Nearest;

/** Finds a subject of the common vocabulary by what somebody wrote for it. */
public final class SubjectNames {

    private SubjectNames() { }

    /** @return the id of the subject of this id or plain name; capitals and space around do not count */
    public static Optional<String> find(String text) {
        return Optional.ofNullable(Loaded.BY_WORD.get(plain(text)));
    }

    /** @return the id of the subject that was most likely meant, by its id or its plain name; empty when none is near */
    public static Optional<String> nearest(String text) {
        String word = plain(text);
        Optional<String> near = Nearest.of(word, Loaded.WORDS);
        if (near.isEmpty() && word.endsWith("s")) {
            near = Nearest.of(word.substring(0, word.length() - 1), Loaded.WORDS);
        }
        return near.map(Loaded.BY_WORD::get);
    }

    private static String plain(String text) {
        return text.strip().toLowerCase(Locale.ROOT);
    }

    /** Filled on first use: most books hold no word that is not an id. */
    private static final class Loaded {
        static final List<String> WORDS = new ArrayList<>();
        static final Map<String, String> BY_WORD = new HashMap<>();

        static {
            WORDS.addAll(Subjects.ids());
            Subjects.ids().forEach(id -> {
                BY_WORD.put(plain(Subjects.name(id)), id);
                WORDS.add(plain(Subjects.name(id)));
            });
            Subjects.ids().forEach(id -> BY_WORD.put(id, id));
        }
    }
}
