package org.hearthrule.suggest;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.analysis.LowerCaseFilter;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.Tokenizer;
import org.apache.lucene.analysis.en.EnglishPossessiveFilter;
import org.apache.lucene.analysis.miscellaneous.ASCIIFoldingFilter;
import org.apache.lucene.analysis.standard.StandardTokenizer;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;
import org.apache.lucene.analysis.tokenattributes.OffsetAttribute;
import org.tartarus.snowball.ext.PorterStemmer;

/**
 * Cuts a line into the stems of its words: Unicode's rules for words, small letters, no accents, the forms of the
 * vocabulary ({@code drew} is {@code draw}), then Porter's stems for English. Safe for several threads.
 */
final class Stemmer {

    /** What is further back in a line, or longer than a word, suggests nothing; it bounds the time one line may take. */
    private static final int MOST_CHARACTERS = 4_000;
    private static final int MOST_WORDS = 400;
    private static final int LONGEST_WORD = 40;

    /** A point behind a word this short ends no sentence: "ch. 4", "Mr. Pell". */
    private static final int LONGEST_SHORTENED = 3;

    /** So many words of families are kept with their stems; the language has more, and any text may come. */
    private static final int MOST_KEPT = 20_000;

    /** Stands for a word that is passed over. */
    private static final String NONE = "";

    private final Analyzer analyzer = new Plain();

    /** Stem by word: small words, forms that no rule finds, and what was met so far. */
    private final Map<String, String> stems = new ConcurrentHashMap<>();

    /** The stemmer that knows no words yet. */
    Stemmer() { }

    /**
     * Makes one.
     *
     * @param forms stem by form, for forms that no rule finds
     * @param small words that are passed over, as they are written
     */
    Stemmer(Map<String, String> forms, Set<String> small) {
        stems.putAll(forms);
        small.forEach(word -> stems.put(word, NONE));
    }

    /** Words as they are written, in small letters, without accents and "'s". */
    private static final class Plain extends Analyzer {

        @Override
        protected TokenStreamComponents createComponents(String field) {
            Tokenizer words = new StandardTokenizer();
            return new TokenStreamComponents(words,
                    new ASCIIFoldingFilter(new LowerCaseFilter(new EnglishPossessiveFilter(words))));
        }
    }

    /** @return the words that are not passed over, in their order */
    List<Word> words(String text) {
        String line = plain(cut(text));
        List<Word> words = new ArrayList<>();
        try (TokenStream tokens = analyzer.tokenStream("line", line)) {
            CharTermAttribute term = tokens.getAttribute(CharTermAttribute.class);
            OffsetAttribute offset = tokens.getAttribute(OffsetAttribute.class);
            tokens.reset();
            Breaks breaks = new Breaks(line);
            while (words.size() < MOST_WORDS && tokens.incrementToken()) {
                breaks.goTo(offset.startOffset());
                String stem = term.length() > LONGEST_WORD ? NONE : stem(term.toString());
                if (!stem.isEmpty()) {
                    words.add(new Word(stem, offset.startOffset(), offset.endOffset(), breaks.sentence,
                            breaks.clause));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return words;
    }

    /** Straight apostrophes, and no signs that only steer the direction of writing; as long as before, for the places. */
    private static String plain(String text) {
        char[] plain = text.toCharArray();
        for (int i = 0; i < plain.length; i++) {
            if (plain[i] == '\u2019') {
                plain[i] = '\'';
            } else if (Character.getType(plain[i]) == Character.FORMAT) {
                plain[i] = ' ';
            }
        }
        return new String(plain);
    }

    private String stem(String word) {
        String known = stems.get(word);
        if (known != null) {
            return known;
        }
        PorterStemmer porter = new PorterStemmer();
        porter.setCurrent(word);
        porter.stem();
        String stem = porter.getCurrent();
        if (stems.size() < MOST_KEPT) {
            stems.put(word, stem);
        }
        return stem;
    }

    private static String cut(String text) {
        if (text.length() <= MOST_CHARACTERS) {
            return text;
        }
        int end = Character.isHighSurrogate(text.charAt(MOST_CHARACTERS - 1)) ? MOST_CHARACTERS - 1 : MOST_CHARACTERS;
        return text.substring(0, end);
    }

    /** Counts the sentences and clauses of a line up to a place. */
    private static final class Breaks {

        private final String line;
        private int at;
        private int letters;
        private int sentence;
        private int clause;

        Breaks(String line) {
            this.line = line;
        }

        void goTo(int place) {
            for (; at < place; at++) {
                char c = line.charAt(at);
                if (Character.isLetterOrDigit(c)) {
                    letters++;
                    continue;
                }
                if (c == ';' || c == '!' || c == '?' || c == '\n' || c == '.' && letters > LONGEST_SHORTENED) {
                    sentence++;
                    clause++;
                } else if (c == ',' || c == ':' || c == '(' || c == ')' || c == '\u2013' || c == '\u2014') {
                    clause++;
                }
                letters = 0;
            }
        }
    }
}
