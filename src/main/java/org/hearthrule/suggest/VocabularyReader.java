package org.hearthrule.suggest;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.hearthrule.input.Fields;
import org.hearthrule.input.Mapping;
import org.hearthrule.input.Nearest;
import org.hearthrule.input.Node;
import org.hearthrule.input.Place;
import org.hearthrule.input.Problems;
import org.hearthrule.input.YamlText;
import org.hearthrule.terms.Subjects;

/**
 * Reads a vocabulary of activities strictly: unknown keys and subjects, words that stand twice, phrases that could
 * never be found. Every problem is recorded with its place.
 */
final class VocabularyReader {

    private static final int MOST_WORDS = 4;

    private final Problems problems;
    private final List<Cue> cues = new ArrayList<>();
    private final Map<String, String> written = new TreeMap<>();
    private Vocabulary.Words words;

    private VocabularyReader(Problems problems) {
        this.problems = problems;
    }

    /**
     * Reads a text.
     *
     * @param file the name of the file as it is to be shown
     * @return the vocabulary; empty when there is any error
     */
    static Optional<Vocabulary> read(String file, String text, Problems problems) {
        Node root = YamlText.read(file, text, problems).orElse(null);
        Vocabulary vocabulary = root == null ? null : new VocabularyReader(problems).vocabulary(root);
        return problems.hasErrors() ? Optional.empty() : Optional.ofNullable(vocabulary);
    }

    private Vocabulary vocabulary(Node root) {
        Fields top = Fields.of(root, problems, "the vocabulary");
        Set<String> small = new TreeSet<>();
        for (Item item : Item.list(top, "small-words")) {
            small.add(item.text());
        }
        Map<String, String> forms = forms(top);
        words = new Vocabulary.Words(new Stemmer(forms, small), new ReadAsOne(List.of()));
        List<List<String>> phrases = new ArrayList<>();
        for (Phrase phrase : phrases(top, "read-as-one")) {
            if (phrase.stems().size() < 2) {
                problems.error(phrase.item().place(), "ONE-WORD", phrase.item().shown(),
                        "two words or more, small words not counted", null);
            } else {
                phrases.add(phrase.stems());
            }
        }
        words = new Vocabulary.Words(new Stemmer(forms, small), new ReadAsOne(phrases));
        Set<String> next = strikers(top, "strikes-what-follows");
        Set<String> around = strikers(top, "strikes-all-around");
        Fields subjects = top.fields("subjects", "the subjects");
        for (Mapping.Entry entry : subjects.entries()) {
            subject(entry.key().text(), entry.key().place(), Fields.of(entry.value(), problems, "the subject"));
        }
        top.done();
        return new Vocabulary(words, next, around, cues, written);
    }

    /** Stem by form, also for words that are kept whole. */
    private Map<String, String> forms(Fields top) {
        Stemmer plain = new Stemmer();
        Map<String, String> forms = new HashMap<>();
        for (Item item : Item.list(top, "kept-whole")) {
            form(item, null, plain, forms);
        }
        Fields fields = top.optionalFields("forms", "the forms of words").orElse(null);
        if (fields == null) {
            return forms;
        }
        for (Mapping.Entry entry : fields.entries()) {
            List<Word> head = plain.words(entry.key().text());
            if (head.size() != 1) {
                several(entry.key().place(), "`" + entry.key().text() + "`");
                continue;
            }
            for (Item item : Item.list(fields, entry.key().text())) {
                form(item, head.get(0).stem(), plain, forms);
            }
        }
        return forms;
    }

    /** Takes a form in; a stem of null keeps it whole. */
    private void form(Item item, String stem, Stemmer plain, Map<String, String> forms) {
        List<Word> found = plain.words(item.text());
        String form = found.size() == 1 ? found.get(0).in(item.text()).toLowerCase(Locale.ROOT) : "";
        if (form.isEmpty()) {
            several(item.place(), item.shown());
        } else if (forms.putIfAbsent(form, stem == null ? form : stem) != null) {
            problems.error(item.place(), "REPEATED-FORM", "a second " + item.shown(), "each form under one word", null);
        }
    }

    private void several(Place place, String shown) {
        problems.error(place, "NOT-ONE-WORD", shown, "one word", null);
    }

    private Set<String> strikers(Fields top, String key) {
        Set<String> stems = new HashSet<>();
        for (Phrase phrase : phrases(top, key)) {
            if (phrase.stems().size() == 1) {
                stems.add(phrase.stems().get(0));
            } else {
                problems.error(phrase.item().place(), "NOT-ONE-WORD", phrase.item().shown(), "one word",
                        "put the phrase under `read-as-one` too");
            }
        }
        return stems;
    }

    private void subject(String id, Place place, Fields lists) {
        if (!Subjects.known(id)) {
            problems.error(place, "UNKNOWN-SUBJECT", "the subject `" + id + "`", "an id of " + Subjects.RESOURCE,
                    Nearest.of(id, Subjects.ids()).map(near -> "you meant `" + near + "`").orElse(null));
        }
        Map<List<String>, Item> seen = new HashMap<>();
        int surely = cues(id, lists, "surely", Cue.Kind.SURELY, seen);
        needless(seen);
        int perhaps = cues(id, lists, "perhaps", Cue.Kind.PERHAPS, seen);
        int with = cues(id, lists, "with", Cue.Kind.WITH, seen);
        if (with > 0 && perhaps == 0) {
            lists.error("with", "WITH-NOTHING", "`with` without `perhaps`", "words under `perhaps` that it stands with",
                    null);
        } else if (perhaps > 0 && with == 0) {
            lists.error("perhaps", "PERHAPS-NEVER", "`perhaps` without `with`", "words under `with` that must stand near",
                    null);
        } else if (lists.isMapping() && surely + perhaps == 0 && !lists.has("surely") && !lists.has("perhaps")) {
            problems.error(lists.place(), "MISSING-KEY", "a subject without words", "`surely` or `perhaps`", null);
        }
        lists.done();
    }

    /** A phrase of which one word is enough only hides that it is. */
    private void needless(Map<List<String>, Item> surely) {
        surely.forEach((stems, item) -> stems.stream().filter(stem -> stems.size() > 1)
                .map(stem -> surely.get(List.of(stem))).filter(Objects::nonNull).findFirst()
                .ifPresent(enough -> problems.error(item.place(), "NEEDLESS", item.shown(),
                        "no phrase with " + enough.shown() + ", which is enough alone (line " + enough.place().line() + ")",
                        "remove one of the two")));
    }

    private int cues(String id, Fields lists, String key, Cue.Kind kind, Map<List<String>, Item> seen) {
        List<Phrase> phrases = phrases(lists, key);
        for (Phrase phrase : phrases) {
            Item same = seen.putIfAbsent(phrase.stems(), phrase.item());
            if (same != null) {
                problems.error(phrase.item().place(), "REPEATED-ITEM", phrase.item().shown(),
                        "each word once in a subject: it has the same stem as " + same.shown() + " in line "
                                + same.place().line(), "remove one of the two");
            }
            cues.add(new Cue(phrase.stems(), id, kind));
        }
        return phrases.size();
    }

    private record Phrase(Item item, List<String> stems) { }

    /** The items of a list that can be found in a line, cut into stems. */
    private List<Phrase> phrases(Fields fields, String key) {
        List<Phrase> phrases = new ArrayList<>();
        for (Item item : Item.list(fields, key)) {
            List<Word> found = words.of(item.text());
            if (found.isEmpty()) {
                problems.error(item.place(), "NO-WORD", item.shown(), "at least one word that is not a small word", null);
            } else if (found.size() > MOST_WORDS || found.get(found.size() - 1).clause() > 0) {
                problems.error(item.place(), "TOO-MANY-WORDS", item.shown(),
                        "at most " + MOST_WORDS + " words and no mark between them", null);
            } else if (found.size() == 1 && found.get(0).stem().indexOf(' ') < 0 && item.text().indexOf(' ') >= 0) {
                problems.error(item.place(), "SMALL-WORDS", item.shown(),
                        "more than the one word that is left without its small words",
                        "write `" + found.get(0).in(item.text()) + "`, or another phrase");
            } else {
                phrases.add(new Phrase(item, found.stream().map(Word::stem).toList()));
                found.forEach(word -> written.put(word.in(item.text()).toLowerCase(Locale.ROOT), word.stem()));
            }
        }
        return phrases;
    }
}
