package org.hearthrule.tables;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hearthrule.input.Phrases;
import org.hearthrule.input.Problems;

/**
 * Reads names in cells, of children or of subjects: those the book knows, those somebody explained, and for the others
 * what was most likely meant.
 */
final class CellNames {

    private final Vocabulary vocabulary;
    private final Map<String, List<String>> said;
    private final Map<String, Use> uses = new LinkedHashMap<>();
    private final Map<String, List<Use>> cells = new HashMap<>();

    CellNames(Vocabulary vocabulary, Map<String, List<String>> said) {
        this.vocabulary = vocabulary;
        this.said = said;
    }

    /** What names there are, and how a table writes several of them in one cell. */
    interface Vocabulary {

        /** Returns the id of a name. */
        Optional<String> find(String name);

        /** Returns what a name was most likely meant to be, by name or id. */
        Optional<String> nearest(String name);

        /** The code of the problem that a name is not known. */
        String code();

        /** What is expected instead, as a phrase. */
        String expected();

        /** The signs between two names, as a pattern. */
        String between();

        /** Signs that somebody else may write between two names, as a pattern. */
        String perhapsBetween();

        /** The sign to write between two names. */
        String sign();
    }

    /** Returns the ids of the names in a cell, each once. */
    List<String> read(Cell cell, Problems problems) {
        List<Use> names = cells.computeIfAbsent(cell.text(), this::names);
        Set<String> ids = new LinkedHashSet<>();
        for (Use use : names) {
            use.rows++;
            if (use.ids != null) {
                ids.addAll(use.ids);
            } else {
                problems.error(cell.place(), vocabulary.code(), Phrases.quoted(use.written), vocabulary.expected(),
                        use.advice);
            }
        }
        return List.copyOf(ids);
    }

    /** Returns the names in a cell: the whole of it, or its parts. */
    private List<Use> names(String text) {
        List<String> parts = find(text).isPresent() ? List.of(text) : CellList.split(text, vocabulary.between());
        return parts.stream().map(part -> uses.computeIfAbsent(ImportOptions.plain(part), key -> use(part))).toList();
    }

    private Optional<List<String>> find(String name) {
        List<String> ids = said.get(ImportOptions.plain(name));
        return ids != null ? Optional.of(ids) : vocabulary.find(name).map(List::of);
    }

    private Use use(String name) {
        Use use = new Use(name);
        use.ids = find(name).orElse(null);
        if (use.ids == null) {
            guess(use);
        }
        return use;
    }

    private void guess(Use use) {
        List<String> joined = CellList.split(use.written, vocabulary.perhapsBetween());
        if (joined.size() > 1 && joined.stream().allMatch(one -> find(one).isPresent())) {
            use.perhaps = joined.stream().flatMap(one -> find(one).orElseThrow().stream()).distinct().toList();
            use.advice = "write " + Phrases.quoted(String.join(vocabulary.sign(), joined));
            return;
        }
        Optional<String> near = vocabulary.nearest(use.written);
        use.perhaps = near.flatMap(vocabulary::find).map(List::of).orElse(List.of());
        use.advice = near.map(name -> "you meant " + Phrases.quoted(name)).orElse(null);
    }

    /** Returns every name that was read, in the order of the table. */
    List<NameUse> uses() {
        List<NameUse> all = new ArrayList<>(uses.size());
        uses.values().forEach(use -> all.add(new NameUse(use.written, use.rows, use.ids != null,
                use.ids == null ? List.of() : use.ids, use.perhaps)));
        return List.copyOf(all);
    }

    private static final class Use {
        private final String written;
        private int rows;
        private List<String> ids;
        private List<String> perhaps = List.of();
        private String advice;

        Use(String written) {
            this.written = written;
        }
    }
}
