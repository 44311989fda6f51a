package org.hearthrule.suggest;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.analysis.CharArraySet;
import org.apache.lucene.analysis.LowerCaseFilter;
import org.apache.lucene.analysis.StopFilter;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.Tokenizer;
import org.apache.lucene.analysis.en.EnglishPossessiveFilter;
import org.apache.lucene.analysis.en.PorterStemFilter;
import org.apache.lucene.analysis.miscellaneous.ASCIIFoldingFilter;
import org.apache.lucene.analysis.miscellaneous.StemmerOverrideFilter;
import org.apache.lucene.analysis.standard.StandardTokenizer;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;
import org.apache.lucene.analysis.tokenattributes.OffsetAttribute;

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

    private final Analyzer analyzer;

    /** The stemmer that knows no words yet. */
    Stemmer() {
        this(Map.of(), Set.of());
    }

    /**
     * Makes one.
     *
     * @param stems stem by form, for forms that no rule finds
     * @param small words that are passed over, as they are written
     */
    Stemmer(Map<String, String> stems, Set<String> small) {
        StemmerOverrideFilter.StemmerOverrideMap forms = overrides(stems);
        CharArraySet passedOver = new CharArraySet(small, false);
        this.analyzer = new Analyzer() {
            @Override
            protected TokenStreamComponents createComponents(String field) {
                Tokenizer words = new StandardTokenizer();
                TokenStream plain = new ASCIIFoldingFilter(new LowerCaseFilter(new EnglishPossessiveFilter(words)));
                TokenStream known = new StemmerOverrideFilter(new StopFilter(plain, passedOver), forms);
                return new TokenStreamComponents(words, new PorterStemFilter(known));
            }
        };
    }

    private static StemmerOverrideFilter.StemmerOverrideMap overrides(Map<String, String> stems) {
        StemmerOverrideFilter.Builder builder = new StemmerOverrideFilter.Builder();
        stems.forEach(builder::add);
        try {
            return builder.build();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** @return the words that are not passed over, in their order */
    List<Word> words(String text) {
        // same length, so that places stay true
        String line = cut(text).replace('\u2019', '\'');
        List<Word> words = new ArrayList<>();
        try (TokenStream tokens = analyzer.tokenStream("line", line)) {
            CharTermAttribute term = tokens.getAttribute(CharTermAttribute.class);
            OffsetAttribute offset = tokens.getAttribute(OffsetAttribute.class);
            tokens.reset();
            Breaks breaks = new Breaks(line);
            while (words.size() < MOST_WORDS && tokens.incrementToken()) {
                breaks.goTo(offset.startOffset());
                if (term.length() <= LONGEST_WORD && term.length() > 0) {
                    words.add(new Word(term.toString(), offset.startOffset(), offset.endOffset(), breaks.sentence,
                            breaks.clause));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return words;
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
